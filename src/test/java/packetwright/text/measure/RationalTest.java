package packetwright.text.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Fraction arithmetic against big whole numbers multiplied crosswise, not against a library. */
class RationalTest {
  private static final int TRIES = 3000;

  private static BigInteger big(long value) {
    return BigInteger.valueOf(value);
  }

  /** Whether a result equals top/bottom, and is in lowest terms with a positive denominator. */
  private static void assertIs(Rational result, BigInteger top, BigInteger bottom) {
    assertThat(result.numerator().multiply(bottom)).isEqualTo(top.multiply(result.denominator()));
    assertThat(result.denominator().signum()).isEqualTo(1);
    assertThat(result.numerator().gcd(result.denominator())).isEqualTo(BigInteger.ONE);
  }

  @Property(tries = TRIES)
  void addsAndSubtracts(
      @ForAll int a, @ForAll @IntRange(min = 1) int b, @ForAll int c, @ForAll int d) {
    Assume.that(d != 0);
    BigInteger left = big(a).multiply(big(d));
    BigInteger right = big(c).multiply(big(b));
    BigInteger bottom = big(b).multiply(big(d));
    assertIs(Rational.of(a, b).plus(Rational.of(c, d)), left.add(right), bottom);
    assertIs(Rational.of(a, b).minus(Rational.of(c, d)), left.subtract(right), bottom);
  }

  @Property(tries = TRIES)
  void multipliesAndDivides(@ForAll int a, @ForAll int b, @ForAll int c, @ForAll int d) {
    Assume.that(b != 0 && d != 0);
    Rational left = Rational.of(a, b);
    Rational right = Rational.of(c, d);
    assertIs(left.times(right), big(a).multiply(big(c)), big(b).multiply(big(d)));
    Assume.that(c != 0);
    assertIs(left.dividedBy(right), big(a).multiply(big(d)), big(b).multiply(big(c)));
  }

  @Property(tries = TRIES)
  void comparesAcrossZero(
      @ForAll @IntRange(min = -99, max = 99) int a,
      @ForAll @IntRange(min = 1, max = 99) int b,
      @ForAll @IntRange(min = -99, max = 99) int c,
      @ForAll @IntRange(min = 1, max = 99) int d) {
    int expected = Integer.compare(a * d, c * b);
    assertThat(Rational.of(a, b).compareTo(Rational.of(c, d))).isEqualTo(expected);
    assertThat(Rational.of(a, b).equals(Rational.of(c, d))).isEqualTo(expected == 0);
    assertThat(Rational.of(-a, -b))
        .isEqualTo(Rational.of(a, b))
        .hasSameHashCodeAs(Rational.of(a, b));
  }

  @Test
  void ordersNegativeNumbers() {
    assertThat(Rational.of(-5)).isLessThan(Rational.of(-1, 2));
    assertThat(Rational.of(5, -1)).isLessThan(Rational.of(1, -2));
  }

  @Property(tries = TRIES)
  void floorAndCeilingAreTheNearestWholeNumbers(@ForAll int a, @ForAll int b) {
    Assume.that(b != 0);
    Rational value = Rational.of(a, b);
    Rational floor = Rational.of(value.floor(), BigInteger.ONE);
    Rational ceiling = Rational.of(value.ceiling(), BigInteger.ONE);
    assertThat(floor).isLessThanOrEqualTo(value).isGreaterThan(value.minus(Rational.ONE));
    assertThat(ceiling).isGreaterThanOrEqualTo(value).isLessThan(value.plus(Rational.ONE));
  }

  @Property(tries = TRIES)
  void roundingIsOffByAtMostHalfAStepAndTiesGoUp(
      @ForAll int a,
      @ForAll @IntRange(min = 1, max = 500) int b,
      @ForAll @IntRange(min = 1, max = 64) int steps) {
    Rational value = Rational.of(a, b);
    Rational step = Rational.of(1, steps);
    Rational off = value.roundedTo(step).minus(value);
    Rational half = Rational.of(1, 2L * steps);
    assertThat(value.roundedTo(step).dividedBy(step).isWhole()).isTrue();
    assertThat(off).isLessThanOrEqualTo(half).isGreaterThan(half.negated());
  }

  @Test
  void printsInLowestTerms() {
    assertThat(Rational.of(286, 64)).hasToString("143/32");
    assertThat(Rational.of(18, -2)).hasToString("-9");
  }
}
