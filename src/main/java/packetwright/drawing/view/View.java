package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.List;
import packetwright.text.measure.Length;

/**
 * One view of a solid, true size: u to the right and v upward from the lower left corner of the
 * block. Coordinates are exact where they are fractions of an inch, and else within a ten-billionth
 * of an inch.
 *
 * @param width of the block as seen
 * @param height of the block as seen
 * @param edges straight lines, each as long as it goes; none lies on another
 * @param arcs parts of round edges seen end-on
 * @param curves other round edges: ellipses and what comes where two round surfaces meet
 * @param holes round holes seen end-on, for centre lines
 */
public record View(
    Length width,
    Length height,
    List<Edge> edges,
    List<Arc> arcs,
    List<Curve> curves,
    List<Hole> holes) {
  /** Keeps its own copies. */
  public View {
    edges = List.copyOf(edges);
    arcs = List.copyOf(arcs);
    curves = List.copyOf(curves);
    holes = List.copyOf(holes);
  }

  /** Whether an edge can be seen. */
  public enum Sight {
    HIDDEN,
    VISIBLE,
    /** The axis of a hole. */
    CENTRE
  }

  /** A straight line; it runs to the right, or straight upward. */
  public record Edge(Sight sight, Length u1, Length v1, Length u2, Length v2) {
    /** Whether v does not change. */
    public boolean isLevel() {
      return v1.equals(v2);
    }

    /** Whether u does not change. */
    public boolean isUpright() {
      return u1.equals(u2);
    }
  }

  /**
   * A part of a circle.
   *
   * @param sight whether it can be seen
   * @param hole the circle
   * @param from in radians, counterclockwise from three o'clock
   * @param to in radians, greater
   */
  public record Arc(Sight sight, Hole hole, double from, double to) {
    /** Where it runs level or upright, each as u and v. */
    public List<List<Length>> turningPoints() {
      List<List<Length>> points = new ArrayList<>();
      Length r = hole.radius();
      List<List<Length>> quarters =
          List.of(
              List.of(hole.u().plus(r), hole.v()),
              List.of(hole.u(), hole.v().plus(r)),
              List.of(hole.u().minus(r), hole.v()),
              List.of(hole.u(), hole.v().minus(r)));
      for (int quarter = 0; quarter <= 8; quarter++) {
        double turn = quarter * Math.PI / 2;
        if (turn > from - 1e-9 && turn < to + 1e-9) {
          points.add(quarters.get(quarter % 4));
        }
      }
      return points;
    }
  }

  /** A circle about a centre. */
  public record Hole(Length u, Length v, Length radius) {}

  /**
   * Short straight lines one after another that stand for a curve.
   *
   * @param sight whether it can be seen
   * @param places from one end to the other
   */
  public record Curve(Sight sight, List<Place> places) {
    /** Keeps its own copy. */
    public Curve {
      places = List.copyOf(places);
    }
  }

  /** A place on paper, in inches. */
  public record Place(double u, double v) {}
}
