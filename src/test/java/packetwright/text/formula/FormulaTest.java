package packetwright.text.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

class FormulaTest {
  private static final Map<String, Value> KNOWN =
      Map.of(
          "width", Value.of(Length.ofInches(5)),
          "tongue", Value.of(Length.ofInches(1, 4)),
          "side.length", Value.of(Length.ofInches(9)),
          "side.count", Value.of(Quantity.number(Rational.of(2))),
          "nothing", Value.of(Length.ZERO),
          "tilt", Value.of(new Quantity(Rational.of(45), Dimension.ANGLE)),
          "clamps", Value.of(true));

  private static final Values VALUES = KNOWN::get;

  private static Located<String> at(String text) {
    return new Located<>(text, new Span("project.yaml", 3, 11, Math.max(1, text.length())));
  }

  private static Checked<Quantity> evaluate(String text, Unit unit) {
    Checked<Formula> formula = Formula.parse(at(text), unit);
    return formula.hasValue()
        ? formula.value().evaluate(VALUES)
        : new Checked<>(null, formula.findings());
  }

  private static Finding finding(String text) {
    Checked<Quantity> result = evaluate(text, Unit.INCH);
    assertThat(result.findings()).as(text).hasSize(1);
    return result.findings().get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          width - 2 * tongue              | 9/2   | LENGTH
          1/16                            | 1/16  | LENGTH
          1 3/4                           | 7/4   | LENGTH
          1 - 3/4                         | 1/4   | LENGTH
          2.5                             | 5/2   | LENGTH
          12 ft                           | 144   | LENGTH
          127 mm                          | 5     | LENGTH
          127mm + 1/32 in                 | 161/32 | LENGTH
          4 count                         | 4     | NUMBER
          25 %                            | 1/4   | NUMBER
          side.count + 1                  | 3     | NUMBER
          side.count * tongue             | 1/2   | LENGTH
          width * side.length             | 45    | AREA
          width * side.length * 2 in      | 90    | VOLUME
          width * side.length / 3 in      | 15    | LENGTH
          width / tongue                  | 20    | NUMBER
          width / 2 / 5                   | 1/2   | LENGTH
          width / (1/2)                   | 10    | LENGTH
          -(width - 6)                    | 1     | LENGTH
          2 - -3                          | 5     | LENGTH
          1 + 2 * 3                       | 7     | LENGTH
          (1 + 2) * 3                     | 9     | LENGTH
          max(width, 12, tongue)          | 12    | LENGTH
          min(width, 12)                  | 5     | LENGTH
          min(3, 2)                       | 2     | LENGTH
          round_up(width + 1/10, 1/8)     | 41/8  | LENGTH
          round_down(width + 1/10, 1/16)  | 81/16 | LENGTH
          round_to(width + 1/16, 1/8)     | 41/8  | LENGTH
          round_up(width + 1/16)          | 6     | LENGTH
          round_up(width / 2 in)          | 3     | NUMBER
          if(width > 4, 1, tongue)        | 1     | LENGTH
          if(clamps and width < 4, 1, tongue) | 1/4 | LENGTH
          if(nothing > 0, width / nothing, 7) | 7   | NUMBER
          tilt * 2                        | 90    | ANGLE
          """)
  void comesTo(String text, String value, Dimension dimension) {
    Checked<Quantity> result = evaluate(text, Unit.INCH);
    assertThat(result.findings()).isEmpty();
    assertThat(result.value().dimension()).isEqualTo(dimension);
    assertThat(result.value().value()).hasToString(value);
  }

  @Test
  void bareNumbersAreMillimetresInAMetricProject() {
    assertThat(evaluate("127", Unit.MILLIMETRE).value()).isEqualTo(Quantity.of(Length.ofInches(5)));
    assertThat(evaluate("width + 25.4", Unit.MILLIMETRE).value())
        .isEqualTo(Quantity.of(Length.ofInches(6)));
    assertThat(evaluate("width * 2", Unit.MILLIMETRE).value())
        .isEqualTo(Quantity.of(Length.ofInches(10)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          width >= 1 3/4                  | true
          width < 5                       | false
          width <= 5                      | true
          width = 5 in                    | true
          width != 127 mm                 | false
          side.count > 1                  | true
          not clamps or width > 4         | true
          not (clamps or width > 4)       | false
          not width < 4 and clamps        | true
          nothing = 0 or width / nothing > 1 | true
          nothing > 0 and width / nothing > 1 | false
          """)
  void holds(String text, boolean holds) {
    Checked<Boolean> result = Formula.parse(at(text), Unit.INCH).value().holds(VALUES);
    assertThat(result.findings()).isEmpty();
    assertThat(result.value()).isEqualTo(holds);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          width + side.count       | wrong-unit         | 6  | 1
          width + 4 count          | wrong-unit         | 6  | 1
          4 count - width          | wrong-unit         | 8  | 1
          width < side.count       | wrong-unit         | 6  | 1
          max(width, side.count)   | wrong-unit         | 11 | 10
          if(clamps, width, tilt)  | wrong-unit         | 18 | 4
          tilt * width             | wrong-unit         | 5  | 1
          2 / width                | wrong-unit         | 2  | 1
          width + clamps           | wrong-unit         | 8  | 6
          clamps                   | wrong-unit         | 0  | 6
          width > 2                | wrong-unit         | 0  | 9
          not width                | wrong-unit         | 4  | 5
          if(width, 1, 2)          | wrong-unit         | 3  | 5
          width / nothing          | division-by-zero   | 6  | 1
          width / 0                | division-by-zero   | 6  | 1
          width * 1/0              | division-by-zero   | 8  | 3
          widht + 1                | unknown-name       | 0  | 5
          round_to(width, nothing) | wrong-step         | 16 | 7
          1-3/4                    | hyphen-in-formula  | 0  | 5
          width - 1-3/4            | hyphen-in-formula  | 8  | 5
          width / 1/2              | formula-unreadable | 8  | 3
          width +                  | formula-unreadable | 6  | 1
          * width                  | formula-unreadable | 0  | 1
          (width                   | formula-unreadable | 0  | 1
          width)                   | formula-unreadable | 5  | 1
          width tongue             | formula-unreadable | 6  | 6
          1 < 2 < 3                | formula-unreadable | 6  | 1
          5,5                      | formula-unreadable | 1  | 1
          width × 2                | formula-unreadable | 6  | 1
          min()                    | formula-unreadable | 4  | 1
          if(clamps, 1)            | formula-unreadable | 0  | 2
          mox(1, 2)                | unknown-function   | 0  | 3
          3 inch                   | unknown-unit       | 2  | 4
          1234567890123            | number-too-large   | 0  | 13
          """)
  void pointsAtWhatIsWrong(String text, String code, int offset, int length) {
    Finding finding = finding(text);
    assertThat(finding.code()).isEqualTo(code);
    assertThat(finding.at()).isEqualTo(new Span("project.yaml", 3, 11 + offset, length));
  }

  @Test
  void hintsWouldWork() {
    assertThat(finding("1-3/4").hint()).isEqualTo("write `1 3/4`, or `1 - 3/4` for minus");
    assertThat(finding("width / 1/2").hint()).isEqualTo("write `/ (1/2)`, or `/ 1 / 2`");
    assertThat(finding("mox(1)").hint()).isEqualTo("write `max`");
    assertThat(finding("3 inch").hint()).isEqualTo("write one of in, ft, mm, cm");
    assertThat(finding("width × 2").hint()).isEqualTo("write `*`");
  }

  @Test
  void findsEveryUnknownName() {
    assertThat(evaluate("a + b * c", Unit.INCH).findings())
        .extracting(Finding::code)
        .containsExactly("unknown-name", "unknown-name", "unknown-name");
  }

  @Test
  void checksTheBranchNotTaken() {
    assertThat(finding("if(clamps, width, width + side.count)").code()).isEqualTo("wrong-unit");
    assertThat(finding("if(clamps, width, nowhere)").code()).isEqualTo("unknown-name");
  }

  /** {@code tongue - 1/4} is zero: the quotient has no value, and is a number all the same. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          if(clamps, 1, width / (tongue - 1/4))                              | 1 | NUMBER
          if(clamps, 1, width / (tongue - 1/4) * width)                      | 1 | LENGTH
          if(tongue < 1, 2 * width, width / (tongue - 1/4) * width)          | 10 | LENGTH
          if(clamps or width / (tongue - 1/4) > 2, 1 in, 2 in)               | 1 | LENGTH
          if(clamps, width, round_up(width, tongue - 1/2))                   | 5 | LENGTH
          """)
  void theKindDoesNotHangOnAValueThatIsNotNeeded(String text, String value, Dimension kind) {
    Quantity found = evaluate(text, Unit.INCH).value();
    assertThat(found).isEqualTo(new Quantity(Rational.of(Long.parseLong(value)), kind));
  }

  @Test
  void checksTheKindOfWhatDividesByZeroUnneeded() {
    assertThat(finding("if(clamps, tilt, width / (tongue - 1/4))").code()).isEqualTo("wrong-unit");
    assertThat(finding("if(clamps, width, width / (tongue - 1/4) + width)").code())
        .isEqualTo("wrong-unit");
  }

  @ParameterizedTest
  @CsvSource({
    "144 sq in, AREA",
    "1 sq ft, AREA",
    "2 bf, VOLUME",
    "8 oz, FLUID",
    "30 ml, FLUID",
    "68 F, TEMPERATURE",
    "24 count, NUMBER",
    "30 deg, ANGLE"
  })
  void knowsTheUnitsThatAGivenKnows(String text, Dimension kind) {
    Quantity reckoned = evaluate(text, Unit.INCH).value();
    Unit bare = Objects.requireNonNull(Unit.named(text.replaceFirst("\\d+ ", "")));
    assertThat(reckoned.dimension()).isEqualTo(kind);
    assertThat(reckoned).isEqualTo(QuantityReader.read(at(text), bare).value());
  }

  @Test
  void namesWhatItUsesWhereItStands() {
    Formula formula = Formula.parse(at("width - 2 * side.length + width"), Unit.INCH).value();
    assertThat(formula.names()).containsExactly("width", "side.length");
    assertThat(formula.places())
        .extracting(place -> place.at().column())
        .containsExactly(11, 23, 37);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "(", "-", "1 +", "if(", "min(,)", "..", "1.", "5e9", "1/", "%"})
  void refusesScraps(String text) {
    assertThat(finding(text).isError()).isTrue();
  }
}
