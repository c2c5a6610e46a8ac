package packetwright.wood.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.wood.workpiece.Layout;

/** The whole procedure of the sliding-lid box, setting by setting. */
class SampleRunTest {
  private static final Lesson LESSON = lesson();

  private static Lesson lesson(String... set) {
    Checked<Lesson> lesson =
        Lessons.workOut(
            ProjectFolder.sample("sliding-lid-box"), new Request("", List.of(set), Set.of(), ""));
    assertThat(lesson.findings()).filteredOn(Finding::isError).isEmpty();
    return lesson.value();
  }

  @Test
  void fourInchesIsTheSameInMillimetres() {
    assertThat(lesson("board_width=101.6 mm").parts())
        .usingRecursiveComparison()
        .isEqualTo(lesson("board_width=4").parts());
  }

  /** Settings reckoned on paper with exact fractions, step by step. */
  @ParameterizedTest
  @CsvSource({
    "rough_cut, 0, length, 36",
    "rough_cut, 0, width, 15/4",
    "rough_cut, 1, length, 19",
    "rough_cut, 1, width, 19/4",
    "plane_to_thickness, 0, thickness, 1/2",
    "plane_to_thickness, 0, passes, 10",
    "joint_edge, 0, passes, 2",
    "rip, 0, fence, 7/2",
    "square_end, 0, trim, 1",
    "cut, 0, fence, 1/4",
    "cut, 0, cutter, 9/32",
    "cut, 0, height, 1/4",
    "cut, 1, fence, 1/4",
    "crosscut, 0, stop, 9",
    "cut, 2, stop, 1/2",
    "cut, 2, height, 1/4",
    "cut, 2, passes, 2",
    "crosscut, 1, stop, 9/2",
    "rip, 1, fence, 47/16",
    "crosscut, 2, stop, 9/2",
    "rip, 2, fence, 71/16",
    "square_end, 1, trim, 1/2",
    "crosscut, 3, stop, 135/16",
    "crosscut, 4, stop, 141/16",
    "cut_to_fit, 0, length, 35/4",
    "cut, 3, depth, 1/8"
  })
  void setsWhatWasReckonedOnPaper(String verb, int occurrence, String setting, String value) {
    OperationRun run =
        LESSON.run().operations().stream()
            .filter(o -> o.operation().verb().value().word().equals(verb))
            .skip(occurrence)
            .findFirst()
            .orElseThrow();
    assertThat(run.settings())
        .filteredOn(s -> s.name().equals(setting))
        .singleElement()
        .extracting(s -> s.value().value().toString())
        .isEqualTo(value);
  }

  @Test
  void laysTheWallBlankOutFromTheSquaredEnd() {
    Layout layout =
        LESSON.run().operations().stream()
            .map(OperationRun::layout)
            .filter(java.util.Objects::nonNull)
            .findFirst()
            .orElseThrow();
    assertThat(layout.sections())
        .extracting(s -> s.letter() + " " + s.start() + " to " + s.end() + (s.fitted() ? " ?" : ""))
        .containsExactly(
            "A1 0 in to 9 in",
            "A2 73/8 in to 145/8 in",
            "B 73/4 in to 91/4 in ?",
            "C 183/8 in to 219/8 in ?",
            " 55/2 in to 35 in");
  }
}
