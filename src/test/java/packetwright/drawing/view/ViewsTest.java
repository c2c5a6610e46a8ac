package packetwright.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import packetwright.drawing.view.View.Arc;
import packetwright.drawing.view.View.Edge;
import packetwright.drawing.view.View.Hole;
import packetwright.drawing.view.View.Sight;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Trough;
import packetwright.wood.part.Solid;

class ViewsTest {
  private static final double HAIR = 1e-4;

  private static Length in(long numerator, long denominator) {
    return Length.ofInches(numerator, denominator);
  }

  private static Point point(long x, long y, long z) {
    return new Point(in(x, 8), in(y, 8), in(z, 8));
  }

  private static Trough trough(long x1, long y1, long z1, long x2, long y2, long z2) {
    return new Trough(new Box(point(x1, y1, z1), point(x2, y2, z2)));
  }

  private static Solid solid(long length, long width, long thickness, Removal... removals) {
    return new Solid(in(length, 8), in(width, 8), in(thickness, 8), List.of(removals));
  }

  /** A block with up to five boxes taken out, on a grid so coarse that they meet and overlap. */
  private static Solid randomSolid(Random random) {
    long[] extent = {3L + random.nextInt(6), 3L + random.nextInt(5), 2L + random.nextInt(4)};
    List<Removal> removals = new ArrayList<>();
    for (int n = random.nextInt(6); n > 0; n--) {
      long[] low = new long[3];
      long[] high = new long[3];
      for (int i = 0; i < 3; i++) {
        low[i] = random.nextInt((int) extent[i] + 2) - 1L;
        high[i] = low[i] + 1L + random.nextInt(4);
      }
      removals.add(trough(low[0], low[1], low[2], high[0], high[1], high[2]));
    }
    return solid(extent[0], extent[1], extent[2], removals.toArray(new Removal[0]));
  }

  /** Whether there is wood at a place, straight from the definition. */
  private static boolean isWood(Solid solid, double x, double y, double z) {
    double[] at = {x, y, z};
    for (int i = 0; i < 3; i++) {
      if (at[i] < 0 || at[i] > solid.extent(i).inches().approximate()) {
        return false;
      }
    }
    return solid.removals().stream().noneMatch(r -> holds(((Trough) r).box(), at));
  }

  private static boolean holds(Box box, double[] at) {
    for (int i = 0; i < 3; i++) {
      if (at[i] < box.low().on(i).inches().approximate()
          || at[i] > box.high().on(i).inches().approximate()) {
        return false;
      }
    }
    return true;
  }

  /** Wood seen from the eye, at view coordinates and a depth. */
  private static boolean isWoodAt(Solid solid, Projection projection, double[] uvd) {
    double t = solid.thickness().inches().approximate();
    return switch (projection) {
      case FRONT -> isWood(solid, uvd[0], uvd[1], uvd[2]);
      case TOP -> isWood(solid, uvd[0], uvd[2], t - uvd[1]);
      case END -> isWood(solid, uvd[2], uvd[1], t - uvd[0]);
    };
  }

  /** Depth of the surface that the eye meets; negative where it meets none. */
  private static double surface(Solid solid, Projection projection, double u, double v) {
    for (double d = 20; d > 0; d -= 1) {
      if (isWoodAt(solid, projection, new double[] {u, v, (d - 0.5) / 8})) {
        return d;
      }
    }
    return -1;
  }

  private static boolean isEdgeAtSomeDepth(
      Solid solid, Projection projection, double u, double v, boolean isLevel) {
    double du = isLevel ? 0 : HAIR;
    double dv = isLevel ? HAIR : 0;
    for (int d = 0; d <= 20; d++) {
      double far = (d - 0.5) / 8;
      double near = (d + 0.5) / 8;
      boolean a = isWoodAt(solid, projection, new double[] {u - du, v - dv, far});
      boolean b = isWoodAt(solid, projection, new double[] {u + du, v + dv, far});
      boolean c = isWoodAt(solid, projection, new double[] {u - du, v - dv, near});
      boolean e = isWoodAt(solid, projection, new double[] {u + du, v + dv, near});
      int wood = (a ? 1 : 0) + (b ? 1 : 0) + (c ? 1 : 0) + (e ? 1 : 0);
      if (wood == 1 || wood == 3 || (wood == 2 && a == e)) {
        return true;
      }
    }
    return false;
  }

  private static List<Sight> drawnAt(View view, double u, double v, boolean isLevel) {
    return view.edges().stream()
        .filter(e -> e.isLevel() == isLevel)
        .filter(
            e -> {
              double u1 = e.u1().inches().approximate();
              double u2 = e.u2().inches().approximate();
              double v1 = e.v1().inches().approximate();
              double v2 = e.v2().inches().approximate();
              return u1 <= u && u <= u2 && v1 <= v && v <= v2;
            })
        .map(Edge::sight)
        .toList();
  }

  @Property(tries = 100)
  void everyLineIsWhereTheWoodChangesAndNoneElsewhere(@ForAll long seed) {
    Solid solid = randomSolid(new Random(seed));
    for (Projection projection : Projection.values()) {
      View view = Views.project(solid, projection);
      for (boolean isLevel : new boolean[] {true, false}) {
        for (int i = 0; i <= 10; i++) {
          for (int j = 0; j <= 10; j++) {
            double u = isLevel ? (i + 0.5) / 8 : i / 8.0;
            double v = isLevel ? j / 8.0 : (j + 0.5) / 8;
            double du = isLevel ? 0 : HAIR;
            double dv = isLevel ? HAIR : 0;
            boolean isStep =
                surface(solid, projection, u - du, v - dv)
                    != surface(solid, projection, u + du, v + dv);
            List<Sight> expected =
                isStep
                    ? List.of(Sight.VISIBLE)
                    : isEdgeAtSomeDepth(solid, projection, u, v, isLevel)
                        ? List.of(Sight.HIDDEN)
                        : List.of();
            assertThat(drawnAt(view, u, v, isLevel))
                .as("%s of %s at %s, %s", projection, solid, u, v)
                .isEqualTo(expected);
          }
        }
      }
    }
  }

  @Test
  void removalsBeyondTheBlockAreClipped() {
    View view = Views.project(solid(8, 4, 2, trough(-9, -9, 1, 4, 99, 99)), Projection.FRONT);
    assertThat(view.edges())
        .containsExactlyInAnyOrder(
            new Edge(Sight.VISIBLE, in(0, 8), in(0, 8), in(8, 8), in(0, 8)),
            new Edge(Sight.VISIBLE, in(0, 8), in(4, 8), in(8, 8), in(4, 8)),
            new Edge(Sight.VISIBLE, in(0, 8), in(0, 8), in(0, 8), in(4, 8)),
            new Edge(Sight.VISIBLE, in(4, 8), in(0, 8), in(4, 8), in(4, 8)),
            new Edge(Sight.VISIBLE, in(8, 8), in(0, 8), in(8, 8), in(4, 8)));
  }

  @Test
  void twoTroughsSideBySideShowNoLineBetween() {
    View one = Views.project(solid(8, 4, 2, trough(2, 0, 1, 6, 4, 2)), Projection.FRONT);
    View two =
        Views.project(
            solid(8, 4, 2, trough(2, 0, 1, 4, 4, 2), trough(4, 0, 1, 6, 4, 2)), Projection.FRONT);
    assertThat(two).isEqualTo(one);
  }

  private static Bore bore(int axis, Point centre, long depth, long diameter) {
    return new Bore(axis, centre, in(depth, 8), in(diameter, 8));
  }

  @Test
  void holeThroughTheFaceIsACircleInFrontAndTwoHiddenLinesAbove() {
    Solid drilled = solid(16, 8, 4, bore(2, point(8, 4, 0), 4, 2));
    Hole hole = new Hole(in(1, 1), in(1, 2), in(1, 8));
    assertThat(Views.project(drilled, Projection.FRONT).arcs())
        .containsExactly(new Arc(Sight.VISIBLE, hole, 0, 2 * Math.PI));
    View top = Views.project(drilled, Projection.TOP);
    assertThat(top.edges())
        .contains(
            new Edge(Sight.HIDDEN, in(7, 8), in(0, 8), in(7, 8), in(4, 8)),
            new Edge(Sight.HIDDEN, in(9, 8), in(0, 8), in(9, 8), in(4, 8)),
            new Edge(Sight.CENTRE, in(8, 8), in(0, 8), in(8, 8), in(4, 8)))
        .hasSize(7);
  }

  @Test
  void blindHoleFromTheOutsideIsHiddenAndEndsInALine() {
    Solid drilled = solid(16, 8, 4, bore(2, point(8, 4, 0), 3, 2));
    assertThat(Views.project(drilled, Projection.FRONT).arcs())
        .extracting(Arc::sight)
        .containsExactly(Sight.HIDDEN);
    assertThat(Views.project(drilled, Projection.TOP).edges())
        .contains(new Edge(Sight.HIDDEN, in(7, 8), in(1, 8), in(9, 8), in(1, 8)));
  }

  @Test
  void holeInTheFloorOfATroughIsSeenAndStartsThere() {
    Solid drilled = solid(16, 8, 4, bore(2, point(8, 4, 0), 4, 2), trough(4, 0, 2, 12, 8, 4));
    assertThat(Views.project(drilled, Projection.FRONT).arcs())
        .extracting(Arc::sight)
        .containsExactly(Sight.VISIBLE);
    assertThat(Views.project(drilled, Projection.TOP).edges())
        .contains(new Edge(Sight.HIDDEN, in(7, 8), in(2, 8), in(7, 8), in(4, 8)));
  }

  @Test
  void holeAcrossTheEdgeOfATroughIsAWholeCircleOnTwoLevels() {
    Solid drilled = solid(16, 8, 4, bore(2, point(8, 4, 0), 4, 2), trough(8, 0, 2, 16, 8, 4));
    double turn =
        Views.project(drilled, Projection.FRONT).arcs().stream()
            .filter(a -> a.sight() == Sight.VISIBLE)
            .mapToDouble(a -> a.to() - a.from())
            .sum();
    assertThat(turn).isEqualTo(2 * Math.PI);
  }
}
