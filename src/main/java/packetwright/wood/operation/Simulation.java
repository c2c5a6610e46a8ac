package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.Step;
import packetwright.definition.project.Project;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.definition.size.Sizes;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.wood.assembly.Assembly;
import packetwright.wood.blank.Blank;
import packetwright.wood.part.Part;
import packetwright.wood.workpiece.Bench;
import packetwright.wood.workpiece.Workpiece;

/**
 * Runs the procedure on simulated workpieces. Each operation reckons its settings from the piece as
 * it is then, and the settings, not the drawn features, make the cuts; so whether the parts come
 * out as drawn is a result and not an assumption.
 *
 * <p>An operation that lacks something it needs (a flat face, a squared end) is a finding, and its
 * cut is made all the same, so that one mistake gives one finding. An operation that cannot be made
 * at all ends the run. Names are looked at before anything is run.
 */
public final class Simulation {
  private Simulation() {}

  /**
   * What a run needs.
   *
   * @param project with its joints and supplies
   * @param procedure in the variant to run
   * @param shop its machines
   * @param sizes with the blanks' rough sizes
   * @param parts as drawn
   * @param blanks as reckoned
   * @param assembly where the parts sit, for fasteners; none where that is not known, and then none
   *     are placed
   * @param waste how much of it there is
   */
  public record Inputs(
      Project project,
      Procedure procedure,
      Shop shop,
      Sizes sizes,
      List<Part> parts,
      List<Blank> blanks,
      @Nullable Assembly assembly,
      Waste waste) {
    /** Keeps its own copies. */
    public Inputs {
      parts = List.copyOf(parts);
      blanks = List.copyOf(blanks);
    }

    /** With as much waste as was reckoned. */
    public Inputs(
        Project project,
        Procedure procedure,
        Shop shop,
        Sizes sizes,
        List<Part> parts,
        List<Blank> blanks,
        @Nullable Assembly assembly) {
      this(project, procedure, shop, sizes, parts, blanks, assembly, Waste.AS_RECKONED);
    }

    /** Where nothing is known of how the parts sit. */
    public Inputs(
        Project project,
        Procedure procedure,
        Shop shop,
        Sizes sizes,
        List<Part> parts,
        List<Blank> blanks) {
      this(project, procedure, shop, sizes, parts, blanks, null);
    }

    /** The same with another procedure. */
    public Inputs with(Procedure other) {
      return new Inputs(project, other, shop, sizes, parts, blanks, assembly, waste);
    }

    /** The same on larger blanks, with more left and more taken off. */
    Inputs withMoreWaste() {
      return new Inputs(project, procedure, shop, sizes, parts, blanks, assembly, Waste.MORE);
    }

    /** A part by name, or none. */
    @Nullable Part part(String name) {
      return parts.stream().filter(p -> p.name().equals(name)).findFirst().orElse(null);
    }

    /** A blank by name, or none. */
    @Nullable Blank blank(String name) {
      return blanks.stream().filter(b -> b.name().equals(name)).findFirst().orElse(null);
    }

    /** A length as messages print it. */
    String print(packetwright.text.measure.Length length) {
      return project.rule().printExactly(length).toString();
    }
  }

  /**
   * How much waste there is. Blanks are seldom exactly as large as reckoned, and nobody trims off
   * exactly so much; so a run that proves is done once more with other amounts, and nothing that
   * counts may come out otherwise.
   */
  enum Waste {
    AS_RECKONED,
    MORE
  }

  /** Runs every operation, then compares every part as made with the part as drawn. */
  public static Checked<Run> run(Inputs inputs) {
    return trace(inputs).result();
  }

  /** The same, with what is needed to take the run up again before any operation. */
  public static Trace trace(Inputs inputs) {
    return new Trace(inputs, List.of(Moment.FIRST), List.of(), List.of());
  }

  /**
   * How everything stood just before an operation, or after the last.
   *
   * @param bench what lay there
   * @param told what had been said
   * @param found how many findings there were
   */
  private record Moment(Bench bench, Told told, int found) {
    static final Moment FIRST = new Moment(Bench.empty(), new Told(), 0);
  }

  /**
   * A run that can be taken up again before any of its operations, so that trying a change does not
   * repeat what comes before it.
   */
  public static final class Trace {
    private final Inputs inputs;
    private final List<Moment> moments;
    private final List<OperationRun> done;
    private final List<Finding> findings;
    private final Checked<Run> result;

    /** Goes on from the last of the moments, after the operations that led to it. */
    private Trace(
        Inputs inputs, List<Moment> moments, List<OperationRun> done, List<Finding> findings) {
      this.inputs = inputs;
      this.moments = new ArrayList<>(moments);
      this.done = new ArrayList<>(done);
      this.findings = new ArrayList<>(findings);
      boolean isAgain = inputs.waste() == Waste.MORE;
      List<Finding> wrong = isAgain ? List.of() : wrongNames(inputs, new Told());
      this.result = wrong.isEmpty() ? goOn() : new Checked<>(null, wrong);
    }

    /** What the run came to. */
    public Checked<Run> result() {
      return result;
    }

    /** How many operations were done; fewer than are written where one could not be. */
    public int length() {
      return done.size();
    }

    /** What lay on the bench before an operation, counted from 0; after the last at the end. */
    public Bench before(int operation) {
      return moments.get(operation).bench();
    }

    /**
     * The run of another procedure that begins like this one. What an operation before finds about
     * one that comes later is not looked for again.
     *
     * @param changed whose operations before that one are the same, in the same steps
     * @param operation the first that is run again, from 0, at most {@link #length}
     */
    public Trace resumed(Procedure changed, int operation) {
      return new Trace(
          inputs.with(changed),
          moments.subList(0, operation + 1),
          done.subList(0, operation),
          findings.subList(0, moments.get(operation).found()));
    }

    private Checked<Run> goOn() {
      int index = 0;
      for (Step step : inputs.procedure().steps()) {
        for (Operation operation : step.operations()) {
          if (index++ >= done.size() && !goOn(step, operation)) {
            return new Checked<>(null, findings);
          }
        }
      }
      Moment end = moments.get(done.size());
      if (inputs.waste() == Waste.MORE) {
        return Checked.of(new Run(done, made(inputs, end.bench())));
      }
      Run run = new Run(LayoutLines.drawn(done, inputs), made(inputs, end.bench()));
      Findings all = new Findings();
      all.addAll(findings);
      all.addAll(Proof.check(inputs, run, end.told()));
      all.addAll(Joining.loose(inputs));
      all.addAll(Order.thinWalls(inputs));
      Run again = all.hasErrors() ? null : trace(inputs.withMoreWaste()).result().valueOrNull();
      if (again != null) {
        all.addAll(Proof.ofWaste(inputs, run, again));
      }
      return all.checked(run);
    }

    /** Does one operation; answers whether the next can be done. */
    private boolean goOn(Step step, Operation operation) {
      Moment now = moments.get(done.size());
      Told told = now.told().copy();
      Situation situation = new Situation(inputs, step, operation, now.bench(), done, told);
      Outcome outcome = verb(situation);
      situation.settings().refuseUnknown();
      if (outcome != null) {
        Order.check(situation, outcome.run());
      }
      findings.addAll(situation.findings());
      if (outcome == null || situation.settings().isStopped()) {
        return false;
      }
      done.add(outcome.run());
      Bench bench = Order.fitsAfter(outcome.run(), outcome.bench());
      moments.add(new Moment(bench, told, findings.size()));
      return true;
    }
  }

  /** Which tools can do an operation at all; none are named for work that any may help with. */
  public static List<MachineKind> tools(Inputs inputs, Operation operation) {
    return ToolCheck.tools(inputs, operation);
  }

  private static List<Finding> wrongNames(Inputs inputs, Told told) {
    List<Finding> findings = new ArrayList<>();
    for (Step step : inputs.procedure().steps()) {
      for (Operation operation : step.operations()) {
        Situation situation =
            new Situation(inputs, step, operation, Bench.empty(), List.of(), told);
        NameCheck.check(situation);
        if (situation.findings().isEmpty()) {
          ToolCheck.check(situation);
        }
        findings.addAll(situation.findings());
      }
    }
    return findings;
  }

  /** What an operation came to. */
  record Outcome(Bench bench, OperationRun run) {}

  private static @Nullable Outcome verb(Situation situation) {
    return switch (situation.operation().verb().value()) {
      case ROUGH_CUT -> Milling.roughCut(situation);
      case PLANE_TO_THICKNESS -> Milling.planeToThickness(situation);
      case JOINT_FACE -> Milling.jointFace(situation);
      case JOINT_EDGE -> Milling.jointEdge(situation);
      case RIP -> Parting.rip(situation);
      case SQUARE_END -> Parting.squareEnd(situation);
      case CROSSCUT -> Parting.crosscut(situation);
      case CUT_TO_FIT -> Handwork.cutToFit(situation);
      case CUT -> Shaping.cut(situation);
      case DRILL -> Handcut.drill(situation);
      case LAY_OUT -> Handwork.layOut(situation);
      case INSPECT -> Handwork.inspect(situation);
      case SAND -> Handwork.sand(situation);
      case EASE -> Handwork.ease(situation);
      case FINISH -> Handwork.finish(situation);
      case DRY_FIT -> Joining.dryFit(situation);
      case GLUE -> Joining.glue(situation);
      case NAIL, SCREW -> Joining.fasten(situation);
      case SAW_CURVE -> Profiles.sawCurve(situation);
      case ROUT -> Profiles.edge(situation);
    };
  }

  private static Map<String, List<Workpiece>> made(Inputs inputs, Bench bench) {
    Map<String, List<Workpiece>> made = new LinkedHashMap<>();
    for (Part part : inputs.parts()) {
      made.put(part.name(), bench.named(part.name()));
    }
    return made;
  }
}
