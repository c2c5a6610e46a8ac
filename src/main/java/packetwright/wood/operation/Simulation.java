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
   */
  public record Inputs(
      Project project,
      Procedure procedure,
      Shop shop,
      Sizes sizes,
      List<Part> parts,
      List<Blank> blanks,
      @Nullable Assembly assembly) {
    /** Keeps its own copies. */
    public Inputs {
      parts = List.copyOf(parts);
      blanks = List.copyOf(blanks);
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

  /** Runs every operation, then compares every part as made with the part as drawn. */
  public static Checked<Run> run(Inputs inputs) {
    Findings findings = new Findings();
    List<OperationRun> done = new ArrayList<>();
    Told told = new Told();
    findings.addAll(wrongNames(inputs, told));
    if (findings.hasErrors()) {
      return findings.checked(null);
    }
    Bench bench = Bench.empty();
    for (Step step : inputs.procedure().steps()) {
      for (Operation operation : step.operations()) {
        Situation situation = new Situation(inputs, step, operation, bench, done, told);
        Outcome outcome = verb(situation);
        situation.settings().refuseUnknown();
        if (outcome != null) {
          Order.check(situation, outcome.run());
        }
        findings.addAll(situation.findings());
        if (outcome == null || situation.settings().isStopped()) {
          return findings.checked(null);
        }
        done.add(outcome.run());
        bench = outcome.bench();
      }
    }
    Run run = new Run(LayoutLines.drawn(done, inputs), made(inputs, bench));
    findings.addAll(Proof.check(inputs, run, told));
    findings.addAll(Joining.loose(inputs));
    findings.addAll(Order.thinWalls(inputs));
    return findings.checked(run);
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
