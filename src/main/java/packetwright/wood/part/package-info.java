/** Designed parts as exact solids. */
@NullMarked
package packetwright.wood.part;

import org.jspecify.annotations.NullMarked;
