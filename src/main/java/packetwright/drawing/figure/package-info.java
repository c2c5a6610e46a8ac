/** Drawings of work: a blank as it is laid out, a cut at its machine, the pieces put together. */
@NullMarked
package packetwright.drawing.figure;

import org.jspecify.annotations.NullMarked;
