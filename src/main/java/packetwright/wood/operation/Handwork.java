package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.size.Size;
import packetwright.text.source.Located;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Part;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/** What is done at the bench: laying out, measuring, sanding, easing, finishing. */
final class Handwork {
  private Handwork() {}

  static @Nullable Outcome layOut(Situation s) {
    Workpiece piece = s.piece(s.target());
    if (piece == null) {
      return null;
    }
    Side end = s.reference(Side.LEFT);
    s.require(
        "no-squared-end",
        piece,
        end,
        State.SQUARE,
        "add `- square_end: " + piece.name() + "` before, since everything is measured from there");
    Workpiece drawn = piece.withHistory(piece.history().laidOut(true));
    return s.done(s.bench().with(drawn), null, List.of(piece), List.of(drawn), null);
  }

  static @Nullable Outcome inspect(Situation s) {
    Located<String> target = s.target();
    Size size = s.inputs().sizes().find(target.value());
    if (size == null) {
      throw new IllegalStateException("no size " + target.value());
    }
    Located<String> named = s.operation().piece();
    if (named == null) {
      s.error(
          "inspect-without-piece",
          "nothing says on which piece `" + size.name() + "` is measured",
          "add `piece:` with the name of a part or a blank");
      return s.done(s.bench(), null, List.of(), List.of(), null);
    }
    List<Workpiece> pieces = s.pieces(named);
    for (Workpiece piece : pieces) {
      requireCut(s, piece, "there is nothing to measure on it yet");
    }
    return s.done(s.bench(), null, pieces, pieces, null);
  }

  /**
   * Notes an error where a feature that another part fits into has not been cut in a piece yet; a
   * notch or a hole may wait.
   */
  static void requireCut(Situation s, Workpiece piece, String consequence) {
    Part part = s.inputs().part(Part.nameOf(piece.name()));
    if (part == null) {
      return;
    }
    for (Part.Feature feature : part.features()) {
      boolean mayWait = feature.kind() == FeatureKind.NOTCH || feature.kind() == FeatureKind.HOLE;
      String target = part.name() + "." + feature.name();
      boolean isCut = mayWait || piece.history().aims().contains(target);
      if (!isCut && s.told().isNew("piece-unfinished", target)) {
        s.error(
            "piece-unfinished",
            "`"
                + piece.name()
                + "` has no `"
                + feature.name()
                + "` yet at this step, so "
                + consequence,
            s.comesLater(Verb.CUT, target)
                ? "move this operation after the one that cuts it"
                : "add `- cut: " + target + "` to an earlier step");
      }
    }
  }

  /** The verb that makes a feature. */
  static String maker(Part.@Nullable Feature feature) {
    boolean isHole = feature != null && feature.kind() == FeatureKind.HOLE;
    return (isHole ? Verb.DRILL : Verb.CUT).word();
  }

  static @Nullable Outcome sand(Situation s) {
    return treated(s, s.tool(MachineKind.SANDING_BLOCK), State.SANDED);
  }

  static @Nullable Outcome ease(Situation s) {
    return treated(s, s.tool(MachineKind.SANDING_BLOCK), State.EASED);
  }

  static @Nullable Outcome finish(Situation s) {
    List<Workpiece> pieces = s.targets();
    s.requireAll("not-eased", pieces, sides(s), State.EASED, "add `- ease:` before the finish");
    s.requireAll("not-sanded", pieces, sides(s), State.SANDED, "add `- sand:` before the finish");
    return treated(s, s.tool(MachineKind.BRUSH), State.FINISHED);
  }

  private static List<Side> sides(Situation s) {
    List<Side> sides = s.operation().sides();
    return sides.isEmpty() ? List.of(Side.values()) : sides;
  }

  private static @Nullable Outcome treated(Situation s, MachineKind tool, State state) {
    List<Workpiece> before = s.targets();
    if (before.isEmpty()) {
      return null;
    }
    List<Workpiece> after = new ArrayList<>();
    for (Workpiece piece : before) {
      Workpiece changed = piece;
      for (Side side : sides(s)) {
        changed = changed.with(side, state);
      }
      after.add(changed);
    }
    return s.done(s.bench().withAll(after), tool, before, after, null);
  }
}
