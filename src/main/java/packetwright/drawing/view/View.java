package packetwright.drawing.view;

import java.util.List;
import packetwright.text.measure.Length;

/**
 * One view of a solid. Coordinates are exact and true size: u to the right and v upward from the
 * lower left corner of the block.
 *
 * @param width of the block as seen
 * @param height of the block as seen
 * @param edges straight lines, each as long as it goes; none lies on another
 * @param arcs parts of round edges seen end-on
 * @param holes round holes seen end-on, for centre lines
 */
public record View(
    Length width, Length height, List<Edge> edges, List<Arc> arcs, List<Hole> holes) {
  /** Keeps its own copies. */
  public View {
    edges = List.copyOf(edges);
    arcs = List.copyOf(arcs);
    holes = List.copyOf(holes);
  }

  /** Whether an edge can be seen. */
  public enum Sight {
    HIDDEN,
    VISIBLE,
    /** The axis of a hole. */
    CENTRE
  }

  /** A straight line; it runs level or upright, to the right or upward. */
  public record Edge(Sight sight, Length u1, Length v1, Length u2, Length v2) {
    /** Whether v does not change. */
    public boolean isLevel() {
      return v1.equals(v2);
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
  public record Arc(Sight sight, Hole hole, double from, double to) {}

  /** A circle about a centre. */
  public record Hole(Length u, Length v, Length radius) {}
}
