package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.Project.Bought;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.size.Evaluated;
import packetwright.text.measure.Length;
import packetwright.text.source.Located;
import packetwright.wood.blank.Blank;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.Batch;
import packetwright.wood.setup.MillingPlan;
import packetwright.wood.setup.Setting.Kind;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/** From a board as bought to a blank that is flat, straight and of the right thickness. */
final class Milling {
  private Milling() {}

  static @Nullable Outcome roughCut(Situation s) {
    Located<String> target = s.target();
    Blank blank = s.inputs().blank(target.value());
    if (blank == null) {
      throw new IllegalStateException("no blank " + target.value());
    }
    if (!s.bench().named(blank.name()).isEmpty() || s.bench().gone().containsKey(blank.name())) {
      s.error(
          "blank-cut-twice",
          target.at(),
          "`" + blank.name() + "` has been cut already",
          "delete one of the two operations");
    }
    MachineKind tool = s.tool(MachineKind.MITER_SAW);
    Length length = s.set("length", blank.length().total(), "", Kind.FREE, null);
    // Nobody buys a wider sheet than the one that a strip of its full width comes out of.
    Kind kind = isAsWideAsTheSheet(s, blank) ? Kind.BOUND : Kind.FREE;
    Length width = s.set("width", blank.boards().width().total(), "", kind, null);
    Solid solid = Solid.block(length, width, blank.thickness());
    List<Workpiece> pieces = new ArrayList<>();
    for (String name : GlueUp.boardNames(blank)) {
      pieces.add(new Workpiece(name, blank.name(), solid, statesAsBought(s, blank)));
    }
    // A sheet goes along the fence of the table saw; a board is cut off across the grain.
    Feed feed = tool == MachineKind.TABLE_SAW ? Feed.ALONG : Feed.ACROSS;
    Work work = new Work(feed, Length.ZERO, blank.thickness(), length, Length.ZERO, true, Set.of());
    return s.done(s.bench().withAll(pieces), tool, List.of(), pieces, work);
  }

  private static Map<Side, Set<State>> statesAsBought(Situation s, Blank blank) {
    Bought bought = blank.bought();
    Map<Side, Set<State>> states = new EnumMap<>(Side.class);
    if (bought != Bought.ROUGH) {
      states.put(Side.OUTSIDE, Set.of(State.FLAT));
      states.put(Side.INSIDE, Set.of(State.FLAT));
    }
    if (bought == Bought.SURFACED_4 || isAsWideAsTheSheet(s, blank)) {
      states.put(Side.TOP, Set.of(State.STRAIGHT, State.SQUARE));
    }
    if (bought == Bought.SURFACED_4 || bought == Bought.SHEET) {
      states.put(Side.BOTTOM, Set.of(State.STRAIGHT, State.SQUARE));
    }
    return states;
  }

  /** A strip as wide as the sheet keeps the edges that the factory made on both its sides. */
  private static boolean isAsWideAsTheSheet(Situation s, Blank blank) {
    return blank.bought() == Bought.SHEET
        && s.inputs().project().materials().stream()
            .filter(m -> m.name().value().equals(blank.material()))
            .flatMap(m -> m.sheet().stream())
            .anyMatch(side -> side.value().asLength().equals(blank.width().total()));
  }

  static @Nullable Outcome planeToThickness(Situation s) {
    Located<String> to = s.operation().to();
    Evaluated wanted = to == null ? null : s.length(to);
    if (to == null || wanted == null) {
      if (to == null) {
        s.error("missing-to", "the thickness to plane to is missing", "add `to:` with a size");
      }
      return null;
    }
    MachineKind tool = s.tool(MachineKind.PLANER);
    Length thickness =
        s.set(
            "thickness",
            wanted.value().asLength(),
            "",
            Kind.BOUND,
            s.tolerance(to.value().strip()));
    List<Workpiece> before = s.targets();
    List<Workpiece> after = new ArrayList<>();
    Length most = Length.ZERO;
    for (Workpiece piece : before) {
      if (isRefusedAsSheet(s, piece)) {
        return null;
      }
      Length off = piece.solid().thickness().minus(thickness);
      if (off.signum() < 0) {
        s.error(
            "piece-too-thin",
            "`" + piece.name() + "` is only " + s.print(piece.solid().thickness()) + " thick here",
            "choose thicker material, or a smaller thickness");
        return null;
      }
      s.requireCapacity(tool, piece);
      Side down = s.reference(piece.is(Side.OUTSIDE, State.FLAT) ? Side.OUTSIDE : Side.INSIDE);
      // The boards of a glued-up piece were flat: what stands up at its joints is planed away.
      if (!GlueUp.isGlued(s, piece)) {
        s.require(
            "no-flat-face", piece, down, State.FLAT, "joint a face first, or buy surfaced boards");
      }
      Workpiece planed =
          down == Side.OUTSIDE
              ? piece.slice(2, Length.ZERO, thickness, s.index())
              : piece.slice(2, off, piece.solid().thickness(), s.index());
      Workpiece flat = planed.fresh(down.opposite(), State.FLAT);
      // A glued-up piece is turned over between passes, so that both faces come out level.
      after.add(GlueUp.isGlued(s, piece) ? flat.with(down, State.FLAT) : flat);
      most = most.max(off).max(mostOfBoards(s, piece, thickness));
    }
    Length depth = perPass(s, tool, most);
    return s.done(s.bench().withAll(after), tool, before, after, alongTheGrain(before, depth));
  }

  /**
   * How much comes off the thickest of the class's boards, where they differ; each that is too thin
   * is a finding.
   */
  private static Length mostOfBoards(Situation s, Workpiece piece, Length thickness) {
    Blank blank = s.inputs().blank(piece.blank());
    if (blank == null || isPlaned(s, piece)) {
      return Length.ZERO;
    }
    Batch batch = Batch.of(piece, blank, s.inputs().shop());
    List<Located<Length>> tooThin = batch.tooThin(thickness);
    for (Located<Length> board : tooThin) {
      if (s.told().isNew("board-too-thin", board.at().toString())) {
        s.error(
            "board-too-thin",
            board.at(),
            "board "
                + batch.number(board)
                + " is "
                + s.print(board.value())
                + " thick, too thin to be planed to "
                + s.print(thickness),
            "take it out of `boards`, or plane to a smaller thickness");
      }
    }
    return MillingPlan.most(batch.thicknesses(), thickness, batch.rough());
  }

  private static boolean isPlaned(Situation s, Workpiece piece) {
    int last = piece.history().extents().get(2);
    return last >= 0 && s.earlier().get(last).operation().verb().value() == Verb.PLANE_TO_THICKNESS;
  }

  /** A sheet keeps its faces: they are thin layers over others that run across them. */
  private static boolean isRefusedAsSheet(Situation s, Workpiece piece) {
    Blank blank = s.inputs().blank(piece.blank());
    boolean isSheet = blank != null && blank.bought() == Bought.SHEET;
    if (isSheet) {
      s.error(
          "sheet-planed",
          "`" + piece.name() + "` is cut from a sheet, and the faces of a sheet are not planed",
          "delete the operation, and choose a sheet of the thickness that is wanted");
    }
    return isSheet;
  }

  static @Nullable Outcome jointFace(Situation s) {
    Side face = s.operation().sides().isEmpty() ? Side.OUTSIDE : s.operation().sides().get(0);
    return joint(s, face, "face_joint", State.FLAT);
  }

  static @Nullable Outcome jointEdge(Situation s) {
    Side edge = s.operation().sides().isEmpty() ? Side.BOTTOM : s.operation().sides().get(0);
    Side fence = s.reference(Side.OUTSIDE);
    for (Workpiece piece : s.targets()) {
      s.require(
          "no-flat-face",
          piece,
          fence,
          State.FLAT,
          "joint or plane a face before the edge, or buy surfaced boards");
    }
    return joint(s, edge, "edge_joint", State.STRAIGHT, State.SQUARE);
  }

  private static @Nullable Outcome joint(Situation s, Side side, String allowance, State... made) {
    MachineKind tool = s.tool(MachineKind.JOINTER);
    Length off = s.set("amount", s.inputs().shop().allowance(allowance), "", Kind.FREE, null);
    List<Workpiece> before = s.targets();
    List<Workpiece> after = new ArrayList<>();
    int axis = side.axis();
    for (Workpiece piece : before) {
      Length extent = piece.solid().extent(axis);
      if (!off.isLess(extent)) {
        s.error(
            "piece-too-narrow",
            "`" + piece.name() + "` is only " + s.print(extent) + " across here",
            "start from a larger blank");
        return null;
      }
      boolean isFace = axis == 2;
      if (isFace && isRefusedAsSheet(s, piece)) {
        return null;
      }
      if (isFace) {
        s.requireCapacity(tool, piece);
      }
      Workpiece cut =
          side.isFar()
              ? piece.slice(axis, Length.ZERO, extent.minus(off), s.index())
              : piece.slice(axis, off, extent, s.index());
      after.add(isFace ? cut.fresh(side, made) : withNewEdge(cut, side).fresh(side, made));
    }
    Length depth = perPass(s, tool, off);
    return s.done(s.bench().withAll(after), tool, before, after, alongTheGrain(before, depth));
  }

  /** Ends that were squared from the bottom edge are not square to one that is jointed anew. */
  private static Workpiece withNewEdge(Workpiece piece, Side edge) {
    return edge == Side.BOTTOM
        ? piece.not(Side.LEFT, State.SQUARE).not(Side.RIGHT, State.SQUARE)
        : piece;
  }

  /** Notes how many passes take an amount off, and answers how deep each of them is at most. */
  private static Length perPass(Situation s, MachineKind tool, Length off) {
    Length most = s.machineValue(tool, "depth_per_pass");
    if (most.signum() <= 0 || off.signum() <= 0) {
      return off;
    }
    Length each = most.min(off);
    int passes = s.settings().needed(off, most);
    if (passes > 1) {
      s.settings().eachPass(each);
    }
    s.settings().passes(passes);
    return each;
  }

  private static Work alongTheGrain(List<Workpiece> pieces, Length depth) {
    Length shortest =
        pieces.stream().map(p -> p.solid().length()).reduce(Length::min).orElse(Length.ZERO);
    return new Work(Feed.ALONG, Length.ZERO, depth, shortest, Length.ZERO, false, Set.of());
  }
}
