/** A blank, or what is left of it, at a moment of the procedure. */
@NullMarked
package packetwright.wood.workpiece;

import org.jspecify.annotations.NullMarked;
