package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
import packetwright.drawing.view.Pictorial.Line;
import packetwright.drawing.view.Pictorial.Region;
import packetwright.drawing.view.Pictorial.Spot;
import packetwright.wood.part.Solid;

/**
 * Removes hidden lines: every edge is cut where another crosses it on paper, and each stretch is
 * kept when nothing stands between its middle and the eye. The kept lines part the paper into
 * regions, and one ray for each tells which piece it shows.
 */
public final class Isometric {
  /** cos 30°. */
  private static final double COS = StrictMath.sqrt(3) / 2;

  /** Places on paper are snapped to 1/100000 in. */
  private static final GeometryFactory PAPER = new GeometryFactory(new PrecisionModel(100_000));

  /** A piece that lies no farther behind another, in inches along the ray, touches it. */
  private static final double BEHIND = 1.0 / 16;

  private final Eye eye;
  private final Vector toward;
  private final List<Sitting> pieces;
  private final List<LineString> seen = new ArrayList<>();

  private final List<Pictorial.Move> moves = new ArrayList<>();

  private Isometric(List<Placed> pieces, Eye eye) {
    this.eye = eye;
    this.toward = new Vector(eye.x, eye.y, 1).unit();
    // Pieces of one part are one body.
    Map<Solid, Body> bodies = new HashMap<>();
    this.pieces =
        pieces.stream()
            .map(p -> new Sitting(Frame.of(p), bodies.computeIfAbsent(p.solid(), Body::new)))
            .toList();
  }

  /**
   * What is seen of pieces, and of the lines from those that are shifted to their places; the first
   * of two that fill the same place wins.
   */
  public static Pictorial draw(List<Placed> pieces, Eye eye) {
    Isometric view = new Isometric(pieces, eye);
    view.see(Explosion.of(pieces));
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

  private double u(Vector place) {
    return (-eye.y * place.x() + eye.x * place.y()) * COS;
  }

  private double v(Vector place) {
    return place.z() - (eye.x * place.x() + eye.y * place.y()) / 2;
  }

  /** A place of the assembly that lies behind a place on paper, at height 0. */
  private Vector behind(double u, double v) {
    double a = u / COS;
    double b = 2 * v;
    return new Vector((-eye.y * a - eye.x * b) / 2, (eye.x * a - eye.y * b) / 2, 0);
  }

  private void see(List<Explosion.Move> away) {
    List<Edge> edges = edges();
    List<double[]> onPaper = new ArrayList<>();
    edges.forEach(e -> onPaper.add(onPaper(e.from, e.to)));
    away.forEach(m -> onPaper.add(onPaper(m.from(), m.to())));
    Crossings crossings = new Crossings(onPaper);
    for (int i = 0; i < edges.size(); i++) {
      see(edges.get(i), crossings.cuts(i));
    }
    for (int i = 0; i < away.size(); i++) {
      see(away.get(i), crossings.cuts(edges.size() + i));
    }
  }

  private double[] onPaper(Vector from, Vector to) {
    return new double[] {u(from), v(from), u(to), v(to)};
  }

  /** What may be seen of the pieces, if nothing stands before it. */
  private List<Edge> edges() {
    List<Edge> edges = new ArrayList<>();
    Map<Body, List<Crease>> creases = new HashMap<>();
    for (Sitting piece : pieces) {
      Vector ownEye = piece.frame.ownWay(toward);
      for (Crease crease : creases.computeIfAbsent(piece.body, Creases::of)) {
        Vector from = piece.frame.assembled(crease.from());
        Vector to = piece.frame.assembled(crease.to());
        boolean isPoint = Math.hypot(u(to) - u(from), v(to) - v(from)) < 1e-9;
        if (crease.isLine(ownEye) && !isPoint) {
          edges.add(new Edge(from, to));
        }
      }
    }
    return edges;
  }

  /** Keeps the stretches of a line through the air that are seen, each as long as it goes. */
  private void see(Explosion.Move move, List<Double> crossed) {
    Vector way = move.to().minus(move.from());
    TreeSet<Double> cuts = new TreeSet<>(crossed);
    for (Sitting piece : pieces) {
      Vector from = piece.frame.own(move.from());
      for (double[] wood : piece.body.wood(from, piece.frame.ownWay(way))) {
        cuts.addAll(List.of(wood[0], wood[1]));
      }
    }
    double begin = Double.NaN;
    double before = 0;
    for (double cut : cuts.subSet(0.0, false, 1.0, true)) {
      boolean isSeen = isFree(move.from().toward(move.to(), (before + cut) / 2));
      if (isSeen && Double.isNaN(begin)) {
        begin = before;
      } else if (!isSeen && !Double.isNaN(begin)) {
        addMove(move, begin, before);
        begin = Double.NaN;
      }
      before = cut;
    }
    if (!Double.isNaN(begin)) {
      addMove(move, begin, 1);
    }
  }

  private void addMove(Explosion.Move move, double from, double to) {
    Coordinate begin = paper(move.from().toward(move.to(), from));
    Coordinate end = paper(move.from().toward(move.to(), to));
    if (begin.distance(end) > 1e-3) {
      moves.add(new Pictorial.Move(new Spot(begin.x, begin.y), new Spot(end.x, end.y)));
    }
  }

  private void see(Edge edge, List<Double> cuts) {
    Vector aside = edge.to.minus(edge.from).cross(toward).unit().times(Views.BESIDE);
    for (int i = 0; i < cuts.size() - 1; i++) {
      double from = cuts.get(i);
      double to = cuts.get(i + 1);
      Vector middle = edge.from.toward(edge.to, (from + to) / 2);
      if (to - from > 1e-9 && (isFree(middle.plus(aside)) || isFree(middle.minus(aside)))) {
        Coordinate begin = paper(edge.from.toward(edge.to, from));
        Coordinate end = paper(edge.from.toward(edge.to, to));
        if (!begin.equals2D(end)) {
          LineString stretch = PAPER.createLineString(new Coordinate[] {begin, end});
          seen.add(stretch);
        }
      }
    }
  }

  private Coordinate paper(Vector place) {
    PrecisionModel grid = PAPER.getPrecisionModel();
    return new Coordinate(grid.makePrecise(u(place)), grid.makePrecise(v(place)));
  }

  private boolean isFree(Vector place) {
    return pieces.stream().allMatch(p -> p.body.isFree(p.frame.own(place), p.frame.ownWay(toward)));
  }

  private Pictorial pictorial() {
    Geometry noded = noded(seen);
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
    return new Pictorial(regions(polygonizer), lines, moves);
  }

  private static Geometry noded(List<LineString> lines) {
    return UnaryUnionNG.union(PAPER.buildGeometry(lines), PAPER.getPrecisionModel());
  }

  private boolean isOutline(LineString line) {
    Coordinate one = line.getCoordinateN(0);
    Coordinate other = line.getCoordinateN(1);
    double length = one.distance(other);
    double u = (one.x + other.x) / 2;
    double v = (one.y + other.y) / 2;
    double du = -(other.y - one.y) / length * 1e-3;
    double dv = (other.x - one.x) / length * 1e-3;
    Hit left = hit(u + du, v + dv);
    Hit right = hit(u - du, v - dv);
    if (left == null || right == null) {
      return true;
    }
    return left.piece != right.piece && Math.abs(left.near - right.near) > BEHIND;
  }

  /** The surface nearest to the eye behind a place on paper; null for the background. */
  private @Nullable Hit hit(double u, double v) {
    Vector from = behind(u, v);
    Hit nearest = null;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < pieces.size(); i++) {
      Sitting piece = pieces.get(i);
      Vector ownFrom = piece.frame.own(from);
      Vector ownEye = piece.frame.ownWay(toward);
      for (double[] wood : piece.body.wood(ownFrom, ownEye)) {
        if (wood[1] - wood[0] > Body.TOUCH && wood[1] > most + Body.TOUCH) {
          most = wood[1];
          nearest = new Hit(i, most);
        }
      }
    }
    return nearest;
  }

  private List<Region> regions(Polygonizer polygonizer) {
    Collection<?> polygons = polygonizer.getPolygons();
    List<Region> regions = new ArrayList<>();
    for (Object found : polygons) {
      // Where a ring begins is the library's chance; normal form begins at its least place.
      Polygon polygon = (Polygon) ((Polygon) found).norm();
      // As near as a letter needs: to a thirtieth of the region's breadth.
      double near = StrictMath.max(0.01, StrictMath.sqrt(polygon.getArea()) / 30);
      MaximumInscribedCircle circle = new MaximumInscribedCircle(polygon, near);
      Coordinate middle = circle.getCenter().getCoordinate();
      Hit hit = hit(middle.x, middle.y);
      if (hit != null) {
        double room = circle.getRadiusLine().getLength();
        regions.add(new Region(hit.piece, rings(polygon), new Spot(middle.x, middle.y), room));
      }
    }
    // The order in which areas are found is the library's; ours does not depend on it.
    regions.sort(
        Comparator.comparingInt(Region::piece)
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

  /** A piece, and how near its surface is to the eye. */
  private record Hit(int piece, double near) {}

  private record Sitting(Frame frame, Body body) {}

  private record Edge(Vector from, Vector to) {}
}
