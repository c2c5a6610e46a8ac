package packetwright.plan.lesson;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.Step;
import packetwright.definition.procedure.Variant;
import packetwright.definition.project.Project;
import packetwright.definition.shop.Shop;
import packetwright.definition.size.Sizes;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.words.Words;
import packetwright.wood.assembly.Assembly;
import packetwright.wood.blank.Blank;
import packetwright.wood.blank.Blanks;
import packetwright.wood.caution.CautionRules;
import packetwright.wood.caution.Verdict;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.operation.Run;
import packetwright.wood.operation.Simulation;
import packetwright.wood.operation.Simulation.Inputs;
import packetwright.wood.operation.Simulation.Trace;
import packetwright.wood.part.Part;

/**
 * A procedure worked out, so that the same procedure with a change in it can be worked out quickly.
 *
 * @param fixed what no change of the procedure reaches
 * @param project with its blanks' sections
 * @param procedure as run
 * @param blanks as reckoned for it
 * @param sizes with the blanks' rough sizes
 * @param trace its run
 * @param findings about the blanks and the run
 */
record Plan(
    Fixed fixed,
    Project project,
    Procedure procedure,
    List<Blank> blanks,
    Sizes sizes,
    Trace trace,
    List<Finding> findings) {
  Plan {
    blanks = List.copyOf(blanks);
    findings = List.copyOf(findings);
  }

  /**
   * What stays the same whatever is tried.
   *
   * @param variant the procedure was read in
   * @param shop its machines
   * @param given sizes without those of the blanks
   * @param parts as drawn
   * @param assembly where they sit, or none where that is not known
   * @param rules of caution, or none where the shop's own could not be read
   */
  record Fixed(
      Variant variant,
      Shop shop,
      Sizes given,
      List<Part> parts,
      @Nullable Assembly assembly,
      @Nullable CautionRules rules) {}

  /** A procedure worked out from its beginning; none where the blanks cannot be reckoned. */
  static Checked<Plan> of(Fixed fixed, Project project, Procedure procedure) {
    return worked(fixed, project, procedure, null);
  }

  /** The same with a change, run again from the first operation that it reaches. */
  Checked<Plan> with(Change change) {
    return worked(fixed, change.in(project), change.in(procedure, fixed.variant()), this);
  }

  private static Checked<Plan> worked(
      Fixed fixed, Project project, Procedure procedure, @Nullable Plan before) {
    Checked<List<Blank>> blanks =
        Blanks.of(project, procedure, fixed.shop(), fixed.given(), fixed.parts());
    if (!blanks.hasValue()) {
      return new Checked<>(null, blanks.findings());
    }
    Sizes sizes = fixed.given().with(Blanks.sizes(blanks.value()));
    boolean canResume = before != null && before.blanks().equals(blanks.value());
    Trace trace =
        before != null && canResume
            ? before.trace().resumed(procedure, before.firstChanged(procedure))
            : Simulation.trace(inputs(fixed, project, procedure, sizes, blanks.value()));
    List<Finding> findings = new ArrayList<>(blanks.findings());
    findings.addAll(trace.result().findings());
    return new Checked<>(
        new Plan(fixed, project, procedure, blanks.value(), sizes, trace, findings), findings);
  }

  private static Inputs inputs(
      Fixed fixed, Project project, Procedure procedure, Sizes sizes, List<Blank> blanks) {
    return new Inputs(
        project, procedure, fixed.shop(), sizes, fixed.parts(), blanks, fixed.assembly());
  }

  Inputs inputs() {
    return inputs(fixed, project, procedure, sizes, blanks);
  }

  /** The operation, counted from 0, before which another procedure is the same as this. */
  int firstChanged(Procedure other) {
    int first = 0;
    for (int i = 0; i < Math.min(procedure.steps().size(), other.steps().size()); i++) {
      if (!procedure.steps().get(i).equals(other.steps().get(i))) {
        break;
      }
      first += procedure.steps().get(i).operations().size();
    }
    return Math.min(first, trace.length());
  }

  /** The run, where nothing stood in its way. */
  @Nullable Run run() {
    return trace.result().valueOrNull();
  }

  /** What the rules say, in the language of the packets. */
  Verdict verdict(Run run) {
    CautionRules rules = fixed.rules();
    if (rules == null) {
      throw new IllegalStateException("no rules to hold the run to");
    }
    return rules.apply(run, fixed.shop(), Words.of("en"));
  }

  /** The operations as they went, where nothing stood in the way of the run. */
  List<OperationRun> inOrder() {
    Run run = run();
    return run == null ? List.of() : run.operations();
  }

  /** How an operation went, by its place in the file; none where it was not done. */
  @Nullable OperationRun runOf(Operation operation) {
    return inOrder().stream()
        .filter(o -> o.operation().place().equals(operation.place()))
        .findFirst()
        .orElse(null);
  }

  /** The number of a step's first operation, counted from 0. */
  int firstOf(Step wanted) {
    int first = 0;
    for (Step step : procedure.steps()) {
      if (step.id().equals(wanted.id())) {
        return first;
      }
      first += step.operations().size();
    }
    throw new IllegalArgumentException("no step " + wanted.id());
  }
}
