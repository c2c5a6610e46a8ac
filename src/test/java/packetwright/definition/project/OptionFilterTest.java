package packetwright.definition.project;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.definition.shop.ShopReader;
import packetwright.text.document.Node;
import packetwright.text.document.Yaml;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;

/** Rows that stand or go with options. */
class OptionFilterTest {
  private static final String OPTIONS =
      """
      options:
        a: {about: First}
        b: {about: Second, excludes: c}
        c: {about: Third}
      """;

  private final Findings findings = new Findings();

  private OptionFilter filter(Set<String> on) {
    Node.Mapping root = (Node.Mapping) Yaml.read("p.yaml", OPTIONS).value();
    return new OptionFilter(new OptionsReader(root, findings).options(), on, findings);
  }

  private Node.Mapping plain(String text, String... on) {
    return filter(Set.of(on)).plain((Node.Mapping) Yaml.read("p.yaml", text).value());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "if: a           |      | false",
        "if: a           | a    | true",
        "if: [a, b]      | a    | false",
        "if: [a, b]      | a b  | true",
        "unless: a       |      | true",
        "unless: a       | a    | false",
        "unless: [a, c]  | b    | true",
        "unless: [a, c]  | b c  | false",
        "'if: a, unless: c' | a   | true",
        "'if: a, unless: c' | a c | false",
      })
  void aRowStandsWhenAllThatItWaitsForHolds(String keys, String on, boolean stands) {
    String[] options = on == null ? new String[0] : on.split(" ");
    Node.Mapping plain = plain("supplies:\n  glue: {use: 1, %s}\n".formatted(keys), options);
    assertThat(plain.entries("supplies")).hasSize(stands ? 1 : 0);
    assertThat(findings.list()).isEmpty();
  }

  @Test
  void nothingOfTheConditionIsLeft() {
    Node.Mapping row =
        plain("supplies: {glue: {use: 1, if: a}}", "a")
            .entries("supplies")
            .get(0)
            .value()
            .asMapping();
    assertThat(row).isNotNull();
    assertThat(row.keys()).containsExactly("use");
  }

  @Test
  void ofAlternativesTheOneThatHoldsStands() {
    String text = "sizes:\n  long: [{is: 1, unless: a}, {is: 2, if: a}]\n";
    assertThat(formula(plain(text))).isEqualTo("1");
    assertThat(formula(plain(text, "a"))).isEqualTo("2");
    assertThat(findings.list()).isEmpty();
  }

  private static String formula(Node.Mapping plain) {
    Node.Mapping row = plain.entries("sizes").get(0).value().asMapping();
    return row == null ? "" : row.text("is", "");
  }

  @Test
  void alternativesOfOptionsThatExcludeOneAnotherNeverMeet() {
    plain("sizes:\n  long: [{is: 1, if: b}, {is: 2, if: c}]\n");
    assertThat(findings.list()).isEmpty();
    plain("sizes:\n  long: [{is: 1, if: a}, {is: 2, if: c}]\n");
    assertThat(findings.list()).extracting(Finding::code).containsExactly("alternatives-together");
  }

  @Test
  void whatIsInsideARowThatGoesGoesWithIt() {
    OptionFilter filter = filter(Set.of());
    filter.plain(
        (Node.Mapping)
            Yaml.read(
                    "p.yaml",
                    """
                    parts:
                      lid:
                        if: a
                        features:
                          notch: {notch: middle, if: b}
                    """)
                .value());
    assertThat(filter.options().absent())
        .containsEntry("lid", new Condition(Set.of("a"), Set.of()))
        .containsEntry("lid.notch", new Condition(Set.of("a", "b"), Set.of()));
    assertThat(filter.options().mentioned()).containsExactlyInAnyOrder("a", "b");
  }

  @Test
  void aNameWithAnAlternativeThatStandsIsNotAbsent() {
    OptionFilter filter = filter(Set.of("a"));
    filter.plain(
        (Node.Mapping)
            Yaml.read("p.yaml", "sizes:\n  long: [{is: 1, unless: a}, {is: 2, if: a}]\n").value());
    assertThat(filter.options().absent()).isEmpty();
  }

  @Test
  void listsTheSetsThatCanBeOnTogether() {
    assertThat(filter(Set.of()).options().combinations(ShopReader.builtIn()))
        .isEqualTo(
            List.of(
                Set.of(),
                Set.of("a"),
                Set.of("b"),
                Set.of("a", "b"),
                Set.of("c"),
                Set.of("a", "c")));
  }
}
