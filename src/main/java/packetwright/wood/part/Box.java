package packetwright.wood.part;

import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;

/**
 * A box parallel to a piece's frame.
 *
 * @param low the corner with the least coordinates
 * @param high the corner with the greatest; above {@code low} on every axis
 */
public record Box(Point low, Point high) {
  /** Refuses a box without volume. */
  public Box {
    for (int axis = 0; axis < 3; axis++) {
      if (!low.on(axis).isLess(high.on(axis))) {
        throw new IllegalArgumentException("box without volume: " + low + " to " + high);
      }
    }
  }

  /** Its extent on an axis. */
  public Length extent(int axis) {
    return high.on(axis).minus(low.on(axis));
  }

  /** Whether another box lies wholly within it; touching sides count as within. */
  public boolean contains(Box other) {
    for (int axis = 0; axis < 3; axis++) {
      if (other.low.on(axis).isLess(low.on(axis)) || other.high.on(axis).isMore(high.on(axis))) {
        return false;
      }
    }
    return true;
  }

  /** Whether the two share a volume; touching is not sharing. */
  public boolean overlaps(Box other) {
    for (int axis = 0; axis < 3; axis++) {
      if (!other.low.on(axis).isLess(high.on(axis)) || !low.on(axis).isLess(other.high.on(axis))) {
        return false;
      }
    }
    return true;
  }

  /** What the two share; none when that has no volume. */
  public @Nullable Box common(Box other) {
    if (!overlaps(other)) {
      return null;
    }
    Point from = low;
    Point to = high;
    for (int axis = 0; axis < 3; axis++) {
      from = from.with(axis, from.on(axis).max(other.low.on(axis)));
      to = to.with(axis, to.on(axis).min(other.high.on(axis)));
    }
    return new Box(from, to);
  }
}
