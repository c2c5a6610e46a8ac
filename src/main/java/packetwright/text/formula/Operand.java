package packetwright.text.formula;

import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;

/**
 * What an expression came to.
 *
 * @param value none when a finding stands in its way
 * @param bare whether it is made of numbers without units alone, so that it is still open whether
 *     it is a number or a length
 */
record Operand(@Nullable Value value, boolean bare) {
  static final Operand FAILED = new Operand(null, false);

  static Operand of(boolean holds) {
    return new Operand(Value.of(holds), false);
  }

  static Operand bare(Rational number) {
    return new Operand(Value.of(Quantity.number(number)), true);
  }

  static Operand of(Quantity quantity, boolean bare) {
    return new Operand(Value.of(quantity), bare);
  }

  boolean failed() {
    return value == null;
  }

  /** The amount, or none when it is a truth or failed. */
  @Nullable Quantity quantity() {
    return value instanceof Value.Amount amount ? amount.quantity() : null;
  }

  /** The truth, or none when it is an amount or failed. */
  @Nullable Boolean truth() {
    return value instanceof Value.Truth truth ? truth.holds() : null;
  }

  /** Whether it is surely a length. */
  boolean isLength() {
    Quantity quantity = quantity();
    return quantity != null && quantity.dimension() == Dimension.LENGTH;
  }

  /** A bare number taken as a length in a unit; anything else as it is. */
  Operand asLength(Unit unit) {
    Quantity number = quantity();
    return bare && number != null
        ? of(new Quantity(number.value().times(unit.inBase()), Dimension.LENGTH), false)
        : this;
  }
}
