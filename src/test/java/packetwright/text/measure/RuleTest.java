package packetwright.text.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

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
}
