/** What is set on a machine, and what stands on it: cutters, stops, test pieces, jigs. */
@NullMarked
package packetwright.wood.setup;

import org.jspecify.annotations.NullMarked;
