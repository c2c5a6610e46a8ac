package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation;
import packetwright.definition.project.Project.Bought;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.size.Evaluated;
import packetwright.definition.size.Size;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Located;
import packetwright.wood.blank.Blank;
import packetwright.wood.blank.Blanks;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Part;
import packetwright.wood.setup.Setting;
import packetwright.wood.setup.Setting.Kind;
import packetwright.wood.workpiece.Bench;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.History;
import packetwright.wood.workpiece.Workpiece.State;

/** Cuts that go through: a blade's width of wood is lost at each. */
final class Parting {
  private Parting() {}

  static @Nullable Outcome squareEnd(Situation s) {
    MachineKind tool = s.tool(MachineKind.MITER_SAW);
    Side end = s.operation().sides().isEmpty() ? Side.LEFT : s.operation().sides().get(0);
    List<Workpiece> pieces = s.pieces(s.target());
    if (pieces.isEmpty()) {
      return null;
    }
    Length trim = s.set("trim", trim(s, tool, pieces.get(0)), "", Kind.FREE, null);
    List<Workpiece> squared = new ArrayList<>();
    for (Workpiece piece : pieces) {
      requireStraightEdge(s, piece, s.reference(Side.BOTTOM));
      s.requireCapacity(tool, piece);
      if (!trim.isLess(piece.solid().length())) {
        return tooShort(s, piece, trim);
      }
      squared.add(squared(s, piece, end, trim).fresh(end, sawn(tool)));
    }
    Work work =
        new Work(
            Feed.ACROSS,
            Length.ZERO,
            pieces.get(0).solid().thickness(),
            Shaping.shortest(squared),
            trim,
            true,
            Set.of());
    return s.done(s.bench().withAll(squared), tool, pieces, squared, work);
  }

  private static Workpiece squared(Situation s, Workpiece piece, Side end, Length trim) {
    Length length = piece.solid().length();
    Workpiece cut =
        end == Side.LEFT
            ? piece.slice(0, trim, length, s.index())
            : piece.slice(0, Length.ZERO, length.minus(trim), s.index());
    // Lines that were measured from the old end are wrong now.
    History history = cut.history().laidOut(false);
    return cut.withHistory(history.withOver(history.over().minus(trim).max(Length.ZERO)));
  }

  /**
   * What is known of an end that a tool has made: one sawn by hand is planed before it is square.
   */
  private static State[] sawn(MachineKind tool) {
    return tool == MachineKind.HAND_SAW ? new State[0] : new State[] {State.SQUARE};
  }

  private static Length trim(Situation s, MachineKind tool, Workpiece piece) {
    Blank blank = s.inputs().blank(piece.blank());
    boolean isSheet = blank != null && blank.bought() == Bought.SHEET;
    return s.inputs().shop().allowance(Blanks.endTrim(tool, isSheet));
  }

  static @Nullable Outcome crosscut(Situation s) {
    Located<String> target = s.target();
    Part part = s.inputs().part(target.value());
    if (part == null) {
      throw new IllegalStateException("no part " + target.value());
    }
    Located<String> of = s.operation().of();
    if (of == null && isAmbiguous(s, part)) {
      return null;
    }
    Workpiece rest = s.piece(of == null ? new Located<>(part.blank(), target.at()) : of);
    if (rest == null) {
      return null;
    }
    if (!rest.blank().equals(part.blank())) {
      s.error(
          "wrong-blank",
          (of == null ? target : of).at(),
          "part `%s` is cut from blank `%s`, and this is `%s`"
              .formatted(part.name(), part.blank(), rest.blank()),
          "write `of: " + part.blank() + "`, or change the part's `blank:`");
      return null;
    }
    MachineKind tool = s.tool(MachineKind.MITER_SAW);
    Side end = s.reference(Side.LEFT);
    requireStraightEdge(s, rest, edge(s));
    // Sawn by hand and left long, a piece is planed at both ends: its lines were all measured from
    // the one end that was square.
    boolean isPlanedLater = tool == MachineKind.HAND_SAW && s.operation().leave() != null;
    if (!isPlanedLater || !rest.history().isLaidOut()) {
      s.require(
          "no-squared-end",
          rest,
          end,
          State.SQUARE,
          "add `- square_end: " + rest.name() + "` before");
    }
    if (!rest.history().isLaidOut() && s.told().isNew("not-laid-out", rest.name())) {
      s.error(
          "not-laid-out",
          "no lines are drawn on `" + rest.name() + "` before it is cut up",
          "add `- lay_out: " + rest.name() + "` before");
      rest = rest.withHistory(rest.history().laidOut(true)); // said once
    }
    s.requireCapacity(tool, rest);
    Length stop = stop(s, part, tool);
    return stop == null ? null : freed(s, part, rest, new Cut(tool, end, stop));
  }

  /** The edge that lies against the saw's fence: as written, or the bottom edge. */
  private static Side edge(Situation s) {
    return s.operation().from().stream()
        .filter(side -> side.axis() == 1)
        .findFirst()
        .orElse(Side.BOTTOM);
  }

  /** Whether the part could come out of more than one piece of its blank. */
  private static boolean isAmbiguous(Situation s, Part part) {
    List<String> names =
        s.bench().pieces().values().stream()
            .filter(p -> p.blank().equals(part.blank()))
            .filter(p -> s.inputs().part(Part.nameOf(p.name())) == null)
            .filter(p -> !p.solid().length().isLess(part.solid().length()))
            .map(Workpiece::name)
            .toList();
    if (names.size() > 1) {
      s.error(
          "several-pieces",
          "`" + part.name() + "` could be cut from " + Listing.of(names),
          "add `of:` with the name of one of them");
    }
    return names.size() > 1;
  }

  /**
   * How a part is parted from the rest.
   *
   * @param tool that cuts
   * @param end measured from
   * @param stop distance from that end to the near side of the blade
   */
  private record Cut(MachineKind tool, Side end, Length stop) {}

  private static @Nullable Length stop(Situation s, Part part, MachineKind tool) {
    Size length = s.inputs().sizes().get(part.name() + ".length");
    s.requireInspected(length.fitted());
    Length extra = extra(s);
    if (extra == null) {
      return null;
    }
    Length reckoned = part.solid().length().plus(extra);
    Kind kind = s.operation().leave() == null ? Kind.BOUND : Kind.FREE;
    Cutters.Guide guide = Cutters.Guide.of(tool, "stop", s.reference(Side.LEFT));
    return s.settings()
        .set(
            new Setting(
                guide.name(),
                Quantity.of(reckoned),
                guide.datum(),
                s.tolerance(part.name() + ".length"),
                kind,
                !length.fitted().isEmpty()));
  }

  private static @Nullable Outcome freed(Situation s, Part part, Workpiece whole, Cut cut) {
    Length kerf = s.kerf(cut.tool());
    int already = s.bench().named(part.name()).size();
    List<Workpiece> result = new ArrayList<>();
    Bench bench = s.bench();
    Workpiece rest = whole;
    for (int i = 1; i <= s.operation().count(); i++) {
      if (already + i > part.count()) {
        s.error(
            "part-cut-twice",
            s.target().at(),
            "`"
                + part.name()
                + "` is cut "
                + (already + i)
                + " times, and the project has "
                + part.count(),
            "lower `count`, or delete the operation");
        return null;
      }
      Length needed = cut.stop().plus(isLastEndKept(rest, cut) ? Length.ZERO : kerf);
      if (rest == null || rest.solid().length().isLess(needed)) {
        return tooShort(s, rest == null ? whole : rest, needed);
      }
      Workpiece piece =
          sliceAt(rest, cut, Length.ZERO, cut.stop(), s.index())
              .named(part.pieceName(already + i))
              .fresh(cut.end().opposite(), sawn(cut.tool()));
      Length over = cut.stop().minus(part.solid().length());
      boolean isLeftLong = s.operation().leave() != null;
      History history = piece.history().withOver(isLeftLong ? over : Length.ZERO);
      result.add(piece.withHistory(history.laidOut(false)));
      Length used = cut.stop().plus(kerf);
      Length before = rest.solid().length();
      rest = before.isMore(used) ? sliceAt(rest, cut, used, before, s.index()) : null;
      rest = rest == null ? null : rest.fresh(cut.end(), sawn(cut.tool()));
    }
    bench = bench.withAll(result);
    bench = rest == null ? bench.without(whole.name(), s.step().label()) : bench.with(rest);
    if (rest != null) {
      result.add(rest);
    }
    Length left = rest == null ? Length.ZERO : rest.solid().length();
    Work work =
        new Work(
            Feed.ACROSS,
            Length.ZERO,
            whole.solid().thickness(),
            held(s.operation(), cut.stop(), left),
            loose(s.operation(), cut.stop(), left),
            true,
            Set.of());
    return s.done(bench, cut.tool(), List.of(whole), result, work);
  }

  /** Whether a piece that is as long as the stop may go without a cut: its far end is square. */
  private static boolean isLastEndKept(@Nullable Workpiece rest, Cut cut) {
    return rest != null && rest.is(cut.end().opposite(), State.SQUARE);
  }

  /**
   * What is held: beside a stop block the part, at a stand-off block the rest, which lies against
   * the miter gauge, and without either the longer piece.
   */
  private static Length held(Operation operation, Length part, Length rest) {
    return isAtStandOff(operation) ? rest : operation.stop() ? part : part.max(rest);
  }

  /** What nobody holds. */
  private static Length loose(Operation operation, Length part, Length rest) {
    return isAtStandOff(operation) ? part : operation.stop() ? rest : part.min(rest);
  }

  /** Whether the part leaves its stop before the cut and falls free beside the blade. */
  private static boolean isAtStandOff(Operation operation) {
    return operation.stop() && operation.with().contains(Operation.Control.STAND_OFF_BLOCK);
  }

  /** What lies between two distances from the end that the cut is measured from. */
  private static Workpiece sliceAt(
      Workpiece piece, Cut cut, Length near, Length far, int operation) {
    Length length = piece.solid().length();
    return cut.end() == Side.LEFT
        ? piece.slice(0, near, far, operation)
        : piece.slice(0, length.minus(far), length.minus(near), operation);
  }

  static @Nullable Outcome rip(Situation s) {
    Located<String> target = s.target();
    Workpiece piece = s.piece(target);
    if (piece == null) {
      return null;
    }
    MachineKind tool = s.tool(MachineKind.TABLE_SAW);
    Side edge = s.reference(Side.BOTTOM);
    requireStraightEdge(s, piece, edge);
    Side table = s.operation().from().size() > 1 ? s.operation().from().get(1) : Side.OUTSIDE;
    s.require("no-flat-face", piece, table, State.FLAT, "joint or plane that face before ripping");
    if (tool == MachineKind.HAND_SAW) {
      Handwork.requireLines(s, List.of(piece));
    }
    Length extra = extra(s);
    Cutters.Guide guide = Cutters.Guide.of(tool, "fence", edge);
    Length fence = extra == null ? null : ripFence(s, piece, extra, guide);
    if (extra == null || fence == null) {
      return null;
    }
    Length width = piece.solid().width();
    if (!fence.isLess(width)) {
      s.error(
          "piece-too-narrow",
          "`"
              + piece.name()
              + "` is only "
              + s.print(width)
              + " wide here, so nothing is left to"
              + " rip off",
          "start from a wider blank, or delete the operation");
      return null;
    }
    boolean isMachined = tool != MachineKind.BAND_SAW && tool != MachineKind.HAND_SAW;
    State[] made = isMachined ? new State[] {State.STRAIGHT, State.SQUARE} : new State[0];
    Workpiece sawn =
        edge.isFar()
            ? piece.slice(1, width.minus(fence), width, s.index())
            : piece.slice(1, Length.ZERO, fence, s.index());
    Workpiece ripped =
        sawn.withHistory(sawn.history().withWide(extra)).fresh(edge.opposite(), made);
    Length strip = width.minus(fence).minus(s.kerf(tool)).max(Length.ZERO);
    Bench bench = s.bench().with(ripped);
    List<Workpiece> result = new ArrayList<>(List.of(ripped));
    Located<String> makes = s.operation().makes();
    if (makes != null && strip.signum() > 0) {
      Workpiece kept =
          (edge.isFar()
                  ? piece.slice(1, Length.ZERO, strip, s.index())
                  : piece.slice(1, width.minus(strip), width, s.index()))
              .named(makes.value())
              .fresh(edge, made);
      bench = bench.with(kept);
      result.add(kept);
    }
    Work work =
        new Work(
            Feed.ALONG,
            fence,
            piece.solid().thickness(),
            piece.solid().length(),
            strip,
            true,
            Set.of());
    return s.done(bench, tool, List.of(piece), result, work);
  }

  /** What is left above the drawn size, to be recut later; none when that cannot be read. */
  private static @Nullable Length extra(Situation s) {
    Located<String> leave = s.operation().leave();
    Evaluated extra = leave == null ? null : s.length(leave);
    return leave == null ? Length.ZERO : extra == null ? null : extra.length();
  }

  private static @Nullable Length ripFence(
      Situation s, Workpiece piece, Length extra, Cutters.Guide guide) {
    Located<String> to = s.operation().to();
    Part part = s.inputs().part(Part.nameOf(piece.name()));
    if (to == null && part == null) {
      s.error("missing-to", "the width to rip to is missing", "add `to:` with a size");
      return null;
    }
    String name = to == null ? Part.nameOf(piece.name()) + ".width" : to.value().strip();
    Evaluated wanted = s.length(to == null ? new Located<>(name, s.operation().place()) : to);
    return wanted == null
        ? null
        : s.settings()
            .set(
                new Setting(
                    guide.name(),
                    Quantity.of(wanted.value().asLength().plus(extra)),
                    guide.datum(),
                    s.tolerance(name),
                    s.operation().leave() == null ? Kind.BOUND : Kind.FREE,
                    !wanted.fitted().isEmpty()));
  }

  static void requireStraightEdge(Situation s, Workpiece piece, Side edge) {
    s.require(
        "no-straight-edge",
        piece,
        edge,
        State.STRAIGHT,
        "add `- joint_edge: " + piece.name() + "` before, or use the other edge");
  }

  static @Nullable Outcome tooShort(Situation s, Workpiece piece, Length wanted) {
    s.error(
        "blank-too-short",
        "`"
            + piece.name()
            + "` is only "
            + s.print(piece.solid().length())
            + " long here, and "
            + s.print(wanted)
            + " is to come out of it",
        "make the blank longer where it is rough cut, or under `sections`");
    return null;
  }
}
