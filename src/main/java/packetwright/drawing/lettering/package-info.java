/** Advance widths and coverage of our typefaces, as data. */
@NullMarked
package packetwright.drawing.lettering;

import org.jspecify.annotations.NullMarked;
