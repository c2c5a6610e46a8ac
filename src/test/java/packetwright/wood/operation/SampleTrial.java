package packetwright.wood.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Step;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.shop.ShopReader;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.measure.Length;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.wood.operation.Simulation.Inputs;
import packetwright.wood.part.Difference;
import packetwright.wood.part.Part;
import packetwright.wood.workpiece.Workpiece;

/** A sample worked out once, whose procedure is then run with something changed in it. */
record SampleTrial(String id, Lesson lesson) {
  private static final String HAND_SHOP = "hand-shop.yaml";

  /** All samples, as their authors left them. */
  static List<SampleTrial> all() {
    return ProjectFolder.samples().stream().map(name -> of(name)).toList();
  }

  /** All samples twice: as their authors left them, and in a shop with hand tools only. */
  static List<SampleTrial> inBothShops() {
    List<SampleTrial> all = new ArrayList<>(all());
    ProjectFolder.samples().forEach(name -> all.add(byHand(name)));
    return all;
  }

  /** A sample that must prove with those values. */
  static SampleTrial of(String sample, String... set) {
    return of(sample, ProjectFolder.sample(sample), new Request("", List.of(set), Set.of(), ""));
  }

  /** A sample that must prove in a shop with hand tools only. */
  static SampleTrial byHand(String sample) {
    return of(
        sample + " by hand",
        ProjectFolder.sample(sample).with(HAND_SHOP, ShopReader.profile(ShopReader.HAND_TOOLS)),
        new Request(HAND_SHOP, List.of(), Set.of(), ""));
  }

  private static SampleTrial of(String id, ProjectFolder folder, Request request) {
    Checked<Lesson> lesson = Lessons.workOut(folder, request);
    assertThat(lesson.findings()).filteredOn(Finding::isError).as(id).isEmpty();
    return new SampleTrial(id, lesson.value());
  }

  List<Step> steps() {
    return lesson.procedure().steps();
  }

  List<OperationRun> operations() {
    return lesson.run().operations();
  }

  /** How far what only clears waste may be off: a machine leaves more to clear than a plane. */
  Length slack() {
    return lesson.shop().machines().isEmpty() ? Length.ofInches(1, 64) : Length.ofInches(1, 32);
  }

  Stream<Integer> indices() {
    return IntStream.range(0, operations().size()).boxed();
  }

  /** The steps in another order, or with some left out; they are numbered anew. */
  Checked<Run> run(List<Step> steps) {
    List<Step> numbered = new ArrayList<>();
    for (Step step : steps) {
      numbered.add(numbered(step, numbered.size() + 1, step.operations()));
    }
    return Simulation.run(
        new Inputs(
            lesson.project(),
            lesson.procedure().with(numbered),
            lesson.shop(),
            lesson.sizes(),
            lesson.parts(),
            lesson.blanks()));
  }

  private static Step numbered(Step step, int number, List<Operation> operations) {
    return new Step(
        number, step.mark(), step.id(), step.title(), step.at(), operations, step.prose());
  }

  Checked<Run> without(Step left) {
    return run(steps().stream().filter(s -> s.number() != left.number()).toList());
  }

  Checked<Run> withStepsSwapped(int first) {
    List<Step> steps = new ArrayList<>(steps());
    Collections.swap(steps, first, first + 1);
    return run(steps);
  }

  /** With one setting of one operation written out. */
  Checked<Run> with(int index, String setting, Length value) {
    List<Operation> changed = new ArrayList<>();
    operations().forEach(run -> changed.add(run.operation()));
    Operation operation = changed.get(index);
    changed.set(
        index,
        operation.withSetting(setting, new Located<>(value.inches() + " in", operation.place())));
    return runOperations(changed);
  }

  /** The operations in another order; each step keeps as many as it had. */
  Checked<Run> inOrder(List<Integer> order) {
    return runOperations(order.stream().map(i -> operations().get(i).operation()).toList());
  }

  private Checked<Run> runOperations(List<Operation> all) {
    List<Step> steps = new ArrayList<>();
    int next = 0;
    for (Step step : steps()) {
      int end = next + step.operations().size();
      steps.add(numbered(step, step.number(), all.subList(next, end)));
      next = end;
    }
    assertThat(next).as("operations run").isEqualTo(all.size());
    return run(steps);
  }

  /** Whether a run proved; then every piece is there and has the shape that is drawn. */
  boolean proves(Checked<Run> run) {
    if (run.findings().stream().anyMatch(Finding::isError)) {
      return false;
    }
    for (Part part : lesson.parts()) {
      List<Workpiece> made = run.value().made().get(part.name());
      assertThat(made).as(part.name()).hasSize(part.count());
      for (Workpiece piece : made) {
        assertThat(Difference.between(piece.solid(), part.solidOf(piece.name())))
            .as(piece.name())
            .isNull();
      }
    }
    return true;
  }
}
