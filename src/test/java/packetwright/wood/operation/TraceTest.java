package packetwright.wood.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.Step;
import packetwright.plan.lesson.Lesson;
import packetwright.wood.operation.Simulation.Inputs;
import packetwright.wood.operation.Simulation.Trace;

/** A run taken up again comes to the same as one from the beginning. */
class TraceTest {
  private static final List<SampleTrial> SAMPLES = SampleTrial.all();

  private static Inputs inputs(Lesson lesson) {
    return new Inputs(
        lesson.project(),
        lesson.procedure(),
        lesson.shop(),
        lesson.sizes(),
        lesson.parts(),
        lesson.blanks(),
        lesson.assembly());
  }

  @Example
  void isTheSameFromEveryOperationOfEverySample() {
    for (SampleTrial sample : SAMPLES) {
      Inputs inputs = inputs(sample.lesson());
      Trace whole = Simulation.trace(inputs);
      assertThat(whole.length()).isEqualTo(sample.operations().size()).isGreaterThan(10);
      for (int operation = 0; operation <= whole.length(); operation++) {
        Trace resumed = whole.resumed(inputs.procedure(), operation);
        assertThat(resumed.result()).as(sample.id() + " " + operation).isEqualTo(whole.result());
      }
    }
  }

  @Provide
  Arbitrary<SampleTrial> samples() {
    return Arbitraries.of(SAMPLES);
  }

  /** Errors and all: the same is found whether the beginning is run again or not. */
  @Property(tries = 60, seed = "7")
  void isTheSameWhereALaterOperationIsLeftOut(
      @ForAll("samples") SampleTrial sample,
      @ForAll @IntRange(max = 999) int cut,
      @ForAll @IntRange(max = 999) int from) {
    Inputs inputs = inputs(sample.lesson());
    Trace whole = Simulation.trace(inputs);
    int left = cut * whole.length() / 1000;
    int operation = from * (firstOfStep(inputs.procedure(), left) + 1) / 1000;
    Procedure changed = without(inputs.procedure(), left);
    Trace fresh = Simulation.trace(inputs.with(changed));
    Trace resumed = whole.resumed(changed, operation);
    assertThat(resumed.result()).isEqualTo(fresh.result());
    assertThat(resumed.length()).isEqualTo(fresh.length());
  }

  /** The first operation of the step that an operation belongs to. */
  private static int firstOfStep(Procedure procedure, int operation) {
    int first = 0;
    for (Step step : procedure.steps()) {
      if (first + step.operations().size() > operation) {
        return first;
      }
      first += step.operations().size();
    }
    throw new IllegalArgumentException("no operation " + operation);
  }

  private static Procedure without(Procedure procedure, int left) {
    List<Step> steps = new ArrayList<>();
    int index = 0;
    for (Step step : procedure.steps()) {
      List<Operation> kept = new ArrayList<>();
      for (Operation operation : step.operations()) {
        if (index++ != left) {
          kept.add(operation);
        }
      }
      // A step that keeps all of its operations is the very same step.
      steps.add(kept.size() == step.operations().size() ? step : step.with(kept));
    }
    return procedure.with(steps);
  }
}
