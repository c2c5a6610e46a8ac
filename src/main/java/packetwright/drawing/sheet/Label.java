package packetwright.drawing.sheet;

import packetwright.drawing.lettering.Face;
import packetwright.drawing.lettering.Lettering;

/**
 * A line of text on a sheet.
 *
 * @param x left end, in points
 * @param y baseline
 * @param size in points, 8 or more
 * @param text what it says
 */
public record Label(double x, double y, double size, Inscription text) implements Mark {
  /** Refuses what nobody can read. */
  public Label {
    if (size < Inscription.LEAST_SIZE) {
      throw new IllegalArgumentException("lettering of " + size + " points");
    }
  }

  /** Text centred on a point, both ways. */
  public static Label centred(double x, double y, double size, Inscription text) {
    double cap = Lettering.capHeight(Face.REGULAR, size);
    return new Label(x - text.width(size) / 2, y + cap / 2, size, text);
  }

  /** Text whose left end and middle are given. */
  public static Label right(double x, double y, double size, Inscription text) {
    return new Label(x, y + Lettering.capHeight(Face.REGULAR, size) / 2, size, text);
  }

  /** The area that its ink fills. */
  public Area area() {
    return new Area(x, y - text.above(size), x + text.width(size), y + text.below(size));
  }

  @Override
  public void paint(Painter painter) {
    text.paint(painter, x, y, size);
  }
}
