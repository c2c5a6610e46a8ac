package packetwright.drawing.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A flat convex piece of a surface; a strip of a round one between two chords. */
final class Facet {
  /** Nearer than this, in inches, is the same place; rounding is far less, wood far more. */
  static final double SAME = 1e-8;

  private static final double PARALLEL = 1e-8;

  /** Facets farther apart, in inches, have nothing to do with each other. */
  private static final double AIR = 1e-3;

  private final List<Vector> corners;
  private final Vector normal;
  private final List<Vector> inward;
  private final double[] low = new double[3];
  private final double[] high = new double[3];
  private final @Nullable Round round;

  Facet(List<Vector> corners, @Nullable Round round) {
    this.corners = List.copyOf(corners);
    this.round = round;
    this.normal = normal(corners);
    this.inward =
        java.util.stream.IntStream.range(0, corners.size())
            .mapToObj(i -> normal.cross(next(i).minus(corners.get(i))).unit())
            .toList();
    for (int axis = 0; axis < 3; axis++) {
      low[axis] = Double.POSITIVE_INFINITY;
      high[axis] = Double.NEGATIVE_INFINITY;
      for (Vector corner : corners) {
        low[axis] = Math.min(low[axis], corner.on(axis));
        high[axis] = Math.max(high[axis], corner.on(axis));
      }
    }
  }

  /** Whether it may meet another: whether the boxes around both do, with air. */
  boolean isNear(Facet other) {
    for (int axis = 0; axis < 3; axis++) {
      if (low[axis] > other.high[axis] + AIR || other.low[axis] > high[axis] + AIR) {
        return false;
      }
    }
    return true;
  }

  /** Whether it may meet a line between two places. */
  boolean isNear(Vector from, Vector to) {
    for (int axis = 0; axis < 3; axis++) {
      double one = from.on(axis);
      double other = to.on(axis);
      if (low[axis] > Math.max(one, other) + AIR || high[axis] < Math.min(one, other) - AIR) {
        return false;
      }
    }
    return true;
  }

  /** By the areas of its shadows on the three planes (Newell; from memory). */
  private static Vector normal(List<Vector> corners) {
    Vector sum = new Vector(0, 0, 0);
    for (int i = 0; i < corners.size(); i++) {
      Vector from = corners.get(i).minus(corners.get(0));
      Vector to = corners.get((i + 1) % corners.size()).minus(corners.get(0));
      sum = sum.plus(from.cross(to));
    }
    return sum.unit();
  }

  private Vector next(int i) {
    return corners.get((i + 1) % corners.size());
  }

  /** Square to it, an inch long, to either side. */
  Vector normal() {
    return normal;
  }

  /** The circle that it is a strip along, or none when the surface is flat. */
  @Nullable Round round() {
    return round;
  }

  /** Square to the surface that it stands for, to the same side as {@link #normal}. */
  Vector normalAt(Vector place) {
    if (round == null) {
      return normal;
    }
    Vector outward = round.outward(place);
    return outward.dot(normal) < 0 ? outward.times(-1) : outward;
  }

  /** How far before its plane a place lies. */
  double distance(Vector place) {
    return normal.dot(place.minus(corners.get(0)));
  }

  /** Whether a direction runs along it. */
  boolean isAlong(Vector direction) {
    return Math.abs(normal.dot(direction)) < PARALLEL;
  }

  /** Whether a place lies in it; its rim counts. */
  boolean holds(Vector place) {
    if (Math.abs(distance(place)) > SAME) {
      return false;
    }
    for (int i = 0; i < inward.size(); i++) {
      if (inward.get(i).dot(place.minus(corners.get(i))) < -SAME) {
        return false;
      }
    }
    return true;
  }

  /** Where it meets another along a line: two ends; none when they do not, or lie in one plane. */
  List<Vector> meet(Facet other) {
    Vector direction = normal.cross(other.normal);
    double size = direction.length();
    if (size < 1e-6) {
      return List.of();
    }
    double mine = normal.dot(corners.get(0));
    double theirs = other.normal.dot(other.corners.get(0));
    Vector place =
        other.normal.cross(direction).times(mine).plus(direction.cross(normal).times(theirs));
    Vector start = place.times(1 / (size * size));
    Vector along = direction.times(1 / size);
    double[] span = {-1e6, 1e6};
    clip(start, along, span);
    other.clip(start, along, span);
    return span[1] - span[0] > 10 * SAME
        ? List.of(start.plus(along.times(span[0])), start.plus(along.times(span[1])))
        : List.of();
  }

  /** Narrows a span of a line in its plane to what lies within its rim. */
  private void clip(Vector start, Vector along, double[] span) {
    for (int i = 0; i < inward.size(); i++) {
      double room = inward.get(i).dot(start.minus(corners.get(i)));
      double gain = inward.get(i).dot(along);
      if (Math.abs(gain) < PARALLEL) {
        if (room < -SAME) {
          span[1] = span[0];
        }
      } else if (gain > 0) {
        span[0] = Math.max(span[0], -room / gain);
      } else {
        span[1] = Math.min(span[1], -room / gain);
      }
    }
  }

  /** How far along a way, 0 to 1, it is crossed; NaN when it is not. */
  double crossing(Vector from, Vector way) {
    double gain = normal.dot(way);
    if (Math.abs(gain) < PARALLEL * way.length()) {
      return Double.NaN;
    }
    double at = -distance(from) / gain;
    return at > 0 && at < 1 && holds(from.plus(way.times(at))) ? at : Double.NaN;
  }
}
