package packetwright.drawing.figure;

import java.util.List;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Fill;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Stroke;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.workpiece.Layout;
import packetwright.wood.workpiece.Layout.Section;

/** What the marks of layout drawings mean; of those only that are drawn. */
final class LayoutKey {
  /** From one line of entries to the next. */
  static final double ROW = 16;

  private static final double GAP = 16;

  private final List<Mark> marks;
  private final Words words;
  private final double left;
  private final double right;
  private double x;
  private double y;

  private LayoutKey(List<Mark> marks, Words words, double left, double right) {
    this.marks = marks;
    this.words = words;
    this.left = left;
    this.right = right;
    this.x = left;
  }

  /** Adds the key; answers the y of its last line. */
  static double add(List<Mark> marks, Shown shown, Area area, Rule rule, Words words) {
    LayoutKey key = new LayoutKey(marks, words, area.left, area.right);
    key.y = area.y;
    key.addAll(shown, rule);
    return key.y;
  }

  /** The widest kerf of all cuts. */
  static Length kerf(List<Layout> layouts) {
    return sections(layouts).stream().map(Section::kerf).max(Length::compareTo).orElse(Length.ZERO);
  }

  private static List<Section> sections(List<Layout> layouts) {
    return layouts.stream().flatMap(layout -> layout.sections().stream()).toList();
  }

  /**
   * What is drawn.
   *
   * @param layouts all of them
   * @param isKerfWider whether a kerf is drawn wider than it is
   * @param hasZones whether what is cut later is dashed
   */
  record Shown(List<Layout> layouts, boolean isKerfWider, boolean hasZones) {
    /** Keeps its own copy. */
    Shown {
      layouts = List.copyOf(layouts);
    }
  }

  /** Where the key stands, in points: between two places across, from a line down. */
  record Area(double left, double right, double y) {}

  private void addAll(Shown shown, Rule rule) {
    List<Section> sections = sections(shown.layouts);
    Inscription cut = plain(words.plain("sheet.layout.cut"));
    begin(10, cut);
    marks.add(Stroke.of(Line.VISIBLE, x + 3, y - 7, x + 3, y + 7));
    end(10, cut);
    if (sections.stream().anyMatch(Section::fitted)) {
      Inscription fitted = plain(words.plain("sheet.layout.cut_fitted"));
      begin(10, fitted);
      marks.add(Stroke.of(Line.FITTED, x + 3, y - 7, x + 3, y + 7));
      end(10, fitted);
    }
    Length widest = kerf(shown.layouts);
    if (widest.signum() > 0) {
      Phrase phrase =
          shown.isKerfWider
              ? words.say("sheet.layout.kerf_key.wider", rule.printExactly(widest))
              : words.say("sheet.layout.kerf_key", rule.printExactly(widest));
      Inscription kerf = Inscription.of(Face.REGULAR, phrase);
      begin(12, kerf);
      marks.add(new Fill(Outline.rectangle(x, y - 5, x + 7, y + 5), LayoutSheet.KERF_GREY));
      end(12, kerf);
    }
    Inscription edge = plain(words.plain("sheet.bottom_edge"));
    begin(15, edge);
    marks.add(Stroke.of(Line.FINE, Outline.polyline(x, y + 4, x + 5, y - 4, x + 10, y + 4)));
    end(15, edge);
    if (sections.stream().anyMatch(s -> s.letter().isEmpty())) {
      Inscription waste = plain(words.plain("sheet.layout.waste_key"));
      begin(17, waste);
      marks.add(Stroke.of(Line.FINE, x, y - 5, x + 12, y + 5));
      marks.add(Stroke.of(Line.FINE, x, y + 5, x + 12, y - 5));
      end(17, waste);
    }
    if (shown.hasZones) {
      Inscription zone = plain(words.plain("sheet.layout.zone"));
      begin(22, zone);
      marks.add(Stroke.of(Line.HIDDEN, x, y, x + 17, y));
      end(22, zone);
    }
  }

  private static Inscription plain(String text) {
    return Inscription.of(Face.REGULAR, text);
  }

  /** Goes to the next line where an entry does not fit any more. */
  private void begin(double sign, Inscription text) {
    if (x > left && x + sign + text.width(Inscription.LEAST_SIZE) > right) {
      x = left;
      y += ROW;
    }
  }

  private void end(double sign, Inscription text) {
    marks.add(Label.right(x + sign, y, Inscription.LEAST_SIZE, text));
    x += sign + text.width(Inscription.LEAST_SIZE) + GAP;
  }
}
