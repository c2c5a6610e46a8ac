package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Length;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Shapes;
import packetwright.wood.setup.Setting.Kind;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/** Outlines that are sawn to a line, and edges that get a profile. */
final class Profiles {
  private static final List<Side> AROUND = List.of(Side.LEFT, Side.RIGHT, Side.BOTTOM, Side.TOP);

  private Profiles() {}

  // ---- outlines

  static @Nullable Outcome sawCurve(Situation s) {
    List<Aim> aims = Aim.all(s);
    List<Workpiece> pieces = Aim.pieces(s, aims);
    if (aims.isEmpty() || pieces.isEmpty() || !isOneSetting(s, aims)) {
      return null;
    }
    Aim aim = aims.get(0);
    if (pieces.stream().anyMatch(piece -> Shaping.isStillInBlank(s, piece, aim.feature()))) {
      return null;
    }
    MachineKind tool = s.tool(MachineKind.BAND_SAW);
    Handwork.requireLines(s, pieces);
    boolean isCurve = aim.feature().kind() == FeatureKind.CURVE;
    Aim.Shape shape = isCurve ? arc(s, aim, pieces.get(0)) : corners(s, aim);
    if (shape == null) {
      return null;
    }
    List<Workpiece> after = new ArrayList<>();
    for (Workpiece piece : Aim.cut(s, aims, pieces, shape)) {
      after.add(isCurve ? piece.fresh(aim.side(piece, side(aim))) : rounded(piece, aim));
    }
    Work work =
        new Work(
            Feed.FREEHAND,
            Length.ZERO,
            pieces.get(0).solid().thickness().times(s.operation().stacked()),
            Shaping.shortest(pieces),
            Length.ZERO,
            true,
            Set.of());
    return s.done(s.bench().withAll(after), tool, pieces, after, work);
  }

  /** A side that runs into a rounded corner leads nothing along a fence any more. */
  private static Workpiece rounded(Workpiece piece, Aim aim) {
    String where = aim.feature().where();
    Side named = Side.of(where);
    Workpiece rounded = piece;
    for (Side side : AROUND) {
      if (named == null || side != named.opposite()) {
        rounded = rounded.not(side, State.STRAIGHT).not(side, State.SQUARE);
      }
    }
    return rounded;
  }

  private static Aim.@Nullable Shape arc(Situation s, Aim aim, Workpiece first) {
    Side edge = side(aim);
    Side along = edge.axis() == 0 ? Side.BOTTOM : Side.LEFT;
    Length chord = s.set("length", aim, "length", "");
    Length rise = s.set("rise", aim, "rise", "");
    Length drawn = aim.feature().sizes().get("at");
    Length middle = first.solid().extent(along.axis()).minus(aim.length("length")).dividedBy(2);
    Length start =
        drawn == null
            ? s.set("start", middle, along.word(), Kind.BOUND, null)
            : s.set("start", aim, "at", along.word());
    if (rise.times(2).isMore(chord)) {
      s.error(
          "curve-too-deep",
          "a curve " + s.print(chord) + " long cannot be " + s.print(rise) + " deep",
          "set a rise of at most half the length");
      return null;
    }
    return (own, solid) -> List.of(Shapes.curve(solid, edge, start, chord, rise));
  }

  private static Aim.Shape corners(Situation s, Aim aim) {
    Length radius = s.set("radius", aim, "radius", "");
    return (own, solid) -> {
      List<Removal> rounded = new ArrayList<>();
      for (Side end : List.of(Side.LEFT, Side.RIGHT)) {
        for (Side edge : List.of(Side.BOTTOM, Side.TOP)) {
          String where = own.feature().where();
          if (Stream.of("all", end.word(), edge.word()).anyMatch(where::equals)) {
            rounded.add(Shapes.rounded(solid, end, edge, radius));
          }
        }
      }
      return rounded;
    };
  }

  // ---- edges

  static @Nullable Outcome edge(Situation s) {
    List<Aim> aims = Aim.all(s);
    List<Workpiece> pieces = Aim.pieces(s, aims);
    if (aims.isEmpty() || pieces.isEmpty() || !isOneSetting(s, aims)) {
      return null;
    }
    boolean isInBlank =
        aims.stream()
            .filter(own -> sides(own).stream().anyMatch(side -> side.axis() == 0))
            .anyMatch(
                own -> pieces.stream().anyMatch(p -> Shaping.isStillInBlank(s, p, own.feature())));
    if (isInBlank) {
      return null;
    }
    boolean isEased = s.operation().verb().value() == Verb.EASE;
    MachineKind tool = s.tool(isEased ? MachineKind.BLOCK_PLANE : MachineKind.ROUTER_TABLE);
    for (Workpiece piece : pieces) {
      for (Aim own : Aim.on(piece, aims)) {
        requireEdges(s, tool, piece, own);
      }
    }
    Aim aim = aims.get(0);
    boolean isRound = aim.feature().kind() == FeatureKind.ROUNDOVER;
    String key = isRound ? "radius" : "size";
    Length size = s.set(key, aim, key, "");
    Length each = eachPass(s, tool, size);
    Aim.Shape shape =
        (own, solid) ->
            sides(own).stream()
                .<Removal>map(
                    side ->
                        isRound
                            ? Shapes.rounded(solid, side, own.feature().face(), size)
                            : Shapes.chamfer(solid, side, own.feature().face(), size))
                .toList();
    List<Workpiece> after = Aim.cut(s, aims, pieces, shape);
    boolean isAtEnd = aims.stream().flatMap(a -> sides(a).stream()).anyMatch(e -> e.axis() == 0);
    Feed feed =
        tool == MachineKind.ROUTER_TABLE ? isAtEnd ? Feed.ACROSS : Feed.ALONG : Feed.CLAMPED;
    Work work =
        new Work(feed, Length.ZERO, each, Shaping.shortest(pieces), Length.ZERO, false, Set.of());
    return s.done(s.bench().withAll(after), tool, pieces, after, work);
  }

  /** What runs along a fence must be straight, and an end square; in the hand a bit follows. */
  private static void requireEdges(Situation s, MachineKind tool, Workpiece piece, Aim aim) {
    List<Side> led = tool == MachineKind.ROUTER_TABLE ? sides(aim) : List.of();
    for (Side drawn : led) {
      Side side = aim.side(piece, drawn);
      if (side.axis() == 1) {
        Parting.requireStraightEdge(s, piece, side);
      } else {
        s.require("no-squared-end", piece, side, State.SQUARE, "square that end before");
      }
    }
    s.require(
        "no-flat-face", piece, aim.feature().face(), State.FLAT, "joint or plane that face before");
  }

  /** A bit takes no more at a time than the machine's depth of one pass. */
  private static Length eachPass(Situation s, MachineKind tool, Length size) {
    Length most = s.machineValue(tool, "depth_per_pass");
    int passes = most.signum() <= 0 ? 1 : s.settings().needed(size, most);
    if (passes <= 1) {
      return size;
    }
    Length each = size.dividedBy(passes);
    s.settings().eachPass(each);
    s.settings().passes(passes);
    return each;
  }

  private static List<Side> sides(Aim aim) {
    return aim.feature().where().equals("around") ? AROUND : List.of(side(aim));
  }

  private static Side side(Aim aim) {
    Side side = Side.of(aim.feature().where());
    if (side == null) {
      throw new IllegalStateException(aim.target().value() + " is at no side");
    }
    return side;
  }

  /** Whether all come out at one setting; the sizes and what they count from must be the same. */
  private static boolean isOneSetting(Situation s, List<Aim> aims) {
    Aim first = aims.get(0);
    for (Aim other : aims) {
      boolean isCurve = first.feature().kind() == FeatureKind.CURVE;
      boolean isSame =
          other.feature().kind() == first.feature().kind()
              && other.feature().sizes().equals(first.feature().sizes())
              && (!isCurve || other.feature().where().equals(first.feature().where()));
      if (!isSame) {
        Shaping.settingsDiffer(s, other, first);
        return false;
      }
    }
    return true;
  }
}
