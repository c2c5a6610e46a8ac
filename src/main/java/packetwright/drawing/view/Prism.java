package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bend;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Corner;
import packetwright.wood.part.Removal.Outline;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.part.Removal.Trough;

/**
 * A section moved along an axis: every removal, and the block itself. Arcs are cut into chords that
 * remember their circle.
 *
 * @param axis that it runs along
 * @param sides of the section, each ending where the next begins
 * @param low where it begins on the axis
 * @param high where it ends
 */
record Prism(int axis, List<Side> sides, double low, double high) {
  /** Keeps its own copy. */
  Prism {
    sides = List.copyOf(sides);
  }

  /**
   * A straight side of the section, or a chord of a round one.
   *
   * @param u1 from, on the lesser of the axes across
   * @param v1 from, on the greater
   * @param u2 to
   * @param v2 to
   * @param round the circle of a chord
   */
  record Side(double u1, double v1, double u2, double v2, @Nullable Round round) {}

  /** A box. */
  static Prism of(Box box) {
    return new Prism(
        2,
        straight(
            List.of(
                new double[] {inches(box.low().x()), inches(box.low().y())},
                new double[] {inches(box.high().x()), inches(box.low().y())},
                new double[] {inches(box.high().x()), inches(box.high().y())},
                new double[] {inches(box.low().x()), inches(box.high().y())})),
        inches(box.low().z()),
        inches(box.high().z()));
  }

  /** What a removal takes out of a block; a slope that misses the block has no sides. */
  static Prism of(Removal removal, Box block) {
    return removal.match(
        new Removal.Cases<Prism>() {
          @Override
          public Prism trough(Trough trough) {
            return of(trough.box());
          }

          @Override
          public Prism bore(Bore bore) {
            double begin = inches(bore.centre().on(bore.axis()));
            return new Prism(bore.axis(), circle(bore), begin, begin + inches(bore.depth()));
          }

          @Override
          public Prism slope(Slope slope) {
            return through(slope.axis(), behind(slope, block), block);
          }

          @Override
          public Prism outline(Outline outline) {
            return through(outline.axis(), path(outline), block);
          }
        });
  }

  private static Prism through(int axis, List<Side> sides, Box block) {
    return new Prism(
        axis, sides, inches(block.low().on(axis)) - 1, inches(block.high().on(axis)) + 1);
  }

  private static double inches(Length length) {
    return length.inches().approximate();
  }

  private static List<Side> straight(List<double[]> corners) {
    List<Side> sides = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      double[] from = corners.get(i);
      double[] to = corners.get((i + 1) % corners.size());
      sides.add(new Side(from[0], from[1], to[0], to[1], null));
    }
    return sides;
  }

  private static List<Side> circle(Bore bore) {
    Round round =
        new Round(
            bore.axis(),
            inches(bore.centre().on(Removal.acrossU(bore.axis()))),
            inches(bore.centre().on(Removal.acrossV(bore.axis()))),
            inches(bore.diameter()) / 2);
    List<Side> chords = chords(round, 0, 2 * Math.PI, round.chords());
    // Sines are rounded; the last chord ends exactly where the first begins.
    Side first = chords.get(0);
    Side last = chords.get(chords.size() - 1);
    chords.set(chords.size() - 1, new Side(last.u1, last.v1, first.u1, first.v1, round));
    return chords;
  }

  private static List<Side> chords(Round round, double from, double to, int count) {
    List<Side> sides = new ArrayList<>();
    double[] before = at(round, from);
    for (int i = 1; i <= count; i++) {
      double[] next = at(round, from + (to - from) * i / count);
      sides.add(new Side(before[0], before[1], next[0], next[1], round));
      before = next;
    }
    return sides;
  }

  private static double[] at(Round round, double turn) {
    return new double[] {
      round.u() + round.radius() * StrictMath.cos(turn),
      round.v() + round.radius() * StrictMath.sin(turn)
    };
  }

  private static List<Side> path(Outline outline) {
    List<Side> sides = new ArrayList<>();
    for (int i = 0; i < outline.path().size(); i++) {
      Corner from = outline.path().get(i);
      Corner to = outline.path().get((i + 1) % outline.path().size());
      Bend bend = from.bend();
      if (bend == null) {
        sides.add(
            new Side(inches(from.u()), inches(from.v()), inches(to.u()), inches(to.v()), null));
      } else {
        sides.addAll(arc(outline.axis(), from, to, bend));
      }
    }
    return sides;
  }

  private static List<Side> arc(int axis, Corner from, Corner to, Bend bend) {
    double u = inches(bend.u());
    double v = inches(bend.v());
    double radius = Math.hypot(inches(from.u()) - u, inches(from.v()) - v);
    Round round = new Round(axis, u, v, radius);
    double begin = StrictMath.atan2(inches(from.v()) - v, inches(from.u()) - u);
    double end = StrictMath.atan2(inches(to.v()) - v, inches(to.u()) - u);
    double turn = (bend.isCounterclockwise() ? end - begin : begin - end);
    turn = turn <= 1e-12 ? turn + 2 * Math.PI : turn;
    int count = Math.max(2, (int) Math.ceil(turn / (2 * Math.PI) * round.chords() - 1e-9));
    List<Side> chords =
        chords(round, begin, bend.isCounterclockwise() ? begin + turn : begin - turn, count);
    // Its ends are the corners themselves, so that the path stays closed.
    Side first = chords.get(0);
    chords.set(0, new Side(inches(from.u()), inches(from.v()), first.u2, first.v2, round));
    Side last = chords.get(count - 1);
    chords.set(count - 1, new Side(last.u1, last.v1, inches(to.u()), inches(to.v()), round));
    return chords;
  }

  /** The section of a block and an inch around it, as far as it lies behind a slope. */
  private static List<Side> behind(Slope slope, Box block) {
    int u = Removal.acrossU(slope.axis());
    int v = Removal.acrossV(slope.axis());
    double size = Math.hypot(slope.a().approximate(), slope.b().approximate());
    double a = slope.a().approximate() / size;
    double b = slope.b().approximate() / size;
    double c = inches(slope.c()) / size;
    double lowU = inches(block.low().on(u)) - 1;
    double lowV = inches(block.low().on(v)) - 1;
    double highU = inches(block.high().on(u)) + 1;
    double highV = inches(block.high().on(v)) + 1;
    double[][] corners = {{lowU, lowV}, {highU, lowV}, {highU, highV}, {lowU, highV}};
    List<double[]> kept = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      double[] from = corners[i];
      double[] to = corners[(i + 1) % 4];
      double near = a * from[0] + b * from[1] - c;
      double far = a * to[0] + b * to[1] - c;
      if (near > 0) {
        kept.add(from);
      }
      if ((near > 0) != (far > 0)) {
        double part = near / (near - far);
        kept.add(
            new double[] {from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1])});
      }
    }
    return straight(kept);
  }

  /** Its surface; an end beyond the block is left out. Only a box or a hole ends within it. */
  List<Facet> facets(Box block) {
    List<Facet> facets = new ArrayList<>();
    for (Side side : sides) {
      facets.add(
          new Facet(
              List.of(
                  place(side.u1, side.v1, low),
                  place(side.u2, side.v2, low),
                  place(side.u2, side.v2, high),
                  place(side.u1, side.v1, high)),
              side.round));
    }
    for (double end : new double[] {low, high}) {
      boolean isWithin =
          end >= inches(block.low().on(axis)) && end <= inches(block.high().on(axis));
      if (isWithin && !sides.isEmpty()) {
        facets.add(new Facet(sides.stream().map(s -> place(s.u1, s.v1, end)).toList(), null));
      }
    }
    return facets;
  }

  /**
   * What a plane cuts of it: its own section, or the stretches between its ends that the plane runs
   * through, as rectangles.
   *
   * @param across the axis that the plane stands across
   * @param at where it stands
   */
  List<List<View.Place>> across(int across, double at) {
    if (across == axis) {
      boolean isCut = at > low && at < high && !sides.isEmpty();
      return isCut
          ? List.of(sides.stream().map(s -> new View.Place(s.u1, s.v1)).toList())
          : List.of();
    }
    boolean isFirst = across == Removal.acrossU(axis);
    // Where a ray begins does not matter: its stretches run both ways.
    double middle = (low + high) / 2;
    Vector from = isFirst ? place(at, 0, middle) : place(0, at, middle);
    Vector way = isFirst ? place(0, 1, 0) : place(1, 0, 0);
    int other = 3 - axis - across;
    List<List<View.Place>> rectangles = new ArrayList<>();
    for (double[] stretch : stretches(from, way)) {
      double begin = from.on(other) + stretch[0];
      double end = from.on(other) + stretch[1];
      rectangles.add(
          axis < other ? rectangle(low, begin, high, end) : rectangle(begin, low, end, high));
    }
    return rectangles;
  }

  private static List<View.Place> rectangle(double u1, double v1, double u2, double v2) {
    return List.of(
        new View.Place(u1, v1),
        new View.Place(u2, v1),
        new View.Place(u2, v2),
        new View.Place(u1, v2));
  }

  private Vector place(double u, double v, double along) {
    return switch (axis) {
      case 0 -> new Vector(along, u, v);
      case 1 -> new Vector(u, along, v);
      default -> new Vector(u, v, along);
    };
  }

  private double u(Vector place) {
    return place.on(Removal.acrossU(axis));
  }

  private double v(Vector place) {
    return place.on(Removal.acrossV(axis));
  }

  /** Least and greatest coordinates; without sides the least are greater. */
  double[][] corners() {
    double[] lows = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] highs = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (Side side : sides) {
      for (Vector end : List.of(place(side.u1, side.v1, low), place(side.u1, side.v1, high))) {
        for (int i = 0; i < 3; i++) {
          lows[i] = Math.min(lows[i], end.on(i));
          highs[i] = Math.max(highs[i], end.on(i));
        }
      }
    }
    return new double[][] {lows, highs};
  }

  /** Whether a place lies inside. */
  boolean holds(Vector place) {
    double along = place.on(axis);
    return along > low && along < high && isInSection(u(place), v(place));
  }

  /** By how often a way to the right leaves the section. */
  private boolean isInSection(double u, double v) {
    boolean isInside = false;
    for (Side side : sides) {
      if ((side.v1 > v) != (side.v2 > v)) {
        double at = side.u1 + (v - side.v1) / (side.v2 - side.v1) * (side.u2 - side.u1);
        isInside ^= u < at;
      }
    }
    return isInside;
  }

  /** The stretches of a ray that run inside: pairs of from and to, in multiples of its way. */
  List<double[]> stretches(Vector from, Vector way) {
    double begin = Double.NEGATIVE_INFINITY;
    double end = Double.POSITIVE_INFINITY;
    double gain = way.on(axis);
    if (Math.abs(gain) > 1e-12) {
      double one = (low - from.on(axis)) / gain;
      double other = (high - from.on(axis)) / gain;
      begin = Math.min(one, other);
      end = Math.max(one, other);
    } else if (from.on(axis) <= low || from.on(axis) >= high) {
      return List.of();
    }
    double u = u(from);
    double v = v(from);
    double du = u(way);
    double dv = v(way);
    if (Math.hypot(du, dv) < 1e-12) {
      return isInSection(u, v) ? List.of(new double[] {begin, end}) : List.of();
    }
    TreeSet<Double> cuts = new TreeSet<>();
    for (Side side : sides) {
      double one = du * (side.v1 - v) - dv * (side.u1 - u);
      double other = du * (side.v2 - v) - dv * (side.u2 - u);
      if ((one > 0) != (other > 0)) {
        double part = one / (one - other);
        double atU = side.u1 + part * (side.u2 - side.u1) - u;
        double atV = side.v1 + part * (side.v2 - side.v1) - v;
        cuts.add((atU * du + atV * dv) / (du * du + dv * dv));
      }
    }
    List<double[]> stretches = new ArrayList<>();
    List<Double> sorted = List.copyOf(cuts);
    // Each crossing goes in or out in turn.
    for (int i = 0; i + 1 < sorted.size(); i += 2) {
      double enter = Math.max(begin, sorted.get(i));
      double leave = Math.min(end, sorted.get(i + 1));
      if (enter < leave) {
        stretches.add(new double[] {enter, leave});
      }
    }
    return stretches;
  }
}
