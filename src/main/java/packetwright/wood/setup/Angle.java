package packetwright.wood.setup;

import packetwright.text.measure.Dimension;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;

/**
 * Angles as a machine's scale shows them; a cut is made from its rise and run, never from these.
 */
public final class Angle {
  private static final Rational TENTH = Rational.of(1, 10);

  /** What is kept of each term; far finer than what is printed. */
  private static final Rational GRAIN = Rational.of(1, 1_000_000_000_000L);

  /** A full turn's degrees over a full turn in radians, to 15 places. */
  private static final Rational DEGREES =
      Rational.of(180).dividedBy(Rational.of(3_141_592_653_589_793L, 1_000_000_000_000_000L));

  private static final Rational HALF = Rational.of(1, 2);

  private Angle() {}

  /**
   * The angle whose tangent is the given one, in degrees, rounded to a tenth.
   *
   * @param slope rise over run, 0 or more
   */
  public static Quantity ofSlope(Rational slope) {
    Rational degrees =
        slope.compareTo(Rational.ONE) > 0
            ? Rational.of(90).minus(arc(Rational.ONE.dividedBy(slope)).times(DEGREES))
            : arc(slope).times(DEGREES);
    return new Quantity(degrees.roundedTo(TENTH), Dimension.ANGLE);
  }

  /** The arc of a tangent of at most 1, in radians; above 1/2 it is 1/2's and the rest's. */
  private static Rational arc(Rational tangent) {
    if (tangent.compareTo(HALF) <= 0) {
      return series(tangent);
    }
    Rational rest = tangent.minus(HALF).dividedBy(Rational.ONE.plus(tangent.times(HALF)));
    return series(HALF).plus(series(rest));
  }

  /** Gregory's series; at 1/2 its twentieth term is below the grain. */
  private static Rational series(Rational tangent) {
    Rational square = tangent.times(tangent).negated();
    Rational power = tangent;
    Rational sum = Rational.ZERO;
    for (int odd = 1; odd < 41; odd += 2) {
      sum = sum.plus(power.dividedBy(Rational.of(odd)));
      power = power.times(square).roundedTo(GRAIN);
    }
    return sum;
  }
}
