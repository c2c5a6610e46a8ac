/** Steps, operations and prose with places, and the variant for one shop and its options. */
@NullMarked
package packetwright.definition.procedure;

import org.jspecify.annotations.NullMarked;
