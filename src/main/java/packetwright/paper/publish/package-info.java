/** From inputs to lesson to documents to an output folder. */
@NullMarked
package packetwright.paper.publish;

import org.jspecify.annotations.NullMarked;
