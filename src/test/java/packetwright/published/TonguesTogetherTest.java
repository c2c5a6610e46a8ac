package packetwright.published;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import packetwright.text.formula.Formula;
import packetwright.text.formula.Value;
import packetwright.text.formula.Values;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/**
 * Common practice, no source: two tongues that measure 11/16 in together under a 5 1/2 in outside
 * width leave a part of 4 13/16 in.
 */
class TonguesTogetherTest {
  private static final Rule RULE = new Rule(Rational.of(1, 32), Unit.INCH);

  private static String print(String formula, Values values) {
    Located<String> text = new Located<>(formula, new Span("test", 1, 1, formula.length()));
    Formula parsed = Formula.parse(text, Unit.INCH).value();
    return RULE.print(parsed.evaluate(values).value()).toString();
  }

  @Test
  void leaveFourAndThirteenSixteenths() {
    assertThat(print("5 1/2 - 11/16", Values.none())).isEqualTo("4 13/16 in");
  }

  @Test
  void leaveTheSameWhenOneIsMeasuredAndTakenTwice() {
    assertThat(print("5 1/2 - 2 * tongue", name -> Value.of(Length.ofInches(11, 32))))
        .isEqualTo("4 13/16 in");
  }
}
