package packetwright.drawing.setup;

import java.util.List;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.lettering.Lettering;
import packetwright.drawing.sheet.Area;
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

  /** The least area that holds all ink of some marks. */
  static Area extent(List<Mark> marks) {
    Extent extent = new Extent();
    marks.forEach(mark -> mark.paint(extent));
    return extent.area;
  }

  /** Grows with what is painted. */
  private static final class Extent implements Painter {
    private Area area =
        new Area(Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE);

    @Override
    public void stroke(Outline path, Pen pen) {
      add(path, pen.width() / 2);
    }

    @Override
    public void fill(Outline path, double grey) {
      add(path, 0);
    }

    @Override
    public void text(double x, double y, double angle, double size, Face face, String text) {
      add(x, y - Lettering.capHeight(face, size), 0);
      add(x + Lettering.width(face, size, text), y + size * 0.22, 0);
    }

    private void add(Outline path, double half) {
      for (Outline.Segment segment : path.segments()) {
        for (int i = 0; i < segment.xy().size(); i += 2) {
          add(segment.xy().get(i), segment.xy().get(i + 1), half);
        }
      }
    }

    private void add(double x, double y, double half) {
      area =
          new Area(
              Math.min(area.left(), x - half),
              Math.min(area.top(), y - half),
              Math.max(area.right(), x + half),
              Math.max(area.bottom(), y + half));
    }
  }
}
