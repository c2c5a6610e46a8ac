package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.formula.Inequality;
import packetwright.text.formula.Inequality.Range;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.part.Solid;

/**
 * A piece where it sits in the assembly.
 *
 * @param piece its name, {@code side 1}
 * @param part what it is a piece of
 * @param solid its own shape: one of a pair may be the mirror image of the part's
 * @param corner its lowest corner in the assembly, before it is tilted
 * @param right where its right end looks
 * @param top where its top edge looks
 * @param inside where its inside face looks
 * @param tilt how it is turned from there, or none; only the chunks of its wood count it in
 */
public record Placed(
    String piece,
    Part part,
    Solid solid,
    Point corner,
    Direction right,
    Direction top,
    Direction inside,
    @Nullable Tilt tilt) {

  /** Where one of its own axes looks: 0 the right end, 1 the top edge, 2 the inside face. */
  public Direction direction(int axis) {
    return List.of(right, top, inside).get(axis);
  }

  /** Which of its own axes lies along an axis of the assembly. */
  public int ownAxis(int axis) {
    return right.axis() == axis ? 0 : top.axis() == axis ? 1 : 2;
  }

  /** A point of the piece's own frame, in the assembly. */
  public Point inAssembly(Point local) {
    Point placed = corner;
    for (int axis = 0; axis < 3; axis++) {
      Direction direction = direction(axis);
      Length along =
          direction.isPositive() ? local.on(axis) : solid.extent(axis).minus(local.on(axis));
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

  /** A box of the assembly, in the piece's own frame. */
  Box inOwnFrame(Box box) {
    Point low = corner;
    Point high = corner;
    for (int axis = 0; axis < 3; axis++) {
      Direction direction = direction(axis);
      Length near = box.low().on(direction.axis()).minus(corner.on(direction.axis()));
      Length far = box.high().on(direction.axis()).minus(corner.on(direction.axis()));
      boolean isPositive = direction.isPositive();
      low = low.with(axis, isPositive ? near : solid.extent(axis).minus(far));
      high = high.with(axis, isPositive ? far : solid.extent(axis).minus(near));
    }
    return new Box(low, high);
  }

  /** The block that it is made from, in the assembly. */
  public Box block() {
    return inAssembly(solid.block());
  }

  /** Its wood, in the assembly, as boxes that do not overlap; slopes and holes are still in it. */
  public List<Box> wood() {
    return solid.wood().stream().map(this::inAssembly).toList();
  }

  /** Its wood, tilted, as convex chunks that do not overlap; holes are still in it. */
  List<Chunk> chunks() {
    List<Inequality> cuts = cuts();
    Turn turn = tilt == null ? null : new Turn(tilt, corner);
    return wood().stream()
        .map(box -> new Chunk(box, cuts))
        .map(chunk -> turn == null ? chunk : turn.of(chunk))
        .filter(chunk -> chunk.around() != null)
        .toList();
  }

  /** What its slopes leave, in the assembly. */
  List<Inequality> cuts() {
    return slopes().stream().map(this::inAssembly).toList();
  }

  List<Slope> slopes() {
    return solid.removals().stream()
        .filter(Slope.class::isInstance)
        .map(Slope.class::cast)
        .toList();
  }

  Inequality inAssembly(Slope slope) {
    List<Rational> factors = new ArrayList<>(List.of(Rational.ZERO, Rational.ZERO, Rational.ZERO));
    Rational limit = slope.c().inches();
    for (int axis = 0; axis < 3; axis++) {
      if (axis == slope.axis()) {
        continue;
      }
      Rational own = axis == Removal.acrossU(slope.axis()) ? slope.a() : slope.b();
      Direction direction = direction(axis);
      Rational begin = corner.on(direction.axis()).inches();
      if (direction.isPositive()) {
        factors.set(direction.axis(), own);
        limit = limit.plus(own.times(begin));
      } else {
        factors.set(direction.axis(), own.negated());
        limit = limit.minus(own.times(begin.plus(solid.extent(axis).inches())));
      }
    }
    return new Inequality(factors, limit);
  }

  /** The same piece, moved that way. */
  Placed moved(Direction way, Length by) {
    int axis = way.axis();
    Length at = corner.on(axis);
    Point moved = corner.with(axis, way.isPositive() ? at.plus(by) : at.minus(by));
    return new Placed(piece, part, solid, moved, right, top, inside, tilt);
  }

  /**
   * How far it can move that way before it meets another piece, which does not overlap it; none
   * when it meets none. Holes and rounded edges count as wood.
   */
  @Nullable Length room(Placed other, Direction way) {
    Length least = null;
    for (Chunk own : chunks()) {
      for (Chunk others : other.chunks()) {
        Range reach = own.wayTo(others, way.axis());
        if (reach == null) {
          continue;
        }
        Range ahead = way.isPositive() ? reach : reach.turned();
        if (ahead.high().signum() > 0) {
          Length room = ahead.low().max(Length.ZERO);
          least = least == null ? room : room.min(least);
        }
      }
    }
    return least;
  }

  /**
   * How far it would have to move along an axis to touch another piece, which does not overlap it;
   * zero when they touch there, none when they would pass each other. Holes and rounded edges count
   * as wood.
   */
  public @Nullable Length gapTo(Placed other, int axis) {
    Length least = null;
    for (Chunk own : chunks()) {
      for (Chunk others : other.chunks()) {
        Range way = own.wayTo(others, axis);
        if (way != null) {
          Length gap = way.low().max(new Length(way.high().inches().negated())).max(Length.ZERO);
          least = least == null ? gap : gap.min(least);
        }
      }
    }
    return least;
  }

  /** Whether the two have a surface in common. */
  public boolean touches(Placed other) {
    for (int axis = 0; axis < 3; axis++) {
      Length gap = gapTo(other, axis);
      if (gap != null && gap.signum() == 0) {
        return true;
      }
    }
    return false;
  }
}
