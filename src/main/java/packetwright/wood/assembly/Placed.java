package packetwright.wood.assembly;

import java.util.List;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Point;

/**
 * A piece where it sits in the assembly.
 *
 * @param piece its name, {@code side 1}
 * @param part what it is a piece of
 * @param corner its lowest corner in the assembly
 * @param right where its right end looks
 * @param top where its top edge looks
 * @param inside where its inside face looks
 */
public record Placed(
    String piece, Part part, Point corner, Direction right, Direction top, Direction inside) {

  /** A point of the piece's own frame, in the assembly. */
  public Point inAssembly(Point local) {
    Point placed = corner;
    List<Direction> directions = List.of(right, top, inside);
    for (int axis = 0; axis < 3; axis++) {
      Direction direction = directions.get(axis);
      Length along =
          direction.isPositive() ? local.on(axis) : part.solid().extent(axis).minus(local.on(axis));
      placed = placed.with(direction.axis(), corner.on(direction.axis()).plus(along));
    }
    return placed;
  }

  /** A box of the piece's own frame, in the assembly. */
  public Box inAssembly(Box local) {
    Point a = inAssembly(local.low());
    Point b = inAssembly(local.high());
    return new Box(
        new Point(a.x().min(b.x()), a.y().min(b.y()), a.z().min(b.z())),
        new Point(a.x().max(b.x()), a.y().max(b.y()), a.z().max(b.z())));
  }

  /** Its wood, in the assembly, as boxes that do not overlap. */
  public List<Box> wood() {
    return part.solidOf(piece).wood().stream().map(this::inAssembly).toList();
  }
}
