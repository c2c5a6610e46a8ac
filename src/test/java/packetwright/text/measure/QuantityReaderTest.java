package packetwright.text.measure;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.text.source.Checked;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

class QuantityReaderTest {
  private static Checked<Quantity> read(String text, Unit bare) {
    return QuantityReader.read(new Located<>(text, Span.startOf("t")), bare);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '|',
      value = {
        "5 1/2, 11/2",
        "5-1/2, 11/2",
        "5.5, 11/2",
        ".5, 1/2",
        "5½, 11/2",
        "5 ½, 11/2",
        "⅞, 7/8",
        "5⅛ in, 41/8",
        "5 1/2 in, 11/2",
        "5 1/2\", 11/2",
        "5 1/2”, 11/2",
        "1' 6\", 18",
        "1' 6 1/2\", 37/2",
        "1' 6-1/2\", 37/2",
        "1'6\", 18",
        "1 ft 6 in, 18",
        "8 ft, 96",
        "8', 96",
        "140 mm, 700/127",
        "14 cm, 700/127",
        "25.4 mm, 1",
        "1/32, 1/32",
        "11/16, 11/16",
        "12 3/4, 51/4",
        "0, 0",
        "-1/4, -1/4",
      })
  void readsEveryNotationOfALength(String text, String inches) {
    Quantity read = read(text, Unit.INCH).value();
    assertThat(read.value()).hasToString(inches);
    assertThat(read.dimension()).isEqualTo(Dimension.LENGTH);
  }

  @ParameterizedTest
  @CsvSource({
    "16 oz, FLUID_OUNCE, 16",
    "45 min, MINUTE, 45",
    "1 h, MINUTE, 60",
    "68 F, FAHRENHEIT, 68",
    "68 °F, FAHRENHEIT, 68",
    "45 %, ONE, 9/20",
    "7 %, PER_CENT, 7/100",
    "5.50, MONEY, 11/2",
    "1000, ONE, 1000",
    "30°, DEGREE, 30",
    "1.5 bf, BOARD_FOOT, 216",
  })
  void readsOtherDimensions(String text, Unit bare, String value) {
    assertThat(read(text, bare).value().value()).hasToString(value);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "five",
        "5 1/2 inn",
        "1/0",
        "5//2",
        "1' 6 mm",
        "1e3",
        "0x10",
        "1 2 3",
        "5 1",
        "99999999999999999",
        "1/2/3",
        "- ",
        "5 1/2 in in",
        "½½",
        "3 in 4"
      })
  void refusesWhatIsNoLengthAndListsTheNotations(String text) {
    assertThat(read(text, Unit.INCH).findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.code()).isEqualTo("unreadable-length");
              assertThat(f.hint()).contains("5 1/2, 5-1/2, 5.5");
            });
  }

  @Test
  void refusesDecimalComma() {
    assertThat(read("2,5 in", Unit.INCH).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.hint()).contains("a point, not a comma"));
  }

  @ParameterizedTest
  @CsvSource({"45 min, INCH", "3 in, MONEY", "3 in, ONE", "16 oz, INCH", "68 F, MINUTE"})
  void refusesAUnitOfAnotherKind(String text, Unit bare) {
    assertThat(read(text, bare).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.code()).isEqualTo("wrong-unit"));
  }

  @Property
  void readsBackWhatTheInchRulePrints(
      @ForAll @IntRange(min = -100_000, max = 100_000) int sixtyFourths) {
    Length length = Length.ofInches(sixtyFourths, 64);
    String printed = new Rule(Rational.of(1, 64), Unit.INCH).print(length).toString();
    assertThat(read(printed, Unit.INCH).value().asLength()).isEqualTo(length);
  }

  @Property
  void readsBackWhatTheMetricRulePrints(@ForAll @IntRange(min = 0, max = 1_000_000) int tenths) {
    Length length = new Length(Rational.of(tenths, 254));
    String printed = new Rule(Rational.of(1, 10), Unit.MILLIMETRE).print(length).toString();
    assertThat(read(printed, Unit.MILLIMETRE).value().asLength()).isEqualTo(length);
  }
}
