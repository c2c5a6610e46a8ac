/** Where parts sit, and whether they fit. */
@NullMarked
package packetwright.wood.assembly;

import org.jspecify.annotations.NullMarked;
