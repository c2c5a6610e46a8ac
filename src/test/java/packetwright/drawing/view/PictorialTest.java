package packetwright.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import packetwright.drawing.view.Isometric.Eye;
import packetwright.drawing.view.Pictorial.Line;
import packetwright.drawing.view.Pictorial.Spot;
import packetwright.drawing.view.Placed.Heading;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Trough;
import packetwright.wood.part.Solid;

/**
 * Hidden lines against rays: pieces on a grid of one inch fall on paper onto a grid of triangles,
 * whose every side is either drawn whole or not at all. A side must be drawn when, from the middle
 * of some edge that falls on it, a step aside, a ray reaches the eye through no wood.
 */
class PictorialTest {
  private static final double ASIDE = 1e-4;

  /** Boxes in whole inches, low then high. */
  private static final class Blocky {
    private final int[] corner;
    private final int[] extent;
    private final List<int[]> removed;

    Blocky(int[] corner, int[] extent, List<int[]> removed) {
      this.corner = corner;
      this.extent = extent;
      this.removed = removed;
    }

    boolean isWood(int x, int y, int z) {
      int[] cell = {x - corner[0], y - corner[1], z - corner[2]};
      return isIn(cell, new int[] {0, 0, 0, extent[0], extent[1], extent[2]})
          && removed.stream().noneMatch(box -> isIn(cell, box));
    }

    private static boolean isIn(int[] cell, int[] box) {
      for (int i = 0; i < 3; i++) {
        if (cell[i] < box[i] || cell[i] >= box[i + 3]) {
          return false;
        }
      }
      return true;
    }

    @Override
    public String toString() {
      return Arrays.toString(corner)
          + Arrays.toString(extent)
          + removed.stream().map(Arrays::toString).toList();
    }

    boolean overlaps(Blocky other) {
      return IntStream.range(0, 1000)
          .anyMatch(
              i ->
                  isWood(i / 100, i / 10 % 10, i % 10)
                      && other.isWood(i / 100, i / 10 % 10, i % 10));
    }

    Placed placed() {
      List<Removal> troughs = new ArrayList<>();
      for (int[] box : removed) {
        troughs.add(
            new Trough(new Box(point(box[0], box[1], box[2]), point(box[3], box[4], box[5]))));
      }
      // Its own x, y and z look along those of the assembly.
      return new Placed(
          "A",
          new Solid(in(extent[0]), in(extent[1]), in(extent[2]), troughs),
          point(corner[0], corner[1], corner[2]),
          Heading.of("+z"),
          Heading.of("+y"));
    }
  }

  private static Length in(long inches) {
    return Length.ofInches(inches);
  }

  private static Point point(long x, long y, long z) {
    return new Point(in(x), in(y), in(z));
  }

  private static Blocky random(Random random) {
    int[] corner = {random.nextInt(5), random.nextInt(5), random.nextInt(5)};
    int[] extent = {1 + random.nextInt(4), 1 + random.nextInt(4), 1 + random.nextInt(4)};
    List<int[]> removed = new ArrayList<>();
    for (int n = random.nextInt(4); n > 0; n--) {
      int[] box = new int[6];
      for (int i = 0; i < 3; i++) {
        box[i] = random.nextInt(extent[i] + 1) - 1;
        box[i + 3] = box[i] + 1 + random.nextInt(3);
      }
      removed.add(box);
    }
    return new Blocky(corner, extent, removed);
  }

  @Property(tries = 150, seed = "30")
  void everySideOfThePaperGridIsDrawnExactlyWhenARayReachesTheEye(@ForAll long seed) {
    Random random = new Random(seed);
    List<Blocky> pieces = new ArrayList<>();
    for (int n = 1 + random.nextInt(5); n > 0; n--) {
      Blocky piece = random(random);
      if (pieces.stream().noneMatch(other -> other.overlaps(piece))) {
        pieces.add(piece);
      }
    }
    Eye eye = List.of(Eye.values()).get(random.nextInt(4));
    int[] toward = toward(eye);
    Map<String, Spot> middles = new TreeMap<>();
    Map<String, Boolean> seen = new TreeMap<>();
    for (Blocky piece : pieces) {
      for (int[] edge : edges(piece)) {
        double[] middle = {edge[0], edge[1], edge[2]};
        middle[edge[3]] += 0.5;
        Spot spot = paper(middle, toward);
        String side = StrictMath.round(spot.u() * 1000) + " " + StrictMath.round(spot.v() * 1000);
        middles.put(side, spot);
        seen.merge(side, isSeen(pieces, middle, edge[3], toward), Boolean::logicalOr);
      }
    }
    Pictorial picture = Isometric.draw(pieces.stream().map(Blocky::placed).toList(), eye);
    middles.forEach(
        (side, spot) ->
            assertThat(isDrawn(picture.lines(), spot))
                .as("%s of %s from %s", spot, pieces, eye)
                .isEqualTo(seen.get(side)));
    assertThat(length(picture.lines()))
        .as("nothing else is drawn")
        .isCloseTo(
            (double) seen.values().stream().filter(is -> is).count(),
            org.assertj.core.api.Assertions.within(1e-2));
  }

  private static int[] toward(Eye eye) {
    return new int[] {
      eye.name().startsWith("HIGH_X") ? 1 : -1, eye.name().endsWith("HIGH_Y") ? 1 : -1, 1
    };
  }

  /** Each as a corner of the grid and the axis that it runs along from there for an inch. */
  private static List<int[]> edges(Blocky piece) {
    List<int[]> edges = new ArrayList<>();
    for (int x = 0; x < 10; x++) {
      for (int y = 0; y < 10; y++) {
        for (int z = 0; z < 10; z++) {
          for (int axis = 0; axis < 3; axis++) {
            if (isEdge(piece, x, y, z, axis)) {
              edges.add(new int[] {x, y, z, axis});
            }
          }
        }
      }
    }
    return edges;
  }

  /** Of the four cells around: one or three are wood, or two that touch only here. */
  private static boolean isEdge(Blocky piece, int x, int y, int z, int axis) {
    boolean[] wood = new boolean[4];
    for (int i = 0; i < 4; i++) {
      int one = -(i % 2);
      int other = -(i / 2);
      wood[i] =
          switch (axis) {
            case 0 -> piece.isWood(x, y + one, z + other);
            case 1 -> piece.isWood(x + one, y, z + other);
            default -> piece.isWood(x + one, y + other, z);
          };
    }
    int count = 0;
    for (boolean is : wood) {
      count += is ? 1 : 0;
    }
    return count % 2 == 1 || (count == 2 && wood[0] == wood[3]);
  }

  /** u level, v upward; x and y run down at 30 degrees, one to each side. */
  private static Spot paper(double[] at, int[] toward) {
    return new Spot(
        (toward[0] * at[1] - toward[1] * at[0]) * StrictMath.cos(StrictMath.toRadians(30)),
        at[2] - (toward[0] * at[0] + toward[1] * at[1]) * StrictMath.sin(StrictMath.toRadians(30)));
  }

  private static boolean isSeen(List<Blocky> pieces, double[] middle, int axis, int[] toward) {
    // Square to the edge and to the ray.
    double[] along = {axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0};
    double[] aside = new double[3];
    for (int i = 0; i < 3; i++) {
      int j = (i + 1) % 3;
      int k = (i + 2) % 3;
      aside[i] = (along[j] * toward[k] - along[k] * toward[j]) * ASIDE;
    }
    return isFree(pieces, middle, aside, 1, toward) || isFree(pieces, middle, aside, -1, toward);
  }

  /** Steps along the ray from one wall of a cell to the next. */
  private static boolean isFree(
      List<Blocky> pieces, double[] middle, double[] aside, int side, int[] toward) {
    double[] start = new double[3];
    List<Double> walls = new ArrayList<>(List.of(0.0));
    for (int i = 0; i < 3; i++) {
      start[i] = middle[i] + side * aside[i];
      for (int wall = -1; wall < 12; wall++) {
        double at = (wall - start[i]) / toward[i];
        if (at > 0) {
          walls.add(at);
        }
      }
    }
    walls.sort(null);
    for (int i = 0; i + 1 < walls.size(); i++) {
      double at = (walls.get(i) + walls.get(i + 1)) / 2;
      // A graze as thin as the step aside hides nothing.
      if (walls.get(i + 1) - walls.get(i) > 3 * ASIDE) {
        int x = (int) StrictMath.floor(start[0] + at * toward[0]);
        int y = (int) StrictMath.floor(start[1] + at * toward[1]);
        int z = (int) StrictMath.floor(start[2] + at * toward[2]);
        if (pieces.stream().anyMatch(p -> p.isWood(x, y, z))) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean isDrawn(List<Line> lines, Spot spot) {
    for (Line line : lines) {
      for (int i = 1; i < line.spots().size(); i++) {
        if (away(line.spots().get(i - 1), line.spots().get(i), spot) < 1e-3) {
          return true;
        }
      }
    }
    return false;
  }

  private static double away(Spot from, Spot to, Spot spot) {
    double du = to.u() - from.u();
    double dv = to.v() - from.v();
    double part = ((spot.u() - from.u()) * du + (spot.v() - from.v()) * dv) / (du * du + dv * dv);
    double at = Math.max(0, Math.min(1, part));
    return Math.hypot(from.u() + at * du - spot.u(), from.v() + at * dv - spot.v());
  }

  private static double length(List<Line> lines) {
    double length = 0;
    for (Line line : lines) {
      for (int i = 1; i < line.spots().size(); i++) {
        Spot one = line.spots().get(i - 1);
        Spot other = line.spots().get(i);
        length += Math.hypot(one.u() - other.u(), one.v() - other.v());
      }
    }
    return length;
  }

  /**
   * A block in eighths of an inch with holes and a trough, from the corner where all is greatest.
   */
  private static final class Drilled {
    private static final double NOTHING = -1e3;
    private static final int[] EXTENT = {12, 8, 6};
    private final List<int[]> bores = new ArrayList<>();
    private final int[] trough = {2, 3, 3, 10, 6, 9};

    Drilled(Random random) {
      for (int n = 1 + random.nextInt(3); n > 0; n--) {
        // Along each axis one at most: two side by side might only just touch.
        int axis = n - 1;
        int[] bore = {axis, 0, 0, 0, 2 + random.nextInt(5), 1 + random.nextInt(2)};
        for (int i = 0; i < 3; i++) {
          // It begins inside, or before the low side, and may come out at the high one.
          // A centre in odd sixteenths keeps a hole from only just touching a wall.
          bore[1 + i] =
              i == axis ? 2 * (EXTENT[i] - bore[4]) : 1 + 2 * random.nextInt(EXTENT[i] - 1);
        }
        bores.add(bore);
      }
    }

    Solid solid() {
      List<Removal> removals = new ArrayList<>();
      removals.add(
          new Trough(
              new Box(
                  eighths(trough[0], trough[1], trough[2]),
                  eighths(trough[3], trough[4], trough[5]))));
      for (int[] bore : bores) {
        removals.add(
            new Removal.Bore(
                bore[0],
                new Point(
                    Length.ofInches(bore[1], 16),
                    Length.ofInches(bore[2], 16),
                    Length.ofInches(bore[3], 16)),
                Length.ofInches(bore[4], 8),
                Length.ofInches(2L * bore[5], 8)));
      }
      return new Solid(
          Length.ofInches(EXTENT[0], 8),
          Length.ofInches(EXTENT[1], 8),
          Length.ofInches(EXTENT[2], 8),
          removals);
    }

    private static Point eighths(int x, int y, int z) {
      return new Point(Length.ofInches(x, 8), Length.ofInches(y, 8), Length.ofInches(z, 8));
    }

    private boolean isWood(double[] at) {
      for (int i = 0; i < 3; i++) {
        if (at[i] < 0 || at[i] > EXTENT[i] / 8.0) {
          return false;
        }
      }
      boolean isInTrough = true;
      for (int i = 0; i < 3; i++) {
        isInTrough = isInTrough && at[i] > trough[i] / 8.0 && at[i] < trough[i + 3] / 8.0;
      }
      return !isInTrough && bores.stream().noneMatch(bore -> isIn(bore, at));
    }

    private static boolean isIn(int[] bore, double[] at) {
      int axis = bore[0];
      int j = (axis + 1) % 3;
      int k = (axis + 2) % 3;
      double from = at[axis] - bore[1 + axis] / 16.0;
      double away = Math.hypot(at[j] - bore[1 + j] / 16.0, at[k] - bore[1 + k] / 16.0);
      return from > 0 && from < bore[4] / 8.0 && away < bore[5] / 8.0;
    }

    /** How near the eye the first wood is, along the ray over a place on paper. */
    double near(double u, double v) {
      double across = u / StrictMath.cos(StrictMath.toRadians(30));
      double[] start = {-v - across / 2, -v + across / 2, 0};
      List<Double> walls = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        for (int wall = 0; wall <= EXTENT[i]; wall++) {
          walls.add(wall / 8.0 - start[i]);
        }
      }
      bores.forEach(bore -> addWalls(walls, bore, start));
      walls.sort(null);
      for (int i = walls.size() - 1; i > 0; i--) {
        double at = (walls.get(i) + walls.get(i - 1)) / 2;
        if (isWood(new double[] {start[0] + at, start[1] + at, start[2] + at})) {
          return walls.get(i);
        }
      }
      return NOTHING;
    }

    /** Where the ray, which goes as far along each axis, meets a cylinder. */
    private static void addWalls(List<Double> walls, int[] bore, double[] start) {
      double j = start[(bore[0] + 1) % 3] - bore[1 + (bore[0] + 1) % 3] / 16.0;
      double k = start[(bore[0] + 2) % 3] - bore[1 + (bore[0] + 2) % 3] / 16.0;
      double radius = bore[5] / 8.0;
      double root = 2 * radius * radius - (j - k) * (j - k);
      if (root > 0) {
        walls.add((-j - k - StrictMath.sqrt(root)) / 2);
        walls.add((-j - k + StrictMath.sqrt(root)) / 2);
      }
    }
  }

  /** Across a line the surface jumps or turns; chords leave the circles by 1/2000 in. */
  @Property(tries = 40, seed = "34")
  void everyLineOfADrilledBlockIsWhereTheSurfaceJumpsOrTurns(@ForAll long seed) {
    Drilled block = new Drilled(new Random(seed));
    for (Line line : drawn(block)) {
      for (int i = 1; i < line.spots().size(); i++) {
        Spot from = line.spots().get(i - 1);
        Spot to = line.spots().get(i);
        double length = Math.hypot(to.u() - from.u(), to.v() - from.v());
        double du = -(to.v() - from.v()) / length * 2e-3;
        double dv = (to.u() - from.u()) / length * 2e-3;
        double u = (from.u() + to.u()) / 2;
        double v = (from.v() + to.v()) / 2;
        double[] left = sides(block, u, v, du, dv);
        double[] right = sides(block, u, v, -du, -dv);
        double jump = Math.abs(left[0] - right[0]);
        double turn = Math.abs(left[1] + right[1]) / 2e-3;
        assertThat(jump > 4e-3 || turn > 0.1)
            .as("%s to %s of %s: %s, %s", from, to, block.solid(), jump, turn)
            .isTrue();
      }
    }
  }

  /** As seen from one side of a line: how near it is there, and how much nearer than a step off. */
  private static double[] sides(Drilled block, double u, double v, double du, double dv) {
    double one = block.near(u + du, v + dv);
    double two = block.near(u + 2 * du, v + 2 * dv);
    return new double[] {2 * one - two, one - two};
  }

  @Property(tries = 40, seed = "35")
  void whereTheSurfaceOfADrilledBlockJumpsOrTurnsALineIsDrawn(@ForAll long seed) {
    Random random = new Random(seed);
    Drilled block = new Drilled(random);
    List<Line> lines = drawn(block);
    double step = 4e-3;
    for (int ray = 0; ray < 12; ray++) {
      boolean isLevel = random.nextBoolean();
      double fixed = random.nextDouble() * 2.6 - 1.3;
      for (double at = -1.6; at < 1.6; at += step) {
        double[] near = new double[3];
        for (int i = 0; i < 3; i++) {
          double moved = at + (i - 1) * step;
          near[i] = isLevel ? block.near(moved, fixed) : block.near(fixed, moved);
        }
        if (Math.abs(near[0] - 2 * near[1] + near[2]) > 4e-3) {
          Spot spot = isLevel ? new Spot(at, fixed) : new Spot(fixed, at);
          assertThat(nearest(lines, spot)).as("%s of %s", spot, block.solid()).isLessThan(3e-2);
        }
      }
    }
  }

  private static List<Line> drawn(Drilled block) {
    Placed placed =
        new Placed("A", block.solid(), point(0, 0, 0), Heading.of("+z"), Heading.of("+y"));
    return Isometric.draw(List.of(placed), Eye.HIGH_X_HIGH_Y).lines();
  }

  private static double nearest(List<Line> lines, Spot spot) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Line line : lines) {
      for (int i = 1; i < line.spots().size(); i++) {
        nearest = Math.min(nearest, away(line.spots().get(i - 1), line.spots().get(i), spot));
      }
    }
    return nearest;
  }
}
