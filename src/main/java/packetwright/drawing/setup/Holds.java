package packetwright.drawing.setup;

import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Line;

/**
 * What holds wood in the place of a hand, as signs of one size, seen from an end; {@code on} is the
 * height of what they stand on.
 */
final class Holds {
  /** The line of the wood that they stand on is as thick as that. */
  private static final double CLEAR = Line.THICK / 2;

  private Holds() {}

  /** A push stick, upright. */
  static void stick(Scene scene, double x, double on) {
    scene.stroke(
        Line.VISIBLE, x - 3.5, on, x - 3.5, on - 40, x, on - 44, x + 3.5, on - 40, x + 3.5, on);
  }

  /** A push block between two ends, its handle about a place. */
  static void block(Scene scene, double[] ends, double handle, double on) {
    double top = on - 12;
    scene.box(1, Line.FINE, new Area(ends[0], top, ends[1], on - CLEAR));
    scene.stroke(
        Line.FINE, handle - 6, top, handle - 4, top - 16, handle + 4, top - 16, handle + 6, top);
  }

  /** A clamp that presses from above. */
  static void clamp(Scene scene, double x, double on) {
    scene.box(1, Line.FINE, new Area(x - 8, on - 5, x + 8, on - CLEAR));
    scene.box(1, Line.FINE, new Area(x - 2.5, on - 27, x + 2.5, on - 5));
    scene.stroke(Line.VISIBLE, x - 8, on - 27, x + 8, on - 27);
  }

  /** A clamp from a fence to a place on the wood, seen from above. */
  static void clampFromAbove(Scene scene, double x, double y) {
    scene.box(1, Line.FINE, new Area(x - 3, -8, x + 3, y));
    scene.fill(1, x - 5, y - 5, x + 5, y - 5, x + 5, y + 5, x - 5, y + 5);
    scene.circle(Line.VISIBLE, x, y, 7);
  }
}
