package packetwright.drawing.sheet;

import packetwright.drawing.lettering.Face;

/** What every output can paint. Coordinates are points, y downward, as on the sheet. */
public interface Painter {
  /** Draws along a path. */
  void stroke(Outline path, Pen pen);

  /** Fills a path. {@code grey} runs from 0, black, to 1, white. */
  void fill(Outline path, double grey);

  /**
   * Sets a run of text.
   *
   * @param x left end of the run
   * @param y baseline
   * @param angle in degrees, counterclockwise as seen
   * @param size in points
   * @param face typeface
   * @param text one line, left to right
   */
  void text(double x, double y, double angle, double size, Face face, String text);

  /**
   * How a line looks.
   *
   * @param width in points
   * @param dash lengths of dashes and gaps in points; empty for a whole line
   * @param grey 0 black to 1 white
   */
  record Pen(double width, java.util.List<Double> dash, double grey) {
    /** Keeps its own copy. */
    public Pen {
      dash = java.util.List.copyOf(dash);
    }
  }
}
