package packetwright.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import packetwright.definition.project.Side;
import packetwright.drawing.view.View.Arc;
import packetwright.drawing.view.View.Curve;
import packetwright.drawing.view.View.Edge;
import packetwright.drawing.view.View.Place;
import packetwright.drawing.view.View.Sight;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Shapes;
import packetwright.wood.part.Solid;

/**
 * Views of random solids against rays through their definition: a ray toward the eye meets wood
 * from one depth to another, and those depths jump or bend where a line is drawn, and nowhere else.
 */
class CreasesTest {
  /** Chords leave their arcs by half a thousandth of an inch. */
  private static final double NEAR = 2e-3;

  private static final double STEP = 1.0 / 128;

  /** Of every hole: no wall is so thin that it only touches another. */
  private static final double RADIUS = 0.17;

  /** Whether a place is taken away, straight from the meaning of a removal. */
  private interface Taken {
    boolean at(double[] place);
  }

  /** A solid, and what takes wood out of it as said in floating point. */
  private record Sample(Solid solid, List<Taken> taken) {
    boolean isWood(double[] place) {
      for (int axis = 0; axis < 3; axis++) {
        if (place[axis] <= 0 || place[axis] >= inches(solid.extent(axis))) {
          return false;
        }
      }
      return taken.stream().noneMatch(t -> t.at(place));
    }

    /** Depths at which a ray enters and leaves wood, the nearest to the eye first. */
    List<Double> depths(Projection projection, double u, double v, double step) {
      List<Double> depths = new ArrayList<>();
      double extent = inches(solid.extent(projection.depth()));
      boolean isBefore = false;
      for (double d = extent + step / 3; d > -step; d -= step) {
        boolean isHere = isWood(place(projection, u, v, d));
        if (isHere != isBefore) {
          double outer = d + step;
          double inner = d;
          for (int i = 0; i < 40; i++) {
            double middle = (outer + inner) / 2;
            if (isWood(place(projection, u, v, middle)) == isHere) {
              inner = middle;
            } else {
              outer = middle;
            }
          }
          depths.add(inner);
          isBefore = isHere;
        }
      }
      return depths;
    }

    private double[] place(Projection projection, double u, double v, double depth) {
      double[] place = new double[3];
      place[projection.across()] = projection.onPaper(solid, projection.across(), u);
      place[projection.up()] = projection.onPaper(solid, projection.up(), v);
      place[projection.depth()] = depth;
      return place;
    }
  }

  private static double inches(Length length) {
    return length.inches().approximate();
  }

  private static Length eighths(int count) {
    return Length.ofInches(count, 8);
  }

  private static Sample sample(Random random) {
    int[] extent = {6 + random.nextInt(6), 5 + random.nextInt(5), 4 + random.nextInt(4)};
    Solid solid = Solid.block(eighths(extent[0]), eighths(extent[1]), eighths(extent[2]));
    List<Taken> taken = new ArrayList<>();
    for (int n = 1 + random.nextInt(3); n > 0; n--) {
      solid =
          switch (random.nextInt(4)) {
            case 0 -> trough(random, solid, extent, taken);
            case 1 -> bore(random, solid, extent, taken);
            case 2 -> slope(random, solid, taken);
            default -> outline(random, solid, taken);
          };
    }
    return new Sample(solid, taken);
  }

  private static Solid trough(Random random, Solid solid, int[] extent, List<Taken> taken) {
    int[] low = new int[3];
    int[] high = new int[3];
    for (int i = 0; i < 3; i++) {
      low[i] = random.nextInt(extent[i] + 1) - 1;
      high[i] = low[i] + 1 + random.nextInt(5);
    }
    taken.add(
        p -> {
          boolean isIn = true;
          for (int i = 0; i < 3; i++) {
            isIn &= p[i] > low[i] / 8.0 && p[i] < high[i] / 8.0;
          }
          return isIn;
        });
    return solid.minus(new Removal.Trough(new Box(point(low), point(high))));
  }

  private static Point point(int[] eighths) {
    return new Point(eighths(eighths[0]), eighths(eighths[1]), eighths(eighths[2]));
  }

  private static Solid bore(Random random, Solid solid, int[] extent, List<Taken> taken) {
    int axis = random.nextInt(3);
    int[] centre = new int[3];
    for (int i = 0; i < 3; i++) {
      centre[i] = 1 + random.nextInt(extent[i] - 1);
    }
    centre[axis] = random.nextInt(2) * (extent[axis] / 2);
    int depth = extent[axis] - centre[axis];
    taken.add(
        p -> {
          double square = 0;
          for (int i = 0; i < 3; i++) {
            square += i == axis ? 0 : (p[i] - centre[i] / 8.0) * (p[i] - centre[i] / 8.0);
          }
          return square < RADIUS * RADIUS && p[axis] > centre[axis] / 8.0;
        });
    return solid.minus(
        new Removal.Bore(axis, point(centre), eighths(depth), Length.ofInches(34, 100)));
  }

  private static Side side(Random random, int axis) {
    boolean isFar = random.nextBoolean();
    return switch (axis) {
      case 0 -> isFar ? Side.RIGHT : Side.LEFT;
      case 1 -> isFar ? Side.TOP : Side.BOTTOM;
      default -> isFar ? Side.INSIDE : Side.OUTSIDE;
    };
  }

  private static double within(Solid solid, Side side, double[] place) {
    return side.isFar()
        ? inches(solid.extent(side.axis())) - place[side.axis()]
        : place[side.axis()];
  }

  private static Solid slope(Random random, Solid solid, List<Taken> taken) {
    int axis = random.nextInt(3);
    Side at = side(random, (axis + 1) % 3);
    Side full = side(random, (axis + 2) % 3);
    int by = 1 + random.nextInt(3);
    double across = inches(solid.extent(full.axis()));
    boolean isChamfer = random.nextBoolean();
    taken.add(
        p ->
            isChamfer
                ? within(solid, at, p) + within(solid, full, p) < by / 8.0
                : within(solid, at, p) < by / 8.0 * within(solid, full, p) / across);
    return solid.minus(
        isChamfer
            ? Shapes.chamfer(solid, at, full, eighths(by))
            : Shapes.slant(solid, at, full, eighths(by)));
  }

  private static Solid outline(Random random, Solid solid, List<Taken> taken) {
    if (random.nextBoolean()) {
      int axis = random.nextInt(3);
      Side one = side(random, (axis + 1) % 3);
      Side other = side(random, (axis + 2) % 3);
      int radius = 11 + 12 * random.nextInt(2);
      taken.add(
          p -> {
            double a = radius / 100.0 - within(solid, one, p);
            double b = radius / 100.0 - within(solid, other, p);
            return a > 0 && b > 0 && a * a + b * b > radius * radius / 10000.0;
          });
      return solid.minus(Shapes.rounded(solid, one, other, Length.ofInches(radius, 100)));
    }
    Side edge = side(random, random.nextInt(2));
    double rise = (11 + 11 * random.nextInt(2)) / 100.0;
    double centre = (rise * rise - 1 / 16.0) / (2 * rise);
    taken.add(
        p -> {
          double a = within(solid, edge, p) - centre;
          double b = p[1 - edge.axis()] - 3 / 8.0;
          return a * a + b * b < (rise - centre) * (rise - centre);
        });
    Length deep = Length.ofInches(Math.round(rise * 100), 100);
    return solid.minus(Shapes.curve(solid, edge, eighths(1), eighths(4), deep));
  }

  /** A short piece of a line of a view: its middle, which way it runs, and whether it is seen. */
  private record Piece(Place from, Place to, Sight sight) {
    double length() {
      return Math.hypot(to.u() - from.u(), to.v() - from.v());
    }

    double distance(double u, double v) {
      double du = to.u() - from.u();
      double dv = to.v() - from.v();
      double length = du * du + dv * dv;
      double at = ((u - from.u()) * du + (v - from.v()) * dv) / length;
      double inside = Math.min(1, Math.max(0, at));
      return Math.hypot(from.u() + inside * du - u, from.v() + inside * dv - v);
    }
  }

  private static List<Piece> pieces(View view) {
    List<Piece> pieces = new ArrayList<>();
    for (Edge edge : view.edges()) {
      if (edge.sight() != Sight.CENTRE) {
        Place from = new Place(inches(edge.u1()), inches(edge.v1()));
        Place to = new Place(inches(edge.u2()), inches(edge.v2()));
        pieces.add(new Piece(from, to, edge.sight()));
      }
    }
    for (Arc arc : view.arcs()) {
      for (int i = 0; i < 32; i++) {
        pieces.add(new Piece(onArc(arc, i / 32.0), onArc(arc, (i + 1) / 32.0), arc.sight()));
      }
    }
    for (Curve curve : view.curves()) {
      for (int i = 1; i < curve.places().size(); i++) {
        pieces.add(new Piece(curve.places().get(i - 1), curve.places().get(i), curve.sight()));
      }
    }
    return pieces;
  }

  private static Place onArc(Arc arc, double part) {
    double turn = arc.from() + part * (arc.to() - arc.from());
    double radius = inches(arc.hole().radius());
    return new Place(
        inches(arc.hole().u()) + radius * Math.cos(turn),
        inches(arc.hole().v()) + radius * Math.sin(turn));
  }

  @Property(tries = 40, seed = "20270301")
  void whereTheDepthJumpsALineIsDrawn(@ForAll long seed) {
    Random random = new Random(seed);
    Sample sample = sample(random);
    Views.all(sample.solid)
        .forEach(
            (projection, view) -> {
              List<Piece> pieces = pieces(view);
              for (int i = 0; i < 60; i++) {
                Place from = anywhere(random, view);
                Place to = anywhere(random, view);
                Place jump = jump(sample, projection, from, to);
                if (jump != null) {
                  assertThat(pieces.stream().anyMatch(p -> p.distance(jump.u(), jump.v()) < NEAR))
                      .as("%s of %s: a jump at %s", projection, sample.solid, jump)
                      .isTrue();
                }
              }
            });
  }

  private static Place anywhere(Random random, View view) {
    return new Place(
        random.nextDouble() * inches(view.width()), random.nextDouble() * inches(view.height()));
  }

  /** A place between two at which the number of layers of wood changes, or none. */
  private static @org.jspecify.annotations.Nullable Place jump(
      Sample sample, Projection projection, Place from, Place to) {
    int before = sample.depths(projection, from.u(), from.v(), STEP).size();
    int after = sample.depths(projection, to.u(), to.v(), STEP).size();
    if (before == after) {
      return null;
    }
    Place low = from;
    Place high = to;
    for (int i = 0; i < 30; i++) {
      Place middle = new Place((low.u() + high.u()) / 2, (low.v() + high.v()) / 2);
      if (sample.depths(projection, middle.u(), middle.v(), STEP).size() == before) {
        low = middle;
      } else {
        high = middle;
      }
    }
    // A wedge that gets too thin for the step is no jump.
    double fine = STEP / 64;
    boolean isJump =
        sample.depths(projection, low.u(), low.v(), fine).size()
            != sample.depths(projection, high.u(), high.v(), fine).size();
    return isJump ? low : null;
  }

  @Property(tries = 40, seed = "20270302")
  void whereALineIsDrawnTheDepthJumpsOrBends(@ForAll long seed) {
    Sample sample = sample(new Random(seed));
    Views.all(sample.solid)
        .forEach(
            (projection, view) -> {
              for (Piece piece : pieces(view)) {
                assertMeans(sample, projection, piece);
              }
            });
  }

  /** What is seen changes the surface nearest to the eye; what is hidden only what lies behind. */
  private static void assertMeans(Sample sample, Projection projection, Piece piece) {
    if (piece.length() > 0.01) {
      // Close to the edge of a wedge only a fine step finds the wood.
      boolean means =
          means(depths(sample, projection, piece, STEP / 4), piece.sight)
              || means(depths(sample, projection, piece, STEP / 64), piece.sight);
      assertThat(means).as("%s of %s: %s", projection, sample.solid, piece).isTrue();
    }
  }

  /** Depths at one side of the middle of a line, in it, and at the other side. */
  private static List<List<Double>> depths(
      Sample sample, Projection projection, Piece piece, double step) {
    List<List<Double>> depths = new ArrayList<>();
    for (int i = -1; i <= 1; i++) {
      double away = i * NEAR / piece.length();
      double u = (piece.from.u() + piece.to.u()) / 2 - away * (piece.to.v() - piece.from.v());
      double v = (piece.from.v() + piece.to.v()) / 2 + away * (piece.to.u() - piece.from.u());
      depths.add(sample.depths(projection, u, v, step));
    }
    return depths;
  }

  private static boolean means(List<List<Double>> depths, Sight sight) {
    boolean isFirst = isBent(depths, 0);
    boolean isAny = depths.get(0).size() != depths.get(2).size();
    for (int layer = 0; layer < depths.get(0).size(); layer++) {
      isAny |= isBent(depths, layer);
    }
    return sight == Sight.VISIBLE ? isFirst : isAny && !isFirst;
  }

  /** Whether a depth does not change evenly from one side of a line to the other. */
  private static boolean isBent(List<List<Double>> depths, int layer) {
    if (depths.stream().anyMatch(d -> d.size() <= layer)) {
      return depths.get(0).size() > layer != depths.get(2).size() > layer;
    }
    double bend =
        depths.get(0).get(layer) - 2 * depths.get(1).get(layer) + depths.get(2).get(layer);
    return Math.abs(bend) > NEAR * 0.03;
  }
}
