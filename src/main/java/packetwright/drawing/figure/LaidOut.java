package packetwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.part.PartSheet;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Fill;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Obstacles;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.RunningDimensions;
import packetwright.drawing.sheet.Stroke;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;
import packetwright.wood.workpiece.Layout;
import packetwright.wood.workpiece.Layout.Section;

/** One blank as it is laid out. */
final class LaidOut {
  private static final double NAME = 10;
  private static final double ABOVE = 36;
  private static final double ROW = 20;
  private static final double SMALL = Inscription.LEAST_SIZE;

  /** A kerf is drawn no narrower, so that it can be seen; the key then says so. */
  private static final double LEAST_KERF = 3.5;

  /** Side of the mark of the squared end. */
  private static final double SQUARE = 7;

  /** A narrow board is drawn wider than it is, so that its letters can be read. */
  private static final double LEAST_HEIGHT = 26;

  private final Layout layout;
  private final List<Part> parts;
  private final double scale;
  private final Rule rule;
  private final Words words;
  private final List<Mark> marks = new ArrayList<>();
  private double top;
  private double bottom;
  private boolean hasZones;

  LaidOut(Layout layout, List<Part> parts, double scale, Saying saying) {
    this.layout = layout;
    this.parts = parts;
    this.scale = scale;
    this.rule = saying.rule;
    this.words = saying.words;
  }

  /** How lengths and words are printed. */
  record Saying(Rule rule, Words words) {}

  /** Draws it from a height downward; answers where it ends. */
  double draw(List<Mark> onto, double from) {
    top = from + ABOVE;
    bottom = top + Math.max(LEAST_HEIGHT, layout.width().inches().approximate() * scale);
    layout.sections().forEach(this::fillKerf);
    layout.sections().forEach(this::drawLines);
    marks.add(
        Stroke.of(
            Line.VISIBLE, Outline.rectangle(x(Length.ZERO), top, x(layout.length()), bottom)));
    drawReferences(from);
    layout.sections().forEach(this::letter);
    double end = bottom + RunningDimensions.add(marks, running(), bottom, PartSheet.WIDTH) * ROW;
    onto.addAll(marks);
    return end;
  }

  /** Whether a kerf is drawn wider than it is. */
  boolean isKerfWider() {
    return layout.sections().stream()
        .anyMatch(
            s -> s.kerf().signum() > 0 && s.kerf().inches().approximate() * scale < LEAST_KERF);
  }

  /** Whether anything that is cut later is dashed. */
  boolean hasZones() {
    return hasZones;
  }

  private double x(Length at) {
    return LayoutSheet.MARGIN + at.inches().approximate() * scale;
  }

  private void fillKerf(Section section) {
    if (section.kerf().signum() > 0) {
      double from = x(section.end());
      double wide = Math.max(LEAST_KERF, section.kerf().inches().approximate() * scale);
      double to = Math.min(x(layout.length()), from + wide);
      marks.add(new Fill(Outline.rectangle(from, top, to, bottom), LayoutSheet.KERF_GREY));
    }
  }

  private void drawLines(Section section) {
    double to = x(section.end());
    if (section.letter().isEmpty()) {
      double left = Math.max(x(section.start()), LayoutSheet.MARGIN + 1);
      marks.add(Stroke.of(Line.FINE, left + 4, top + 4, to - 4, bottom - 4));
      marks.add(Stroke.of(Line.FINE, left + 4, bottom - 4, to - 4, top + 4));
    }
    if (!section.end().equals(layout.length())) {
      Line line = section.fitted() ? Line.FITTED : Line.VISIBLE;
      marks.add(Stroke.of(line, to, top - 5, to, bottom + 5));
    }
  }

  /** The letter of a part and what is cut into it later, where both have room. */
  private void letter(Section section) {
    if (section.letter().isEmpty()) {
      return;
    }
    List<Mark> zones = zones(section);
    List<Mark> all = new ArrayList<>(marks);
    all.addAll(zones);
    Label letter = letter(section, Obstacles.of(all));
    boolean isClear = letter != null && !zones.isEmpty();
    if (isClear) {
      marks.addAll(zones);
      hasZones = true;
    }
    Label shown = letter == null ? letter(section, Obstacles.of(marks)) : letter;
    // Where nothing is free, a letter stands over the mark of the squared end.
    marks.add(
        shown == null
            ? Label.centred(
                (x(section.start()) + x(section.end()) + LEAST_KERF) / 2,
                (top + bottom) / 2 - 2,
                SMALL,
                Inscription.of(Face.BOLD, section.letter()))
            : shown);
    Inscription piece = Inscription.of(Face.REGULAR, section.piece().replace('_', ' '));
    Label named =
        shown == null
            ? null
            : Obstacles.of(marks)
                .place(piece, SMALL, inside(section), middle(section), (top + bottom) / 2 + 12);
    if (named != null) {
      marks.add(named);
    }
  }

  private @Nullable Label letter(Section section, Obstacles obstacles) {
    Inscription letter = Inscription.of(Face.BOLD, section.letter());
    Area room = inside(section);
    for (double size = Math.min(16, room.height()); size >= SMALL; size -= 2) {
      Label label = obstacles.place(letter, size, room, middle(section), (top + bottom) / 2 - 4);
      if (label != null) {
        return label;
      }
    }
    return null;
  }

  private double middle(Section section) {
    return (inside(section).left() + inside(section).right()) / 2;
  }

  /** Between the kerf of the part before and its own line. */
  private Area inside(Section section) {
    boolean isFirst = section.start().signum() == 0;
    double from = x(section.start()) + (isFirst ? 0 : LEAST_KERF);
    return new Area(from + 1, top + 1, x(section.end()) - 1, bottom - 1);
  }

  private List<Mark> zones(Section section) {
    for (Part part : parts) {
      if (part.name().equals(Part.nameOf(section.piece()))) {
        return new Zones(part.solidOf(section.piece()), scale)
            .marks(
                x(section.start()),
                bottom,
                new Area(x(section.start()), top, x(section.end()), bottom));
      }
    }
    return List.of();
  }

  /**
   * Names, the squared end, the grain, the face that is seen, the edge that all is measured from.
   */
  private void drawReferences(double from) {
    double left = LayoutSheet.MARGIN;
    marks.add(
        new Label(
            left,
            from + 13,
            NAME,
            Inscription.of(
                Face.BOLD, words.plain("sheet.layout.name", layout.blank().replace('_', ' ')))));
    marks.add(
        Stroke.of(
            Line.FINE,
            Outline.polyline(
                left, bottom - SQUARE, left + SQUARE, bottom - SQUARE, left + SQUARE, bottom)));
    marks.add(
        Stroke.of(
            Line.FINE,
            Outline.polyline(left + 15, bottom + 9, left + 20, bottom + 1, left + 25, bottom + 9)));
    double x = over(left, words.plain("sheet.layout.squared_end"));
    x = over(x, words.plain("sheet.inside_face"));
    x = over(x, words.plain("sheet.layout.grain")) - 11;
    double y = top - 12;
    marks.add(Stroke.of(Line.FINE, x, y, x + 30, y));
    marks.add(Stroke.of(Line.FINE, Outline.polyline(x + 4, y - 3, x, y, x + 4, y + 3)));
    marks.add(Stroke.of(Line.FINE, Outline.polyline(x + 26, y - 3, x + 30, y, x + 26, y + 3)));
  }

  /** Writes over the blank; answers where the next text begins. */
  private double over(double x, String text) {
    Inscription said = Inscription.of(Face.ITALIC, text);
    marks.add(new Label(x, top - 9, SMALL, said));
    return x + said.width(SMALL) + 16;
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
}
