package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop.CutterSet;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Turn;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Part;
import packetwright.wood.part.Removal;
import packetwright.wood.setup.CutterPlan;
import packetwright.wood.setup.Setting;
import packetwright.wood.setup.Setting.Kind;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/**
 * Cuts that take wood out of a piece without parting it: rabbets, grooves, dadoes, notches, holes.
 */
final class Shaping {
  private static final List<String> RABBETED_EDGES = List.of(Side.TOP.word(), Side.BOTTOM.word());

  private Shaping() {}

  static @Nullable Outcome cut(Situation s) {
    List<Aim> aims = Aim.all(s);
    List<Workpiece> pieces = Aim.pieces(s, aims);
    if (aims.isEmpty() || pieces.isEmpty()) {
      return null;
    }
    Aim aim = aims.get(0);
    if (aim.feature().kind() == FeatureKind.NOTCH) {
      return isSingle(s, aims) ? Handcut.notch(s, aim, pieces) : null;
    }
    boolean isAtEnds =
        aim.feature().kind() == FeatureKind.RABBET
            && !RABBETED_EDGES.contains(aim.feature().where());
    return isAtEnds ? endRabbets(s, aims, pieces) : band(s, aims, pieces);
  }

  static @Nullable Outcome drill(Situation s) {
    List<Aim> aims = Aim.all(s);
    List<Workpiece> pieces = Aim.pieces(s, aims);
    if (aims.isEmpty() || pieces.isEmpty()) {
      return null;
    }
    return isSingle(s, aims) ? Handcut.hole(s, aims.get(0), pieces) : null;
  }

  /** Whether there is but one feature, as there must be where each is laid out by itself. */
  private static boolean isSingle(Situation s, List<Aim> aims) {
    s.target();
    return aims.size() == 1;
  }

  // ---- grooves, dadoes, rabbets along an edge

  private static @Nullable Outcome band(Situation s, List<Aim> aims, List<Workpiece> pieces) {
    Aim aim = aims.get(0);
    Side edge = aim.feature().from() == null ? edgeOf(aim.feature()) : aim.feature().from();
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
      requireReference(s, piece, fenceSide, aim.feature());
      for (Aim other : aims) {
        if (!isSameSetting(other, aim) || !near(other, piece, fenceSide).equals(reckoned)) {
          settingsDiffer(s, other, aim);
          return null;
        }
      }
    }
    MachineKind tool = s.tool(MachineKind.DADO_SET);
    CutterPlan plan = plan(s, tool, aim);
    if (plan == null) {
      return null;
    }
    Length cutter =
        s.settings()
            .set(
                new Setting(
                    "cutter",
                    Quantity.of(plan.width()),
                    "",
                    s.tolerance(aim.size("width")),
                    Kind.BOUND,
                    false,
                    plan.stack()));
    List<Length> fences = fences(s, plan, reckoned);
    Length height = height(s, aim);
    Length deepest = deepestPass(s, tool, height);
    List<Workpiece> after = new ArrayList<>();
    for (Workpiece piece : pieces) {
      Workpiece cut = piece;
      for (Length fence : fences) {
        cut =
            cut.minus(
                Removals.band(
                    piece.solid(), fenceSide, fence, fence.plus(cutter), aim.feature(), height),
                s.index());
      }
      after.add(cut.withHistory(cut.history().aimedAt(Aim.names(aims))));
    }
    boolean isAlong = edge.axis() == 1;
    Work work =
        new Work(
            isAlong ? Feed.ALONG : Feed.ACROSS,
            isAlong ? fences.get(0) : Length.ZERO,
            deepest,
            shortest(pieces),
            Length.ZERO,
            false,
            turns(s, pieces, fenceSide));
    return s.done(s.bench().withAll(after), tool, pieces, after, work);
  }

  private static void settingsDiffer(Situation s, Aim one, Aim other) {
    s.error(
        "settings-differ",
        one.target().at(),
        "`%s` needs another setting than `%s`"
            .formatted(one.target().value(), other.target().value()),
        "write one operation for each");
  }

  private static Side edgeOf(Part.Feature rabbet) {
    return rabbet.where().equals(Side.TOP.word()) ? Side.TOP : Side.BOTTOM;
  }

  /** From the side at the fence to the near side of the feature, in the piece as it is now. */
  private static Length near(Aim aim, Workpiece piece, Side fenceSide) {
    Side from = aim.feature().from() == null ? edgeOf(aim.feature()) : aim.feature().from();
    Length at = aim.length("at");
    return from == fenceSide
        ? at
        : piece.solid().extent(from.axis()).minus(at).minus(aim.length("width"));
  }

  private static boolean isSameSetting(Aim a, Aim b) {
    return a.length("width").equals(b.length("width"))
        && a.length("depth").equals(b.length("depth"))
        && a.feature().face() == b.feature().face()
        && a.feature().where().equals(b.feature().where());
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

  private static @Nullable CutterPlan plan(Situation s, MachineKind tool, Aim aim) {
    Length width = aim.length("width");
    Length graduation =
        new Length(
            s.inputs()
                .project()
                .rule()
                .graduation()
                .times(s.inputs().project().rule().unit().inBase()));
    Length blade = s.machineValue(MachineKind.TABLE_SAW, "kerf");
    CutterPlan plan =
        switch (tool) {
          case DADO_SET -> {
            CutterSet set = s.inputs().shop().cutters();
            yield CutterPlan.of(width, set, graduation);
          }
          case TABLE_SAW ->
              width.isLess(blade) || blade.signum() <= 0
                  ? null
                  : CutterPlan.inPasses(width, List.of(blade), graduation);
          case HAND_SAW, CHISEL -> new CutterPlan(width, List.of(), List.of(Length.ZERO));
          default -> null;
        };
    if (plan == null) {
      s.error(
          "no-cutter",
          "the `" + tool.word() + "` of this shop has no cutter so narrow as " + s.print(width),
          "widen the feature, or name another tool with `at:`");
    }
    return plan;
  }

  private static List<Length> fences(Situation s, CutterPlan plan, Length first) {
    List<Length> fences = new ArrayList<>();
    int passes = plan.offsets().size();
    for (int i = 0; i < passes; i++) {
      boolean isInner = i > 0 && i < passes - 1;
      fences.add(
          s.set(
              i == 0 ? "fence" : "fence_" + (i + 1),
              first.plus(plan.offsets().get(i)),
              "near",
              isInner ? Kind.FREE : Kind.BOUND,
              null));
    }
    s.settings().passes(passes);
    return fences;
  }

  private static Length height(Situation s, Aim aim) {
    return s.set("height", aim.length("depth"), "", Kind.BOUND, s.tolerance(aim.size("depth")));
  }

  /** The deepest cut of one pass: a cut that is too deep for one is made in two. */
  private static Length deepestPass(Situation s, MachineKind tool, Length height) {
    Length most = s.machineValue(tool, "depth_per_pass");
    if (most.signum() <= 0 || !height.isMore(most)) {
      return height;
    }
    Length first = s.set("first_height", most, "", Kind.FREE, null);
    return first.max(height.minus(first));
  }

  /** How the piece is turned after the operation before, where that was the same set-up. */
  private static Set<Turn> turns(Situation s, List<Workpiece> pieces, Side fenceSide) {
    List<OperationRun> earlier = s.earlier();
    if (earlier.isEmpty()) {
      return Set.of();
    }
    OperationRun before = earlier.get(earlier.size() - 1);
    List<Side> from = before.operation().from();
    boolean isSameSetup =
        before.step().number() == s.step().number()
            && !from.isEmpty()
            && before.after().stream()
                .anyMatch(p -> pieces.stream().anyMatch(q -> q.name().equals(p.name())));
    if (!isSameSetup) {
      return Set.of();
    }
    List<Side> now = s.operation().from();
    if (from.size() > 1 && now.size() > 1 && from.get(1) != now.get(1)) {
      return Set.of(Turn.TURN_OVER);
    }
    return from.get(0) == fenceSide.opposite() ? Set.of(Turn.ROTATE_END_FOR_END) : Set.of();
  }

  // ---- rabbets at the ends

  private static @Nullable Outcome endRabbets(Situation s, List<Aim> aims, List<Workpiece> pieces) {
    Aim aim = aims.get(0);
    List<Side> ends =
        switch (aim.feature().where()) {
          case "left" -> List.of(Side.LEFT);
          case "right" -> List.of(Side.RIGHT);
          default -> List.of(Side.LEFT, Side.RIGHT);
        };
    for (Aim other : aims) {
      if (!isSameSetting(other, aim)) {
        settingsDiffer(s, other, aim);
        return null;
      }
    }
    for (Workpiece piece : pieces) {
      for (Side end : ends) {
        requireReference(s, piece, end, aim.feature());
      }
    }
    MachineKind tool = s.tool(MachineKind.DADO_SET);
    Length stop =
        s.set("stop", aim.length("width"), "far", Kind.BOUND, s.tolerance(aim.size("width")));
    List<Length> stack = stackThatFits(s, tool, aim);
    if (stack.isEmpty()) {
      return null;
    }
    Length cutter =
        s.settings()
            .set(
                new Setting(
                    "cutter",
                    Quantity.of(CutterPlan.total(stack)),
                    "",
                    null,
                    Kind.FREE,
                    false,
                    stack));
    Length height = height(s, aim);
    Length deepest = deepestPass(s, tool, height);
    s.settings().passes(s.settings().needed(stop, cutter));
    List<Workpiece> after = new ArrayList<>();
    for (Workpiece piece : pieces) {
      Workpiece cut = piece;
      for (Side end : ends) {
        Removal rabbet =
            Removals.band(piece.solid(), end, Length.ZERO, stop, aim.feature(), height);
        cut = cut.minus(rabbet, s.index());
      }
      after.add(cut.withHistory(cut.history().aimedAt(Aim.names(aims))));
    }
    Set<Turn> turns = ends.size() > 1 ? Set.of(Turn.ROTATE_END_FOR_END) : Set.of();
    Work work =
        new Work(Feed.ACROSS, Length.ZERO, deepest, shortest(pieces), Length.ZERO, false, turns);
    return s.done(s.bench().withAll(after), tool, pieces, after, work);
  }

  /** The stack that is still set up from before, where it is no wider than the rabbet. */
  private static List<Length> stackThatFits(Situation s, MachineKind tool, Aim aim) {
    for (int i = s.earlier().size() - 1; i >= 0; i--) {
      OperationRun before = s.earlier().get(i);
      for (Setting setting : before.settings()) {
        boolean isCutter = before.tool() == tool && setting.name().equals("cutter");
        if (isCutter && !setting.value().asLength().isMore(aim.length("width"))) {
          return setting.stack().isEmpty() ? List.of(setting.value().asLength()) : setting.stack();
        }
      }
    }
    CutterPlan plan = plan(s, tool, aim);
    return plan == null ? List.of() : plan.stack().isEmpty() ? List.of(plan.width()) : plan.stack();
  }

  static Length shortest(List<Workpiece> pieces) {
    return pieces.stream().map(p -> p.solid().length()).reduce(Length::min).orElse(Length.ZERO);
  }
}
