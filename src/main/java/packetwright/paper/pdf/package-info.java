/** Lays HTML out as tagged pages. */
@NullMarked
package packetwright.paper.pdf;

import org.jspecify.annotations.NullMarked;
