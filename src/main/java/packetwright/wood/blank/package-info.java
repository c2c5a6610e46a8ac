/** The rough size of each blank, with its reckoning. */
@NullMarked
package packetwright.wood.blank;

import org.jspecify.annotations.NullMarked;
