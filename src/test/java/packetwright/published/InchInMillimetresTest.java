package packetwright.published;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/**
 * NIST SP 811 (2008), appendix B.8: inch to metre 2.54 E-02 and foot to metre 3.048 E-01, both in
 * bold, which there means exact. Place in the publication from memory.
 */
class InchInMillimetresTest {
  private static Length read(String text, Unit bare) {
    Located<String> located = new Located<>(text, new Span("test", 1, 1, text.length()));
    return QuantityReader.read(located, bare).value().asLength();
  }

  @Test
  void anInchIsExactly25Point4() {
    assertThat(Length.ofInches(1).inches().dividedBy(Unit.MILLIMETRE.inBase()))
        .isEqualTo(Rational.of(254, 10));
    assertThat(read("25.4 mm", Unit.INCH)).isEqualTo(Length.ofInches(1));
    assertThat(read("2.54 cm", Unit.INCH)).isEqualTo(Length.ofInches(1));
    assertThat(read("1 in", Unit.MILLIMETRE)).isEqualTo(Length.ofInches(1));
  }

  @Test
  void aFootIsExactly304Point8() {
    assertThat(read("304.8", Unit.MILLIMETRE)).isEqualTo(read("1 ft", Unit.INCH));
  }

  @Test
  void fourInchesPrintAs101Point6() {
    Rule tenths = new Rule(Rational.of(1, 10), Unit.MILLIMETRE);
    assertThat(tenths.print(Quantity.of(Length.ofInches(4)))).hasToString("101.6 mm");
  }
}
