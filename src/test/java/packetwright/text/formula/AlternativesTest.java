package packetwright.text.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.text.measure.Length;
import packetwright.text.measure.Unit;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/** Truths are {@code p} and {@code q}, lengths {@code a}, {@code b} and {@code c}, all open. */
class AlternativesTest {
  private static final Values KINDS =
      name ->
          switch (name) {
            case "p", "q", "yes" -> Value.of(true);
            case "three" -> Value.of(Length.ofInches(3));
            default -> Value.of(Length.ofInches(1));
          };

  private static final Set<String> KNOWN = Set.of("yes", "three");

  private static boolean canHold(String text) {
    Located<String> formula = new Located<>(text, new Span("test", 1, 1, text.length()));
    List<Alternative> ways =
        Formula.parse(formula, Unit.INCH)
            .value()
            .alternatives(KINDS, name -> !KNOWN.contains(name));
    return ways.stream().anyMatch(Alternative::hasAmounts);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "p",
        "not p",
        "p and not q",
        "p or not p",
        "yes and p",
        "a < b and b < c",
        "a < 3 and a > 2",
        "a <= 3 and a >= 3",
        "a = three and a > 2",
        "a + b < 5 and a > 2 and b > 2",
        "if(p, a < 1, a > 2) and a > 1",
        "a * b < 1 and a * b > 0",
        "min(a, b) > c and c > 100",
        "a < 25.4 mm and a > 0.99",
        "a / 2 > b and b > a / 3",
        "not (a < 3 and p)",
        "a != b and a < 1",
      })
  void holdsForSomeValues(String condition) {
    assertThat(canHold(condition)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "p and not p",
        "not yes",
        "(p or q) and not p and not q",
        "not (p or not p)",
        "a < b and b < c and c < a",
        "a < 3 and a > 3",
        "a < 3 and a >= 3",
        "a < three and a > 4",
        "a = b and a < b",
        "a != a",
        "a + b < 4 and a > 2 and b > 2",
        "2 * a < a and a > 0",
        "if(p, a < 1, a < 2) and a > 2",
        "if(p, q, not q) and p and not q",
        "min(a, b) > c and min(a, b) < c",
        "a < 25.4 mm and a > 1",
        "a / 2 > b and b > a and a > 0",
        "-a > 1 and a > 0",
      })
  void holdsForNoValues(String condition) {
    assertThat(canHold(condition)).isFalse();
  }
}
