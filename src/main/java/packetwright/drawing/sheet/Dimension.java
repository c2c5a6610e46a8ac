package packetwright.drawing.sheet;

import packetwright.drawing.lettering.Face;
import packetwright.drawing.lettering.Lettering;

/**
 * A dimension: two extension lines, a dimension line with arrowheads three times as long as wide,
 * and its number, always level, in a gap of the line. All places are points on the sheet.
 *
 * @param isLevel whether the dimension line runs across the sheet rather than up it
 * @param from one end, along the dimension line
 * @param to other end, greater
 * @param line where the dimension line lies, across it
 * @param startFrom where the extension line of {@code from} begins, across the dimension line
 * @param startTo where the extension line of {@code to} begins
 * @param arrows whether the arrowheads stand between the extension lines or outside
 * @param middle of the number, along the dimension line
 * @param text the number
 */
public record Dimension(
    boolean isLevel,
    double from,
    double to,
    double line,
    double startFrom,
    double startTo,
    Arrows arrows,
    double middle,
    Inscription text)
    implements Mark {
  /** Of its number, in points. */
  public static final double SIZE = 9;

  /** Length of an arrowhead, in points. */
  public static final double ARROW = 7.5;

  static final double TAIL = 5;
  static final double TEXT_GAP = 2.5;

  /** 1/16 in, in points; what an extension line leaves free at the outline, and goes on beyond. */
  private static final double START_GAP = 4.5;

  private static final double OVERSHOOT = 4.5;

  /** Where arrowheads stand. */
  public enum Arrows {
    INSIDE,
    OUTSIDE
  }

  /** Room that a number takes along a dimension line. */
  static double along(boolean isLevel, Inscription text) {
    return isLevel ? text.width(SIZE) : text.above(SIZE) + text.below(SIZE);
  }

  /** Room that a number takes across a dimension line. */
  static double across(boolean isLevel, Inscription text) {
    return along(!isLevel, text);
  }

  @Override
  public void paint(Painter painter) {
    extension(painter, from, startFrom);
    extension(painter, to, startTo);
    double half = along(isLevel, text) / 2 + TEXT_GAP;
    boolean isBetween = middle > from && middle < to;
    if (arrows == Arrows.INSIDE) {
      arrow(painter, from, from + ARROW);
      arrow(painter, to, to - ARROW);
      line(painter, from, isBetween ? middle - half : to);
      line(painter, isBetween ? middle + half : to, to);
    } else {
      arrow(painter, from, from - ARROW);
      arrow(painter, to, to + ARROW);
      line(painter, middle < from ? middle + half : from - ARROW - TAIL, from);
      line(painter, to, middle > to ? middle - half : to + ARROW + TAIL);
    }
    number().paint(painter);
  }

  private Label number() {
    double x = isLevel ? middle : line;
    double y = isLevel ? line : middle;
    Label label = Label.centred(x, y, SIZE, text);
    // A stack reaches as far above the middle of the line as below; tails of letters do not.
    return label;
  }

  private void extension(Painter painter, double at, double start) {
    double outward = Math.signum(line - start);
    line(painter, at, start + outward * START_GAP, line + outward * OVERSHOOT);
  }

  private void line(Painter painter, double begin, double end) {
    if (end - begin > 0.01) {
      painter.stroke(
          isLevel ? Outline.line(begin, line, end, line) : Outline.line(line, begin, line, end),
          Line.DIMENSION.pen());
    }
  }

  private void line(Painter painter, double at, double begin, double end) {
    painter.stroke(
        isLevel ? Outline.line(at, begin, at, end) : Outline.line(begin, at, end, at),
        Line.EXTENSION.pen());
  }

  private void arrow(Painter painter, double tip, double tail) {
    double half = ARROW / 6;
    painter.fill(
        isLevel
            ? Outline.polygon(tip, line, tail, line - half, tail, line + half)
            : Outline.polygon(line, tip, line - half, tail, line + half, tail),
        0);
  }

  /** Height of a capital in a dimension. */
  public static double capHeight() {
    return Lettering.capHeight(Face.REGULAR, SIZE);
  }
}
