package packetwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.part.PartSheet;
import packetwright.drawing.sheet.Fill;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.RunningDimensions;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.Stroke;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.words.Words;
import packetwright.wood.workpiece.Layout;
import packetwright.wood.workpiece.Layout.Section;

/**
 * A blank as it is laid out: every part's length from the squared end, the cut lines, the kerf on
 * the waste side of each, the waste crossed out.
 */
public final class LayoutSheet {
  private static final double WIDTH = PartSheet.WIDTH;
  private static final double MARGIN = 12;
  private static final double ABOVE = 22;
  private static final double ROW = 20;

  /** A kerf is drawn no narrower, so that it can be seen. */
  private static final double LEAST_KERF = 3.5;

  /** Side of the mark of the squared end. */
  private static final double SQUARE = 7;

  /** A narrow board is drawn wider than it is, so that its letters can be read. */
  private static final double LEAST_HEIGHT = 26;

  private final Layout layout;
  private final Rule rule;
  private final Words words;
  private final double scale;
  private final double top = ABOVE;
  private final double bottom;
  private final List<Mark> marks = new ArrayList<>();

  private LayoutSheet(Layout layout, Rule rule, Words words) {
    this.layout = layout;
    this.rule = rule;
    this.words = words;
    this.scale = (WIDTH - 2 * MARGIN) / layout.length().inches().approximate();
    this.bottom = top + Math.max(LEAST_HEIGHT, layout.width().inches().approximate() * scale);
  }

  /** Draws the whole blank across the page. */
  public static Sheet draw(Layout layout, Rule rule, Words words) {
    return new LayoutSheet(layout, rule, words).draw();
  }

  private Sheet draw() {
    layout.sections().forEach(this::fillKerf);
    layout.sections().forEach(this::drawSection);
    marks.add(Stroke.of(Line.VISIBLE, Outline.rectangle(x(Length.ZERO), top, right(), bottom)));
    drawReferences();
    double key = bottom + RunningDimensions.add(marks, running(), bottom, WIDTH) * ROW + 22;
    drawKey(key);
    return new Sheet(
        "layout-" + layout.blank().replace('_', '-'), WIDTH, key + 12, describe(), marks);
  }

  private double right() {
    return x(layout.length());
  }

  private double x(Length at) {
    return MARGIN + at.inches().approximate() * scale;
  }

  private void fillKerf(Section section) {
    if (section.kerf().signum() > 0) {
      double from = x(section.end());
      double wide = Math.max(LEAST_KERF, section.kerf().inches().approximate() * scale);
      marks.add(
          new Fill(Outline.rectangle(from, top, Math.min(right(), from + wide), bottom), 0.62));
    }
  }

  private void drawSection(Section section) {
    double from = x(section.start());
    double to = x(section.end());
    if (section.letter().isEmpty()) {
      double left = Math.max(from, MARGIN + 1);
      marks.add(Stroke.of(Line.FINE, left + 4, top + 4, to - 4, bottom - 4));
      marks.add(Stroke.of(Line.FINE, left + 4, bottom - 4, to - 4, top + 4));
    } else {
      letter(section, from, to);
    }
    boolean isBoardEnd = section.end().equals(layout.length());
    if (!isBoardEnd) {
      Line line = section.fitted() ? Line.FITTED : Line.VISIBLE;
      marks.add(Stroke.of(line, to, top - 5, to, bottom + 5));
    }
  }

  private void letter(Section section, double from, double to) {
    double centre = (from + to + LEAST_KERF) / 2;
    Inscription letter = Inscription.of(Face.BOLD, section.letter());
    double room = to - from - LEAST_KERF - 4;
    double size = Math.max(Inscription.LEAST_SIZE, Math.min(16, 16 * room / letter.width(16)));
    double height = (top + bottom) / 2;
    if (meetsSquare(centre, letter.width(size))) {
      double above = height + 2 - top - SQUARE;
      size = Math.min(size, Math.max(Inscription.LEAST_SIZE, above));
    }
    Inscription piece = Inscription.of(Face.REGULAR, section.piece().replace('_', ' '));
    double width = piece.width(Inscription.LEAST_SIZE);
    boolean isOverSquare = meetsSquare(centre, width) && height + 14 > bottom - SQUARE - 2;
    boolean hasRoom = bottom - top > 34 && width < room && !isOverSquare;
    marks.add(Label.centred(centre, hasRoom ? height - 6 : height, size, letter));
    if (hasRoom) {
      marks.add(Label.centred(centre, height + 10, Inscription.LEAST_SIZE, piece));
    }
  }

  /** Whether a text stands over the mark of the squared end. */
  private static boolean meetsSquare(double centre, double width) {
    return centre - width / 2 < MARGIN + SQUARE + 3;
  }

  /** The squared end, the face mark and the mark of the edge that all is measured from. */
  private void drawReferences() {
    double left = MARGIN;
    marks.add(
        Stroke.of(
            Line.FINE,
            Outline.polyline(
                left, bottom - SQUARE, left + SQUARE, bottom - SQUARE, left + SQUARE, bottom)));
    marks.add(
        new Label(
            left,
            top - 9,
            Inscription.LEAST_SIZE,
            Inscription.of(Face.ITALIC, words.plain("sheet.layout.squared_end"))));
    Inscription face = Inscription.of(Face.ITALIC, words.plain("sheet.inside_face"));
    double width = face.width(Inscription.LEAST_SIZE);
    marks.add(new Label(right() - width, top - 9, Inscription.LEAST_SIZE, face));
    marks.add(
        Stroke.of(
            Line.FINE,
            Outline.polyline(left + 15, bottom + 9, left + 20, bottom + 1, left + 25, bottom + 9)));
  }

  private List<RunningDimensions.Entry> running() {
    List<RunningDimensions.Entry> entries = new ArrayList<>();
    for (Section section : layout.sections()) {
      if (section.start().signum() > 0) {
        entries.add(entry(section.start(), true));
      }
      entries.add(entry(section.end(), false));
    }
    return entries;
  }

  private RunningDimensions.Entry entry(Length at, boolean isRight) {
    double drawn = x(at);
    // A start lies beyond the kerf as drawn, which may be wider than it is.
    for (Section section : layout.sections()) {
      if (isRight && section.end().plus(section.kerf()).equals(at)) {
        drawn = Math.max(drawn, x(section.end()) + LEAST_KERF);
      }
    }
    return new RunningDimensions.Entry(
        drawn, isRight, Inscription.of(Face.REGULAR, rule.print(at)));
  }

  private void drawKey(double y) {
    double x = MARGIN;
    Length kerf = kerf();
    x = key(x, y, new KeyLine(Line.VISIBLE, false), "sheet.layout.cut", null);
    if (layout.sections().stream().anyMatch(Section::fitted)) {
      x = key(x, y, new KeyLine(Line.FITTED, false), "sheet.layout.cut_fitted", null);
    }
    if (kerf.signum() > 0) {
      x = key(x, y, new KeyLine(Line.FINE, true), "sheet.layout.kerf_key", kerf);
    }
    marks.add(Stroke.of(Line.FINE, Outline.polyline(x, y + 3, x + 5, y - 5, x + 10, y + 3)));
    x = keyText(x + 15, y, Inscription.of(Face.REGULAR, words.plain("sheet.layout.face_edge")));
    if (layout.sections().stream().anyMatch(s -> s.letter().isEmpty())) {
      marks.add(Stroke.of(Line.FINE, x, y - 5, x + 12, y + 5));
      marks.add(Stroke.of(Line.FINE, x, y + 5, x + 12, y - 5));
      keyText(x + 17, y, Inscription.of(Face.REGULAR, words.plain("sheet.layout.waste_key")));
    }
  }

  /** Answers where the next entry begins. */
  private double keyText(double x, double y, Inscription text) {
    marks.add(Label.right(x, y, Inscription.LEAST_SIZE, text));
    return x + text.width(Inscription.LEAST_SIZE) + 16;
  }

  private double key(double x, double y, KeyLine line, String key, @Nullable Length value) {
    if (line.isBand) {
      marks.add(new Fill(Outline.rectangle(x, y - 5, x + 7, y + 5), 0.62));
    } else {
      marks.add(Stroke.of(line.line, x + 3, y - 7, x + 3, y + 7));
    }
    Inscription text =
        Inscription.of(
            Face.REGULAR,
            value == null ? words.say(key) : words.say(key, rule.printExactly(value)));
    return keyText(x + 12, y, text);
  }

  /** The kerf of the cuts; where they differ, the widest. */
  private Length kerf() {
    return layout.sections().stream().map(Section::kerf).max(Length::compareTo).orElse(Length.ZERO);
  }

  private String describe() {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        words.plain(
            "sheet.layout",
            layout.blank().replace('_', ' '),
            words.aloud(rule.print(layout.length())),
            words.aloud(rule.print(layout.width()))));
    for (Section section : layout.sections()) {
      String start = words.aloud(rule.print(section.start()));
      String end = words.aloud(rule.print(section.end()));
      String piece = section.piece().replace('_', ' ');
      sentences.add(
          section.letter().isEmpty()
              ? words.plain("sheet.layout.waste", start, end)
              : section.fitted()
                  ? words.plain("sheet.layout.fitted", section.letter(), piece, start, end)
                  : words.plain("sheet.layout.section", section.letter(), piece, start, end));
    }
    if (kerf().signum() > 0) {
      sentences.add(words.plain("sheet.layout.kerf", words.aloud(rule.printExactly(kerf()))));
    }
    return String.join(" ", sentences);
  }

  private record KeyLine(Line line, boolean isBand) {}
}
