package packetwright.text.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.Random;
import java.util.function.BinaryOperator;
import java.util.function.Supplier;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/** Random formulas against fractions reckoned by hand, unreduced, in big whole numbers. */
class FormulaOracleTest {
  /** A fraction never reduced; the denominator is positive. */
  private record Fraction(BigInteger top, BigInteger bottom) {
    static Fraction of(long top, long bottom) {
      return new Fraction(BigInteger.valueOf(top), BigInteger.valueOf(bottom));
    }

    Fraction plus(Fraction o) {
      return new Fraction(
          top.multiply(o.bottom).add(o.top.multiply(bottom)), bottom.multiply(o.bottom));
    }

    Fraction negated() {
      return new Fraction(top.negate(), bottom);
    }

    Fraction times(Fraction o) {
      return new Fraction(top.multiply(o.top), bottom.multiply(o.bottom));
    }

    Fraction over(Fraction o) {
      if (o.top.signum() == 0) {
        throw new ArithmeticException("divides by zero");
      }
      BigInteger sign = BigInteger.valueOf(o.top.signum());
      return new Fraction(
          top.multiply(o.bottom).multiply(sign), bottom.multiply(o.top).multiply(sign));
    }

    boolean isLess(Fraction o) {
      return top.multiply(o.bottom).compareTo(o.top.multiply(bottom)) < 0;
    }
  }

  /**
   * A formula and what it should come to.
   *
   * @param tightness 1 for a sum, 2 for a product, 3 for what needs no parentheses
   */
  private record Case(String text, int tightness, Supplier<Fraction> value) {
    String within(int atLeast) {
      return tightness >= atLeast ? text : "(" + text + ")";
    }
  }

  private static Case infix(
      Case left, String sign, Case right, int tightness, BinaryOperator<Fraction> reckon) {
    // A minus or a division takes what stands after it as one.
    String text = left.within(tightness) + " " + sign + " " + right.within(tightness + 1);
    return new Case(text, tightness, () -> reckon.apply(left.value().get(), right.value().get()));
  }

  private static Case literal(Random random, String unit) {
    int whole = random.nextInt(20);
    int top = random.nextInt(1, 64);
    return switch (random.nextInt(4)) {
      case 0 -> new Case(whole + unit, 3, () -> Fraction.of(whole, 1));
      case 1 -> new Case("(" + top + "/64" + unit + ")", 3, () -> Fraction.of(top, 64));
      case 2 ->
          new Case(whole + " " + top + "/7" + unit, 3, () -> Fraction.of(whole * 7L + top, 7));
      default ->
          new Case(
              whole + "." + (top + 100) + unit,
              3,
              () -> Fraction.of(whole * 1000L + top + 100, 1000));
    };
  }

  private static Case length(Random random, int depth) {
    if (depth == 0) {
      return literal(random, random.nextBoolean() ? " in" : "in");
    }
    Case a = length(random, depth - 1);
    Case b = length(random, depth - 1);
    Case n = number(random, depth - 1);
    return switch (random.nextInt(8)) {
      case 0 -> infix(a, "+", b, 1, Fraction::plus);
      case 1 -> infix(a, "-", b, 1, (x, y) -> x.plus(y.negated()));
      case 2 -> infix(a, "*", n, 2, Fraction::times);
      case 3 -> infix(n, "*", a, 2, Fraction::times);
      case 4 -> infix(a, "/", n, 2, Fraction::over);
      case 5 -> new Case("-" + a.within(3), 3, () -> a.value().get().negated());
      case 6 -> extreme(a, b, random.nextBoolean());
      default -> choice(a, b, length(random, depth - 1));
    };
  }

  private static Case number(Random random, int depth) {
    if (depth == 0) {
      return literal(random, " count");
    }
    Case a = number(random, depth - 1);
    Case b = number(random, depth - 1);
    return switch (random.nextInt(4)) {
      case 0 -> infix(a, "+", b, 1, Fraction::plus);
      case 1 -> infix(a, "-", b, 1, (x, y) -> x.plus(y.negated()));
      case 2 -> infix(a, "/", b, 2, Fraction::over);
      default ->
          infix(length(random, depth - 1), "/", length(random, depth - 1), 2, Fraction::over);
    };
  }

  private static Case extreme(Case a, Case b, boolean least) {
    return new Case(
        (least ? "min(" : "max(") + a.text() + ", " + b.text() + ")",
        3,
        () -> {
          Fraction x = a.value().get();
          Fraction y = b.value().get();
          return x.isLess(y) == least ? x : y;
        });
  }

  private static Case choice(Case a, Case b, Case c) {
    return new Case(
        "if(" + a.text() + " < " + b.text() + ", " + c.text() + ", " + a.text() + ")",
        3,
        () -> a.value().get().isLess(b.value().get()) ? c.value().get() : a.value().get());
  }

  @Property(tries = 5000)
  void comesToWhatHandReckoningGives(@ForAll long seed) {
    Random random = new Random(seed);
    Case test = length(random, random.nextInt(4));
    Located<String> text = new Located<>(test.text(), new Span("random", 1, 1, 1));
    Checked<Formula> formula = Formula.parse(text, Unit.INCH);
    if (test.text().length() > Lexer.LONGEST) {
      assertThat(formula.findings()).extracting(Finding::code).containsExactly("formula-too-large");
      return;
    }
    assertThat(formula.findings()).as(test.text()).isEmpty();
    Checked<Quantity> result = formula.value().evaluate(Values.none());
    try {
      Fraction expected = test.value().get();
      assertThat(result.findings()).as(test.text()).isEmpty();
      assertThat(result.value().value().numerator().multiply(expected.bottom()))
          .as(test.text())
          .isEqualTo(expected.top().multiply(result.value().value().denominator()));
    } catch (ArithmeticException dividesByZero) {
      assertThat(result.findings())
          .as(test.text())
          .isNotEmpty()
          .allMatch(f -> f.code().equals("division-by-zero"));
    }
  }
}
