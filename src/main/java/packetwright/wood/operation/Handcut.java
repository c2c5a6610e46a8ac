package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Length;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Trough;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.Setting.Kind;
import packetwright.wood.workpiece.Workpiece;

/** Features that are laid out on the piece and cut to their lines: notches and holes. */
final class Handcut {
  private Handcut() {}

  static @Nullable Outcome notch(Situation s, Aim aim, List<Workpiece> pieces) {
    Side from = from(aim);
    if (isStillInBlank(s, aim, pieces)) {
      return null;
    }
    MachineKind tool = s.tool(MachineKind.CHISEL);
    Length inset = s.set("inset", aim.length("at"), from.word(), Kind.BOUND, null);
    Length width = s.set("width", aim.length("width"), "", Kind.BOUND, null);
    Length length = s.set("length", aim.length("length"), "", Kind.BOUND, null);
    Length depth = s.set("depth", aim.length("depth"), "", Kind.BOUND, null);
    int across = 1 - from.axis();
    Function<Solid, Removal> pocket =
        solid -> {
          List<Length> along = solid.measuredFrom(from, inset, inset.plus(width));
          List<Length> deep = solid.measuredFrom(aim.feature().face(), Length.ZERO, depth);
          Length margin = solid.extent(across).minus(length).dividedBy(2);
          Point low =
              new Point(Length.ZERO, Length.ZERO, deep.get(0))
                  .with(from.axis(), along.get(0))
                  .with(across, margin);
          Point high =
              new Point(Length.ZERO, Length.ZERO, deep.get(1))
                  .with(from.axis(), along.get(1))
                  .with(across, margin.plus(length));
          return new Trough(new Box(low, high));
        };
    return taken(s, tool, aim, pieces, pocket);
  }

  static @Nullable Outcome hole(Situation s, Aim aim, List<Workpiece> pieces) {
    Side from = from(aim);
    if (isStillInBlank(s, aim, pieces)) {
      return null;
    }
    MachineKind tool = s.tool(MachineKind.DRILL_PRESS);
    int across = 1 - from.axis();
    Solid first = pieces.get(0).solid();
    boolean isThrough = aim.feature().where().equals("through");
    Length drawnCentre = aim.feature().sizes().get("across");
    Length at = s.set("inset", aim.length("at"), from.word(), Kind.BOUND, null);
    Length centre =
        s.set(
            "across",
            drawnCentre == null ? first.extent(across).dividedBy(2) : drawnCentre,
            across == 0 ? Side.LEFT.word() : Side.BOTTOM.word(),
            Kind.BOUND,
            null);
    Length diameter = s.set("diameter", aim.length("diameter"), "", Kind.BOUND, null);
    Length depth =
        isThrough ? first.thickness() : s.set("depth", aim.length("depth"), "", Kind.BOUND, null);
    Function<Solid, Removal> bore =
        solid -> {
          Length along = solid.measuredFrom(from, at, at).get(0);
          Length begin = solid.measuredFrom(aim.feature().face(), Length.ZERO, depth).get(0);
          Point place =
              new Point(Length.ZERO, Length.ZERO, begin)
                  .with(from.axis(), along)
                  .with(across, centre);
          return new Bore(2, place, depth, diameter);
        };
    return taken(s, tool, aim, pieces, bore);
  }

  private static Side from(Aim aim) {
    Side from = aim.feature().from();
    if (from == null) {
      throw new IllegalStateException(aim.target().value() + " is located from nothing");
    }
    return from;
  }

  private static boolean isStillInBlank(Situation s, Aim aim, List<Workpiece> pieces) {
    return pieces.stream().anyMatch(piece -> Shaping.isStillInBlank(s, piece, aim.feature()));
  }

  private static Outcome taken(
      Situation s,
      MachineKind tool,
      Aim aim,
      List<Workpiece> pieces,
      Function<Solid, Removal> removal) {
    List<Workpiece> after = new ArrayList<>();
    for (Workpiece piece : pieces) {
      Workpiece cut = piece.minus(removal.apply(piece.solid()), s.index());
      after.add(cut.withHistory(cut.history().aimedAt(Aim.names(List.of(aim)))));
    }
    Work work =
        new Work(
            Feed.CLAMPED,
            Length.ZERO,
            aim.length("depth"),
            Shaping.shortest(pieces),
            Length.ZERO,
            false,
            Set.of());
    return s.done(s.bench().withAll(after), tool, pieces, after, work);
  }
}
