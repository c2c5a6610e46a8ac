package packetwright.drawing.setup;

import java.util.List;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter;

/**
 * Marks moved to another place on the sheet.
 *
 * @param marks painted in order
 * @param dx to the right, in points
 * @param dy downward, in points
 */
record Moved(List<Mark> marks, double dx, double dy) implements Mark {
  Moved {
    marks = List.copyOf(marks);
  }

  @Override
  public void paint(Painter painter) {
    Painter moving =
        new Painter() {
          @Override
          public void stroke(Outline path, Pen pen) {
            painter.stroke(path.placed(dx, dy, 1), pen);
          }

          @Override
          public void fill(Outline path, double grey) {
            painter.fill(path.placed(dx, dy, 1), grey);
          }

          @Override
          public void text(double x, double y, double angle, double size, Face face, String text) {
            painter.text(x + dx, y + dy, angle, size, face, text);
          }
        };
    marks.forEach(mark -> mark.paint(moving));
  }
}
