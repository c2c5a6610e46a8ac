package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import packetwright.wood.part.Solid;

/** A solid in floating point: what is wood, what a ray meets, and the facets of its surface. */
final class Body {
  /** Wood thinner than this along a ray, in inches, hides nothing: it is only touched. */
  static final double TOUCH = 5e-4;

  private final Prism block;
  private final List<Removed> removed;
  private final List<Facet> facets = new ArrayList<>();

  Body(Solid solid) {
    block = Prism.of(solid.block());
    removed = solid.removals().stream().map(r -> new Removed(Prism.of(r, solid.block()))).toList();
    facets.addAll(block.facets(solid.block()));
    removed.forEach(r -> facets.addAll(r.prism.facets(solid.block())));
  }

  /** Every facet that bounds the block or a removal, whether or not wood begins there. */
  List<Facet> facets() {
    return facets;
  }

  boolean isWood(Vector place) {
    if (!block.holds(place)) {
      return false;
    }
    for (Removed one : removed) {
      if (one.holds(place)) {
        return false;
      }
    }
    return true;
  }

  /** Whether no wood lies ahead of a place. */
  boolean isFree(Vector from, Vector way) {
    return wood(from, way).stream().noneMatch(w -> w[1] - Math.max(0, w[0]) > TOUCH);
  }

  /** The stretches of a ray that run through wood, in order. */
  List<double[]> wood(Vector from, Vector way) {
    List<double[]> whole = block.stretches(from, way);
    if (whole.isEmpty()) {
      return List.of();
    }
    double begin = whole.get(0)[0];
    double end = whole.get(0)[1];
    List<double[]> air = new ArrayList<>();
    removed.forEach(one -> air.addAll(one.stretches(from, way)));
    double[] cuts = cuts(begin, end, air);
    List<double[]> wood = new ArrayList<>();
    for (int i = 0; i + 1 < cuts.length; i++) {
      if (!isIn(air, (cuts[i] + cuts[i + 1]) / 2)) {
        double[] last = wood.isEmpty() ? new double[] {0, Double.NaN} : wood.get(wood.size() - 1);
        if (last[1] == cuts[i]) {
          last[1] = cuts[i + 1];
        } else {
          wood.add(new double[] {cuts[i], cuts[i + 1]});
        }
      }
    }
    return wood;
  }

  /** Both ends of a ray in the block, and where it enters or leaves a removal between, in order. */
  private static double[] cuts(double begin, double end, List<double[]> air) {
    double[] cuts = new double[2 + 2 * air.size()];
    cuts[0] = begin;
    cuts[1] = end;
    int count = 2;
    for (double[] stretch : air) {
      for (double cut : stretch) {
        if (cut > begin && cut < end) {
          cuts[count++] = cut;
        }
      }
    }
    Arrays.sort(cuts, 0, count);
    int different = 1;
    for (int i = 1; i < count; i++) {
      if (cuts[i] != cuts[different - 1]) {
        cuts[different++] = cuts[i];
      }
    }
    return Arrays.copyOf(cuts, different);
  }

  private static boolean isIn(List<double[]> air, double at) {
    for (double[] stretch : air) {
      if (stretch[0] < at && at < stretch[1]) {
        return true;
      }
    }
    return false;
  }

  /** A removal with the box around it: nearly every place and ray misses nearly every removal. */
  private static final class Removed {
    /** Air around the box, in inches: far more than rounding. */
    private static final double AIR = 1e-6;

    private final Prism prism;
    private final double[] low;
    private final double[] high;

    Removed(Prism prism) {
      this.prism = prism;
      double[][] corners = prism.corners();
      low = Arrays.stream(corners[0]).map(at -> at - AIR).toArray();
      high = Arrays.stream(corners[1]).map(at -> at + AIR).toArray();
    }

    boolean holds(Vector place) {
      return place.x() > low[0]
          && place.x() < high[0]
          && place.y() > low[1]
          && place.y() < high[1]
          && place.z() > low[2]
          && place.z() < high[2]
          && prism.holds(place);
    }

    List<double[]> stretches(Vector from, Vector way) {
      return isMissed(from, way) ? List.of() : prism.stretches(from, way);
    }

    /** Whether a ray, and what lies behind it on its line, stays outside the box. */
    private boolean isMissed(Vector from, Vector way) {
      double enter = Double.NEGATIVE_INFINITY;
      double leave = Double.POSITIVE_INFINITY;
      for (int axis = 0; axis < 3; axis++) {
        double at = from.on(axis);
        double gain = way.on(axis);
        if (Math.abs(gain) > 1e-12) {
          double one = (low[axis] - at) / gain;
          double other = (high[axis] - at) / gain;
          enter = Math.max(enter, Math.min(one, other));
          leave = Math.min(leave, Math.max(one, other));
        } else if (at < low[axis] || at > high[axis]) {
          return true;
        }
      }
      return enter > leave;
    }
  }
}
