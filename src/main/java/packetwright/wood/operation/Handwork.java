package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.size.Evaluated;
import packetwright.definition.size.Size;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Located;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Part;
import packetwright.wood.setup.Setting;
import packetwright.wood.setup.Setting.Kind;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.History;
import packetwright.wood.workpiece.Workpiece.State;

/** What is done at the bench: laying out, measuring, sanding, easing, finishing. */
final class Handwork {
  /** Features that another part fits into or against. */
  private static final Set<FeatureKind> IS_FITTED =
      EnumSet.of(
          FeatureKind.RABBET,
          FeatureKind.DADO,
          FeatureKind.GROOVE,
          FeatureKind.MITER,
          FeatureKind.BEVEL,
          FeatureKind.TAPER);

  private Handwork() {}

  static @Nullable Outcome layOut(Situation s) {
    boolean isBlank =
        s.operation().targets().stream().anyMatch(t -> s.inputs().blank(t.value()) != null);
    List<Workpiece> pieces = isBlank ? s.pieces(s.target()) : s.targets();
    if (pieces.isEmpty()) {
      return null;
    }
    Side end = s.reference(Side.LEFT);
    for (Workpiece piece : pieces) {
      if (end.axis() == 1) {
        Parting.requireStraightEdge(s, piece, end);
        continue;
      }
      s.require(
          "no-squared-end",
          piece,
          end,
          State.SQUARE,
          "add `- square_end: "
              + piece.name()
              + "` before, since everything is measured from there");
    }
    List<Workpiece> drawn =
        pieces.stream().map(piece -> piece.withHistory(piece.history().laidOut(true))).toList();
    return s.done(s.bench().withAll(drawn), null, pieces, drawn, null);
  }

  /**
   * Notes an error where a saw that is steered by hand has no line to follow; in a stack, one piece
   * needs it.
   */
  static void requireLines(Situation s, List<Workpiece> pieces) {
    int stacked = s.operation().stacked();
    List<String> bare =
        pieces.stream().filter(p -> !p.history().isLaidOut()).map(Workpiece::name).toList();
    int lined = pieces.size() - bare.size();
    int stacks = (pieces.size() + stacked - 1) / stacked;
    if (lined < stacks) {
      s.error(
          "not-laid-out",
          "no lines are drawn on " + Listing.of(bare) + " for the saw to follow",
          "add `- lay_out: " + Part.nameOf(bare.get(0)) + "` before");
    }
    if (stacked > pieces.size()) {
      s.error(
          "stack-too-large",
          "a stack of " + stacked + " needs more pieces than are here: " + pieces.size(),
          "lower `stacked`");
    }
  }

  /** Trims what was left long or wide: parts, or a blank to the width that it names. */
  static @Nullable Outcome cutToFit(Situation s) {
    MachineKind tool = s.tool(MachineKind.BLOCK_PLANE);
    List<Workpiece> pieces = s.targets();
    if (pieces.isEmpty()) {
      return null;
    }
    Side side = trimmed(s, pieces.get(0));
    int axis = side.axis();
    if (!canTrim(s, tool, side)) {
      return null;
    }
    for (Workpiece piece : pieces) {
      Length left = axis == 1 ? piece.history().wide() : piece.history().over();
      if (left.signum() <= 0) {
        s.error(
            "nothing-to-trim",
            "`" + piece.name() + "` was not left " + (axis == 1 ? "wide" : "long"),
            "add `leave:` to the " + (axis == 1 ? "rip" : "crosscut") + " that makes it");
      }
    }
    Length wanted = fitted(s, pieces.get(0), axis);
    if (wanted == null) {
      return null;
    }
    List<Workpiece> fitted = new ArrayList<>();
    for (Workpiece piece : pieces) {
      Length now = piece.solid().extent(axis);
      if (now.isLess(wanted)) {
        return Parting.tooShort(s, piece, wanted);
      }
      Workpiece cut =
          side.isFar()
              ? piece.slice(axis, Length.ZERO, wanted, s.index())
              : piece.slice(axis, now.minus(wanted), now, s.index());
      History history = cut.history();
      History trimmed =
          axis == 1 ? history.withWide(Length.ZERO) : history.withOver(Length.ZERO).laidOut(false);
      State[] made =
          axis == 1 ? new State[] {State.STRAIGHT, State.SQUARE} : new State[] {State.SQUARE};
      fitted.add(cut.withHistory(trimmed).fresh(side, made));
    }
    Work work = isCut(tool) ? trimming(s, tool, pieces.get(0), new Trim(axis, wanted)) : null;
    return s.done(s.bench().withAll(fitted), tool, pieces, fitted, work);
  }

  /** A face is not trimmed, and a tool that works across the grain makes no piece narrower. */
  private static boolean canTrim(Situation s, MachineKind tool, Side side) {
    boolean isAcross = tool == MachineKind.MITER_SAW || tool == MachineKind.DISC_SANDER;
    if (side.axis() == 2) {
      s.error(
          "wrong-reference",
          "`cut_to_fit` trims an end or an edge, and not the " + side.word(),
          "name an end or an edge under `sides`, or use `plane_to_thickness`");
    } else if (side.axis() == 1 && isAcross) {
      s.error(
          "wrong-tool",
          "the `" + tool.word() + "` shortens a piece, and does not make it narrower",
          "write `bench_plane` or another tool that works along the edge");
    }
    return side.axis() == 0 || (side.axis() == 1 && !isAcross);
  }

  private static boolean isCut(MachineKind tool) {
    return tool == MachineKind.MITER_SAW
        || tool == MachineKind.TABLE_SAW
        || tool == MachineKind.HAND_SAW
        || tool == MachineKind.DISC_SANDER;
  }

  /**
   * A trimming cut.
   *
   * @param axis 0 when it shortens the piece, 1 when it makes it narrower
   * @param wanted what is left along that axis
   */
  private record Trim(int axis, Length wanted) {}

  /** A trimming cut as its saw sees it; what comes off is narrower by the kerf. */
  private static Work trimming(Situation s, MachineKind tool, Workpiece piece, Trim trim) {
    s.requireCapacity(tool, piece);
    boolean isWidth = trim.axis() == 1;
    Length now = piece.solid().extent(trim.axis());
    // A disc turns all that it takes to dust, and a hand saw has no fence.
    boolean isSawn = tool != MachineKind.DISC_SANDER;
    Length kerf = isSawn ? s.kerf(tool) : Length.ZERO;
    Length loose = isSawn ? now.minus(trim.wanted()).minus(kerf).max(Length.ZERO) : Length.ZERO;
    return new Work(
        isWidth ? Feed.ALONG : Feed.ACROSS,
        isWidth && tool.isPowered() ? trim.wanted() : Length.ZERO,
        piece.solid().thickness(),
        isWidth ? piece.solid().length() : trim.wanted(),
        loose,
        isSawn,
        Set.of());
  }

  /** The side that is trimmed: as written, or the top edge of a piece that is only too wide. */
  private static Side trimmed(Situation s, Workpiece piece) {
    History history = piece.history();
    boolean isOnlyWide = history.over().signum() <= 0 && history.wide().signum() > 0;
    return s.operation().sides().isEmpty()
        ? isOnlyWide ? Side.TOP : Side.RIGHT
        : s.operation().sides().get(0);
  }

  /** The length or width that is trimmed to: as drawn, or for a blank as written. */
  private static @Nullable Length fitted(Situation s, Workpiece piece, int axis) {
    Part part = s.inputs().part(Part.nameOf(piece.name()));
    Located<String> to = s.operation().to();
    if (part == null && to == null) {
      s.error(
          "unknown-part",
          s.target().at(),
          "`" + piece.name() + "` is a blank, and a part is trimmed",
          "name a part, or write under `to` how wide the blank gets");
      return null;
    }
    String setting = axis == 1 ? "width" : "length";
    String name = to == null ? Part.nameOf(piece.name()) + "." + setting : to.value().strip();
    Evaluated wanted = s.length(to == null ? new Located<>(name, s.operation().place()) : to);
    return wanted == null
        ? null
        : s.settings()
            .set(
                new Setting(
                    setting,
                    Quantity.of(wanted.value().asLength()),
                    "",
                    s.tolerance(name),
                    Kind.BOUND,
                    !wanted.fitted().isEmpty()));
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
    requireThere(s, size, named);
    for (Workpiece piece : pieces) {
      requireCut(s, piece, "there is nothing to measure on it yet");
    }
    return s.done(s.bench(), null, pieces, pieces, null);
  }

  /** Notes an error where a size is measured on a piece that does not show it. */
  private static void requireThere(Situation s, Size size, Located<String> named) {
    List<String> showing =
        s.inputs().parts().stream().filter(part -> shows(s, part, size)).map(Part::name).toList();
    if (size.isMeasured() && !showing.isEmpty() && !showing.contains(Part.nameOf(named.value()))) {
      s.error(
          "inspect-without-piece",
          named.at(),
          "`" + size.name() + "` cannot be measured on `" + named.value() + "`",
          "write `piece: " + showing.get(0) + "`, which has a cut that it comes from");
    }
  }

  /** Whether a feature of the part is made to the size, or to one that the size comes from. */
  private static boolean shows(Situation s, Part part, Size size) {
    Set<String> made = new HashSet<>();
    for (Part.Feature feature : part.features()) {
      for (String key : feature.sizes().keySet()) {
        Size own = s.inputs().sizes().find(part.name() + "." + feature.name() + "." + key);
        made.addAll(own == null ? Set.of() : own.from());
      }
    }
    return made.contains(size.name()) || !Collections.disjoint(made, size.from());
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
      boolean mayWait = !IS_FITTED.contains(feature.kind());
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
            s.comesLater(makers(feature.kind()).get(0), target)
                ? "move this operation after the one that cuts it"
                : "add `- cut: " + target + "` to an earlier step");
      }
    }
  }

  /** The verb that makes a feature. */
  static String maker(Part.@Nullable Feature feature) {
    return (feature == null ? Verb.DRILL : makers(feature.kind()).get(0)).word();
  }

  /** The verbs that make a kind of feature, the usual one first. */
  static List<Verb> makers(FeatureKind kind) {
    return switch (kind) {
      case RABBET, DADO, GROOVE, NOTCH, MITER, BEVEL, TAPER -> List.of(Verb.CUT);
      case HOLE -> List.of(Verb.DRILL);
      case CORNER, CURVE -> List.of(Verb.SAW_CURVE);
      case CHAMFER, ROUNDOVER -> List.of(Verb.ROUT, Verb.EASE);
    };
  }

  static @Nullable Outcome sand(Situation s) {
    return treated(s, s.tool(MachineKind.SANDING_BLOCK), State.SANDED);
  }

  /** Breaks the edges; a feature that is named gives an edge its profile. */
  static @Nullable Outcome ease(Situation s) {
    boolean hasFeature = s.operation().targets().stream().anyMatch(t -> t.value().contains("."));
    if (hasFeature) {
      return Profiles.edge(s);
    }
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
        // What stands up at a glue line is sanded level.
        if (state == State.SANDED && side.axis() == 2 && GlueUp.isGlued(s, piece)) {
          changed = changed.with(side, State.FLAT);
        }
      }
      after.add(changed);
    }
    return s.done(s.bench().withAll(after), tool, before, after, null);
  }
}
