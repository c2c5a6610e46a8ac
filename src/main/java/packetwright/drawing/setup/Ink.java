package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.lettering.Lettering;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter;

/**
 * Where marks leave ink: how far they reach, and whether two lots of them get in each other's way.
 */
final class Ink implements Painter {
  private static final double CLEAR = 1.5;

  private final List<double[]> lines = new ArrayList<>();
  private final List<Area> texts = new ArrayList<>();
  private Area extent =
      new Area(Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE);

  static Ink of(List<Mark> marks) {
    Ink ink = new Ink();
    marks.forEach(mark -> mark.paint(ink));
    return ink;
  }

  /** The least area that holds all of it. */
  Area extent() {
    return extent;
  }

  /** Whether a text of one meets a text or a line of the other. */
  boolean clashes(Ink other) {
    return hides(other) || other.hides(this);
  }

  private boolean hides(Ink other) {
    return texts.stream()
        .map(text -> text.grown(CLEAR))
        .anyMatch(
            text ->
                other.texts.stream().anyMatch(text::overlaps)
                    || other.lines.stream()
                        .anyMatch(l -> text.isCrossedBy(l[0], l[1], l[2], l[3])));
  }

  @Override
  public void stroke(Outline path, Pen pen) {
    add(path, pen.width() / 2, true);
  }

  @Override
  public void fill(Outline path, double grey) {
    add(path, 0, grey < 0.5);
  }

  @Override
  public void text(double x, double y, double angle, double size, Face face, String text) {
    Area area =
        new Area(
            x,
            y - Lettering.capHeight(face, size),
            x + Lettering.width(face, size, text),
            y + size * 0.22);
    texts.add(area);
    reach(area.left(), area.top(), 0);
    reach(area.right(), area.bottom(), 0);
  }

  private void add(Outline path, double half, boolean isLine) {
    double x = 0;
    double y = 0;
    for (Outline.Segment segment : path.segments()) {
      List<Double> xy = segment.xy();
      for (int i = 0; i < xy.size(); i += 2) {
        reach(xy.get(i), xy.get(i + 1), half);
      }
      if (!xy.isEmpty()) {
        double nextX = xy.get(xy.size() - 2);
        double nextY = xy.get(xy.size() - 1);
        if (isLine && segment.kind() != 'M') {
          lines.add(new double[] {x, y, nextX, nextY});
        }
        x = nextX;
        y = nextY;
      }
    }
  }

  private void reach(double x, double y, double half) {
    extent =
        new Area(
            Math.min(extent.left(), x - half),
            Math.min(extent.top(), y - half),
            Math.max(extent.right(), x + half),
            Math.max(extent.bottom(), y + half));
  }
}
