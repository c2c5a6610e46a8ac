package packetwright.wood.operation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Length;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Trough;
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
    Length inset = s.set("inset", aim, "at", from.word());
    Length width = s.set("width", aim, "width", "");
    Length length = s.set("length", aim, "length", "");
    Length depth = s.set("depth", aim, "depth", "");
    int across = 1 - from.axis();
    Aim.Shape pocket =
        (own, solid) -> {
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
          return List.of(new Trough(new Box(low, high)));
        };
    return taken(s, List.of(aim), pieces, new Cut(tool, depth, pocket));
  }

  /** Holes of one diameter and depth, each at its own place. */
  static @Nullable Outcome drill(Situation s) {
    List<Aim> aims = Aim.all(s);
    List<Workpiece> pieces = Aim.pieces(s, aims);
    if (aims.isEmpty() || pieces.isEmpty()) {
      return null;
    }
    Aim first = aims.get(0);
    if (isStillInBlank(s, first, pieces)) {
      return null;
    }
    for (Aim other : aims) {
      boolean isSame =
          other.length("diameter").equals(first.length("diameter"))
              && other.length("depth").equals(first.length("depth"))
              && other.feature().where().equals(first.feature().where())
              && other.feature().face() == first.feature().face();
      if (!isSame) {
        Shaping.settingsDiffer(s, other, first);
        return null;
      }
    }
    MachineKind tool = s.tool(MachineKind.DRILL_PRESS);
    Map<Aim, List<Length>> places = places(s, aims, pieces);
    Length diameter = s.set("diameter", first, "diameter", "");
    boolean isThrough = first.feature().where().equals("through");
    Length depth = isThrough ? Length.ZERO : s.set("depth", first, "depth", "");
    Aim.Shape bore =
        (aim, solid) -> {
          Length deep = isThrough ? solid.thickness() : depth;
          List<Length> place = places.getOrDefault(aim, List.of());
          Length along = solid.measuredFrom(from(aim), place.get(0), place.get(0)).get(0);
          Length begin = solid.measuredFrom(aim.feature().face(), Length.ZERO, deep).get(0);
          Point centre =
              new Point(Length.ZERO, Length.ZERO, begin)
                  .with(from(aim).axis(), along)
                  .with(1 - from(aim).axis(), place.get(1));
          return List.of(new Bore(2, centre, deep, diameter));
        };
    Cut cut = new Cut(tool, isThrough ? pieces.get(0).solid().thickness() : depth, bore);
    return taken(s, aims, pieces, cut);
  }

  /** How far each hole is from the side that it is located from, and from the left or bottom. */
  private static Map<Aim, List<Length>> places(
      Situation s, List<Aim> aims, List<Workpiece> pieces) {
    Map<Aim, List<Length>> places = new LinkedHashMap<>();
    for (Aim aim : aims) {
      String suffix = places.isEmpty() ? "" : "_" + (places.size() + 1);
      int across = 1 - from(aim).axis();
      Length drawn = aim.feature().sizes().get("across");
      Length middle = Aim.first(aim, pieces).solid().extent(across).dividedBy(2);
      Length inset = s.set("inset" + suffix, aim, "at", from(aim).word());
      String low = across == 0 ? Side.LEFT.word() : Side.BOTTOM.word();
      Length centre =
          drawn == null
              ? s.set("across" + suffix, middle, low, Kind.BOUND, null)
              : s.set("across" + suffix, aim, "across", low);
      places.put(aim, List.of(inset, centre));
    }
    return places;
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

  /**
   * What is taken, as the tool sees it.
   *
   * @param tool that takes it
   * @param depth of the cut
   * @param shape in the frame of the drawing
   */
  private record Cut(MachineKind tool, Length depth, Aim.Shape shape) {}

  private static Outcome taken(Situation s, List<Aim> aims, List<Workpiece> pieces, Cut cut) {
    List<Workpiece> after = Aim.cut(s, aims, pieces, cut.shape());
    Work work =
        new Work(
            Feed.CLAMPED,
            Length.ZERO,
            cut.depth(),
            Shaping.shortest(pieces),
            Length.ZERO,
            false,
            Set.of());
    return s.done(s.bench().withAll(after), cut.tool(), pieces, after, work);
  }
}
