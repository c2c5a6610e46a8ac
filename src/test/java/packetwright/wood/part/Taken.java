package packetwright.wood.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal.Bend;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Corner;
import packetwright.wood.part.Removal.Outline;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.part.Removal.Trough;

/**
 * A removal on a lattice of eighths beside the definition of what it takes, in whole numbers.
 *
 * @param removal under test
 * @param definition which places it takes
 */
record Taken(Removal removal, Definition definition) {
  /** Steps of the places looked at to one of the lattice. */
  static final long FINE = 37;

  /**
   * The block in steps of the lattice. Places are looked at that lie so far above its nodes, which
   * is on no surface: the remainders were chosen for that.
   */
  private static final int[] BLOCK = {20, 14, 10};

  private static final int[] ABOVE = {5, 12, 17};

  /** Whether a place, in fine steps, is taken. */
  interface Definition {
    boolean takes(long[] place);
  }

  /** The same for a place in the plane across an axis. */
  private interface Flat {
    boolean takes(long u, long v);
  }

  static Length length(long steps) {
    return Length.ofInches(steps, 8);
  }

  static Length fine(long steps) {
    return Length.ofInches(steps, 8 * FINE);
  }

  static Solid solid(List<Taken> all) {
    return new Solid(
        length(BLOCK[0]),
        length(BLOCK[1]),
        length(BLOCK[2]),
        all.stream().map(Taken::removal).toList());
  }

  /** One place for each cube of the lattice within the block. */
  static List<long[]> places() {
    List<long[]> places = new ArrayList<>();
    for (int x = 0; x < BLOCK[0]; x += 1) {
      for (int y = 0; y < BLOCK[1]; y += 1) {
        for (int z = 0; z < BLOCK[2]; z += 1) {
          places.add(new long[] {x * FINE + ABOVE[0], y * FINE + ABOVE[1], z * FINE + ABOVE[2]});
        }
      }
    }
    return places;
  }

  static Point point(long[] place) {
    return new Point(fine(place[0]), fine(place[1]), fine(place[2]));
  }

  static boolean isWood(List<Taken> all, long[] place) {
    return all.stream().noneMatch(taken -> taken.definition().takes(place));
  }

  /** What they leave of the block, place by place. */
  static List<Boolean> wood(List<Taken> all) {
    return places().stream().map(place -> isWood(all, place)).toList();
  }

  static List<Taken> several(Random random, int most) {
    List<Taken> all = new ArrayList<>();
    for (int i = random.nextInt(most + 1); i > 0; i--) {
      all.add(any(random));
    }
    return all;
  }

  static Taken any(Random random) {
    return switch (random.nextInt(10)) {
      case 0, 1, 2 -> trough(random);
      case 3, 4 -> bore(random);
      case 5, 6 -> slope(random);
      case 7 -> polygon(random);
      case 8 -> quarter(random);
      default -> random.nextBoolean() ? disc(random) : segment(random);
    };
  }

  /** The same so many steps farther along an axis. */
  Taken shifted(int axis, int steps) {
    return new Taken(
        removal.moved(axis, length(-steps)),
        place -> {
          long[] back = place.clone();
          back[axis] -= steps * FINE;
          return definition.takes(back);
        });
  }

  private static int between(Random random, int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  static Taken trough(Random random) {
    int[] low = new int[3];
    int[] high = new int[3];
    for (int axis = 0; axis < 3; axis++) {
      low[axis] = between(random, -4, BLOCK[axis] - 1);
      high[axis] = low[axis] + between(random, 1, BLOCK[axis]);
    }
    return trough(low, high);
  }

  static Taken trough(int[] low, int[] high) {
    Box box =
        new Box(
            new Point(length(low[0]), length(low[1]), length(low[2])),
            new Point(length(high[0]), length(high[1]), length(high[2])));
    return new Taken(
        new Trough(box),
        place -> {
          for (int axis = 0; axis < 3; axis++) {
            if (place[axis] < low[axis] * FINE || place[axis] > high[axis] * FINE) {
              return false;
            }
          }
          return true;
        });
  }

  static Taken bore(Random random) {
    int axis = random.nextInt(3);
    int[] centre = new int[3];
    for (int i = 0; i < 3; i++) {
      centre[i] = between(random, -2, BLOCK[i] + 2);
    }
    int depth = between(random, 1, 2 * BLOCK[axis]);
    int radius = between(random, 1, 6);
    Point begin = new Point(length(centre[0]), length(centre[1]), length(centre[2]));
    return new Taken(
        new Bore(axis, begin, length(depth), length(2L * radius)),
        place -> {
          long along = place[axis] - centre[axis] * FINE;
          long square = 0;
          for (int i = 0; i < 3; i++) {
            long off = i == axis ? 0 : place[i] - centre[i] * FINE;
            square += off * off;
          }
          long reach = radius * FINE;
          return along >= 0 && along <= depth * FINE && square <= reach * reach;
        });
  }

  static Taken slope(Random random) {
    int axis = random.nextInt(3);
    long a = (long) between(random, 1, 3) * (random.nextBoolean() ? 1 : -1);
    long b = (long) between(random, 1, 3) * (random.nextBoolean() ? 1 : -1);
    long u = between(random, 0, BLOCK[Removal.acrossU(axis)]);
    long v = between(random, 0, BLOCK[Removal.acrossV(axis)]);
    Slope slope = Slope.leftOf(axis, length(u), length(v), length(u + b), length(v - a));
    return flat(slope, (x, y) -> a * x + b * y > FINE * (a * u + b * v));
  }

  /** A rectangle, or an L. */
  private static Taken polygon(Random random) {
    int axis = random.nextInt(3);
    int u = between(random, -2, BLOCK[Removal.acrossU(axis)] - 2);
    int v = between(random, -2, BLOCK[Removal.acrossV(axis)] - 2);
    int w = between(random, 2, 10);
    int h = between(random, 2, 10);
    int cut = random.nextInt(Math.min(w, h));
    List<Corner> path = new ArrayList<>();
    path.add(corner(u, v, null));
    path.add(corner(u + w, v, null));
    if (cut == 0) {
      path.add(corner(u + w, v + h, null));
    } else {
      path.add(corner(u + w, v + h - cut, null));
      path.add(corner(u + w - cut, v + h - cut, null));
      path.add(corner(u + w - cut, v + h, null));
    }
    path.add(corner(u, v + h, null));
    return flat(
        outline(axis, path, random),
        (x, y) -> {
          long x0 = x - u * FINE;
          long y0 = y - v * FINE;
          boolean isInCut = x0 > (w - cut) * FINE && y0 > (h - cut) * FINE;
          return x0 > 0 && y0 > 0 && x0 < w * FINE && y0 < h * FINE && !isInCut;
        });
  }

  /** What a square has more than the quarter of a circle in it. */
  private static Taken quarter(Random random) {
    int axis = random.nextInt(3);
    int u = random.nextBoolean() ? 0 : BLOCK[Removal.acrossU(axis)];
    int v = random.nextBoolean() ? 0 : BLOCK[Removal.acrossV(axis)];
    int radius = between(random, 1, 8);
    int du = random.nextBoolean() ? radius : -radius;
    int dv = random.nextBoolean() ? radius : -radius;
    Bend bend = new Bend(length(u + du), length(v + dv), (du > 0) == (dv > 0));
    List<Corner> path =
        List.of(corner(u, v, null), corner(u, v + dv, bend), corner(u + du, v, null));
    return flat(
        outline(axis, path, random),
        (x, y) -> {
          long x0 = Long.signum(du) * (x - u * FINE);
          long y0 = Long.signum(dv) * (y - v * FINE);
          long reach = radius * FINE;
          long left = reach - x0;
          long up = reach - y0;
          return x0 > 0 && y0 > 0 && left > 0 && up > 0 && left * left + up * up > reach * reach;
        });
  }

  private static Taken disc(Random random) {
    int axis = random.nextInt(3);
    int u = between(random, 0, BLOCK[Removal.acrossU(axis)]);
    int v = between(random, 0, BLOCK[Removal.acrossV(axis)]);
    int r = between(random, 1, 6);
    Bend bend = new Bend(length(u), length(v), true);
    List<Corner> path =
        List.of(
            corner(u + r, v, bend),
            corner(u, v + r, bend),
            corner(u - r, v, bend),
            corner(u, v - r, bend));
    return flat(
        outline(axis, path, random),
        (x, y) -> {
          long du = x - u * FINE;
          long dv = y - v * FINE;
          return du * du + dv * dv < (long) r * r * FINE * FINE;
        });
  }

  /** What lies above a chord of a circle, the chord three fifths of the radius from the centre. */
  private static Taken segment(Random random) {
    int axis = random.nextInt(3);
    int u = between(random, 0, BLOCK[Removal.acrossU(axis)]);
    int v = between(random, -4, BLOCK[Removal.acrossV(axis)] - 6);
    int k = between(random, 1, 2);
    Bend bend = new Bend(length(u), length(v), true);
    List<Corner> path =
        List.of(
            corner(u + 4 * k, v + 3 * k, bend),
            corner(u, v + 5 * k, bend),
            corner(u - 4 * k, v + 3 * k, null));
    return flat(
        outline(axis, path, random),
        (x, y) -> {
          long du = x - u * FINE;
          long dv = y - v * FINE;
          long reach = 5L * k * FINE;
          return dv > 3L * k * FINE && du * du + dv * dv < reach * reach;
        });
  }

  private static Corner corner(int u, int v, @Nullable Bend bend) {
    return new Corner(length(u), length(v), bend);
  }

  /** The path begun anywhere. */
  private static Outline outline(int axis, List<Corner> path, Random random) {
    List<Corner> turned = new ArrayList<>(path);
    Collections.rotate(turned, random.nextInt(path.size()));
    return new Outline(axis, turned);
  }

  private static Taken flat(Removal removal, Flat flat) {
    int axis = removal instanceof Slope slope ? slope.axis() : ((Outline) removal).axis();
    int u = Removal.acrossU(axis);
    int v = Removal.acrossV(axis);
    return new Taken(removal, place -> flat.takes(place[u], place[v]));
  }
}
