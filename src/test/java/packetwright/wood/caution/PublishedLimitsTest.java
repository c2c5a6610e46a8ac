package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import packetwright.text.measure.Length;

/**
 * Our limits beside those that schools publish: notes on a school's woodworking safety manual, a
 * high school's shop audit form, two schools' machine rules, students' flashcards, a jointer's
 * manual, and a woodworking magazine (November 2007). They disagree, so that ours must be one of
 * theirs, and no looser than the most of them.
 */
class PublishedLimitsTest {
  /**
   * What was published, in 64ths of an inch, one entry for each source.
   *
   * @param limit ours, by name
   * @param values theirs
   */
  record Published(String limit, List<Integer> values) {}

  static Stream<Published> published() {
    return Stream.of(
        new Published("table_saw.push_stick_at", List.of(384, 384)),
        new Published("table_saw.hand_distance", List.of(320, 256)),
        new Published("table_saw.blade_above", List.of(16, 16, 16)),
        new Published("table_saw.rip_shortest", List.of(768, 768)),
        new Published("table_saw.gauge_shortest", List.of(768, 768)),
        new Published("miter_saw.hand_distance", List.of(384)),
        new Published("jointer.shortest", List.of(768, 768, 768, 768, 896)),
        new Published("jointer.thinnest", List.of(16, 16, 24, 32)),
        new Published("jointer.depth_per_pass", List.of(4, 4, 4, 2)),
        new Published("jointer.hand_distance", List.of(384, 384, 320, 256)),
        new Published("planer.depth_per_pass", List.of(2, 2)),
        new Published("planer.thinnest", List.of(16)));
  }

  @ParameterizedTest
  @MethodSource("published")
  void oursIsPublishedAndNoLooserThanMost(Published row) {
    Limit ours = Objects.requireNonNull(RuleFile.read().limits().get(row.limit()));
    List<Length> theirs = row.values().stream().map(v -> Length.ofInches(v, 64)).toList();
    assertThat(theirs).contains(ours.is());
    long stricter = theirs.stream().filter(t -> isStricter(ours, t)).count();
    assertThat(stricter * 2).isLessThan(theirs.size());
  }

  private static boolean isStricter(Limit ours, Length theirs) {
    return !theirs.equals(ours.is()) && !ours.isLooser(theirs);
  }
}
