package packetwright.text.measure;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** An exact number. */
public final class Rational implements Comparable<Rational> {
  /** Nought. */
  public static final Rational ZERO = of(0);

  /** One. */
  public static final Rational ONE = of(1);

  private final BigFraction fraction;

  private Rational(BigFraction fraction) {
    this.fraction = fraction;
  }

  /** A whole number. */
  public static Rational of(long whole) {
    return new Rational(BigFraction.of(whole));
  }

  /** A quotient of whole numbers; the denominator is not zero. */
  public static Rational of(long numerator, long denominator) {
    return new Rational(BigFraction.of(numerator, denominator));
  }

  /** A quotient of whole numbers; the denominator is not zero. */
  public static Rational of(BigInteger numerator, BigInteger denominator) {
    return new Rational(BigFraction.of(numerator, denominator));
  }

  /** Sum. */
  public Rational plus(Rational other) {
    return new Rational(fraction.add(other.fraction));
  }

  /** Difference. */
  public Rational minus(Rational other) {
    return new Rational(fraction.subtract(other.fraction));
  }

  /** Product. */
  public Rational times(Rational other) {
    return new Rational(fraction.multiply(other.fraction));
  }

  /** Quotient; the divisor is not zero. */
  public Rational dividedBy(Rational other) {
    return new Rational(fraction.divide(other.fraction));
  }

  /** The opposite number. */
  public Rational negated() {
    return new Rational(fraction.negate());
  }

  /** -1, 0 or 1. */
  public int signum() {
    return fraction.signum();
  }

  /** In lowest terms, with the sign. */
  public BigInteger numerator() {
    return fraction.getDenominator().signum() < 0
        ? fraction.getNumerator().negate()
        : fraction.getNumerator();
  }

  /** In lowest terms, positive. */
  public BigInteger denominator() {
    return fraction.getDenominator().abs();
  }

  /** Whether it is a whole number. */
  public boolean isWhole() {
    return denominator().equals(BigInteger.ONE);
  }

  /** The greatest whole number not above it. */
  public BigInteger floor() {
    BigInteger[] parts = numerator().divideAndRemainder(denominator());
    return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
  }

  /** The least whole number not below it. */
  public BigInteger ceiling() {
    return negated().floor().negate();
  }

  /** The nearest multiple of a positive step; a tie goes up. */
  public Rational roundedTo(Rational step) {
    Rational steps = dividedBy(step).plus(of(1, 2));
    return of(steps.floor(), BigInteger.ONE).times(step);
  }

  /** The nearest floating-point number, for drawing only. */
  public double approximate() {
    return fraction.doubleValue();
  }

  @Override
  public int compareTo(Rational other) {
    // BigFraction 1.2 compares two negative numbers by their magnitudes: -1/2 comes before -5.
    return numerator()
        .multiply(other.denominator())
        .compareTo(other.numerator().multiply(denominator()));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Rational r && compareTo(r) == 0;
  }

  @Override
  public int hashCode() {
    return numerator().hashCode() * 31 + denominator().hashCode();
  }

  /** {@code 143/32}, or {@code 9} for a whole number. */
  @Override
  public String toString() {
    return isWhole() ? numerator().toString() : numerator() + "/" + denominator();
  }
}
