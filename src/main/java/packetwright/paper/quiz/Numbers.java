package packetwright.paper.quiz;

import java.math.BigInteger;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Figure;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;

/** Amounts, counted in a rule's unit, as a student writes them. */
final class Numbers {
  /** Finest division of an inch that a wrong answer is printed in. */
  private static final BigInteger FINEST = BigInteger.valueOf(64);

  private static final BigInteger MILLIONTH = BigInteger.TEN.pow(6);

  private Numbers() {}

  static Rational whole(Rational value) {
    return Rational.of(value.floor(), BigInteger.ONE);
  }

  static Rational rest(Rational value) {
    return value.minus(whole(value));
  }

  /** Numerator of what is over the whole units, in parts of so many. */
  static BigInteger top(Rational value, BigInteger parts) {
    return rest(value).times(Rational.of(parts, BigInteger.ONE)).numerator();
  }

  /** The least denominator that all can be written in; of decimals, a power of ten. */
  static BigInteger common(Unit unit, List<Rational> values) {
    BigInteger common = BigInteger.ONE;
    for (Rational value : values) {
      BigInteger d = bottom(unit, value);
      common = common.divide(common.gcd(d)).multiply(d);
    }
    return common;
  }

  /** The denominator that an amount is written in by itself. */
  static BigInteger bottom(Unit unit, Rational value) {
    return unit.isDecimal() ? Rule.powerOfTen(value) : value.denominator();
  }

  /** An amount in lowest terms. */
  static Figure lowest(Rational value, Unit unit) {
    BigInteger parts = bottom(unit, value);
    return figure(value.floor(), top(value, parts), parts, unit);
  }

  /** An amount in parts of so many, lowered or not. */
  static Figure in(Rational value, BigInteger parts, Unit unit) {
    return figure(value.floor(), top(value, parts), parts, unit);
  }

  static Figure figure(BigInteger whole, BigInteger top, BigInteger bottom, Unit unit) {
    return new Figure(false, whole, top, bottom, unit, Figure.Grade.EXACT);
  }

  /** An amount in lowest terms, or none where no rule shows it. */
  static @Nullable Figure printable(Rational value, Unit unit) {
    BigInteger limit = unit.isDecimal() ? MILLIONTH : FINEST;
    return limit.mod(value.denominator()).signum() == 0 ? lowest(value, unit) : null;
  }

  /** The unit of the lines of working: none for fractions, where it would only be in the way. */
  static Unit plain(Unit unit) {
    return unit.isDecimal() ? unit : Unit.ONE;
  }
}
