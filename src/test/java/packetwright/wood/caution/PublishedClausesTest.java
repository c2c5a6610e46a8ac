package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import packetwright.text.words.Words;

/**
 * The paragraphs of 29 CFR 1910 and 1926 that name something in a wood shop ({@code
 * published/SOURCE.md}): each is cited by rules that fire, or does not reach a packet; and no rule
 * cites another.
 */
class PublishedClausesTest {
  private static final Pattern CITED =
      Pattern.compile(
          "(?<part>(?:1910|1926)\\.\\d+)|(?<to> to )?(?<paragraph>\\([a-z]\\)(?:\\(\\d+\\))?)");

  /**
   * One paragraph.
   *
   * @param clause {@code 1910.213(c)(1)}
   * @param isSeen whether its text was read, and not remembered
   * @param concerns what it is about, or why it does not reach a packet
   * @param rules that cite it
   */
  record Clause(String clause, boolean isSeen, String concerns, List<String> rules) {}

  private static List<Clause> clauses() throws IOException {
    try (InputStream in =
        PublishedClausesTest.class.getResourceAsStream("/published/osha-clauses.csv")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      return text.lines()
          .skip(1)
          .map(line -> line.split(",", -1))
          .map(c -> new Clause(c[0], c[1].equals("seen"), c[2], words(c[3])))
          .toList();
    }
  }

  private static List<String> words(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split(" "));
  }

  /** Every clause that a source cites; {@code (c)(1) to (c)(3)} are three. */
  private static Set<String> cited(String source) {
    Set<String> cited = new LinkedHashSet<>();
    String part = "";
    String last = "";
    Matcher m = CITED.matcher(source);
    while (m.find()) {
      if (m.group("part") != null) {
        part = m.group("part");
        continue;
      }
      String paragraph = m.group("paragraph");
      if (!part.isEmpty()) {
        cited.addAll(
            m.group("to") == null ? List.of(part + paragraph) : upTo(part, last, paragraph));
      }
      last = paragraph;
    }
    return cited;
  }

  private static List<String> upTo(String part, String from, String to) {
    List<String> all = new ArrayList<>();
    for (int i = number(from) + 1; i <= number(to); i++) {
      all.add(part + to.replaceFirst("\\d+", Integer.toString(i)));
    }
    return all;
  }

  private static int number(String paragraph) {
    return Integer.parseInt(paragraph.replaceAll("\\D", ""));
  }

  private static HazardRule rule(String name) {
    return RuleFile.read().rules().stream()
        .filter(r -> r.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no rule " + name));
  }

  @Test
  void readsRangesAndLists() {
    assertThat(cited("29 CFR 1910.213(c)(1) to (c)(3): hood; (d)(1): hood; Code, 4296(a)"))
        .contains("1910.213(c)(1)", "1910.213(c)(2)", "1910.213(c)(3)", "1910.213(d)(1)");
  }

  @Test
  void everyClauseIsCitedByItsRulesOrDoesNotReachAPacket() throws IOException {
    List<Clause> clauses = clauses();
    assertThat(clauses).hasSizeGreaterThan(40);
    for (Clause clause : clauses) {
      List<String> citing =
          RuleFile.read().rules().stream()
              .filter(r -> cited(r.source()).contains(clause.clause()))
              .map(HazardRule::name)
              .toList();
      assertThat(citing).as(clause.clause()).containsExactlyInAnyOrderElementsOf(clause.rules());
      if (clause.rules().isEmpty()) {
        assertThat(clause.concerns())
            .matches("(building of machines|management|signs): .+|.+: none in a packet");
      }
    }
  }

  @Test
  void everyRuleThatCitesAClauseFiresOnAnOperation() throws IOException {
    Set<String> citing =
        clauses().stream().flatMap(c -> c.rules().stream()).collect(Collectors.toSet());
    assertThat(citing).hasSizeGreaterThan(15);
    for (String name : citing) {
      assertThat(CautionRulesTest.allCautions().filter(row -> row.what().equals(name)))
          .as(name)
          .anySatisfy(
              row ->
                  assertThat(
                          CautionRules.builtIn()
                              .apply(
                                  TrialOperation.run(TrialOperation.shop(), row.inside()),
                                  TrialOperation.shop(),
                                  Words.of("en"))
                              .cautions())
                      .extracting(Caution::rule)
                      .contains(name));
    }
  }

  @Test
  void noRuleCitesAClauseThatIsNotHere() throws IOException {
    Set<String> known = clauses().stream().map(Clause::clause).collect(Collectors.toSet());
    for (HazardRule rule : RuleFile.read().rules()) {
      Set<String> cited = cited(rule.source().replaceAll("section 4296\\(a\\)", ""));
      assertThat(known).as(rule.name()).containsAll(cited);
    }
  }

  @Test
  void whatIsRememberedIsSaidToBe() throws IOException {
    for (Clause clause : clauses()) {
      if (!clause.isSeen()) {
        assertThat(clause.rules())
            .allSatisfy(name -> assertThat(rule(name).source()).contains("from memory"));
      }
    }
  }
}
