/** A machine set up for one operation: cutter, fence, stop and the wood as it is then. */
@NullMarked
package packetwright.drawing.setup;

import org.jspecify.annotations.NullMarked;
