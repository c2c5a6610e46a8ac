package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter.Pen;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.Stroke;
import packetwright.text.measure.Unit;
import packetwright.text.words.Words;

/** Strips and signs that a page needs at a fixed size on paper. */
final class TrueScale {
  private static final double INCH = 72;
  private static final double CENTIMETRE = 72 / 2.54;
  private static final Pen THIN = new Pen(0.6, List.of(), 0);
  private static final Pen THICK = new Pen(1.4, List.of(), 0);

  private TrueScale() {}

  /** A bar of 6 in or 150 mm between two end marks; the sheet's ends are the bar's. */
  static Sheet bar(Unit unit, Words words) {
    boolean inches = unit == Unit.INCH;
    double length = inches ? 6 * INCH : 15 * CENTIMETRE;
    String text = words.plain(inches ? "packet.bar.inch" : "packet.bar.metric");
    Inscription inscription = Inscription.of(Face.BOLD, text);
    double half = inscription.width(10) / 2 + 8;
    return new Sheet(
        "check-bar",
        length,
        20,
        words.plain("packet.bar.alternative", text),
        List.of(
            new Stroke(Outline.line(0, 0, 0, 20), THICK),
            new Stroke(Outline.line(length, 0, length, 20), THICK),
            new Stroke(Outline.line(0, 10, length / 2 - half, 10), THICK),
            new Stroke(Outline.line(length / 2 + half, 10, length, 10), THICK),
            Label.centred(length / 2, 10, 10, inscription)));
  }

  /** A strip of rule, 7 in or 18 cm long, that decorates the cover and is true nonetheless. */
  static Sheet strip(Unit unit, Words words) {
    boolean inches = unit == Unit.INCH;
    int units = inches ? 7 : 18;
    int parts = inches ? 16 : 10;
    double one = inches ? INCH : CENTIMETRE;
    double length = units * one;
    List<Mark> marks = new ArrayList<>();
    marks.add(new Stroke(Outline.line(0, 0, length, 0), THICK));
    for (int i = 0; i <= units * parts; i++) {
      double x = i * one / parts;
      marks.add(new Stroke(Outline.line(x, 0, x, tick(i, parts)), i % parts == 0 ? THICK : THIN));
    }
    return new Sheet(
        "scale-strip",
        length,
        24,
        words.plain(inches ? "packet.strip.inch" : "packet.strip.metric"),
        marks);
  }

  private static double tick(int i, int parts) {
    double length = 24;
    for (int step = parts; step > 1; step /= 2) {
      if (i % step == 0) {
        return length;
      }
      length *= 0.66;
    }
    return length;
  }
}
