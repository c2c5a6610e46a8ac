package packetwright.wood.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.Step;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.wood.operation.Simulation.Inputs;

/** The box at any size, in another order, and with a hole and a dado. */
class OtherProjectsTest {
  private static final ProjectFolder BOX = ProjectFolder.sample("sliding-lid-box");

  @Property(tries = 60)
  void atAnySizeEveryPartIsProvenOrSomethingIsFound(
      @ForAll @IntRange(min = 184, max = 464) int boardWidth,
      @ForAll @IntRange(min = 576, max = 896) int boxLength,
      @ForAll @IntRange(min = 288, max = 448) int boxWidth,
      @ForAll @IntRange(min = 24, max = 40) int stock,
      @ForAll @IntRange(min = 12, max = 20) int panel,
      @ForAll @IntRange(min = 1, max = 4) int play,
      @ForAll @IntRange(min = 12, max = 24) int inset,
      @ForAll @IntRange(min = 2, max = 8) int clearance) {
    List<String> set =
        List.of(
            "board_width=" + boardWidth + "/64",
            "box_length=" + boxLength + "/64",
            "box_width=" + boxWidth + "/64",
            "stock_thickness=" + stock + "/64",
            "panel_thickness=" + panel + "/64",
            "play=" + play + "/64",
            "groove_inset=" + inset + "/64",
            "clearance=" + clearance + "/64");
    Checked<Lesson> lesson = Lessons.workOut(BOX, new Request("", set, Set.of(), ""));
    if (lesson.findings().stream().anyMatch(Finding::isError)) {
      assertThat(lesson.hasValue()).isFalse();
      assertThat(lesson.findings()).extracting(Finding::message).doesNotContain("");
    } else {
      assertThat(lesson.value().run().made().values()).allMatch(pieces -> !pieces.isEmpty());
    }
  }

  @TestFactory
  Stream<DynamicTest> neighbouringStepsMaySwapWithoutAnException() {
    Lesson lesson = Lessons.workOut(BOX, Request.plain()).value();
    List<Step> steps = lesson.procedure().steps();
    return IntStream.range(0, steps.size() - 1)
        .mapToObj(
            i ->
                DynamicTest.dynamicTest(
                    steps.get(i).label(), () -> runs(lesson, swapped(steps, i))));
  }

  @TestFactory
  Stream<DynamicTest> neighbouringOperationsMaySwapWithoutAnException() {
    Lesson lesson = Lessons.workOut(BOX, Request.plain()).value();
    List<DynamicTest> tests = new ArrayList<>();
    for (Step step : lesson.procedure().steps()) {
      for (int i = 0; i < step.operations().size() - 1; i++) {
        List<Operation> operations = swapped(step.operations(), i);
        Step other = step.with(operations);
        List<Step> steps = new ArrayList<>(lesson.procedure().steps());
        steps.replaceAll(s -> s.number() == step.number() ? other : s);
        tests.add(DynamicTest.dynamicTest(step.label() + " " + i, () -> runs(lesson, steps)));
      }
    }
    return tests.stream();
  }

  private static <T> List<T> swapped(List<T> list, int i) {
    List<T> other = new ArrayList<>(list);
    other.set(i, list.get(i + 1));
    other.set(i + 1, list.get(i));
    return other;
  }

  /** Either every part comes out as drawn, or something is said. */
  private static void runs(Lesson lesson, List<Step> steps) {
    Procedure procedure = lesson.procedure().with(steps);
    Checked<Run> run =
        Simulation.run(
            new Inputs(
                lesson.project(),
                procedure,
                lesson.shop(),
                lesson.sizes(),
                lesson.parts(),
                lesson.blanks()));
    assertThat(run.hasValue() || !run.findings().isEmpty()).isTrue();
  }

  /** The box with a hole in its bottom and a dado across a side, some settings written out. */
  private static Checked<Lesson> withHoleAndDado(String drilled, String dadoed) {
    String project =
        BOX.text("project.yaml")
            .value()
            .replace(
                "size: [bottom_length, bottom_width, panel_thickness]",
                "size: [bottom_length, bottom_width, panel_thickness]\n    features:\n"
                    + "      peg: {hole: through, face: outside, from: left, at: 2, across: 1,"
                    + " diameter: 3/8}\n"
                    + "      dimple: {hole: blind, face: outside, from: bottom, at: 1,"
                    + " diameter: 1/4, depth: 1/8}")
            .replace(
                "    features:\n      end_rabbets:",
                "    features:\n      divider: {dado: across, face: inside, from: left, at: 4,"
                    + " width: 1/4, depth: 1/8}\n      end_rabbets:");
    String procedure =
        BOX.text("procedure.md")
            .value()
            .replace(
                "- cut: side.end_rabbets",
                "- cut: side.divider\n  from: left\n  at: dado_set\n  with: [miter_gauge, clamps]\n"
                    + dadoed
                    + "- cut: side.end_rabbets")
            .replace(
                "- sand: [side,",
                "- drill: bottom.peg\n  with: [clamps, backer]\n"
                    + drilled
                    + "- drill: bottom.dimple\n  with: [clamps]\n- sand: [side,");
    return Lessons.workOut(
        BOX.with("project.yaml", project).with("procedure.md", procedure), Request.plain());
  }

  @ParameterizedTest
  @CsvSource({
    "'', ''",
    "inset, 2",
    "across, 1",
    "diameter, 3/8",
  })
  void holesAndADadoAreProven(String setting, String value) {
    String set = setting.isEmpty() ? "" : "  set: {" + setting + ": " + value + "}\n";
    Checked<Lesson> lesson = withHoleAndDado(set, "");
    assertThat(lesson.findings()).isEmpty();
    assertThat(lesson.value().run().made()).containsKey("bottom");
  }

  @ParameterizedTest
  @CsvSource({"inset, 2 1/64", "inset, 1 63/64", "across, 1 1/64", "diameter, 23/64"})
  void aHoleThatIsOffIsFound(String setting, String value) {
    assertThat(withHoleAndDado("  set: {" + setting + ": " + value + "}\n", "").findings())
        .filteredOn(Finding::isError)
        .extracting(Finding::code)
        .contains("part-differs");
  }

  @ParameterizedTest
  @CsvSource({"fence, 4 1/64", "fence, 3 63/64", "cutter, 15/64", "height, 9/64", "height, 7/64"})
  void aDadoThatIsOffIsFound(String setting, String value) {
    assertThat(withHoleAndDado("", "  set: {" + setting + ": " + value + "}\n").findings())
        .filteredOn(Finding::isError)
        .extracting(Finding::step)
        .anyMatch(step -> step.contains("Cut the rabbets"));
  }
}
