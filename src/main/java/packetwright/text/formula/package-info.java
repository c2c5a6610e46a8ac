/** Expressions over named quantities, unit-checked, with their derivations. */
@NullMarked
package packetwright.text.formula;

import org.jspecify.annotations.NullMarked;
