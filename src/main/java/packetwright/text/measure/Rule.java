package packetwright.text.measure;

import java.math.BigInteger;

/**
 * The rule that a project measures by: its unit and its finest graduation.
 *
 * @param graduation in the rule's unit: {@code 1/32} of an inch, {@code 1/2} of a millimetre; in
 *     millimetres a decimal of at most six places
 * @param unit INCH or MILLIMETRE
 */
public record Rule(Rational graduation, Unit unit) {
  /** A decimal of six places has a denominator that divides this. */
  private static final BigInteger MILLIONTH = BigInteger.TEN.pow(6);

  /** Refuses what no rule has. */
  public Rule {
    if (!isGraduation(graduation, unit)) {
      throw new IllegalArgumentException("no rule has " + graduation + " " + unit);
    }
  }

  /** Whether a rule can be so divided: above zero, and in millimetres a finite decimal. */
  public static boolean isGraduation(Rational graduation, Unit unit) {
    return switch (unit) {
      case INCH -> graduation.signum() > 0;
      case MILLIMETRE ->
          graduation.signum() > 0
              && MILLIONTH.mod(graduation.denominator()).equals(BigInteger.ZERO);
      default -> false;
    };
  }

  /** The length on the nearest graduation, ties up, graded full or scant when it was rounded. */
  public Figure print(Length length) {
    return figure(length, graduation);
  }

  /** The length as it is, at the finest 1/64 in or 1/100 mm; graded when even that rounds it. */
  public Figure printExactly(Length length) {
    return figure(length, unit == Unit.INCH ? Rational.of(1, 64) : Rational.of(1, 100));
  }

  private Figure figure(Length length, Rational step) {
    Rational exact = length.magnitude().inches().dividedBy(unit.inBase());
    Rational rounded = exact.roundedTo(step);
    BigInteger whole = rounded.floor();
    Rational rest = rounded.minus(Rational.of(whole, BigInteger.ONE));
    BigInteger denominator = unit.isDecimal() ? powerOfTen(rest) : rest.denominator();
    int more = exact.compareTo(rounded);
    Figure.Grade grade =
        more == 0 ? Figure.Grade.EXACT : more > 0 ? Figure.Grade.FULL : Figure.Grade.SCANT;
    return new Figure(
        length.signum() < 0,
        whole,
        rest.times(Rational.of(denominator, BigInteger.ONE)).numerator(),
        denominator,
        unit,
        grade);
  }

  /** The least power of ten that a decimal's denominator divides. */
  private static BigInteger powerOfTen(Rational rest) {
    BigInteger power = BigInteger.ONE;
    while (!rest.times(Rational.of(power, BigInteger.ONE)).isWhole()) {
      power = power.multiply(BigInteger.TEN);
    }
    return power;
  }
}
