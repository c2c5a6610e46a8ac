/** Drawings as lines, marks, dimensions and labels on paper; no file format. */
@NullMarked
package packetwright.drawing.sheet;

import org.jspecify.annotations.NullMarked;
