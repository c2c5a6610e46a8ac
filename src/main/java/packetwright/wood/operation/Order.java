package packetwright.wood.operation;

import static packetwright.definition.procedure.Verb.CROSSCUT;
import static packetwright.definition.procedure.Verb.CUT;
import static packetwright.definition.procedure.Verb.CUT_TO_FIT;
import static packetwright.definition.procedure.Verb.DRILL;
import static packetwright.definition.procedure.Verb.EASE;
import static packetwright.definition.procedure.Verb.JOINT_EDGE;
import static packetwright.definition.procedure.Verb.JOINT_FACE;
import static packetwright.definition.procedure.Verb.PLANE_TO_THICKNESS;
import static packetwright.definition.procedure.Verb.RIP;
import static packetwright.definition.procedure.Verb.ROUT;
import static packetwright.definition.procedure.Verb.SAW_CURVE;
import static packetwright.definition.procedure.Verb.SQUARE_END;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Step;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Length;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.Span;
import packetwright.wood.operation.Simulation.Inputs;
import packetwright.wood.part.Part;
import packetwright.wood.part.ThinWall;
import packetwright.wood.workpiece.Bench;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/** Mistakes that no shape shows: what is done too early or too late, and walls left too thin. */
final class Order {
  private static final Set<Verb> CUTS =
      EnumSet.of(
          CROSSCUT,
          CUT,
          CUT_TO_FIT,
          DRILL,
          JOINT_EDGE,
          JOINT_FACE,
          PLANE_TO_THICKNESS,
          RIP,
          ROUT,
          SAW_CURVE,
          SQUARE_END);

  /** Cuts for which a piece lies on a machine's table by itself. */
  private static final Set<Verb> BY_ITSELF =
      EnumSet.of(
          CROSSCUT,
          CUT,
          CUT_TO_FIT,
          DRILL,
          EASE,
          JOINT_EDGE,
          JOINT_FACE,
          PLANE_TO_THICKNESS,
          RIP,
          ROUT,
          SAW_CURVE,
          SQUARE_END);

  /** Powered tools that come to the wood, so that it may be part of something larger. */
  private static final Set<MachineKind> IN_THE_HAND =
      EnumSet.of(MachineKind.HANDHELD_ROUTER, MachineKind.ORBITAL_SANDER, MachineKind.NAILER);

  /** Cuts that do not change how a piece fits into others. */
  private static final Set<Verb> KEEPS_THE_FIT = EnumSet.of(DRILL, ROUT, SAW_CURVE);

  private static final Set<Verb> JOINS = EnumSet.of(Verb.GLUE, Verb.NAIL, Verb.SCREW);

  private static final Set<MachineKind> SANDERS =
      EnumSet.of(MachineKind.BELT_SANDER, MachineKind.DISC_SANDER, MachineKind.ORBITAL_SANDER);

  /** Where a shop states no wall of its own: common practice, no source. */
  private static final Length THINNEST_WALL = Length.ofInches(1, 8);

  private Order() {}

  /** Notes what is wrong about the moment at which an operation is done. */
  static void check(Situation s, OperationRun run) {
    Verb verb = run.operation().verb().value();
    MachineKind tool = run.tool();
    if (CUTS.contains(verb)) {
      requireNone(
          "cut-after-finish",
          s,
          finished(run),
          " finished already, and this cut makes bare wood again",
          "move `finish` after this operation");
    }
    if (verb == Verb.GLUE) {
      requireNone(
          "finish-before-glue",
          s,
          finished(run),
          " finished already, and glue does not hold on a finish",
          "move `finish` after the glue");
    }
    if (BY_ITSELF.contains(verb) && tool != null && isStationary(tool)) {
      requireNone(
          "piece-glued-in",
          s,
          run.before().stream().filter(p -> s.bench().isJoined(p.name())).toList(),
          " joined to other pieces already, and cannot lie on the machine alone",
          "move this operation before the pieces are joined");
    }
    if (verb == Verb.SAND) {
      sanded(s, run);
      gritsRise(s, run);
    }
  }

  private static boolean isStationary(MachineKind tool) {
    return tool.isPowered() && !IN_THE_HAND.contains(tool);
  }

  /** What lies on the bench after an operation: a piece that was cut must be fitted dry again. */
  static Bench fitsAfter(OperationRun run, Bench bench) {
    Verb verb = run.operation().verb().value();
    return CUTS.contains(verb) && !KEEPS_THE_FIT.contains(verb)
        ? bench.withoutDryFit(run.before().stream().map(Workpiece::name).toList())
        : bench;
  }

  private static List<Workpiece> finished(OperationRun run) {
    return run.before().stream()
        .filter(p -> Arrays.stream(Side.values()).anyMatch(side -> p.is(side, State.FINISHED)))
        .toList();
  }

  private static void requireNone(
      String code, Situation s, List<Workpiece> wrong, String why, String hint) {
    if (!wrong.isEmpty() && s.told().isNew(code, s.operation().place().toString())) {
      s.error(code, Listing.are(wrong.stream().map(Workpiece::name).toList()) + why, hint);
    }
  }

  /** A squared end that is sanded is no longer square, nor an edge that a machine has sanded. */
  private static void sanded(Situation s, OperationRun run) {
    boolean isMachine = run.tool() != null && SANDERS.contains(run.tool());
    for (Workpiece piece : run.before()) {
      for (Side side : sides(run)) {
        boolean isReference =
            (side.axis() == 0 && piece.is(side, State.SQUARE))
                || (side.axis() == 1 && isMachine && piece.is(side, State.STRAIGHT));
        if (isReference && isJoinedLater(s, piece)) {
          s.error(
              "reference-sanded",
              "the "
                  + Listing.side(side)
                  + " of `"
                  + piece.name()
                  + "` is square for the joint, and sanding rounds it before the joint is made",
              "name the faces under `sides`, or sand after the joint is made");
          return;
        }
      }
    }
  }

  /**
   * Warns where paper is coarser than what the same side was sanded with before: it scratches what
   * is smooth already. Common practice, no source.
   */
  private static void gritsRise(Situation s, OperationRun run) {
    int before = 0;
    for (int grit : run.operation().grits()) {
      if (grit < before) {
        List<Integer> sorted = run.operation().grits().stream().sorted().toList();
        backwards(s, before + " grit comes before " + grit, "write `grits: " + sorted + "`");
        return;
      }
      before = grit;
    }
    for (Workpiece piece : run.before()) {
      for (Side side : sides(run)) {
        OperationRun last = piece.is(side, State.SANDED) ? lastSanding(s, piece, side) : null;
        if (last != null && !run.operation().grits().isEmpty()) {
          List<Integer> grits = last.operation().grits();
          int fine = grits.get(grits.size() - 1);
          int now = run.operation().grits().get(0);
          if (now < fine) {
            String what = "the " + Listing.side(side) + " of `" + piece.name() + "`";
            backwards(
                s,
                what + " was sanded with " + fine + " grit before " + now,
                "leave out what is coarser than "
                    + fine
                    + ", or name under `sides` only what was not sanded before");
            return;
          }
        }
      }
    }
  }

  private static void backwards(Situation s, String what, String hint) {
    Span place = s.operation().place();
    String message = what + "; the coarser paper scratches what is smooth already";
    s.addAll(List.of(Finding.warning("grits-backwards", place, message, hint)));
  }

  /** The last sanding of a side of a piece, or of its blank, that says with which grits. */
  private static @Nullable OperationRun lastSanding(Situation s, Workpiece piece, Side side) {
    Set<String> names = Set.of(piece.name(), piece.blank());
    return s.earlier().stream()
        .filter(r -> r.operation().verb().value() == Verb.SAND)
        .filter(r -> !r.operation().grits().isEmpty() && sides(r).contains(side))
        .filter(r -> r.before().stream().anyMatch(p -> names.contains(p.name())))
        .reduce((first, second) -> second)
        .orElse(null);
  }

  private static List<Side> sides(OperationRun run) {
    List<Side> sides = run.operation().sides();
    return sides.isEmpty() ? List.of(Side.values()) : sides;
  }

  private static boolean isJoinedLater(Situation s, Workpiece piece) {
    List<Operation> all =
        s.inputs().procedure().steps().stream().flatMap(p -> p.operations().stream()).toList();
    Set<String> joints = new java.util.TreeSet<>();
    for (Operation later : all.subList(s.index() + 1, all.size())) {
      if (JOINS.contains(later.verb().value())) {
        later.targets().forEach(target -> joints.add(target.value()));
      }
    }
    return s.inputs().project().assembly().joints().stream()
        .filter(joint -> joints.contains(joint.name().value()))
        .flatMap(joint -> joint.pieces().stream())
        .map(Located::value)
        .anyMatch(name -> name.equals(piece.name()) || name.equals(Part.nameOf(piece.name())));
  }

  /** What is thinner breaks easily, and leads nothing along a fence. */
  static Length thinnestWall(Inputs inputs) {
    Length stated = inputs.shop().allowance("thinnest_wall");
    return stated.signum() > 0 ? stated : THINNEST_WALL;
  }

  /**
   * Warns of each wall that a cut leaves thinner than the shop wants. It is no error, since such a
   * wall can be cut and only breaks easily.
   */
  static List<Finding> thinWalls(Inputs inputs) {
    Length least = thinnestWall(inputs);
    List<Finding> findings = new ArrayList<>();
    for (Part part : inputs.parts()) {
      for (ThinWall wall : ThinWall.of(part, least)) {
        String target = part.name() + "." + wall.feature().name();
        findings.add(
            at(
                inputs,
                target,
                Finding.warning(
                    "wall-too-thin",
                    part.at(),
                    "`"
                        + target
                        + "` leaves a wall only "
                        + inputs.print(wall.thickness())
                        + " thick; under "
                        + inputs.print(least)
                        + " it breaks easily",
                    "move the feature, make it smaller, or choose thicker stock")));
      }
    }
    return findings;
  }

  /** The finding at the operation that cuts a feature, where there is one. */
  private static Finding at(Inputs inputs, String target, Finding finding) {
    for (Step step : inputs.procedure().steps()) {
      for (Operation operation : step.operations()) {
        for (Located<String> named : operation.targets()) {
          if (named.value().equals(target)) {
            Span place = named.at();
            return Finding.warning("wall-too-thin", place, finding.message(), finding.hint())
                .inStep(step.label());
          }
        }
      }
    }
    return finding;
  }
}
