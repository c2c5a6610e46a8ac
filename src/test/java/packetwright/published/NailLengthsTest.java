package packetwright.published;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import packetwright.text.formula.Formula;
import packetwright.text.formula.Values;
import packetwright.text.measure.Length;
import packetwright.text.measure.Unit;
import packetwright.text.source.Located;
import packetwright.text.source.Span;
import packetwright.wood.assembly.Fastener;

/**
 * NAVEDTRA 14119: a nail is at least three times as long as the piece that it holds is thick;
 * {@code published/SOURCE.md} has the places. Another published rule says two and a half times, and
 * that is where we begin to refuse.
 */
class NailLengthsTest {
  private static Length length(String text) {
    Located<String> formula = new Located<>(text, new Span("test", 1, 1, text.length()));
    return Formula.parse(formula, Unit.INCH).value().evaluate(Values.none()).value().asLength();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/nail-sizes.csv", numLinesToSkip = 1)
  void everyNailHoldsAThirdOfItsLengthAndNoneHoldsHalf(String penny, String text) {
    Length nail = length(text);
    assertThat(Fastener.Kind.NAIL.shortest(nail.dividedBy(3))).as(penny).isLessThanOrEqualTo(nail);
    assertThat(Fastener.Kind.NAIL.shortest(nail.dividedBy(2))).as(penny).isGreaterThan(nail);
  }
}
