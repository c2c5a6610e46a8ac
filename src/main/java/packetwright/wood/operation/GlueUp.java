package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.text.source.Located;
import packetwright.wood.blank.Blank;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Solid;
import packetwright.wood.workpiece.Bench;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/**
 * A wide blank glued up from boards, edge to edge: widths add up. Its faces count as no longer
 * flat, since boards seldom come out level at the glue lines, until they are planed or sanded
 * (common practice, no source); its ends are ragged.
 */
final class GlueUp {
  private GlueUp() {}

  /**
   * The names of a blank's boards: its own, or {@code seat 1}, {@code seat 2} of a glued-up one.
   */
  static List<String> boardNames(Blank blank) {
    return blank.isGluedUp()
        ? IntStream.rangeClosed(1, blank.boards().count())
            .mapToObj(number -> blank.name() + " " + number)
            .toList()
        : List.of(blank.name());
  }

  /** The glued-up blank that an operation puts together, or none. */
  static @Nullable Blank made(Situation s) {
    Located<String> makes = s.operation().makes();
    Blank blank = makes == null ? null : s.inputs().blank(makes.value());
    return s.operation().verb().value() == Verb.GLUE && blank != null && blank.isGluedUp()
        ? blank
        : null;
  }

  /** Whether a piece is such a blank or has come out of one. */
  static boolean isGlued(Situation s, Workpiece piece) {
    Blank blank = s.inputs().blank(piece.blank());
    return blank != null && blank.isGluedUp() && !boardNames(blank).contains(piece.name());
  }

  static @Nullable Outcome glue(Situation s, Blank blank) {
    List<Workpiece> boards = s.targets();
    List<String> names = boards.stream().map(Workpiece::name).toList();
    if (boards.isEmpty()) {
      return null;
    }
    if (!names.equals(boardNames(blank))) {
      s.error(
          "glue-up",
          "`"
              + blank.name()
              + "` is glued from "
              + Listing.of(boardNames(blank))
              + ", in this order",
          "write `glue: [" + String.join(", ", boardNames(blank)) + "]`");
      return null;
    }
    Workpiece first = boards.get(0);
    for (Workpiece board : boards) {
      if (!isLike(s, board, first)) {
        return null;
      }
    }
    Joining.requireFitted(s, boards);
    for (int i = 0; i < boards.size(); i++) {
      requireJoint(s, boards.get(i), i > 0, i < boards.size() - 1);
    }
    Bench bench = s.bench();
    for (String name : names) {
      bench = bench.without(name, s.step().label());
    }
    Workpiece panel = panel(blank, boards);
    return s.done(bench.with(panel), Joining.tool(s), boards, List.of(panel), null);
  }

  private static boolean isLike(Situation s, Workpiece board, Workpiece first) {
    Solid solid = board.solid();
    if (!solid.removals().isEmpty()) {
      return refuse(s, "`" + board.name() + "` has been cut into already", "glue it up before");
    }
    return isAlike(s, board, "long", solid.length(), first, first.solid().length())
        && isAlike(s, board, "thick", solid.thickness(), first, first.solid().thickness());
  }

  private static boolean isAlike(
      Situation s, Workpiece board, String way, Length here, Workpiece first, Length there) {
    return here.equals(there)
        || refuse(
            s,
            "`%s` is %s %s here, and `%s` is %s"
                .formatted(board.name(), s.print(here), way, first.name(), s.print(there)),
            "bring all boards of a glue-up to one length and one thickness before");
  }

  private static boolean refuse(Situation s, String message, String hint) {
    s.error("glue-up", message, hint);
    return false;
  }

  /** Glue holds only between edges that touch along their whole length. */
  private static void requireJoint(Situation s, Workpiece board, boolean below, boolean above) {
    List<Side> edges = new ArrayList<>();
    if (below) {
      edges.add(Side.BOTTOM);
    }
    if (above) {
      edges.add(Side.TOP);
    }
    for (Side edge : edges) {
      for (State state : List.of(State.STRAIGHT, State.SQUARE)) {
        if (!board.is(edge, state) && s.told().isNew("no-straight-edge", board.name() + edge)) {
          s.error(
              "no-straight-edge",
              "the "
                  + Listing.side(edge)
                  + " of `"
                  + board.name()
                  + "` is glued, and is not"
                  + " straight and square yet",
              "add `- joint_edge: "
                  + board.blank()
                  + "` with `sides: "
                  + edge.word()
                  + "` before the glue");
        }
      }
    }
  }

  private static Workpiece panel(Blank blank, List<Workpiece> boards) {
    Workpiece first = boards.get(0);
    Workpiece last = boards.get(boards.size() - 1);
    Length width = boards.stream().map(b -> b.solid().width()).reduce(Length.ZERO, Length::plus);
    Map<Side, Set<State>> states = new EnumMap<>(Side.class);
    states.put(Side.BOTTOM, first.states().getOrDefault(Side.BOTTOM, Set.of()));
    states.put(Side.TOP, last.states().getOrDefault(Side.TOP, Set.of()));
    Solid solid = Solid.block(first.solid().length(), width, first.solid().thickness());
    return new Workpiece(blank.name(), blank.name(), solid, states);
  }
}
