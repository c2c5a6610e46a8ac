package packetwright.text.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/** Formulas made to hurt: each ends soon, in a value or a finding. */
@Timeout(3)
class FormulaBoundsTest {
  private static Checked<Quantity> evaluate(String text, Values values) {
    Located<String> located = new Located<>(text, new Span("project.yaml", 1, 1, text.length()));
    Checked<Formula> formula = Formula.parse(located, Unit.INCH);
    return formula.hasValue()
        ? formula.value().evaluate(values)
        : new Checked<>(null, formula.findings());
  }

  private static String code(String text) {
    Checked<Quantity> result = evaluate(text, Values.none());
    assertThat(result.findings()).hasSize(1);
    return result.findings().stream().map(Finding::code).findFirst().orElse("");
  }

  @Test
  void refusesALongFormula() {
    assertThat(code("1" + " + 1".repeat(100_000))).isEqualTo("formula-too-large");
  }

  @Test
  void readsALongSumWithinTheLimit() {
    Checked<Quantity> sum = evaluate("1" + "+1".repeat(499), Values.none());
    assertThat(sum.value().value()).hasToString("500");
  }

  @Test
  void refusesDeepNesting() {
    assertThat(code("(".repeat(300) + "1" + ")".repeat(300))).isEqualTo("formula-too-large");
    assertThat(code("-".repeat(900) + "1")).isEqualTo("formula-too-large");
    assertThat(code("not ".repeat(200) + "1")).isEqualTo("formula-too-large");
    assertThat(code("min(".repeat(200))).isEqualTo("formula-too-large");
  }

  @Test
  void refusesProductsThatGrowWithoutEnd() {
    assertThat(code("99999999 count" + " * 99999999".repeat(50))).isEqualTo("number-too-large");
    assertThat(code("1 count" + " / 99999999".repeat(50))).isEqualTo("number-too-large");
  }

  @Test
  void refusesLongValuesOfNamesOnceTheyAreMultiplied() {
    Value huge = Value.of(Quantity.number(Rational.of(BigInteger.TWO.pow(500), BigInteger.ONE)));
    assertThat(evaluate("n * n", name -> huge).findings())
        .extracting(Finding::code)
        .containsExactly("number-too-large");
  }

  @Test
  void readsNoCharacterThatItDoesNotKnow() {
    for (int c = 1; c < 0x3000; c++) {
      String text = "1 " + Character.toString(c) + " 2";
      Checked<Quantity> result = evaluate(text, Values.none());
      boolean known = Character.isWhitespace(c) || "+-*/<>=%!".indexOf(c) >= 0;
      assertThat(known || !result.hasValue()).as("U+%04x", c).isTrue();
    }
  }
}
