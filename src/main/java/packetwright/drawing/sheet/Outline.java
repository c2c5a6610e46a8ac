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
