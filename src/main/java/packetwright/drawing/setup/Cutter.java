package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Line;
import packetwright.text.measure.Length;

/**
 * A cutter across its axis of turning.
 *
 * @param width of all of it
 * @param stack blades, chippers and shims as they sit on the arbor; a single one for any other
 */
record Cutter(Length width, List<Length> stack) {
  static final double TONE = 0.72;

  /** A line between two blades is drawn where both are wider than this on paper, in points. */
  private static final double LEAST = 2.2;

  /** A stack is listed blades first; on the arbor what is between them lies between them. */
  static Cutter of(Length width, List<Length> listed) {
    List<Length> sitting = new ArrayList<>(listed);
    if (sitting.size() > 2) {
      sitting.add(sitting.remove(1));
    }
    return new Cutter(width, sitting.isEmpty() ? List.of(width) : sitting);
  }

  /** Draws it between two heights, its left side at x. */
  void draw(Scene scene, double x, double top, double bottom) {
    double right = x + scene.points(width);
    scene.box(TONE, Line.FINE, new Area(x, top, right, bottom));
    double at = x;
    for (int i = 0; i + 1 < stack.size(); i++) {
      at += scene.points(stack.get(i));
      boolean isClear =
          scene.points(stack.get(i)) > LEAST && scene.points(stack.get(i + 1)) > LEAST;
      if (isClear) {
        scene.stroke(Line.FINE, at, top, at, bottom);
      }
    }
  }
}
