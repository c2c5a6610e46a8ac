package packetwright.drawing.sheet;

import java.util.List;

/**
 * Line types of technical drawings. Two weights, thick 0.6 mm and thin 0.3 mm, and the dash
 * patterns after ASME Y14.2, section 4 (from memory), shortened for small views.
 */
public enum Line {
  VISIBLE(Line.THICK),
  HIDDEN(Line.THIN, 4.0, 1.8),
  CENTRE(Line.THIN, 12.0, 2.0, 2.5, 2.0),
  /** From a piece drawn away to its place. */
  EXPLOSION(Line.THIN, 9.0, 2.0, 2.5, 2.0),
  DIMENSION(Line.THIN),
  EXTENSION(Line.THIN),
  LEADER(Line.THIN),
  HATCH(0.5),
  /** The ends of a cutting plane. */
  CUTTING(Line.THICK),
  /** Where a length is left out. */
  BREAK(Line.THIN),
  /** A cut to be made later, at a measured size. */
  FITTED(1.2, 6.0, 3.0),
  /** An inner edge of a pictorial drawing, the bar of a fraction, a frame. */
  FINE(Line.THIN);

  /** 0.6 mm in points. */
  public static final double THICK = 0.6 * 72 / 25.4;

  /** 0.3 mm in points. */
  public static final double THIN = 0.3 * 72 / 25.4;

  /** How far a centre line goes beyond what it belongs to: 1/4 in. */
  public static final double CENTRE_PAST = 18;

  private final Painter.Pen pen;

  Line(double width, Double... dash) {
    pen = new Painter.Pen(width, List.of(dash), 0);
  }

  /** How it looks. */
  public Painter.Pen pen() {
    return pen;
  }
}
