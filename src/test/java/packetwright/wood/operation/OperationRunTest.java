package packetwright.wood.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.measure.Length;
import packetwright.text.source.Finding;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Work;

/** What a cut holds and what it leaves loose, reckoned on paper; lengths in 64ths of an inch. */
class OperationRunTest {
  private static final ProjectFolder BOX = ProjectFolder.sample("sliding-lid-box");
  private static final ProjectFolder STOOL = ProjectFolder.sample("step-stool");

  private static List<Work> works(ProjectFolder folder, Verb verb) {
    var lesson = Lessons.workOut(folder, Request.plain());
    assertThat(lesson.findings()).filteredOn(Finding::isError).isEmpty();
    return lesson.value().run().operations().stream()
        .filter(run -> run.operation().verb().value() == verb)
        .map(run -> Objects.requireNonNull(run.work()))
        .toList();
  }

  private static ProjectFolder edited(ProjectFolder folder, String old, String with) {
    String text = folder.text("procedure.md").value();
    assertThat(text).contains(old);
    return folder.with("procedure.md", text.replace(old, with));
  }

  private static void isHeldAndLoose(Work work, long held, long loose) {
    assertThat(work.held()).isEqualTo(Length.ofInches(held, 64));
    assertThat(work.freed()).isEqualTo(Length.ofInches(loose, 64));
  }

  @Test
  void whatIsTrimmedOffASquaredEndIsLoose() {
    isHeldAndLoose(works(BOX, Verb.SQUARE_END).get(0), 35 * 64, 64);
  }

  @Test
  void besideAStopTheRestIsLoose() {
    isHeldAndLoose(works(BOX, Verb.CROSSCUT).get(0), 9 * 64, 16 * 64 + 48);
  }

  @Test
  void aRipLeavesAStripBesideTheBlade() {
    isHeldAndLoose(works(BOX, Verb.RIP).get(0), 36 * 64, 4);
  }

  @Test
  void aSlantedCutHoldsWhatItsShortSideLeaves() {
    Work slope =
        works(ProjectFolder.sample("nest-box"), Verb.CUT).stream()
            .filter(work -> work.feed() == Feed.ACROSS)
            .findFirst()
            .orElseThrow();
    isHeldAndLoose(slope, 10 * 64, 80);
  }

  @Test
  void atAStandOffBlockThePartIsLooseAndTheRestIsHeld() {
    String seat = "- crosscut: seat\n  of: seat_board\n  stop: true\n  at: ";
    ProjectFolder standOff =
        edited(
            STOOL,
            seat + "miter_saw\n",
            seat + "table_saw\n  with: [miter_gauge, clamps, stand_off_block]\n");
    isHeldAndLoose(works(standOff, Verb.CROSSCUT).get(2), 3 * 64, 16 * 64);
  }

  @Test
  void trimmingAtASawIsACutLikeAnyOther() {
    ProjectFolder trimmed =
        edited(
            BOX,
            "- cut_to_fit: lid\n  at: block_plane",
            "- cut_to_fit: lid\n  at: miter_saw\n  with: [clamps, backer]");
    Work work = works(trimmed, Verb.CUT_TO_FIT).get(0);
    assertThat(work.isThrough()).isTrue();
    isHeldAndLoose(work, 8 * 64 + 48, 0);
  }
}
