package packetwright.text.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleTest {
  @Test
  void refusesAMetricGraduationWithoutAFiniteDecimal() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Rule(Rational.of(1, 3), Unit.MILLIMETRE));
    assertThat(new Rule(Rational.of(1, 4), Unit.MILLIMETRE).graduation()).hasToString("1/4");
  }

  @Test
  void refusesAUnitThatNoRuleIsMarkedIn() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Rule(Rational.ONE, Unit.FOOT));
  }

  @Test
  void gradesWhatItRounds() {
    Rule rule = new Rule(Rational.of(1, 32), Unit.INCH);
    assertThat(rule.print(Length.ofInches(93, 64)))
        .satisfies(f -> assertThat(f).hasToString("1 15/32 in"))
        .satisfies(f -> assertThat(f.grade()).isEqualTo(Figure.Grade.SCANT));
    assertThat(rule.print(Length.ofInches(3, 32)).grade()).isEqualTo(Figure.Grade.EXACT);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1/64      | 1/32 in    | SCANT
          3/64      | 1/16 in    | SCANT
          1/65      | 0 in       | FULL
          4721/1000 | 4 23/32 in | FULL
          9/2       | 4 1/2 in   | EXACT
          -9/2      | -4 1/2 in  | EXACT
          -1/64     | -1/32 in   | SCANT
          -1/128    | 0 in       | FULL
          127/128   | 1 in       | SCANT
          """)
  void printsOnTheNearestGraduation(String inches, String printed, Figure.Grade grade) {
    String[] parts = inches.split("/", -1);
    Length length = Length.ofInches(Long.parseLong(parts[0]), Long.parseLong(parts[1]));
    Figure figure = new Rule(Rational.of(1, 32), Unit.INCH).print(length);
    assertThat(figure).hasToString(printed);
    assertThat(figure.grade()).isEqualTo(grade);
  }

  @Test
  void printsTolerancesFinerThanTheRule() {
    Rule coarse = new Rule(Rational.of(1, 16), Unit.INCH);
    assertThat(coarse.printExactly(Length.ofInches(1, 64))).hasToString("1/64 in");
    Rule whole = new Rule(Rational.ONE, Unit.MILLIMETRE);
    assertThat(whole.printExactly(Length.ofInches(1, 64))).hasToString("0.4 mm");
    assertThat(whole.printExactly(Length.ofInches(1, 64)).grade()).isEqualTo(Figure.Grade.SCANT);
  }

  @Test
  void printsMetricLengthsAsDecimals() {
    Rule half = new Rule(Rational.of(1, 2), Unit.MILLIMETRE);
    assertThat(half.print(Length.ofInches(4))).hasToString("101.5 mm");
    assertThat(half.print(Length.ofInches(10))).hasToString("254 mm");
    assertThat(new Rule(Rational.of(1, 100), Unit.MILLIMETRE).print(Length.ofInches(1, 508)))
        .hasToString("0.05 mm");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          3/2    | NUMBER      | 1 1/2
          1/1000 | NUMBER      | 0
          2/127  | NUMBER      | 1/50
          45/2   | AREA        | 22 1/2 sq in
          1/2    | VOLUME      | 1/2 cu in
          1/8    | FLUID       | 1/8 oz
          45/2   | ANGLE       | 22.5°
          45/1   | TIME        | 45 min
          68/1   | TEMPERATURE | 68 °F
          11/2   | MONEY       | 5.50
          5/1    | MONEY       | 5.00
          """)
  void printsEveryDimension(String value, Dimension dimension, String printed) {
    String[] parts = value.split("/", -1);
    Rational exact = Rational.of(Long.parseLong(parts[0]), Long.parseLong(parts[1]));
    Rule rule = new Rule(Rational.of(1, 32), Unit.INCH);
    assertThat(rule.print(new Quantity(exact, dimension))).hasToString(printed);
  }

  @Property(tries = 3000)
  void isOffByAtMostHalfAGraduationAndSaysWhichWay(
      @ForAll @IntRange(min = -1_000_000, max = 1_000_000) int top,
      @ForAll @IntRange(min = 1, max = 5000) int bottom,
      @ForAll @IntRange(min = 0, max = 6) int power) {
    Rational graduation = Rational.of(1, 1L << power);
    Length length = Length.ofInches(top, bottom);
    Figure figure = new Rule(graduation, Unit.INCH).print(length);
    Rational printed =
        Rational.of(figure.numerator(), figure.denominator())
            .plus(Rational.of(figure.whole(), BigInteger.ONE));
    Rational more = length.magnitude().inches().minus(printed);
    assertThat(more.times(Rational.of(2)))
        .isLessThan(graduation)
        .isGreaterThanOrEqualTo(graduation.negated());
    assertThat(figure.grade()).isEqualTo(gradeOf(more));
    assertThat(printed.dividedBy(graduation).isWhole()).isTrue();
    assertThat(figure.negative()).isEqualTo(top < 0 && printed.signum() != 0);
  }

  private static Figure.Grade gradeOf(Rational more) {
    return switch (more.signum()) {
      case 0 -> Figure.Grade.EXACT;
      case 1 -> Figure.Grade.FULL;
      default -> Figure.Grade.SCANT;
    };
  }
}
