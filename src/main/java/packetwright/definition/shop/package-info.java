/** The shop profile: machines with their limits, cutters, allowances and local rules. */
@NullMarked
package packetwright.definition.shop;

import org.jspecify.annotations.NullMarked;
