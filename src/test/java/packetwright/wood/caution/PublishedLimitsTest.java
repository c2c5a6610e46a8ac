package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.definition.shop.Shop;
import packetwright.text.measure.Length;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.source.Located;
import packetwright.text.source.Span;
import packetwright.wood.caution.ComparedLimit.Published;

/**
 * Our limits beside those that others publish: notes on a school's manual, a high school's shop
 * audit form, schools' rules for tools and equipment, a quiz, flashcards, an online lesson, a page
 * and a manual on jointers, and a woodworking magazine of November 2007, whose 12 in and 3 in are
 * of any machine. They disagree; ours is the strictest of them.
 */
class PublishedLimitsTest {
  /** Where ours is not the strictest, with the reason. */
  private static final Map<String, String> EXCEPTIONS =
      Map.of(
          "band_saw.shortest", "the blade does not throw back; 6 in is common practice, no source");

  @ParameterizedTest
  @CsvSource({
    "table_saw.push_stick_at, 6 in, notes on a school's manual",
    "table_saw.push_stick_at, 6 in, a high school's shop audit form",
    "table_saw.push_block_at, 6 in, a school's tool rules",
    "table_saw.hand_distance, 5 in, a school's tool rules",
    "table_saw.hand_distance, 4 in, a quiz on machine rules",
    "table_saw.hand_distance, 3 in, a woodworking magazine",
    "table_saw.blade_above, 1/4 in, notes on a school's manual",
    "table_saw.blade_above, 1/4 in, a high school's shop audit form",
    "table_saw.blade_above, 1/4 in, a school's tool rules",
    "table_saw.rip_shortest, 12 in, a quiz on machine rules",
    "table_saw.rip_shortest, 12 in, a woodworking magazine",
    "table_saw.gauge_shortest, 12 in, a quiz on machine rules",
    "table_saw.gauge_shortest, 12 in, a woodworking magazine",
    "dado_set.rip_shortest, 12 in, a quiz on machine rules",
    "dado_set.rip_shortest, 12 in, a woodworking magazine",
    "jointer.shortest, 12 in, a school's equipment rules",
    "jointer.shortest, 12 in, students' flashcards",
    "jointer.shortest, 12 in, a school's tool rules",
    "jointer.shortest, 12 in, a jointer's manual",
    "jointer.shortest, 14 in, notes on a school's manual",
    "jointer.shortest, 12 in, a woodworking magazine",
    "jointer.depth_per_pass, 1/16 in, notes on a school's manual",
    "jointer.depth_per_pass, 1/16 in, a school's equipment rules",
    "jointer.depth_per_pass, 1/16 in, students' flashcards",
    "jointer.depth_per_pass, 1/32 in, a school's tool rules",
    "jointer.depth_per_pass, 2 mm, a page on jointers",
    "jointer.depth_per_pass, 1/8 in, from memory",
    "jointer.thinnest, 1/4 in, a high school's shop audit form",
    "jointer.thinnest, 1/4 in, students' flashcards",
    "jointer.thinnest, 3/8 in, a jointer's manual",
    "jointer.thinnest, 1/2 in, a school's equipment rules",
    "jointer.hand_distance, 6 in, a high school's shop audit form",
    "jointer.hand_distance, 6 in, notes on a school's manual",
    "jointer.hand_distance, 5 in, a school's tool rules",
    "jointer.hand_distance, 4 in, an online lesson",
    "jointer.hand_distance, 3 in, a woodworking magazine",
    "planer.depth_per_pass, 1/32 in, notes on a school's manual",
    "planer.depth_per_pass, 1/32 in, a high school's shop audit form",
    "planer.thinnest, 1/4 in, a high school's shop audit form",
    "planer.shortest, 12 in, from memory",
    "planer.shortest, 12 in, a woodworking magazine",
    "miter_saw.hand_distance, 6 in, a high school's shop audit form",
    "miter_saw.hand_distance, 3 in, a woodworking magazine",
    "miter_saw.held_shortest, 12 in, a woodworking magazine",
    "band_saw.guide_above, 1/4 in, from memory",
    "band_saw.guide_above, 1/8 in, from memory",
    "band_saw.guide_above, 1/2 in, from memory",
    "band_saw.hand_distance, 3 in, a woodworking magazine",
    "band_saw.shortest, 12 in, a woodworking magazine",
    "drill_press.hand_distance, 3 in, a woodworking magazine",
    "router_table.shortest, 12 in, a woodworking magazine",
    "nailer.hand_distance, 12 in, Nail Gun Safety",
  })
  void namesWhatIsPublishedAndIsNoLooser(String name, String value, String by) {
    Limit ours = limit(name);
    Length theirs = length(value);
    assertThat(ours.published()).anyMatch(p -> p.is().equals(theirs) && p.by().contains(by));
    boolean isStricter = !theirs.equals(ours.is()) && !ours.isLooser(theirs);
    assertThat(isStricter).isEqualTo(EXCEPTIONS.containsKey(name));
  }

  @Test
  void tellsOfALooserValueWhatIsOursAndWhatIsPublished() {
    Shop shop = TrialOperation.shop(Map.of("jointer.shortest", Rational.of(10)));
    assertThat(CautionRules.builtIn().looserLimits(shop))
        .singleElement()
        .satisfies(
            looser -> {
              assertThat(looser.stated()).isEqualTo(Length.ofInches(10));
              assertThat(looser.own()).isEqualTo(Length.ofInches(14));
              assertThat(looser.published().stream().map(Published::is).toList())
                  .hasSize(6)
                  .contains(Length.ofInches(12), Length.ofInches(14));
            });
  }

  private static Limit limit(String name) {
    return Objects.requireNonNull(RuleFile.read().limits().get(name));
  }

  private static Length length(String text) {
    return QuantityReader.read(
            new Located<>(text, new Span("test", 1, 1, text.length())), Unit.INCH)
        .value()
        .asLength();
  }
}
