package packetwright.published;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import packetwright.text.formula.Formula;
import packetwright.text.formula.Values;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/** TM 9-243, chapter 3, and a public answer sheet; {@code published/SOURCE.md} has the places. */
class RulerReadingsTest {
  private static final Rule RULE = new Rule(Rational.of(1, 32), Unit.INCH);

  private static Quantity evaluate(String formula) {
    Located<String> text = new Located<>(formula, new Span("test", 1, 1, formula.length()));
    return Formula.parse(text, Unit.INCH).value().evaluate(Values.none()).value();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/ruler-readings.csv", numLinesToSkip = 1)
  void printAsPublished(String from, String to, String answer) {
    assertThat(RULE.print(evaluate(to + " - (" + from + ")"))).hasToString(answer + " in");
  }
}
