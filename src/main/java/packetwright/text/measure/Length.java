package packetwright.text.measure;

/**
 * An exact length or position.
 *
 * @param inches exact
 */
public record Length(Rational inches) implements Comparable<Length> {
  /** No length. */
  public static final Length ZERO = new Length(Rational.ZERO);

  /** A whole number of inches. */
  public static Length ofInches(long inches) {
    return new Length(Rational.of(inches));
  }

  /** A fraction of an inch. */
  public static Length ofInches(long numerator, long denominator) {
    return new Length(Rational.of(numerator, denominator));
  }

  /** Sum. */
  public Length plus(Length other) {
    return new Length(inches.plus(other.inches));
  }

  /** Difference. */
  public Length minus(Length other) {
    return new Length(inches.minus(other.inches));
  }

  /** A multiple. */
  public Length times(long factor) {
    return new Length(inches.times(Rational.of(factor)));
  }

  /** A fraction of it; the divisor is not zero. */
  public Length dividedBy(long divisor) {
    return new Length(inches.dividedBy(Rational.of(divisor)));
  }

  /** How often the other goes into it. */
  public Rational dividedBy(Length other) {
    return inches.dividedBy(other.inches);
  }

  /** Without its sign. */
  public Length magnitude() {
    return inches.signum() < 0 ? new Length(inches.negated()) : this;
  }

  /** -1, 0 or 1. */
  public int signum() {
    return inches.signum();
  }

  /** The shorter of two. */
  public Length min(Length other) {
    return compareTo(other) <= 0 ? this : other;
  }

  /** The longer of two. */
  public Length max(Length other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /** Whether it is shorter. */
  public boolean isLess(Length other) {
    return compareTo(other) < 0;
  }

  /** Whether it is longer. */
  public boolean isMore(Length other) {
    return compareTo(other) > 0;
  }

  @Override
  public int compareTo(Length other) {
    return inches.compareTo(other.inches);
  }

  /** For reports of bugs only: {@code 143/32 in}. */
  @Override
  public String toString() {
    return inches + " in";
  }
}
