package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import packetwright.drawing.view.Pictorial.Facing;
import packetwright.drawing.view.Pictorial.Line;
import packetwright.drawing.view.Pictorial.Region;
import packetwright.drawing.view.Pictorial.Spot;

/**
 * Removes hidden lines: every edge is cut where another crosses it on paper, and each stretch is
 * kept when nothing stands between its middle and the eye. The kept lines part the paper into
 * regions, and one ray for each tells which surface it shows.
 */
public final class Isometric {
  /** cos 30°. */
  private static final double COS = StrictMath.sqrt(3) / 2;

  /** Wood thinner than this along a ray hides nothing: it is only touched. */
  private static final double TOUCH = 1e-6;

  /** Places on paper are snapped to 1/100000 in. */
  private static final GeometryFactory PAPER = new GeometryFactory(new PrecisionModel(100_000));

  private final Eye eye;
  private final List<Wire> wires;
  private final List<LineString> seen = new ArrayList<>();

  private Isometric(List<Placed> pieces, Eye eye) {
    this.eye = eye;
    this.wires = pieces.stream().map(Wire::new).toList();
  }

  /** What is seen of pieces; the first of two that fill the same place wins. */
  public static Pictorial draw(List<Placed> pieces, Eye eye) {
    Isometric view = new Isometric(pieces, eye);
    view.seeEdges();
    return view.pictorial();
  }

  /** From which corner, always from above, the pieces are seen. */
  public enum Eye {
    /** Where x and y are least. */
    LOW_X_LOW_Y(-1, -1),
    LOW_X_HIGH_Y(-1, 1),
    HIGH_X_LOW_Y(1, -1),
    HIGH_X_HIGH_Y(1, 1);

    private final int x;
    private final int y;

    Eye(int x, int y) {
      this.x = x;
      this.y = y;
    }
  }

  private double u(double[] place) {
    return (-eye.y * place[0] + eye.x * place[1]) * COS;
  }

  private double v(double[] place) {
    return place[2] - (eye.x * place[0] + eye.y * place[1]) / 2;
  }

  /** A place of the assembly that lies behind a place on paper, at height 0. */
  private double[] behind(double u, double v) {
    double a = u / COS;
    double b = 2 * v;
    return new double[] {(-eye.y * a - eye.x * b) / 2, (eye.x * a - eye.y * b) / 2, 0};
  }

  private void seeEdges() {
    List<double[][]> edges = wires.stream().flatMap(w -> w.edges().stream()).toList();
    for (double[][] edge : edges) {
      List<Double> cuts = List.copyOf(cuts(edge, edges));
      for (int i = 0; i < cuts.size() - 1; i++) {
        double from = cuts.get(i);
        double to = cuts.get(i + 1);
        if (to - from > 1e-9 && isSeen(along(edge, (from + to) / 2))) {
          Coordinate begin = paper(along(edge, from));
          Coordinate end = paper(along(edge, to));
          if (!begin.equals2D(end)) {
            seen.add(PAPER.createLineString(new Coordinate[] {begin, end}));
          }
        }
      }
    }
  }

  /** How far along an edge, from 0 to 1, others cross it on paper. */
  private Set<Double> cuts(double[][] edge, List<double[][]> others) {
    Set<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
    double u = u(edge[0]);
    double v = v(edge[0]);
    double du = u(edge[1]) - u;
    double dv = v(edge[1]) - v;
    for (double[][] other : others) {
      double u2 = u(other[0]);
      double v2 = v(other[0]);
      double du2 = u(other[1]) - u2;
      double dv2 = v(other[1]) - v2;
      double turn = du * dv2 - dv * du2;
      if (Math.abs(turn) > 1e-9) {
        double mine = ((u2 - u) * dv2 - (v2 - v) * du2) / turn;
        double theirs = ((u2 - u) * dv - (v2 - v) * du) / turn;
        if (mine > 0 && mine < 1 && theirs > -1e-9 && theirs < 1 + 1e-9) {
          cuts.add(mine);
        }
      } else if (Math.abs((u2 - u) * dv - (v2 - v) * du) < 1e-9) {
        double length = du * du + dv * dv;
        addInside(cuts, ((u2 - u) * du + (v2 - v) * dv) / length);
        addInside(cuts, ((u2 + du2 - u) * du + (v2 + dv2 - v) * dv) / length);
      }
    }
    return cuts;
  }

  private static void addInside(Set<Double> cuts, double cut) {
    if (cut > 0 && cut < 1) {
      cuts.add(cut);
    }
  }

  private static double[] along(double[][] edge, double part) {
    double[] place = new double[3];
    for (int i = 0; i < 3; i++) {
      place[i] = edge[0][i] + part * (edge[1][i] - edge[0][i]);
    }
    return place;
  }

  private Coordinate paper(double[] place) {
    PrecisionModel grid = PAPER.getPrecisionModel();
    return new Coordinate(grid.makePrecise(u(place)), grid.makePrecise(v(place)));
  }

  private boolean isSeen(double[] place) {
    for (Wire wire : wires) {
      for (double[][] box : wire.boxes()) {
        double[] stretch = stretch(place, box);
        if (stretch[1] - Math.max(0, stretch[0]) > TOUCH) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * From where to where a ray toward the eye runs inside a box; empty when the first is greater.
   */
  private double[] stretch(double[] from, double[][] box) {
    double[] toward = {eye.x, eye.y, 1};
    double enter = Double.NEGATIVE_INFINITY;
    double leave = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      double one = (box[0][i] - from[i]) / toward[i];
      double other = (box[1][i] - from[i]) / toward[i];
      enter = Math.max(enter, Math.min(one, other));
      leave = Math.min(leave, Math.max(one, other));
    }
    return new double[] {enter, leave};
  }

  private Pictorial pictorial() {
    Geometry noded = UnaryUnionNG.union(PAPER.buildGeometry(seen), PAPER.getPrecisionModel());
    List<LineString> outlines = new ArrayList<>();
    List<LineString> inner = new ArrayList<>();
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(noded);
    for (int i = 0; i < noded.getNumGeometries(); i++) {
      LineString line = (LineString) noded.getGeometryN(i);
      (isOutline(line) ? outlines : inner).add(line);
    }
    List<Line> lines = new ArrayList<>();
    lines.addAll(merged(true, outlines));
    lines.addAll(merged(false, inner));
    return new Pictorial(regions(polygonizer), lines);
  }

  private boolean isOutline(LineString line) {
    Coordinate one = line.getCoordinateN(0);
    Coordinate other = line.getCoordinateN(1);
    double length = one.distance(other);
    double u = (one.x + other.x) / 2;
    double v = (one.y + other.y) / 2;
    double du = -(other.y - one.y) / length * 1e-3;
    double dv = (other.x - one.x) / length * 1e-3;
    return hit(u + du, v + dv) == null || hit(u - du, v - dv) == null;
  }

  /** The surface nearest to the eye behind a place on paper; null for the background. */
  private @Nullable Hit hit(double u, double v) {
    double[] from = behind(u, v);
    Hit nearest = null;
    double most = Double.NEGATIVE_INFINITY;
    for (int piece = 0; piece < wires.size(); piece++) {
      for (double[][] box : wires.get(piece).boxes()) {
        double[] stretch = stretch(from, box);
        if (stretch[1] - stretch[0] > TOUCH && stretch[1] > most + TOUCH) {
          most = stretch[1];
          nearest = new Hit(piece, facing(from, box));
        }
      }
    }
    return nearest;
  }

  /** The side of a box through which a ray leaves toward the eye. */
  private Facing facing(double[] from, double[][] box) {
    double x = (box[eye.x > 0 ? 1 : 0][0] - from[0]) / eye.x;
    double y = (box[eye.y > 0 ? 1 : 0][1] - from[1]) / eye.y;
    double z = box[1][2] - from[2];
    if (z <= x && z <= y) {
      return Facing.UP;
    }
    // A side that looks along x stands left on paper where u falls toward that side.
    boolean isX = x < y;
    return isX == (eye.x * -eye.y < 0) ? Facing.LEFT : Facing.RIGHT;
  }

  private List<Region> regions(Polygonizer polygonizer) {
    Collection<?> polygons = polygonizer.getPolygons();
    List<Region> regions = new ArrayList<>();
    for (Object found : polygons) {
      // Where a ring begins is the library's chance; normal form begins at its least place.
      Polygon polygon = (Polygon) ((Polygon) found).norm();
      MaximumInscribedCircle circle = new MaximumInscribedCircle(polygon, 0.01);
      Coordinate middle = circle.getCenter().getCoordinate();
      Hit hit = hit(middle.x, middle.y);
      if (hit != null) {
        double room = circle.getRadiusLine().getLength();
        regions.add(
            new Region(hit.piece, hit.facing, rings(polygon), new Spot(middle.x, middle.y), room));
      }
    }
    // The order in which areas are found is the library's; ours does not depend on it.
    regions.sort(
        Comparator.comparingInt(Region::piece)
            .thenComparing(Region::facing)
            .thenComparingDouble(r -> r.middle().u())
            .thenComparingDouble(r -> r.middle().v()));
    return regions;
  }

  private static List<List<Spot>> rings(Polygon polygon) {
    List<List<Spot>> rings = new ArrayList<>();
    rings.add(spots(polygon.getExteriorRing()));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      LinearRing hole = polygon.getInteriorRingN(i);
      rings.add(spots(hole));
    }
    return rings;
  }

  private static List<Line> merged(boolean isOutline, List<LineString> lines) {
    LineMerger merger = new LineMerger();
    merger.add(lines);
    List<Line> merged = new ArrayList<>();
    for (Object line : merger.getMergedLineStrings()) {
      LineString whole = (LineString) line;
      LineString path =
          whole.isClosed() ? PAPER.createLinearRing(whole.getCoordinateSequence()) : whole;
      merged.add(new Line(isOutline, spots((LineString) path.norm())));
    }
    merged.sort(
        Comparator.comparingDouble((Line l) -> l.spots().get(0).u())
            .thenComparingDouble(l -> l.spots().get(0).v())
            .thenComparingDouble(l -> l.spots().get(1).u())
            .thenComparingDouble(l -> l.spots().get(1).v()));
    return merged;
  }

  private static List<Spot> spots(LineString line) {
    return Arrays.stream(line.getCoordinates()).map(c -> new Spot(c.x, c.y)).toList();
  }

  private record Hit(int piece, Facing facing) {}
}
