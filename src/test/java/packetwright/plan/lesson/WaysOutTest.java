package packetwright.plan.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;

/** Every way out that is named works when it is written into the files. */
class WaysOutTest {
  private static final String PROCEDURE = "procedure.md";
  private static final String SHOP = "shop.yaml";

  /**
   * A sample in which something is refused.
   *
   * @param name for reports
   * @param folder the edited sample
   */
  record Variant(String name, ProjectFolder folder) {
    /** The same in a shop with another value, after a line that begins so. */
    Variant with(String after, String old, String value) {
      String shop = folder.text(SHOP).value();
      int at = shop.indexOf(old, shop.indexOf(after));
      assertThat(at).as(old).isNotNegative();
      String changed = shop.substring(0, at) + value + shop.substring(at + old.length());
      return new Variant(name + " " + value, folder.with(SHOP, changed));
    }

    @Override
    public String toString() {
      return name;
    }
  }

  private static Variant edited(String sample, String file, String after, String... edits) {
    ProjectFolder folder = ProjectFolder.sample(sample);
    String text = folder.text(file).value();
    for (int i = 0; i < edits.length; i += 2) {
      int from = text.indexOf(after);
      int at = text.indexOf(edits[i], from);
      assertThat(from).as(after).isNotNegative();
      assertThat(at).as(edits[i]).isNotNegative();
      text = text.substring(0, at) + edits[i + 1] + text.substring(at + edits[i].length());
    }
    return new Variant(sample + " " + String.join(" ", edits), folder.with(file, text));
  }

  /** The box with one step after the next one. */
  private static Variant swapped(String first, String second, String old, String with) {
    ProjectFolder folder = ProjectFolder.sample("sliding-lid-box");
    String text = folder.text(PROCEDURE).value();
    int one = text.indexOf("## " + first);
    int two = text.indexOf("## " + second);
    int end = text.indexOf("\n## ", two) + 1;
    String step = text.substring(one, two);
    assertThat(step).contains(old);
    String changed =
        text.substring(0, one)
            + text.substring(two, end)
            + step.replace(old, with)
            + text.substring(end);
    return new Variant("box, " + first + " late", folder.with(PROCEDURE, changed));
  }

  static Stream<Variant> variants() {
    String box = "sliding-lid-box";
    String machines = "machines:";
    return Stream.of(
        edited(box, PROCEDURE, "## Joint the bottom edge", "  with: [push_block]\n", ""),
        edited(box, PROCEDURE, "## Rip the wall blank", "  with: [push_block]\n", ""),
        edited(box, PROCEDURE, "## Cut the grooves", "[featherboard, push_block]", "push_block"),
        edited(box, PROCEDURE, "## Cut the rabbets", "clamps, ", ""),
        edited(box, PROCEDURE, "## Cut the back end", "  with: [clamps]\n", ""),
        edited(box, PROCEDURE, "## Cut the bottom", ", backer]", "]"),
        edited(box, "project.yaml", "blanks:", ", sections: {front_end: front_section}", ""),
        swapped("Rip the front section", "Cut the front end", "rip: wall", "rip: front_end"),
        edited(box, SHOP, machines, "gauge_shortest: 9", "gauge_shortest: 9-1/64"),
        edited(box, SHOP, machines, "shortest: 14", "shortest: 40"),
        edited(box, SHOP, machines, "rip_narrowest: 2", "rip_narrowest: 3"),
        edited(box, SHOP, machines, "rip_shortest: 12", "rip_shortest: 20"),
        edited(box, SHOP, machines, "clamped_shortest: 4", "clamped_shortest: 4-5/8"),
        edited("step-stool", SHOP, "jointer:", "shortest: 12", "shortest: 24"),
        edited("step-stool", PROCEDURE, "## Cut the dadoes", "clamps, ", ""),
        edited("step-stool", SHOP, "band_saw:", "shortest: 6", "shortest: 10"),
        edited(
                "step-stool",
                PROCEDURE,
                "- saw_curve: leg.arch",
                "  at: band_saw",
                "  at: band_saw\n  stacked: 2")
            .with("band_saw:", "depth_per_pass: 6", "depth_per_pass: 1"),
        edited(
                box,
                PROCEDURE,
                "## Cut the rabbets",
                "- cut: side.end_rabbets",
                "- cut: side.end_rabbets\n  set: {first_height: 7/32}")
            .with("dado_set:", "depth_per_pass: 3/8", "depth_per_pass: 3/16"),
        edited("nest-box", PROCEDURE, "## Drill the holes", "[clamps, backer]", "[backer]"),
        edited("nest-box", "project.yaml", "sizes:", "max(shop.mill_shortest, ", "max("));
  }

  /** The ways out of all that is refused in a folder. */
  private static List<WaysOut.Found> found(ProjectFolder folder) {
    return Lessons.waysOut(folder, Request.plain());
  }

  @ParameterizedTest
  @MethodSource("variants")
  void worksWhenItIsWrittenDown(Variant variant) {
    List<WaysOut.Found> all = found(variant.folder());
    assertThat(all).isNotEmpty();
    for (WaysOut.Found found : all) {
      assertThat(found.ways()).hasSizeLessThanOrEqualTo(WaysOut.MOST);
      for (WayOut way : found.ways()) {
        ProjectFolder obeyed = way.change().match(new WrittenChange(variant.folder()));
        Checked<Lesson> after = Lessons.workOut(obeyed, Request.plain());
        List<String> left =
            after.findings().stream().filter(Finding::isError).map(Finding::code).toList();
        List<String> others =
            new ArrayList<>(all.stream().map(f -> f.refused().finding().code()).toList());
        others.remove(found.refused().finding().code());
        assertThat(left).as(way.words()).isSubsetOf(others);
        assertThat(left).as(way.words()).hasSizeLessThanOrEqualTo(others.size());
        if (all.size() == 1) {
          assertThat(after.findings()).as(way.words()).isEmpty();
        }
      }
    }
  }

  @Test
  void findsWaysOfEveryKind() {
    Map<Class<?>, Integer> kinds = new LinkedHashMap<>();
    variants()
        .flatMap(variant -> found(variant.folder()).stream())
        .flatMap(found -> found.ways().stream())
        .forEach(way -> kinds.merge(way.change().getClass(), 1, Integer::sum));
    assertThat(kinds)
        .containsKeys(Change.Rewritten.class, Change.StepMoved.class, Change.Longer.class);
  }

  @Test
  void namesOnlyTheControlWhereOneAnswers() {
    Variant variant =
        edited("sliding-lid-box", PROCEDURE, "## Rip the wall blank", "  with: [push_block]\n", "");
    assertThat(found(variant.folder()))
        .singleElement()
        .satisfies(
            found ->
                assertThat(found.ways())
                    .extracting(WayOut::words)
                    .containsExactly("write `with: [push_block]`"));
  }

  @Test
  void lowersAStackAndLeavesASettingToBeReckoned() {
    assertThat(
            variants()
                .filter(v -> v.name().contains("stacked") || v.name().contains("first_height"))
                .flatMap(v -> found(v.folder()).stream())
                .map(f -> f.ways().get(0).words())
                .toList())
        .containsExactly("delete `stacked`", "delete `first_height` under `set`");
  }

  @Test
  void saysThatNoneIsFoundAndKeepsTheHintOfTheRule() {
    Variant variant =
        edited("nest-box", SHOP, "miter_saw:", "clamped_shortest: 4", "clamped_shortest: 20");
    assertThat(found(variant.folder()))
        .filteredOn(found -> found.ways().isEmpty())
        .isNotEmpty()
        .allSatisfy(
            found ->
                assertThat(found.finding().hint())
                    .startsWith(found.refused().finding().hint())
                    .contains("that was tried helps"));
  }
}
