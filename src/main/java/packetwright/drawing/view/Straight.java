package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Creases on one straight line in space, to be joined into as few as cover the same. */
final class Straight {
  /** Farther apart, in inches, nothing is the same. */
  private static final double AIR = 1e-6;

  private final Vector start;
  private final Vector along;
  private final List<Crease> creases = new ArrayList<>();

  private Straight(Crease first) {
    start = first.from();
    along = first.to().minus(first.from()).unit();
    creases.add(first);
  }

  /** Sharp creases between flat facets joined; the others as they are, none twice. */
  static List<Crease> joined(List<Crease> creases) {
    List<Straight> lines = new ArrayList<>();
    List<Crease> joined = new ArrayList<>();
    // Creases that are the same have their middles at one x.
    NavigableMap<Double, List<Crease>> byMiddle = new TreeMap<>();
    for (Crease crease : creases) {
      if (isPlain(crease)) {
        add(crease, lines);
      } else if (isNew(crease, byMiddle)) {
        joined.add(crease);
        byMiddle.computeIfAbsent(crease.middle().x(), x -> new ArrayList<>()).add(crease);
      }
    }
    lines.forEach(line -> joined.addAll(line.join()));
    return joined;
  }

  private static boolean isNew(Crease crease, NavigableMap<Double, List<Crease>> byMiddle) {
    double x = crease.middle().x();
    return byMiddle.subMap(x - AIR, true, x + AIR, true).values().stream()
        .flatMap(List::stream)
        .noneMatch(other -> isSame(crease, other));
  }

  private static boolean isPlain(Crease crease) {
    return crease.faces().stream().allMatch(f -> f.facet().round() == null);
  }

  private static boolean isSame(Crease one, Crease other) {
    return (near(one.from(), other.from()) && near(one.to(), other.to()))
        || (near(one.from(), other.to()) && near(one.to(), other.from()));
  }

  private static boolean near(Vector one, Vector other) {
    return one.minus(other).length() < 10 * Facet.SAME;
  }

  private static void add(Crease crease, List<Straight> lines) {
    for (Straight line : lines) {
      if (line.holds(crease.from()) && line.holds(crease.to())) {
        line.creases.add(crease);
        return;
      }
    }
    lines.add(new Straight(crease));
  }

  private boolean holds(Vector place) {
    // Most creases run along an axis, and most lines are far from them on another.
    for (int axis = 0; axis < 3; axis++) {
      if (along.on(axis) == 0 && Math.abs(place.on(axis) - start.on(axis)) > AIR) {
        return false;
      }
    }
    return place.minus(start).cross(along).length() < 10 * Facet.SAME;
  }

  private double at(Vector place) {
    return place.minus(start).dot(along);
  }

  private List<Crease> join() {
    TreeSet<Double> cuts = new TreeSet<>();
    for (Crease crease : creases) {
      cuts.add(at(crease.from()));
      cuts.add(at(crease.to()));
    }
    List<Crease> joined = new ArrayList<>();
    double begin = Double.NaN;
    double end = Double.NaN;
    double before = cuts.first();
    for (double cut : cuts) {
      if (cut - before > 10 * Facet.SAME) {
        if (isCovered((before + cut) / 2)) {
          begin = Double.isNaN(begin) ? before : begin;
          end = cut;
        } else if (!Double.isNaN(begin)) {
          joined.add(crease(begin, end));
          begin = Double.NaN;
        }
        before = cut;
      }
    }
    if (!Double.isNaN(begin)) {
      joined.add(crease(begin, end));
    }
    return joined;
  }

  private Crease crease(double begin, double end) {
    Vector from = start.plus(along.times(begin));
    Vector to = start.plus(along.times(end));
    return new Crease(from, to, creases.get(0).faces());
  }

  private boolean isCovered(double at) {
    return creases.stream()
        .anyMatch(
            c -> {
              double one = at(c.from());
              double other = at(c.to());
              return Math.min(one, other) < at && at < Math.max(one, other);
            });
  }
}
