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
import packetwright.text.measure.Length;
import packetwright.wood.operation.Cutters.Depth;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Turn;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Part;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Shapes;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.CutterPlan;
import packetwright.wood.setup.Setting.Kind;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/** Cuts across or along a face that do not part the piece: rabbets, grooves, dadoes. */
final class Shaping {
  private static final List<String> RABBETED_EDGES = List.of(Side.TOP.word(), Side.BOTTOM.word());

  private Shaping() {}

  static @Nullable Outcome cut(Situation s) {
    List<Aim> aims = Aim.all(s);
    List<Workpiece> pieces = Aim.pieces(s, aims);
    if (aims.isEmpty() || pieces.isEmpty()) {
      return null;
    }
    return switch (aims.get(0).feature().kind()) {
      case NOTCH -> isSingle(s, aims) ? Handcut.notch(s, aims.get(0), pieces) : null;
      case MITER, BEVEL, TAPER -> Slants.cut(s, aims, pieces);
      default ->
          isAtEnds(aims.get(0).feature()) ? endRabbets(s, aims, pieces) : band(s, aims, pieces);
    };
  }

  private static boolean isAtEnds(Part.Feature feature) {
    return feature.kind() == FeatureKind.RABBET && !RABBETED_EDGES.contains(feature.where());
  }

  /** Whether there is but one feature, as there must be where each is laid out by itself. */
  private static boolean isSingle(Situation s, List<Aim> aims) {
    s.target();
    return aims.size() == 1;
  }

  // ---- grooves, dadoes, rabbets along an edge

  private static @Nullable Outcome band(Situation s, List<Aim> aims, List<Workpiece> pieces) {
    Aim aim = aims.get(0);
    Side edge = edge(aim.feature());
    Side fenceSide = s.reference(edge);
    if (fenceSide.axis() != edge.axis()) {
      s.error(
          "wrong-reference",
          "a "
              + aim.feature().kind().word()
              + " that runs "
              + aim.feature().where()
              + " is not located from the "
              + fenceSide.word(),
          "write `" + edge.word() + "` as the first word of `from`");
      return null;
    }
    Length reckoned = near(aim, pieces.get(0), fenceSide);
    for (Workpiece piece : pieces) {
      requireReference(s, piece, aim.side(piece, fenceSide), aim.feature());
      for (Aim other : Aim.on(piece, aims)) {
        boolean isSame =
            isSameSetting(other, aim) && other.feature().where().equals(aim.feature().where());
        if (!isSame
            || other.feature().face() != aim.feature().face()
            || !near(other, piece, fenceSide).equals(reckoned)) {
          settingsDiffer(s, other, aim);
          return null;
        }
      }
    }
    MachineKind tool = s.tool(MachineKind.DADO_SET);
    if (Cutters.isFollowingLines(tool)) {
      Handwork.requireLines(s, pieces);
    } else {
      pieces.forEach(piece -> requireMarks(s, piece));
    }
    CutterPlan plan = Cutters.plan(s, tool, aim);
    if (plan == null) {
      return null;
    }
    Length cutter =
        Cutters.cutter(s, aim, Cutters.asSetting(tool, plan, s.tolerance(aim.size("width"))));
    // Across the grain a stop block stands in for the fence: a piece between both is trapped.
    String guide = edge.axis() == 0 && s.operation().stop() ? "stop" : "fence";
    List<Length> fences =
        Cutters.fences(
            s,
            tool,
            plan,
            reckoned,
            Cutters.Guide.of(tool, guide, fenceSide)
                .withFitted(!aim.fitted(s, List.of("at", "width")).isEmpty()));
    Depth depth = Cutters.height(s, tool, aim);
    Aim.Shape shape =
        (own, solid) ->
            fences.stream()
                .<Removal>map(
                    fence ->
                        Shapes.band(
                            solid,
                            fenceSide,
                            List.of(fence, fence.plus(cutter)),
                            own.feature().face(),
                            depth.reach()))
                .toList();
    List<Workpiece> after = Aim.cut(s, aims, pieces, shape);
    boolean isAlong = edge.axis() == 1;
    Work work =
        new Work(
            feed(tool, isAlong),
            isAlong ? fences.get(0) : Length.ZERO,
            depth.deepest(),
            shortest(pieces),
            Length.ZERO,
            false,
            turns(s, pieces, fenceSide, aim.feature().face()));
    return s.done(s.bench().withAll(after), tool, pieces, after, work);
  }

  /** A router in the hand moves over a piece that is clamped. */
  private static Feed feed(MachineKind tool, boolean isAlong) {
    boolean isClamped = tool == MachineKind.HANDHELD_ROUTER || !tool.isPowered();
    return isClamped ? Feed.CLAMPED : isAlong ? Feed.ALONG : Feed.ACROSS;
  }

  static void settingsDiffer(Situation s, Aim one, Aim other) {
    s.error(
        "settings-differ",
        one.target().at(),
        "`%s` needs another setting than `%s`"
            .formatted(one.target().value(), other.target().value()),
        "write one operation for each");
  }

  /** The edge or end that a band is located from; a rabbet's is its own. */
  private static Side edge(Part.Feature feature) {
    Side from = feature.from();
    return from != null ? from : feature.where().equals(Side.TOP.word()) ? Side.TOP : Side.BOTTOM;
  }

  /** From the side at the fence to the near side of the feature, in the piece as it is now. */
  private static Length near(Aim aim, Workpiece piece, Side fenceSide) {
    Side from = edge(aim.feature());
    Length at = aim.length("at");
    return from == fenceSide
        ? at
        : piece.solid().extent(from.axis()).minus(at).minus(aim.length("width"));
  }

  private static boolean isSameSetting(Aim a, Aim b) {
    return a.length("width").equals(b.length("width"))
        && a.length("depth").equals(b.length("depth"))
        && a.feature().kind() == b.feature().kind();
  }

  private static void requireReference(
      Situation s, Workpiece piece, Side fenceSide, Part.Feature feature) {
    if (fenceSide.axis() == 1) {
      Parting.requireStraightEdge(s, piece, fenceSide);
    } else {
      s.require("no-squared-end", piece, fenceSide, State.SQUARE, "square that end before");
    }
    requireFaceDown(s, piece, feature);
    if (fenceSide.axis() == 0) {
      isStillInBlank(s, piece, feature);
    }
  }

  /** Whether a feature that has its place along the part is aimed at a blank; that is an error. */
  static boolean isStillInBlank(Situation s, Workpiece piece, Part.Feature feature) {
    if (s.inputs().blank(piece.name()) == null) {
      return false;
    }
    s.error(
        "not-cut-free",
        "`%s` has its place along the part, and the part is still in `%s`"
            .formatted(feature.name(), piece.name()),
        "move this operation after the one that brings the part to its length");
    return true;
  }

  /** On a blank nothing but the lines tells which face and edge of the parts are which. */
  private static void requireMarks(Situation s, Workpiece piece) {
    boolean isBare = s.inputs().blank(piece.name()) != null && !piece.history().isLaidOut();
    if (isBare && s.told().isNew("not-laid-out", piece.name())) {
      s.error(
          "not-laid-out",
          "no lines are drawn on `" + piece.name() + "` yet to tell its faces and edges by",
          s.comesLater(Verb.LAY_OUT, piece.name())
              ? "move `lay_out: " + piece.name() + "` before this"
              : "add `- lay_out: " + piece.name() + "` before");
    }
  }

  private static void requireFaceDown(Situation s, Workpiece piece, Part.Feature feature) {
    List<Side> from = s.operation().from();
    Side down = from.size() > 1 ? from.get(1) : feature.face();
    if (down != feature.face()) {
      s.error(
          "wrong-face-down",
          "`"
              + feature.name()
              + "` is cut into the "
              + feature.face().word()
              + ", and the "
              + down.word()
              + " lies on the table here",
          "write `" + feature.face().word() + "` as the second word of `from`");
    }
    s.require("no-flat-face", piece, down, State.FLAT, "joint or plane that face before");
  }

  /** How the piece is turned after the cut before, where that was in the same step. */
  private static Set<Turn> turns(
      Situation s, List<Workpiece> pieces, Side fenceSide, Side faceDown) {
    OperationRun before = s.earlier().isEmpty() ? null : s.earlier().get(s.earlier().size() - 1);
    Part.Feature feature =
        before == null || before.operation().verb().value() != Verb.CUT
            ? null
            : Aim.find(s.inputs(), before.operation().targets().get(0).value());
    if (before == null || feature == null || before.step().number() != s.step().number()) {
      return Set.of();
    }
    boolean isSamePiece =
        before.after().stream()
            .anyMatch(p -> pieces.stream().anyMatch(q -> q.name().equals(p.name())));
    if (!isSamePiece) {
      return Set.of();
    }
    List<Side> from = before.operation().from();
    if (feature.face() != faceDown) {
      return Set.of(Turn.TURN_OVER);
    }
    Side atFence = from.isEmpty() ? lastEnd(feature) : from.get(0);
    return atFence == fenceSide.opposite() ? Set.of(Turn.ROTATE_END_FOR_END) : Set.of();
  }

  private static Side lastEnd(Part.Feature feature) {
    return isAtEnds(feature) ? ends(feature).get(ends(feature).size() - 1) : edge(feature);
  }

  // ---- rabbets at the ends

  private static List<Side> ends(Part.Feature rabbet) {
    return switch (rabbet.where()) {
      case "left" -> List.of(Side.LEFT);
      case "right" -> List.of(Side.RIGHT);
      default -> List.of(Side.LEFT, Side.RIGHT);
    };
  }

  private static @Nullable Outcome endRabbets(Situation s, List<Aim> aims, List<Workpiece> pieces) {
    Aim aim = aims.get(0);
    for (Aim other : aims) {
      if (!isSameSetting(other, aim) || !isAtEnds(other.feature())) {
        settingsDiffer(s, other, aim);
        return null;
      }
    }
    for (Workpiece piece : pieces) {
      for (Aim own : Aim.on(piece, aims)) {
        for (Side end : ends(own.feature())) {
          requireReference(s, piece, own.side(piece, end), own.feature());
        }
      }
    }
    MachineKind tool = s.tool(MachineKind.DADO_SET);
    boolean isByLine = Cutters.isFollowingLines(tool);
    if (isByLine) {
      Handwork.requireLines(s, pieces);
    }
    Length stop = s.set(isByLine ? "line" : "stop", aim, "width", isByLine ? "ends" : "far");
    List<List<Length>> cuts =
        isByLine ? List.of(List.of(Length.ZERO, stop)) : machined(s, tool, aim, stop);
    if (cuts.isEmpty()) {
      return null;
    }
    Depth depth = Cutters.height(s, tool, aim);
    Aim.Shape shape =
        (own, solid) ->
            ends(own.feature()).stream()
                .flatMap(end -> cuts.stream().map(cut -> band(own, solid, end, cut, depth)))
                .toList();
    List<Workpiece> after = Aim.cut(s, aims, pieces, shape);
    Work work =
        new Work(
            feed(tool, false),
            Length.ZERO,
            depth.deepest(),
            shortest(pieces),
            Length.ZERO,
            false,
            endTurns(s, aims, pieces));
    return s.done(s.bench().withAll(after), tool, pieces, after, work);
  }

  /**
   * What a cutter takes at each pass of an end rabbet; nothing, with a finding, where none fits.
   */
  private static List<List<Length>> machined(Situation s, MachineKind tool, Aim aim, Length stop) {
    List<Length> stack = Cutters.stackThatFits(s, tool, aim);
    if (stack.isEmpty()) {
      return List.of();
    }
    Length cutter =
        Cutters.cutter(s, aim, Cutters.asSetting(CutterPlan.total(stack), null, Kind.FREE, stack));
    int count = s.settings().needed(stop, cutter);
    List<List<Length>> cuts = passes(s, stop, cutter, count);
    s.settings().passes(count);
    return cuts;
  }

  /**
   * What the passes of an end rabbet take, from the end; the last is made against the stop. How far
   * short of the stop the end stands at the first is set: far enough that nothing is left at the
   * end, and not so far that a ridge is left between two passes.
   */
  private static List<List<Length>> passes(Situation s, Length stop, Length cutter, int count) {
    if (count < 2) {
      return List.of(List.of(Length.ZERO, stop));
    }
    Length least = stop.minus(cutter);
    Length most = cutter.times(count - 1L);
    Length middle = least.plus(most).dividedBy(2);
    Length easy = s.onGraduation(middle);
    boolean fits = !easy.isLess(least) && !easy.isMore(most);
    Length first = s.set("first_pass", fits ? easy : middle, "", Kind.FREE, null);
    List<List<Length>> passes = new ArrayList<>();
    for (long left = count - 1L; left >= 0; left--) {
      Length far = stop.minus(first.times(left).dividedBy(count - 1L));
      Length near = far.minus(cutter).max(Length.ZERO);
      int last = passes.size() - 1;
      if (last >= 0 && !near.isMore(passes.get(last).get(1))) {
        passes.set(last, List.of(passes.get(last).get(0), far)); // no ridge between them
      } else if (near.isLess(far)) {
        passes.add(List.of(near, far));
      }
    }
    return passes;
  }

  private static Removal band(Aim own, Solid solid, Side end, List<Length> cut, Depth depth) {
    return Shapes.band(solid, end, cut, own.feature().face(), depth.reach());
  }

  /** End for end between two ends of one face, over between two faces. */
  private static Set<Turn> endTurns(Situation s, List<Aim> aims, List<Workpiece> pieces) {
    Part.Feature first = aims.get(0).feature();
    Set<Turn> turns = EnumSet.noneOf(Turn.class);
    turns.addAll(turns(s, pieces, ends(first).get(0), first.face()));
    for (Side face : List.of(Side.OUTSIDE, Side.INSIDE)) {
      long ends =
          aims.stream()
              .filter(a -> a.feature().face() == face)
              .flatMap(a -> ends(a.feature()).stream())
              .distinct()
              .count();
      if (ends > 1) {
        turns.add(Turn.ROTATE_END_FOR_END);
      }
    }
    if (aims.stream().map(a -> a.feature().face()).distinct().count() > 1) {
      turns.add(Turn.TURN_OVER);
    }
    return Set.copyOf(turns);
  }

  static Length shortest(List<Workpiece> pieces) {
    return pieces.stream().map(p -> p.solid().length()).reduce(Length::min).orElse(Length.ZERO);
  }
}
