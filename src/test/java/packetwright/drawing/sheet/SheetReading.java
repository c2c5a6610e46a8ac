package packetwright.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.lettering.Lettering;

/** What a sheet paints, taken down to be checked. */
public final class SheetReading implements Painter {
  /** A straight stroke and half its pen. */
  public record Straight(double x1, double y1, double x2, double y2, Pen pen) {}

  /** A run of text and the area of its ink. */
  public record Ink(String text, double size, Area area) {}

  public final List<Straight> lines = new ArrayList<>();
  public final List<Ink> inks = new ArrayList<>();

  public static SheetReading of(Sheet sheet) {
    SheetReading reading = new SheetReading();
    sheet.paint(reading);
    return reading;
  }

  @Override
  public void stroke(Outline path, Pen pen) {
    add(path, pen);
  }

  @Override
  public void fill(Outline path, double grey) {
    if (grey < 0.5) {
      add(path, new Pen(0, List.of(), 0));
    }
  }

  @Override
  public void text(double x, double y, double angle, double size, Face face, String text) {
    assertThat(angle).as("texts stand level").isZero();
    assertThat(Lettering.covers(face, text)).as("glyphs of %s", text).isTrue();
    double below = text.matches(".*[gjpqyQ,;()].*") ? size * 0.22 : 0;
    inks.add(
        new Ink(
            text,
            size,
            new Area(
                x,
                y - Lettering.capHeight(face, size),
                x + Lettering.width(face, size, text.stripTrailing()),
                y + below)));
  }

  private void add(Outline path, Pen pen) {
    double startX = 0;
    double startY = 0;
    double x = 0;
    double y = 0;
    for (Outline.Segment segment : path.segments()) {
      List<Double> p = segment.xy();
      double endX = segment.kind() == 'Z' ? startX : p.get(p.size() - 2);
      double endY = segment.kind() == 'Z' ? startY : p.get(p.size() - 1);
      switch (segment.kind()) {
        case 'M' -> {
          startX = endX;
          startY = endY;
        }
        case 'C' -> addCurve(x, y, p, pen);
        default -> lines.add(new Straight(x, y, endX, endY, pen));
      }
      x = endX;
      y = endY;
    }
  }

  private void addCurve(double x, double y, List<Double> p, Pen pen) {
    double beforeX = x;
    double beforeY = y;
    for (int i = 1; i <= 8; i++) {
      double t = i / 8.0;
      double nextX = bezier(x, p.get(0), p.get(2), p.get(4), t);
      double nextY = bezier(y, p.get(1), p.get(3), p.get(5), t);
      lines.add(new Straight(beforeX, beforeY, nextX, nextY, pen));
      beforeX = nextX;
      beforeY = nextY;
    }
  }

  private static double bezier(double a, double b, double c, double d, double t) {
    double s = 1 - t;
    return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
  }

  /** Fails where a text touches another, crosses a line, leaves the sheet or is too small. */
  public void assertLegible(Sheet sheet) {
    Area paper = new Area(0, 0, sheet.width(), sheet.height());
    for (int i = 0; i < inks.size(); i++) {
      Ink ink = inks.get(i);
      assertThat(ink.size()).as("size of %s", ink).isGreaterThanOrEqualTo(8);
      assertThat(ink.area().isWithin(paper)).as("%s on the sheet", ink).isTrue();
      for (Ink other : inks.subList(0, i)) {
        // Runs of one text meet; where they were moved, sums of the same numbers differ a little.
        assertThat(ink.area().grown(-1e-9).overlaps(other.area()))
            .as("%s: %s and %s", sheet.alternative(), ink, other)
            .isFalse();
      }
      for (Straight line : lines) {
        Area ring = ink.area().grown(line.pen.width() / 2);
        assertThat(ring.isCrossedBy(line.x1, line.y1, line.x2, line.y2))
            .as("%s: %s and %s", sheet.alternative(), ink, line)
            .isFalse();
      }
    }
    for (Straight line : lines) {
      Area extent =
          new Area(
              Math.min(line.x1, line.x2),
              Math.min(line.y1, line.y2),
              Math.max(line.x1, line.x2),
              Math.max(line.y1, line.y2));
      assertThat(extent.isWithin(paper)).as("%s on the sheet", line).isTrue();
    }
  }
}
