package packetwright.drawing.sheet;

/**
 * A drawn line.
 *
 * @param path where
 * @param pen how it looks
 */
public record Stroke(Outline path, Painter.Pen pen) implements Mark {
  /** A straight line of a type. */
  public static Stroke of(Line line, double x1, double y1, double x2, double y2) {
    return new Stroke(Outline.line(x1, y1, x2, y2), line.pen());
  }

  /** A path of a type. */
  public static Stroke of(Line line, Outline path) {
    return new Stroke(path, line.pen());
  }

  @Override
  public void paint(Painter painter) {
    painter.stroke(path, pen);
  }
}
