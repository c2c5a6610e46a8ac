package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.formula.Inequality;
import packetwright.text.formula.Inequality.Range;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;

/**
 * A convex piece of wood in the assembly: a box cut by slopes.
 *
 * @param box before the slopes are cut
 * @param cuts three factors each, of x, y and z: the wood is where they stay below the limit
 */
record Chunk(Box box, List<Inequality> cuts) {
  Chunk {
    cuts = List.copyOf(cuts);
  }

  /** The box that it just fits in; none when the slopes leave nothing of it. */
  @Nullable Box around() {
    if (cuts.isEmpty()) {
      return box;
    }
    List<Inequality> system = inequalities();
    Point low = box.low();
    Point high = box.high();
    for (int axis = 0; axis < 3; axis++) {
      Range range = Inequality.range(system, axis);
      if (range == null) {
        return null;
      }
      low = low.with(axis, range.low());
      high = high.with(axis, range.high());
    }
    return new Box(low, high);
  }

  /** What two share; none when that has no volume. */
  @Nullable Chunk common(Chunk other) {
    Box shared = box.common(other.box);
    if (shared == null) {
      return null;
    }
    List<Inequality> all = new ArrayList<>(cuts);
    all.addAll(other.cuts);
    Chunk common = new Chunk(shared, all);
    return all.isEmpty() || Inequality.range(common.inequalities(), 0) != null ? common : null;
  }

  /**
   * How far the wood of another lies beyond this one's, on the lines along an axis that run through
   * both; less than 0 where it lies before it. None when no line meets both.
   */
  @Nullable Range wayTo(Chunk other, int axis) {
    int u = (axis + 1) % 3;
    int v = (axis + 2) % 3;
    if (!isAbreast(other, u) || !isAbreast(other, v)) {
      return null;
    }
    if (cuts.isEmpty() && other.cuts.isEmpty()) {
      return new Range(
          other.box.low().on(axis).minus(box.high().on(axis)),
          other.box.high().on(axis).minus(box.low().on(axis)));
    }
    // Variables: x, y and z of a point of this one, and the way along the axis to the other's.
    List<Inequality> system = new ArrayList<>();
    inequalities().forEach(i -> system.add(with(i, Rational.ZERO)));
    other.inequalities().forEach(i -> system.add(with(i, i.factors().get(axis))));
    return Inequality.range(system, 3);
  }

  private static Inequality with(Inequality bound, Rational ofWay) {
    List<Rational> factors = new ArrayList<>(bound.factors());
    factors.add(ofWay);
    return new Inequality(factors, bound.limit());
  }

  private boolean isAbreast(Chunk other, int axis) {
    return box.low().on(axis).isLess(other.box.high().on(axis))
        && other.box.low().on(axis).isLess(box.high().on(axis));
  }

  /** All that bounds it, the box and the cuts. */
  List<Inequality> inequalities() {
    List<Inequality> all = new ArrayList<>(cuts);
    for (int axis = 0; axis < 3; axis++) {
      all.add(bound(axis, Rational.ONE, box.high().on(axis)));
      all.add(bound(axis, Rational.of(-1), box.low().on(axis)));
    }
    return all;
  }

  private static Inequality bound(int axis, Rational factor, Length at) {
    List<Rational> factors = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      factors.add(i == axis ? factor : Rational.ZERO);
    }
    return new Inequality(factors, factor.times(at.inches()));
  }
}
