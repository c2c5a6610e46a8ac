package packetwright.wood.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.Step;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Length;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.wood.operation.Simulation.Inputs;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Layout;

/** The whole procedure of the sliding-lid box, at its own size and at others. */
class SampleRunTest {
  private static final Lesson LESSON = lesson();

  private static Lesson lesson(String... set) {
    Checked<Lesson> lesson =
        Lessons.workOut(
            ProjectFolder.sample("sliding-lid-box"), new Request("", List.of(set), Set.of(), ""));
    assertThat(lesson.findings()).filteredOn(Finding::isError).isEmpty();
    return lesson.value();
  }

  private static Inputs inputs(Lesson lesson, Procedure procedure) {
    return new Inputs(
        lesson.project(),
        procedure,
        lesson.shop(),
        lesson.sizes(),
        lesson.parts(),
        lesson.blanks());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "board_width=2-7/8",
        "board_width=4",
        "board_width=101.6 mm",
        "board_width=5-1/2",
        "board_width=7-1/4",
        "box_length=14",
        "box_width=7",
        "stock_thickness=5/8",
        "panel_thickness=3/16",
        "panel_thickness=5/16",
        "play=1/64",
        "groove_inset=3/8",
        "clearance=1/8",
        "front_clearance=0"
      })
  void provesAtOtherSizes(String set) {
    assertThat(lesson(set).run().made()).hasSize(5);
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

  /** Every setting that bounds a kept surface, 1/64 in off either way: caught, its step named. */
  @TestFactory
  Stream<DynamicTest> boundSettingsOffByASixtyFourthAreCaught() {
    List<DynamicTest> tests = new ArrayList<>();
    forEachLength(
        Setting.Kind.BOUND,
        (index, setting) -> {
          for (int sign : List.of(1, -1)) {
            OperationRun run = LESSON.run().operations().get(index);
            Length off = setting.value().asLength().plus(Length.ofInches(sign, 64));
            tests.add(
                DynamicTest.dynamicTest(
                    run.step().label() + " " + setting.name() + " " + off,
                    () ->
                        assertThat(Simulation.run(with(index, setting.name(), off)).findings())
                            .filteredOn(Finding::isError)
                            .as("%s", off)
                            .extracting(Finding::step)
                            .contains(run.step().label())));
          }
        });
    assertThat(tests).as("settings tried").hasSizeGreaterThan(30);
    return tests.stream();
  }

  /** Every setting that only clears waste, moved both ways: nothing is said. */
  @TestFactory
  Stream<DynamicTest> freeSettingsMayBeOff() {
    List<DynamicTest> tests = new ArrayList<>();
    forEachLength(
        Setting.Kind.FREE,
        (index, setting) -> {
          for (int sign : List.of(1, -1)) {
            OperationRun run = LESSON.run().operations().get(index);
            Length off = setting.value().asLength().plus(Length.ofInches(sign, 32));
            tests.add(
                DynamicTest.dynamicTest(
                    run.step().label() + " " + setting.name() + " " + off,
                    () ->
                        assertThat(Simulation.run(with(index, setting.name(), off)).findings())
                            .isEmpty()));
          }
        });
    assertThat(tests).as("settings tried").hasSizeGreaterThan(10);
    return tests.stream();
  }

  /** Each step left out in turn. */
  @TestFactory
  Stream<DynamicTest> everyStepIsMissed() {
    List<Step> steps = LESSON.procedure().steps();
    return steps.stream()
        .map(
            left ->
                DynamicTest.dynamicTest(
                    left.label(),
                    () -> {
                      List<Step> rest =
                          steps.stream().filter(s -> s.number() != left.number()).toList();
                      Procedure shorter = new Procedure(LESSON.procedure().introduction(), rest);
                      assertThat(Simulation.run(inputs(LESSON, shorter)).findings()).isNotEmpty();
                    }));
  }

  private interface SettingUse {
    void accept(int operation, Setting setting);
  }

  private static void forEachLength(Setting.Kind kind, SettingUse use) {
    List<OperationRun> runs = LESSON.run().operations();
    IntStream.range(0, runs.size())
        .forEach(
            index ->
                runs.get(index).settings().stream()
                    .filter(s -> s.kind() == kind)
                    .filter(s -> s.value().dimension() == Dimension.LENGTH)
                    .filter(s -> !s.name().equals("each_pass")) // follows from the machine
                    .forEach(s -> use.accept(index, s)));
  }

  /** The sample with one setting of one operation written out. */
  private static Inputs with(int index, String setting, Length value) {
    OperationRun changed = LESSON.run().operations().get(index);
    List<Step> steps = new ArrayList<>();
    for (Step step : LESSON.procedure().steps()) {
      List<Operation> operations = new ArrayList<>();
      for (Operation operation : step.operations()) {
        boolean isIt =
            operation.place().equals(changed.operation().place())
                && step.number() == changed.step().number();
        operations.add(
            isIt
                ? operation.withSetting(
                    setting, new Located<>(value.inches() + " in", operation.place()))
                : operation);
      }
      steps.add(step.with(operations));
    }
    return inputs(LESSON, new Procedure(LESSON.procedure().introduction(), steps));
  }
}
