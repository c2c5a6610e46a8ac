/** Drawings of one part: its views, its dimensions, its notes. */
@NullMarked
package packetwright.drawing.part;

import org.jspecify.annotations.NullMarked;
