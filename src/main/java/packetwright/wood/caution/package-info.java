/** Hazard rules over each operation: cautions and refusals. */
@NullMarked
package packetwright.wood.caution;

import org.jspecify.annotations.NullMarked;
