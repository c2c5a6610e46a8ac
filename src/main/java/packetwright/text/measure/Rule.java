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
  private static final BigInteger SIXTY_FOUR = BigInteger.valueOf(64);

  private static final BigInteger MILLIONTH = BigInteger.TEN.pow(6);

  private static final Rational SIXTEENTH = Rational.of(1, 16);
  private static final Rational HUNDREDTH = Rational.of(1, 100);

  /** Refuses what no rule has. */
  public Rule {
    if (!isGraduation(graduation, unit)) {
      throw new IllegalArgumentException("no rule has " + graduation + " " + unit);
    }
  }

  /** Whether a rule can be so divided: inches by halving, to 1/64; millimetres by decimals. */
  public static boolean isGraduation(Rational graduation, Unit unit) {
    return switch (unit) {
      case INCH ->
          graduation.signum() > 0
              && graduation.compareTo(Rational.ONE) <= 0
              && SIXTY_FOUR.mod(graduation.denominator()).equals(BigInteger.ZERO);
      case MILLIMETRE ->
          graduation.signum() > 0
              && MILLIONTH.mod(graduation.denominator()).equals(BigInteger.ZERO);
      default -> false;
    };
  }

  /** The length on the nearest graduation, ties up, graded full or scant when it was rounded. */
  public Figure print(Length length) {
    return print(Quantity.of(length));
  }

  /** The length as it is, at the finest 1/64 in or 1/100 mm; graded when even that rounds it. */
  public Figure printExactly(Length length) {
    return printExactly(Quantity.of(length));
  }

  /** A length on the nearest graduation; anything else as {@link #printExactly(Quantity)}. */
  public Figure print(Quantity quantity) {
    return quantity.dimension() == Dimension.LENGTH
        ? figure(quantity.value(), unit, graduation)
        : printExactly(quantity);
  }

  /** A quantity in the unit that this rule's users know, as finely as anyone needs it. */
  public Figure printExactly(Quantity quantity) {
    Rational value = quantity.value();
    boolean inches = unit == Unit.INCH;
    return switch (quantity.dimension()) {
      case NUMBER -> figure(value, Unit.ONE, numberStep(value));
      case LENGTH -> figure(value, unit, inches ? Rational.of(1, 64) : HUNDREDTH);
      case AREA -> figure(value, Unit.SQUARE_INCH, SIXTEENTH);
      case VOLUME -> figure(value, Unit.CUBIC_INCH, SIXTEENTH);
      case FLUID ->
          figure(
              value,
              inches ? Unit.FLUID_OUNCE : Unit.MILLILITRE,
              inches ? SIXTEENTH : Rational.ONE);
      case ANGLE -> figure(value, Unit.DEGREE, HUNDREDTH);
      case TIME -> figure(value, Unit.MINUTE, Rational.ONE);
      case TEMPERATURE -> figure(value, Unit.FAHRENHEIT, Rational.ONE);
      case MONEY -> figure(value, Unit.MONEY, HUNDREDTH);
    };
  }

  /** A number keeps its own small denominator. */
  private static Rational numberStep(Rational value) {
    boolean small = value.denominator().compareTo(BigInteger.valueOf(100)) <= 0;
    return small ? Rational.of(BigInteger.ONE, value.denominator()) : HUNDREDTH;
  }

  private static Figure figure(Rational value, Unit unit, Rational step) {
    Rational magnitude = value.signum() < 0 ? value.negated() : value;
    Rational exact = magnitude.dividedBy(unit.inBase());
    Rational rounded = exact.roundedTo(step);
    BigInteger whole = rounded.floor();
    Rational rest = rounded.minus(Rational.of(whole, BigInteger.ONE));
    BigInteger denominator = unit.isDecimal() ? powerOfTen(rest) : rest.denominator();
    if (unit == Unit.MONEY) {
      denominator = HUNDREDTH.denominator();
    }
    int more = exact.compareTo(rounded);
    Figure.Grade grade =
        more == 0 ? Figure.Grade.EXACT : more > 0 ? Figure.Grade.FULL : Figure.Grade.SCANT;
    return new Figure(
        value.signum() < 0 && rounded.signum() != 0,
        whole,
        rest.times(Rational.of(denominator, BigInteger.ONE)).numerator(),
        denominator,
        unit,
        grade);
  }

  /** The least power of ten that a finite decimal's denominator divides. */
  public static BigInteger powerOfTen(Rational decimal) {
    BigInteger power = BigInteger.ONE;
    while (!decimal.times(Rational.of(power, BigInteger.ONE)).isWhole()) {
      power = power.multiply(BigInteger.TEN);
    }
    return power;
  }
}
