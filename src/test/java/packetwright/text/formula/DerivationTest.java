package packetwright.text.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

class DerivationTest {
  private static final Map<String, Value> KNOWN =
      Map.of(
          "width", Value.of(Length.ofInches(5)),
          "tongue", Value.of(Length.ofInches(1, 4)),
          "side.count", Value.of(Quantity.number(Rational.of(2))),
          "clamps", Value.of(true));

  private static Formula parse(String text) {
    Span at = new Span("project.yaml", 1, 1, text.length());
    return Formula.parse(new Located<>(text, at), Unit.INCH).value();
  }

  /** Lengths with {@code in}, numbers without, so that a test sees what each was taken for. */
  private static String printed(Derivation derivation) {
    return derivation.numbers().stream()
        .map(term -> term.value() == null ? term.text() : printed(term.value()))
        .collect(Collectors.joining());
  }

  private static String printed(Quantity quantity) {
    return quantity.value() + (quantity.dimension() == Dimension.LENGTH ? " in" : "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          width - 2 * tongue          | 5 in − 2 × 1/4 in
          (width + 1/16) / 2          | (5 in + 1/16 in) ÷ 2
          1/16                        | 1/16 in
          width + 2 * 3               | 5 in + 2 in × 3
          width + 1 * (2 + 3)         | 5 in + 1 in × (2 + 3)
          side.count + 1              | 2 + 1
          -tongue                     | −1/4 in
          max(width, 2 * tongue, 3)   | max(5 in, 2 × 1/4 in, 3 in)
          if(width > 4, 1, tongue)    | if(5 in > 4 in, 1 in, 1/4 in)
          round_up(width, 1/8)        | round_up(5 in, 1/8 in)
          clamps and not width <= 3   | clamps and not 5 in ≤ 3 in
          side.count >= 1             | 2 ≥ 1
          """)
  void putsNumbersForNames(String formula, String numbers) {
    Derivation derivation = parse(formula).derivation(KNOWN::get);
    assertThat(derivation.formula()).isEqualTo(formula);
    assertThat(printed(derivation)).isEqualTo(numbers);
  }

  @Test
  void anOutcomeShowsWhatEachSideOfAComparisonComesTo() {
    Formula formula = parse("width - 2 * tongue >= 1 3/4 and side.count + 1 < 3");
    assertThat(printed(formula.outcome(KNOWN::get))).isEqualTo("9/2 in ≥ 7/4 in and 3 < 3");
  }
}
