package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Scale;
import packetwright.drawing.sheet.Stroke;
import packetwright.text.measure.Length;
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
  private static final double PADDING = 6;

  private final Part part;
  private final Rule rule;
  private final Words words;

  private final Arrangement arrangement;

  TitleStrip(Part part, PartSheet.Style style) {
    this.part = part;
    this.rule = style.rule();
    this.words = style.words();
    this.arrangement = style.arrangement();
  }

  /**
   * What a part does not say of itself.
   *
   * @param material as it is printed
   * @param sheet from 1
   * @param sheets how many there are
   */
  record Entry(Phrase material, int sheet, int sheets) {}

  /** Its marks, at the foot of a sheet. */
  List<Mark> marks(double width, double height, Entry entry, Scale scale) {
    double top = height - HEIGHT;
    double inset = Line.THICK / 2;
    List<Mark> marks = new ArrayList<>();
    marks.add(
        Stroke.of(Line.VISIBLE, Outline.rectangle(inset, top, width - inset, height - inset)));
    marks.add(
        Label.centred(
            LETTER_BOX / 2, top + HEIGHT / 2, 24, Inscription.of(Face.BOLD, part.letter())));
    double right = width - SYMBOL_BOX;
    List<Cell> cells =
        List.of(
            cell(make(), Phrase.of(PartWords.name(part))),
            cell(words.say("sheet.material"), entry.material),
            new Cell(
                Inscription.of(Face.REGULAR, words.say("sheet.finished_size", unit())), size()),
            cell(words.say("sheet.scale"), scale.phrase(rule.unit(), words)),
            cell(
                words.say("sheet.sheet"),
                words.say("sheet.sheet.of", (long) entry.sheet, (long) entry.sheets)));
    marks.addAll(row(cells, right, top));
    marks.add(Stroke.of(Line.FINE, right, top, right, height - inset));
    marks.addAll(symbol(right + SYMBOL_BOX / 2, top + HEIGHT / 2 - 1));
    return marks;
  }

  private Phrase make() {
    return part.isPair()
        ? words.say("sheet.make.pair", (long) part.count(), (long) part.count() / 2)
        : words.counted("sheet.make", part.count());
  }

  /** Cells side by side, the room that is left shared out among them. */
  private static List<Mark> row(List<Cell> cells, double right, double top) {
    double size = VALUE;
    double needed = needed(cells, size);
    if (needed > right - LETTER_BOX) {
      size = Inscription.LEAST_SIZE;
      needed = needed(cells, size);
    }
    double spare = (right - LETTER_BOX - needed) / cells.size();
    List<Mark> marks = new ArrayList<>();
    double x = LETTER_BOX;
    for (Cell cell : cells) {
      marks.add(Stroke.of(Line.FINE, x, top, x, top + HEIGHT - Line.THICK / 2));
      marks.add(new Label(x + PADDING, top + 12, CAPTION, cell.caption));
      marks.add(Label.right(x + PADDING, top + 26, size, cell.value));
      x += cell.width(size) + spare;
    }
    return marks;
  }

  private static double needed(List<Cell> cells, double size) {
    return cells.stream().mapToDouble(c -> c.width(size)).sum();
  }

  private static Cell cell(Phrase caption, Phrase value) {
    return new Cell(Inscription.of(Face.REGULAR, caption), Inscription.of(Face.BOLD, value));
  }

  private record Cell(Inscription caption, Inscription value) {
    double width(double size) {
      return Math.max(caption.width(CAPTION), value.width(size)) + 2 * PADDING;
    }
  }

  private String unit() {
    return rule.unit().symbol();
  }

  private Inscription size() {
    Inscription times = Inscription.of(Face.BOLD, " × ");
    return number(part.solid().length())
        .then(times)
        .then(number(part.solid().width()))
        .then(times)
        .then(number(part.solid().thickness()));
  }

  private Inscription number(Length length) {
    return Inscription.of(Face.BOLD, rule.print(length));
  }

  /**
   * A cone cut off, seen from its small end and from the side: ISO 5456-2. The end stands at the
   * side that it is seen from in third angle, at the other in first angle.
   */
  private List<Mark> symbol(double x, double y) {
    boolean isThird = arrangement == Arrangement.THIRD_ANGLE;
    double large = 9;
    double small = 4.5;
    double eye = isThird ? x - 12 : x + 12;
    double from = isThird ? x + 4 : x - 20;
    double to = from + 16;
    return List.of(
        Stroke.of(Line.FINE, Outline.circle(eye, y, large)),
        Stroke.of(Line.FINE, Outline.circle(eye, y, small)),
        Stroke.of(
            Line.FINE,
            Outline.polygon(from, y - small, to, y - large, to, y + large, from, y + small)),
        Stroke.of(
            Line.CENTRE, Math.min(eye - large, from) - 3, y, Math.max(eye + large, to) + 3, y),
        Stroke.of(Line.CENTRE, eye, y - large - 3, eye, y + large + 3));
  }
}
