package packetwright.wood.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Finding;

/** Sand with 100 grit, then 150, then 220: common practice, no source. */
class OrderTest {
  private static final String FILE = "procedure.md";
  private static final String LAST = "grits: [100, 150, 220]";

  private static List<String> found(String sample, String old, String with) {
    ProjectFolder folder = ProjectFolder.sample(sample);
    String text = folder.text(FILE).value();
    assertThat(text).contains(old);
    return Lessons.workOut(folder.with(FILE, text.replace(old, with)), Request.plain())
        .findings()
        .stream()
        .map(Finding::code)
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "100, 150, 220; true",
        "100, 220; true",
        "150, 150, 220; true",
        "150, 100; false",
        "100, 220, 150; false",
        "220, 150, 100; false"
      })
  void gritsOfOneSandingRise(String grits, boolean isRising) {
    assertThat(found("sliding-lid-box", LAST, "grits: [" + grits + "]").isEmpty())
        .isEqualTo(isRising);
  }

  @Test
  void aFaceThatWasSandedIsSandedNoCoarserLater() {
    String sides = "  sides: [outside, top, bottom, left, right]\n";
    assertThat(found("step-stool", sides, "")).containsExactly("grits-backwards");
    assertThat(found("step-stool", LAST, "grits: [150, 220]")).isEmpty();
  }

  @Test
  void aFaceThatIsPlanedAfterwardsMayBeginCoarseAgain() {
    String planed = "- plane_to_thickness: wall\n";

    String fine = "- sand: wall\n  sides: inside\n  grits: [220]\n  by: instructor\n";
    assertThat(found("sliding-lid-box", planed, fine + planed)).doesNotContain("grits-backwards");
    String jointed = "- joint_edge: wall\n";
    assertThat(found("sliding-lid-box", jointed, fine + jointed)).contains("grits-backwards");
  }
}
