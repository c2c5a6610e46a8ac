package packetwright.text.formula;

import java.util.List;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;

/**
 * All amounts from one to another, both included, in the base unit of their dimension.
 *
 * @param low least
 * @param high greatest
 */
public record Interval(Rational low, Rational high) {
  /** Refuses ends the wrong way round. */
  public Interval {
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException(low + " is more than " + high);
    }
  }

  /** One amount alone. */
  public static Interval of(Rational value) {
    return new Interval(value, value);
  }

  /** The least that holds all of these; there is one at least. */
  public static Interval around(List<Rational> values) {
    Rational low = values.stream().min(Rational::compareTo).orElseThrow();
    Rational high = values.stream().max(Rational::compareTo).orElseThrow();
    return new Interval(low, high);
  }

  /** The least that holds both. */
  public Interval with(Interval other) {
    return around(List.of(low, high, other.low, other.high));
  }

  /** Both ends moved apart. */
  public Interval widened(Rational by) {
    return new Interval(low.minus(by), high.plus(by));
  }

  /** The lower end as an amount of a dimension. */
  public Quantity lowIn(Dimension dimension) {
    return new Quantity(low, dimension);
  }

  /** The upper end as an amount of a dimension. */
  public Quantity highIn(Dimension dimension) {
    return new Quantity(high, dimension);
  }

  Interval plus(Interval other) {
    return new Interval(low.plus(other.low), high.plus(other.high));
  }

  Interval negated() {
    return new Interval(high.negated(), low.negated());
  }

  Interval times(Interval other) {
    return around(
        List.of(
            low.times(other.low),
            low.times(other.high),
            high.times(other.low),
            high.times(other.high)));
  }

  Interval times(Rational factor) {
    return times(of(factor));
  }

  /** The other does not hold zero. */
  Interval dividedBy(Interval other) {
    return times(
        new Interval(Rational.ONE.dividedBy(other.high), Rational.ONE.dividedBy(other.low)));
  }

  boolean holdsZero() {
    return low.signum() <= 0 && high.signum() >= 0;
  }
}
