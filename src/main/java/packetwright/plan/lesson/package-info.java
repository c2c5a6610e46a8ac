/** One project under one substitution, shop and set of options, fully worked out. */
@NullMarked
package packetwright.plan.lesson;

import org.jspecify.annotations.NullMarked;
