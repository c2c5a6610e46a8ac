package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.definition.project.Project.Supply;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Length;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.wood.assembly.Assembly;
import packetwright.wood.assembly.Fastener;
import packetwright.wood.assembly.FastenerPlacing;
import packetwright.wood.assembly.Fastening;
import packetwright.wood.blank.Blank;
import packetwright.wood.operation.Simulation.Inputs;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.workpiece.Bench;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/** Putting pieces together: without glue, with glue, with fasteners. */
final class Joining {
  /** Kinds of joint that come apart unless they are glued or fastened. */
  private static final Set<String> HELD = Set.of("rabbet", "butt", "dado");

  private static final Set<Verb> HOLDING = Set.of(Verb.GLUE, Verb.NAIL, Verb.SCREW);

  private Joining() {}

  static @Nullable Outcome dryFit(Situation s) {
    List<Workpiece> pieces = s.targets();
    if (!s.findings().isEmpty()) {
      return null;
    }
    for (Workpiece piece : pieces) {
      Handwork.requireCut(s, piece, "it cannot be fitted");
      requireSize(s, piece);
    }
    Bench bench = s.bench().withDryFit(pieces.stream().map(Workpiece::name).toList());
    return s.done(bench, tool(s), pieces, pieces, null);
  }

  /** What is still too long or too wide does not fit yet; a piece that slides in may stick out. */
  private static void requireSize(Situation s, Workpiece piece) {
    Length over = piece.history().over();
    Length wide = piece.history().wide();
    boolean isSlid =
        s.inputs().project().assembly().joints().stream()
            .filter(joint -> joint.kind().equals("slide"))
            .anyMatch(joint -> joint.pieces().get(0).value().equals(piece.name()));
    boolean isRight = (over.signum() <= 0 || isSlid) && wide.signum() <= 0;
    // What is never trimmed is said once, at the end.
    boolean isTrimmedLater =
        s.comesLater(Verb.CUT_TO_FIT, piece.name())
            || s.comesLater(Verb.CUT_TO_FIT, Part.nameOf(piece.name()));
    if (!isRight
        && isTrimmedLater
        && s.told().isNew("piece-unfinished", Part.nameOf(piece.name()))) {
      s.error(
          "piece-unfinished",
          "`%s` is still left %s %s at this step, so it cannot be fitted"
              .formatted(
                  piece.name(),
                  s.print(wide.signum() > 0 ? wide : over),
                  wide.signum() > 0 ? "wide" : "long"),
          "move this operation after `- cut_to_fit: " + Part.nameOf(piece.name()) + "`");
    }
  }

  static @Nullable Outcome glue(Situation s) {
    Blank blank = GlueUp.made(s);
    return blank == null ? glueJoints(s) : GlueUp.glue(s, blank);
  }

  private static @Nullable Outcome glueJoints(Situation s) {
    List<Joint> joints = joints(s);
    List<Workpiece> pieces = pieces(s, joints);
    if (pieces.isEmpty()) {
      return null;
    }
    for (Joint joint : joints) {
      boolean isHeld = joint.kind().equals("groove") || joint.kind().equals("slide");
      if (isHeld && !joint.glued()) {
        s.error(
            "glue-in-groove",
            "joint `" + joint.name().value() + "` is a " + joint.kind() + ", which takes no glue",
            "leave it out, or write `glued: true` in the joint");
      }
    }
    requireReady(s, pieces);
    Located<String> makes = s.operation().makes();
    Bench bench = joined(s, pieces);
    if (makes != null) {
      List<String> members = pieces.stream().map(Workpiece::name).toList();
      bench = bench.withGroup(makes.value(), withCaptives(s, members));
    }
    return s.done(bench, tool(s), pieces, pieces, null);
  }

  /** The bench with the pieces joined for good, and with what they now hold captive. */
  private static Bench joined(Situation s, List<Workpiece> pieces) {
    List<String> names = pieces.stream().map(Workpiece::name).toList();
    Set<String> whole = s.bench().wholeOf(names);
    return s.bench().joined(withCaptives(s, whole));
  }

  /** Pieces that sit in grooves of glued pieces alone can no longer come out: they belong too. */
  private static List<String> withCaptives(Situation s, Collection<String> members) {
    Set<String> all = new LinkedHashSet<>(members);
    for (Joint joint : s.inputs().project().assembly().joints()) {
      List<String> names = joint.pieces().stream().map(Located::value).toList();
      boolean isCaptive =
          joint.kind().equals("groove") && all.containsAll(names.subList(1, names.size()));
      if (isCaptive) {
        all.add(names.get(0));
      }
    }
    return List.copyOf(all);
  }

  /** Notes an error where pieces have not been put in their places without glue, all at once. */
  static void requireFitted(Situation s, List<Workpiece> pieces) {
    List<String> names = pieces.stream().map(Workpiece::name).toList();
    if (s.bench().isDryFitted(names)) {
      return;
    }
    List<String> unfitted =
        names.stream().filter(name -> !s.bench().isDryFitted(List.of(name))).toList();
    List<String> missing = unfitted.isEmpty() ? names : unfitted;
    s.error(
        "no-dry-fit",
        "%s %s not been fitted dry%s before the %s"
            .formatted(
                Listing.of(missing),
                missing.size() == 1 ? "has" : "have",
                unfitted.isEmpty() ? " together" : "",
                s.operation().verb().value() == Verb.GLUE ? "glue" : "fasteners"),
        "add `- dry_fit:` with the same parts to an earlier step");
  }

  /**
   * Pieces that are joined for good have all their joints cut, have been fitted dry, and sanded
   * where a finish is to come.
   */
  private static void requireReady(Situation s, List<Workpiece> pieces) {
    requireFitted(s, pieces);
    for (Workpiece piece : pieces) {
      Handwork.requireCut(s, piece, "it cannot be joined");
    }
    if (getsFinish(s)) {
      s.requireAll(
          "inside-not-sanded",
          pieces,
          List.of(Side.INSIDE),
          State.SANDED,
          "add `- sand:` with `sides: inside` before the pieces are joined");
    }
  }

  /** Whether anything is finished; what stays raw, like a home for birds, may stay rough inside. */
  private static boolean getsFinish(Situation s) {
    return s.inputs().procedure().steps().stream()
        .flatMap(step -> step.operations().stream())
        .anyMatch(operation -> operation.verb().value() == Verb.FINISH);
  }

  static @Nullable Outcome fasten(Situation s) {
    List<Joint> joints = joints(s);
    List<Workpiece> pieces = pieces(s, joints);
    if (pieces.isEmpty()) {
      return null;
    }
    requireReady(s, pieces);
    boolean isNail = s.operation().verb().value() == Verb.NAIL;
    MachineKind tool = isNail ? s.tool(MachineKind.NAILER) : tool(s);
    Outcome outcome = s.done(joined(s, pieces), tool, pieces, pieces, null);
    return new Outcome(outcome.bench(), outcome.run().with(fastened(s, joints)));
  }

  private static List<Fastening> fastened(Situation s, List<Joint> joints) {
    Assembly assembly = s.inputs().assembly();
    Fastener fastener = fastener(s);
    if (assembly == null || fastener == null) {
      return List.of();
    }
    List<Fastening> fastened = new ArrayList<>();
    List<Box> taken = new ArrayList<>();
    s.earlier().forEach(run -> run.fastened().forEach(f -> taken.addAll(f.prisms())));
    for (Joint joint : joints) {
      FastenerPlacing placing =
          new FastenerPlacing(
              assembly, fastener, s.inputs().project().rule(), s.operation().place());
      Checked<List<Fastening>> placed = placing.place(joint, taken);
      // Four corners that lack the same thing lack one thing.
      s.addAll(
          placed.findings().stream()
              .filter(f -> s.told().isNew(f.code(), f.hint(), String.valueOf(s.index())))
              .toList());
      List<Fastening> good = placed.valueOrNull();
      if (good != null) {
        fastened.addAll(good);
        good.forEach(f -> taken.addAll(f.prisms()));
      }
    }
    return fastened;
  }

  /** The one supply used that has a length; none, or several, are a finding. */
  private static @Nullable Fastener fastener(Situation s) {
    boolean isNail = s.operation().verb().value() == Verb.NAIL;
    Fastener.Kind kind = isNail ? Fastener.Kind.NAIL : Fastener.Kind.SCREW;
    List<Fastener> fasteners = new ArrayList<>();
    for (Supply supply : s.inputs().project().supplies()) {
      boolean isUsed =
          s.operation().using().stream().anyMatch(u -> u.value().equals(supply.name().value()));
      Fastener fastener = isUsed ? Fastener.of(supply, kind) : null;
      if (fastener != null) {
        fasteners.add(fastener);
      }
    }
    if (fasteners.size() == 1) {
      return fasteners.get(0);
    }
    s.error(
        "no-fastener",
        fasteners.isEmpty()
            ? "nothing says which fastener is driven, or how long it is"
            : "`using` names more than one fastener",
        "write `using:` with one supply that has a `length`");
    return null;
  }

  /** Joints that nothing holds together at the end of the procedure. */
  static List<Finding> loose(Inputs inputs) {
    Set<String> held = new LinkedHashSet<>();
    inputs.procedure().steps().stream()
        .flatMap(step -> step.operations().stream())
        .filter(operation -> HOLDING.contains(operation.verb().value()))
        .forEach(operation -> operation.targets().forEach(target -> held.add(target.value())));
    return inputs.project().assembly().joints().stream()
        .filter(joint -> HELD.contains(joint.kind()) && !held.contains(joint.name().value()))
        .map(Joining::loose)
        .toList();
  }

  private static Finding loose(Joint joint) {
    String name = joint.name().value();
    return Finding.error(
        "joint-left-loose",
        joint.name().at(),
        "nothing glues, nails or screws the " + joint.kind() + " joint `" + name + "`",
        "add `- glue: " + name + "`, `nail` or `screw` to a late step");
  }

  static @Nullable MachineKind tool(Situation s) {
    Located<MachineKind> at = s.operation().at();
    return at == null ? null : s.tool(at.value());
  }

  static List<Joint> joints(Situation s) {
    List<Joint> all = s.inputs().project().assembly().joints();
    List<Joint> joints = new ArrayList<>();
    for (Located<String> target : s.operation().targets()) {
      Joint joint =
          all.stream()
              .filter(j -> j.name().value().equals(target.value()))
              .findFirst()
              .orElse(null);
      if (joint == null) {
        s.error(
            "unknown-joint",
            target.at(),
            "no joint is called `" + target.value() + "`",
            NearMiss.hint(target.value(), all.stream().map(j -> j.name().value()).toList()));
      } else {
        joints.add(joint);
      }
    }
    return joints;
  }

  private static List<Workpiece> pieces(Situation s, List<Joint> joints) {
    Set<Workpiece> pieces = new LinkedHashSet<>();
    for (Joint joint : joints) {
      for (Located<String> name : joint.pieces()) {
        pieces.addAll(s.pieces(new Located<>(name.value(), s.operation().place())));
      }
    }
    return List.copyOf(pieces);
  }
}
