/** The two documents as plain data, ready for any template. */
@NullMarked
package packetwright.paper.packet;

import org.jspecify.annotations.NullMarked;
