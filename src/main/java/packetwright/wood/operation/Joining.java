package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.wood.blank.Blank;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.workpiece.Bench;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/** Putting pieces together: without glue, with glue, with fasteners. */
final class Joining {
  private Joining() {}

  static @Nullable Outcome dryFit(Situation s) {
    List<Workpiece> pieces = s.targets();
    if (!s.findings().isEmpty()) {
      return null;
    }
    for (Workpiece piece : pieces) {
      Handwork.requireCut(s, piece, "it cannot be fitted");
    }
    Bench bench = s.bench().withDryFitted(pieces.stream().map(Workpiece::name).toList());
    return s.done(bench, tool(s), pieces, pieces, null);
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
    requireFitted(s, pieces);
    s.requireAll(
        "inside-not-sanded",
        pieces,
        List.of(Side.INSIDE),
        State.SANDED,
        "add `- sand:` with `sides: inside` before the glue closes it in");
    Located<String> makes = s.operation().makes();
    Bench bench = s.bench();
    if (makes != null) {
      List<String> members = pieces.stream().map(Workpiece::name).toList();
      bench = bench.withGroup(makes.value(), withCaptives(s, members));
    }
    return s.done(bench, tool(s), pieces, pieces, null);
  }

  static void requireFitted(Situation s, List<Workpiece> pieces) {
    List<String> unfitted =
        pieces.stream()
            .map(Workpiece::name)
            .filter(name -> !s.bench().dryFitted().contains(name))
            .toList();
    if (!unfitted.isEmpty()) {
      s.error(
          "no-dry-fit",
          Listing.of(unfitted)
              + (unfitted.size() == 1 ? " has" : " have")
              + " not been fitted dry before the glue",
          "add `- dry_fit:` with the same parts to an earlier step");
    }
  }

  /** Pieces that sit in grooves of glued pieces alone can no longer come out: they belong too. */
  private static List<String> withCaptives(Situation s, List<String> members) {
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

  static @Nullable Outcome fasten(Situation s) {
    List<Workpiece> pieces = pieces(s, joints(s));
    if (pieces.isEmpty()) {
      return null;
    }
    MachineKind tool = s.tool(MachineKind.NAILER);
    return s.done(s.bench(), tool, pieces, pieces, null);
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
