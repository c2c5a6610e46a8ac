package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import packetwright.text.words.Words;
import packetwright.wood.caution.Caution.Signal;

/** What students read: short, imperative, and never a permission. */
class CautionTextTest {
  private static final Words WORDS = Words.of("en");
  private static final List<HazardRule> RULES = RuleFile.read().rules();

  private static Stream<String> studentTexts() {
    return RULES.stream()
        .flatMap(h -> Stream.of("hazard", "consequence", "avoid").map(k -> text(h.name(), k)));
  }

  private static String text(String rule, String key) {
    return WORDS.plain("caution." + rule + "." + key);
  }

  @Test
  void noTextPromises() {
    assertThat(studentTexts().toList())
        .hasSizeGreaterThan(60)
        .noneMatch(t -> t.matches("(?i).*\\b(safe|safely|safety|proven|approved|cannot)\\b.*"));
  }

  @Test
  void noTextHoldsANumberThatCouldBeReadAsAPermission() {
    assertThat(studentTexts().toList()).noneMatch(t -> t.matches(".*[0-9½¼].*"));
  }

  @Test
  void everySentenceIsShort() {
    assertThat(studentTexts().flatMap(t -> Stream.of(t.split("(?<=[.;])\\s"))).toList())
        .allSatisfy(s -> assertThat(s.split(" ")).hasSizeLessThanOrEqualTo(22));
  }

  @Test
  void signalWordsFollowTheConsequence() {
    assertThat(RULES).extracting(HazardRule::signal).doesNotContain(Signal.DANGER, Signal.NOTICE);
    assertThat(RULES)
        .filteredOn(h -> h.signal() == Signal.CAUTION)
        .allSatisfy(
            h ->
                assertThat(text(h.name(), "consequence"))
                    .doesNotContain("cut off", "bone", "fire", "blind"));
  }

  @Test
  void everyRuleNamesASourceOrSaysThatThereIsNone() {
    assertThat(RULES)
        .extracting(HazardRule::source)
        .allMatch(
            s ->
                s.contains("CFR")
                    || s.contains("California Code")
                    || s.contains("NIOSH")
                    || s.contains("school")
                    || s.contains("common practice, no source"));
  }

  /** Paragraphs of 29 CFR 1910.213 whose text was seen to say what the rule is about. */
  @Test
  void citesOnlyParagraphsThatSayIt() {
    Set<String> seen =
        Set.of("(a)(6)", "(b)(1)", "(c)(1)", "(c)(2)", "(i)(1)", "(j)(3)", "(n)", "(p)(4)");
    assertThat(RULES)
        .extracting(HazardRule::source)
        .filteredOn(s -> s.contains("1910.213"))
        .hasSizeGreaterThan(4)
        .allMatch(s -> seen.stream().anyMatch(p -> s.contains("1910.213" + p)));
  }

  @Test
  void everyAmountThatAReasonTellsIsInItsPhrase() {
    for (HazardRule hazard : RULES) {
      Object[] amounts = hazard.shows().stream().map(s -> "<" + s + ">").toArray();
      String why = WORDS.plain("caution." + hazard.name() + ".why", amounts);
      assertThat(hazard.shows()).allSatisfy(s -> assertThat(why).contains("<" + s + ">"));
      assertThat(why).doesNotContain("{");
    }
  }
}
