package packetwright.wood.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.Side;
import packetwright.plan.lesson.Lesson;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.wood.operation.OperationRun.Turn;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/** What each verb sets on its machine, and what it does to the piece beside its shape. */
class VerbRunTest {
  private static final String AT_ENDS = "\n  stop: true\n  with: [miter_gauge, clamps]";
  private static final String ALONG = "\n  with: [featherboard, push_block]";

  /** Legs 16 x 4 x 3/4 with those features. */
  private static Checked<Lesson> workOut(String features, String operation) {
    return new TrialCut("run", List.of(256, 64, 12), features, operation, (x, y, z) -> false)
        .workOut();
  }

  private static List<OperationRun> runs(String features, String operation, Verb verb) {
    Checked<Lesson> lesson = workOut(features, operation);
    assertThat(lesson.findings()).filteredOn(Finding::isError).isEmpty();
    return lesson.value().run().operations().stream()
        .filter(run -> run.operation().verb().value() == verb)
        .toList();
  }

  private static List<String> settings(OperationRun run) {
    return run.settings().stream().map(VerbRunTest::said).toList();
  }

  private static String said(Setting setting) {
    return setting.name() + " " + setting.value().value();
  }

  private static Work work(OperationRun run) {
    return Objects.requireNonNull(run.work());
  }

  @Test
  void bothEndsOfOneFaceAreTurnedEndForEnd() {
    String both = "{rabbet: both ends, face: inside, width: 1/2, depth: 1/4}";
    assertThat(work(runs(both, "- cut: leg.cut" + AT_ENDS, Verb.CUT).get(0)).turn())
        .containsExactly(Turn.ROTATE_END_FOR_END);
    String one = "{rabbet: left, face: inside, width: 1/2, depth: 1/4}";
    assertThat(work(runs(one, "- cut: leg.cut" + AT_ENDS, Verb.CUT).get(0)).turn()).isEmpty();
  }

  @Test
  void endsOnTwoFacesAreTurnedOverInOneOperationAndInTwo() {
    String two =
        "{rabbet: left, face: inside, width: 1/2, depth: 1/4}\n"
            + "      other: {rabbet: right, face: outside, width: 1/2, depth: 1/4}";
    assertThat(work(runs(two, "- cut: [leg.cut, leg.other]" + AT_ENDS, Verb.CUT).get(0)).turn())
        .containsExactly(Turn.TURN_OVER);
    List<OperationRun> apart =
        runs(two, "- cut: leg.cut" + AT_ENDS + "\n- cut: leg.other" + AT_ENDS, Verb.CUT);
    assertThat(work(apart.get(0)).turn()).isEmpty();
    assertThat(work(apart.get(1)).turn()).containsExactly(Turn.TURN_OVER);
  }

  @Test
  void aDeepGrooveIsCutInAsManyHeightsAsItNeeds() {
    OperationRun run =
        runs(
                "{groove: along, face: inside, from: top, at: 1, width: 7/16, depth: 3/8}",
                "- cut: leg.cut\n  at: router_table" + ALONG,
                Verb.CUT)
            .get(0);
    assertThat(settings(run))
        .containsExactly(
            "cutter 3/8",
            "fence 1",
            "fence_2 17/16",
            "passes 2",
            "height 3/8",
            "first_height 1/8",
            "height_2 1/4");
    assertThat(work(run).depth()).hasToString("1/8 in");
  }

  @Test
  void eachHoleHasItsOwnPlaceAndAllHaveOneDiameter() {
    OperationRun run =
        runs(
                "{hole: through, face: inside, from: left, at: 1, across: 1, diameter: 1/4}\n"
                    + "      other: {hole: through, face: inside, from: right, at: 2, diameter: 1/4}",
                "- drill: [leg.cut, leg.other]\n  with: [clamps, backer]",
                Verb.DRILL)
            .get(0);
    assertThat(settings(run))
        .containsExactly("inset 1", "across 1", "inset_2 2", "across_2 2", "diameter 1/4");
    assertThat(run.settings()).extracting(Setting::datum).contains("left", "right", "bottom");
  }

  @Test
  void holesOfTwoDiametersNeedTwoOperations() {
    Checked<Lesson> lesson =
        workOut(
            "{hole: through, face: inside, from: left, at: 1, diameter: 1/4}\n"
                + "      other: {hole: through, face: inside, from: right, at: 2, diameter: 3/8}",
            "- drill: [leg.cut, leg.other]\n  with: [clamps, backer]");
    assertThat(lesson.findings()).extracting(Finding::code).contains("settings-differ");
  }

  @ParameterizedTest
  @CsvSource({"1, 14", "2, 133/5", "4, 45"})
  void aMiterTellsTheAngleBesideWhatItIsCutBy(String by, String degrees) {
    OperationRun run =
        runs(
                "{miter: right, from: bottom, by: " + by + "}",
                "- cut: leg.cut\n  with: [clamps]",
                Verb.CUT)
            .get(0);
    assertThat(settings(run)).containsExactly("by " + by, "angle " + degrees);
  }

  @Test
  void aSlantedEndIsNoLongerSquareAndTheMirroredPieceHasItAtTheOther() {
    OperationRun run =
        runs("{miter: right, from: bottom, by: 1}", "- cut: leg.cut\n  with: [clamps]", Verb.CUT)
            .get(0);
    Workpiece first = run.after().get(0);
    Workpiece second = run.after().get(1);
    assertThat(first.is(Side.RIGHT, State.SQUARE)).isFalse();
    assertThat(first.is(Side.LEFT, State.SQUARE)).isTrue();
    assertThat(second.is(Side.RIGHT, State.SQUARE)).isTrue();
    assertThat(second.is(Side.LEFT, State.SQUARE)).isFalse();
    assertThat(second.solid().isSameShape(first.solid().mirrored())).isTrue();
  }

  @Test
  void nothingIsMeasuredFromASlantedEnd() {
    Checked<Lesson> lesson =
        workOut(
            "{miter: right, from: bottom, by: 1}\n"
                + "      other: {rabbet: right, face: inside, width: 2, depth: 1/4}",
            "- cut: leg.cut\n  with: [clamps]\n- cut: leg.other" + AT_ENDS);
    assertThat(lesson.findings()).extracting(Finding::code).contains("no-squared-end");
  }

  @Test
  void aStackNeedsLinesOnOnePieceOnly() {
    String feature = "{curve: top, length: 4, rise: 1/2}";
    String op = "- square_end: leg 2\n  set: {trim: 1/64}\n- saw_curve: leg.cut\n  stacked: ";
    assertThat(workOut(feature, op + 2).findings())
        .extracting(Finding::code)
        .doesNotContain("not-laid-out");
    assertThat(workOut(feature, op + 1).findings())
        .extracting(Finding::code)
        .contains("not-laid-out");
  }

  @Test
  void theBladeRunsOnTheWasteSideOfEachLine() {
    String feature = "{curve: top, length: 4, rise: 1/2}";
    String op = "- saw_curve: leg.cut";
    assertThat(runs(feature, op, Verb.CROSSCUT).get(0).kerfSide()).isEqualTo(Side.RIGHT);
    assertThat(runs(feature, op, Verb.RIP).get(0).kerfSide()).isEqualTo(Side.TOP);
    assertThat(runs(feature, op, Verb.SQUARE_END).get(0).kerfSide()).isEqualTo(Side.LEFT);
    assertThat(runs(feature, op, Verb.SAW_CURVE).get(0).kerfSide()).isNull();
  }
}
