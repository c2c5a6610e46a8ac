package packetwright.wood.operation;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Shapes;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.Angle;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/**
 * Slanted cuts right through a piece: miters and bevels at its ends, bevels and tapers at edges.
 */
final class Slants {
  private Slants() {}

  static @Nullable Outcome cut(Situation s, List<Aim> aims, List<Workpiece> pieces) {
    Aim aim = aims.get(0);
    Side at = at(aim);
    for (Workpiece piece : pieces) {
      for (Aim own : Aim.on(piece, aims)) {
        int run = full(aim).axis();
        boolean isSameRun = piece.solid().extent(run).equals(pieces.get(0).solid().extent(run));
        if (!isSameRun || !isSameSetting(own, aim)) {
          Shaping.settingsDiffer(s, own, aim);
          return null;
        }
        if (isPlacedAlong(own) && Shaping.isStillInBlank(s, piece, own.feature())) {
          return null;
        }
        requireReferences(s, piece, own);
      }
    }
    MachineKind tool = s.tool(usual(aim));
    if (isByHand(tool)) {
      Handwork.requireLines(s, pieces);
    } else {
      pieces.forEach(piece -> s.requireCapacity(tool, piece));
    }
    Length by = s.set("by", aim, "by", at.word());
    Solid first = pieces.get(0).solid();
    Rational slope = by.dividedBy(first.extent(full(aim).axis()));
    requireReach(s, tool, slope);
    boolean isTilted = aim.feature().kind() == FeatureKind.BEVEL;
    s.settings().angle(isTilted ? "tilt" : "angle", Angle.ofSlope(slope));
    List<Workpiece> after =
        Aim.cut(
                s,
                aims,
                pieces,
                (own, solid) -> List.of(Shapes.slant(solid, at(own), full(own), by)))
            .stream()
            .map(piece -> slanted(piece, Aim.on(piece, aims)))
            .toList();
    return s.done(
        s.bench().withAll(after), tool, pieces, after, work(s, tool, at, new Cut(pieces, by)));
  }

  /**
   * A cut, as its machine sees it.
   *
   * @param pieces before it
   * @param by the greatest width of the wedge that comes off
   */
  private record Cut(List<Workpiece> pieces, Length by) {}

  private static Work work(Situation s, MachineKind tool, Side at, Cut cut) {
    Solid first = cut.pieces().get(0).solid();
    boolean isAlong = at.axis() == 1;
    Feed feed = isByHand(tool) ? Feed.FREEHAND : isAlong ? Feed.ALONG : Feed.ACROSS;
    Length fence =
        feed == Feed.ALONG ? first.width().minus(cut.by()).max(Length.ZERO) : Length.ZERO;
    return new Work(
        feed,
        fence,
        first.thickness().times(s.operation().stacked()),
        isAlong
            ? Shaping.shortest(cut.pieces())
            : Shaping.shortest(cut.pieces()).minus(cut.by()).max(Length.ZERO),
        cut.by(),
        true,
        Set.of());
  }

  /** Saws that are steered along a line. */
  static boolean isByHand(MachineKind tool) {
    return tool == MachineKind.BAND_SAW || tool == MachineKind.HAND_SAW;
  }

  private static MachineKind usual(Aim aim) {
    return switch (aim.feature().kind()) {
      case TAPER -> MachineKind.BAND_SAW;
      case BEVEL -> at(aim).axis() == 1 ? MachineKind.TABLE_SAW : MachineKind.MITER_SAW;
      default -> MachineKind.MITER_SAW;
    };
  }

  /** A bevel along an edge has no place along the part, so the blank may get it. */
  private static boolean isPlacedAlong(Aim aim) {
    return aim.feature().kind() != FeatureKind.BEVEL || at(aim).axis() == 0;
  }

  private static void requireReferences(Situation s, Workpiece piece, Aim aim) {
    Side at = aim.side(piece, at(aim));
    if (at.axis() == 0) {
      s.require("no-squared-end", piece, at, State.SQUARE, "square that end before");
      Parting.requireStraightEdge(s, piece, s.reference(Side.BOTTOM));
    } else {
      Parting.requireStraightEdge(s, piece, at);
      Parting.requireStraightEdge(s, piece, s.reference(at.opposite()));
    }
    Side table = s.operation().from().size() > 1 ? s.operation().from().get(1) : Side.OUTSIDE;
    s.require("no-flat-face", piece, table, State.FLAT, "joint or plane that face before");
  }

  /** A machine's arm or blade turns half a right angle and no farther: common practice. */
  private static void requireReach(Situation s, MachineKind tool, Rational slope) {
    boolean isTurned = tool == MachineKind.MITER_SAW || tool == MachineKind.TABLE_SAW;
    if (isTurned && slope.compareTo(Rational.ONE) > 0) {
      s.error(
          "slant-too-steep",
          "this cut is more than 45° off square, and the `" + tool.word() + "` turns no farther",
          "name the `band_saw` or the `hand_saw` with `at:`");
    }
  }

  /** A slanted end or edge is neither straight nor square to measure from. */
  private static Workpiece slanted(Workpiece piece, List<Aim> aims) {
    Workpiece slanted = piece;
    for (Aim aim : aims) {
      slanted = slanted.fresh(aim.side(piece, at(aim)));
    }
    return slanted;
  }

  private static boolean isSameSetting(Aim a, Aim b) {
    return a.length("by").equals(b.length("by"))
        && a.feature().kind() == b.feature().kind()
        && at(a).axis() == at(b).axis()
        && full(a).axis() == full(b).axis();
  }

  private static Side at(Aim aim) {
    Side at = Side.of(aim.feature().where());
    if (at == null) {
      throw new IllegalStateException(aim.target().value() + " is at no side");
    }
    return at;
  }

  private static Side full(Aim aim) {
    Side from = aim.feature().from();
    if (from == null) {
      throw new IllegalStateException(aim.target().value() + " is full at no side");
    }
    return from;
  }
}
