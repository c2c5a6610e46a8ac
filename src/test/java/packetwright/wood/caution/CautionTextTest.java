package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import packetwright.text.words.Words;
import packetwright.wood.caution.Caution.Signal;

/** What students read: short, imperative, and never a permission. */
class CautionTextTest {
  private static final Words WORDS = Words.of("en");
  private static final List<HazardRule> RULES = RuleFile.read().rules();
  private static final Object[] AMOUNTS = {"that far", "that far", "that far", "that far"};

  private static Stream<String> studentTexts() {
    return RULES.stream()
        .flatMap(h -> Stream.of("hazard", "consequence", "avoid").map(k -> text(h.name(), k)));
  }

  private static String text(String rule, String key) {
    // What is printed beside an amount is a distance to keep, in the shop's own number.
    return WORDS.plain("caution." + rule + "." + key, AMOUNTS);
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
