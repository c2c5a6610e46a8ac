package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.size.Size;
import packetwright.text.measure.Length;
import packetwright.text.source.Located;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Part;
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

  static @Nullable Outcome cutToFit(Situation s) {
    MachineKind tool = s.tool(MachineKind.BLOCK_PLANE);
    Workpiece piece = s.piece(s.target());
    Part part = piece == null ? null : s.inputs().part(Part.nameOf(piece.name()));
    if (piece == null || part == null) {
      if (piece != null) {
        s.error(
            "unknown-part",
            s.target().at(),
            "`" + piece.name() + "` is a blank, and a part is trimmed",
            "name a part");
      }
      return null;
    }
    History history = piece.history();
    boolean isOnlyWide = history.over().signum() <= 0 && history.wide().signum() > 0;
    Side usual = isOnlyWide ? Side.TOP : Side.RIGHT;
    Side side = s.operation().sides().isEmpty() ? usual : s.operation().sides().get(0);
    boolean isWidth = side.axis() == 1;
    if ((isWidth ? history.wide() : history.over()).signum() <= 0) {
      s.error(
          "nothing-to-trim",
          "`" + piece.name() + "` was not left " + (isWidth ? "wide" : "long"),
          "add `leave:` to the " + (isWidth ? "rip" : "crosscut") + " that makes it");
    }
    Length now = piece.solid().extent(side.axis());
    Length wanted =
        isWidth
            ? s.set("width", part.solid().width(), "", Kind.BOUND, widthTolerance(s, part))
            : s.set("length", part.solid().length(), "", Kind.BOUND, lengthTolerance(s, part));
    if (now.isLess(wanted)) {
      return Parting.tooShort(s, piece, wanted);
    }
    Workpiece cut =
        side.isFar()
            ? piece.slice(side.axis(), Length.ZERO, wanted, s.index())
            : piece.slice(side.axis(), now.minus(wanted), now, s.index());
    History trimmed =
        isWidth ? cut.history().withWide(Length.ZERO) : cut.history().withOver(Length.ZERO);
    State[] made =
        isWidth ? new State[] {State.STRAIGHT, State.SQUARE} : new State[] {State.SQUARE};
    Workpiece fitted = cut.withHistory(trimmed.laidOut(false)).fresh(side, made);
    Work work = isSaw(tool) ? trimming(s, tool, piece, new Trim(isWidth, now, wanted)) : null;
    return s.done(s.bench().with(fitted), tool, List.of(piece), List.of(fitted), work);
  }

  private static boolean isSaw(MachineKind tool) {
    return tool == MachineKind.MITER_SAW || tool == MachineKind.TABLE_SAW;
  }

  /**
   * What a trimming cut takes off.
   *
   * @param isWidth whether it runs along the piece
   * @param now before it
   * @param wanted after it
   */
  private record Trim(boolean isWidth, Length now, Length wanted) {}

  /** A trimming cut as its saw sees it; what comes off is narrower by the kerf. */
  private static Work trimming(Situation s, MachineKind tool, Workpiece piece, Trim trim) {
    s.requireCapacity(tool, piece);
    Length loose = trim.now().minus(trim.wanted()).minus(s.kerf(tool)).max(Length.ZERO);
    return new Work(
        trim.isWidth() ? Feed.ALONG : Feed.ACROSS,
        trim.isWidth() ? trim.wanted() : Length.ZERO,
        piece.solid().thickness(),
        trim.isWidth() ? piece.solid().length() : trim.wanted(),
        loose,
        true,
        Set.of());
  }

  private static @Nullable Length lengthTolerance(Situation s, Part part) {
    return s.tolerance(part.name() + ".length");
  }

  private static @Nullable Length widthTolerance(Situation s, Part part) {
    return s.tolerance(part.name() + ".width");
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
