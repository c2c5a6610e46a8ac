package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.lettering.Face;
import packetwright.text.measure.Rule;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;

/** The strip under a part drawing: which part, how many, of what, how large, at which scale. */
final class TitleStrip {
  /** In points. */
  static final double HEIGHT = 40;

  private static final double CAPTION = Inscription.LEAST_SIZE;
  private static final double VALUE = 10;
  private static final double LETTER_BOX = 40;
  private static final double SYMBOL_BOX = 58;
  private static final double SCALE_BOX = 74;

  private final Part part;
  private final Rule rule;
  private final Words words;

  TitleStrip(Part part, Rule rule, Words words) {
    this.part = part;
    this.rule = rule;
    this.words = words;
  }

  /** Its marks, at the foot of a sheet. */
  List<Mark> marks(double width, double height, Phrase material, PartScale scale) {
    double top = height - HEIGHT;
    double inset = Line.THICK / 2;
    List<Mark> marks = new ArrayList<>();
    marks.add(
        Stroke.of(Line.VISIBLE, Outline.rectangle(inset, top, width - inset, height - inset)));
    marks.add(
        Label.centred(
            LETTER_BOX / 2, top + HEIGHT / 2, 24, Inscription.of(Face.BOLD, part.letter())));
    double right = width - SYMBOL_BOX;
    double scaleLeft = right - SCALE_BOX;
    double nameWidth = (scaleLeft - LETTER_BOX) * 0.29;
    double materialWidth = (scaleLeft - LETTER_BOX) * 0.29;
    double sizeLeft = LETTER_BOX + nameWidth + materialWidth;
    cell(
        marks,
        LETTER_BOX,
        top,
        words.counted("sheet.make", part.count()),
        Phrase.of(PartWords.name(part)));
    cell(marks, LETTER_BOX + nameWidth, top, words.say("sheet.material"), material);
    cell(marks, sizeLeft, top, words.say("sheet.finished_size"), size());
    cell(marks, scaleLeft, top, words.say("sheet.scale"), scale.phrase(rule.unit(), words));
    marks.add(Stroke.of(Line.FINE, right, top, right, height - inset));
    marks.addAll(thirdAngle(right + SYMBOL_BOX / 2, top + HEIGHT / 2 - 1));
    return marks;
  }

  private void cell(List<Mark> marks, double x, double top, Phrase caption, Phrase value) {
    marks.add(Stroke.of(Line.FINE, x, top, x, top + HEIGHT - Line.THICK / 2));
    marks.add(new Label(x + 6, top + 12, CAPTION, Inscription.of(Face.REGULAR, caption)));
    Inscription text = Inscription.of(Face.BOLD, value);
    marks.add(Label.right(x + 6, top + 26, VALUE, text));
  }

  private Phrase size() {
    return words.say(
        "sheet.size",
        rule.print(part.solid().length()),
        rule.print(part.solid().width()),
        rule.print(part.solid().thickness()));
  }

  /** A cone cut off, seen from its small end and from the side: ISO 5456-2, third angle. */
  private static List<Mark> thirdAngle(double x, double y) {
    double large = 9;
    double small = 4.5;
    double eye = x - 12;
    double from = x + 4;
    double to = x + 20;
    return List.of(
        Stroke.of(Line.FINE, Outline.circle(eye, y, large)),
        Stroke.of(Line.FINE, Outline.circle(eye, y, small)),
        Stroke.of(
            Line.FINE,
            Outline.polygon(from, y - small, to, y - large, to, y + large, from, y + small)),
        Stroke.of(Line.CENTRE, eye - large - 3, y, to + 3, y),
        Stroke.of(Line.CENTRE, eye, y - large - 3, eye, y + large + 3));
  }
}
