package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * A path of straight and curved segments.
 *
 * @param segments in order; the first is a move
 */
public record Outline(List<Segment> segments) {
  /** Keeps its own copy. */
  public Outline {
    segments = List.copyOf(segments);
  }

  /** A straight line. */
  public static Outline line(double x1, double y1, double x2, double y2) {
    return new Outline(
        List.of(new Segment('M', List.of(x1, y1)), new Segment('L', List.of(x2, y2))));
  }

  /** A closed polygon; coordinates x, y, x, y and so on. */
  public static Outline polygon(double... xy) {
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      segments.add(new Segment(i == 0 ? 'M' : 'L', List.of(xy[i], xy[i + 1])));
    }
    segments.add(new Segment('Z', List.of()));
    return new Outline(segments);
  }

  /** An upright rectangle between two corners. */
  public static Outline rectangle(double x1, double y1, double x2, double y2) {
    return polygon(x1, y1, x2, y1, x2, y2, x1, y2);
  }

  /** Straight lines from point to point, not closed; coordinates x, y, x, y and so on. */
  public static Outline polyline(double... xy) {
    List<Segment> segments = new ArrayList<>(polygon(xy).segments());
    segments.remove(segments.size() - 1);
    return new Outline(segments);
  }

  /** A whole circle of four curves. */
  public static Outline circle(double x, double y, double radius) {
    List<Segment> segments = new ArrayList<>();
    for (int quarter = 0; quarter < 4; quarter++) {
      List<Segment> arc =
          arc(x, y, radius, quarter * Math.PI / 2, (quarter + 1) * Math.PI / 2).segments();
      segments.addAll(quarter == 0 ? arc : arc.subList(1, arc.size()));
    }
    segments.add(new Segment('Z', List.of()));
    return new Outline(segments);
  }

  /**
   * An arc of a circle, from one angle to a greater one, in radians counterclockwise as seen from
   * three o'clock. Each curve spans a quarter turn at most, so that it is 0.03 % of the radius off.
   */
  public static Outline arc(double x, double y, double radius, double from, double to) {
    int curves = Math.max(1, (int) Math.ceil((to - from) / (Math.PI / 2) - 1e-9));
    double step = (to - from) / curves;
    double handle = radius * 4 / 3 * StrictMath.tan(step / 4);
    List<Segment> segments = new ArrayList<>();
    double cos = StrictMath.cos(from);
    double sin = StrictMath.sin(from);
    segments.add(new Segment('M', List.of(x + radius * cos, y - radius * sin)));
    for (int i = 1; i <= curves; i++) {
      double nextCos = StrictMath.cos(from + i * step);
      double nextSin = StrictMath.sin(from + i * step);
      segments.add(
          new Segment(
              'C',
              List.of(
                  x + radius * cos - handle * sin,
                  y - radius * sin - handle * cos,
                  x + radius * nextCos + handle * nextSin,
                  y - radius * nextSin + handle * nextCos,
                  x + radius * nextCos,
                  y - radius * nextSin)));
      cos = nextCos;
      sin = nextSin;
    }
    return new Outline(segments);
  }

  /** Moved, after being scaled about the origin. */
  public Outline placed(double dx, double dy, double scale) {
    List<Segment> moved = new ArrayList<>();
    for (Segment segment : segments) {
      List<Double> xy = new ArrayList<>();
      for (int i = 0; i < segment.xy().size(); i++) {
        xy.add(segment.xy().get(i) * scale + (i % 2 == 0 ? dx : dy));
      }
      moved.add(new Segment(segment.kind(), xy));
    }
    return new Outline(moved);
  }

  /**
   * One segment.
   *
   * @param kind M move, L line, C cubic curve, Z close
   * @param xy end point, after two control points for a curve; empty for Z
   */
  public record Segment(char kind, List<Double> xy) {
    /** Keeps its own copy. */
    public Segment {
      xy = List.copyOf(xy);
    }
  }
}
