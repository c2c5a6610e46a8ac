package packetwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.part.PartSheet;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Sheet;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;
import packetwright.wood.workpiece.Layout;
import packetwright.wood.workpiece.Layout.Section;

/**
 * Blanks as they are laid out, one below the other at one scale: every part's length from the
 * squared end, the cut lines, the kerf on the waste side of each, the waste crossed out, and dashed
 * what will be cut into each part later.
 */
public final class LayoutSheet {
  static final double KERF_GREY = 0.62;
  static final double MARGIN = 12;
  private static final double WIDTH = PartSheet.WIDTH;

  /** Between one blank and the next. */
  private static final double APART = 16;

  private final Rule rule;
  private final Words words;

  private LayoutSheet(Rule rule, Words words) {
    this.rule = rule;
    this.words = words;
  }

  /** Draws one blank across the page. */
  public static Sheet draw(Layout layout, Rule rule, Words words) {
    return drawAll(List.of(layout), List.of(), rule, words);
  }

  /**
   * Draws blanks at one scale, under one key; named after the first.
   *
   * @param layouts at least one
   * @param parts whose grooves, holes and other cuts are dashed where the part will lie
   */
  public static Sheet drawAll(List<Layout> layouts, List<Part> parts, Rule rule, Words words) {
    return new LayoutSheet(rule, words).sheet(layouts, parts);
  }

  private Sheet sheet(List<Layout> layouts, List<Part> parts) {
    double longest =
        layouts.stream().mapToDouble(l -> l.length().inches().approximate()).max().orElseThrow();
    double scale = (WIDTH - 2 * MARGIN) / longest;
    List<Mark> marks = new ArrayList<>();
    List<String> told = new ArrayList<>();
    boolean isWider = false;
    boolean hasZones = false;
    double y = 0;
    for (Layout layout : layouts) {
      LaidOut drawing = new LaidOut(layout, parts, scale, new LaidOut.Saying(rule, words));
      y = drawing.draw(marks, y) + APART;
      isWider = isWider || drawing.isKerfWider();
      hasZones = hasZones || drawing.hasZones();
      told.add(describe(layout));
    }
    Length kerf = LayoutKey.kerf(layouts);
    if (kerf.signum() > 0) {
      told.add(words.plain("sheet.layout.kerf", words.aloud(rule.printExactly(kerf))));
    }
    double last =
        LayoutKey.add(
            marks,
            new LayoutKey.Shown(layouts, isWider, hasZones),
            new LayoutKey.Area(MARGIN, WIDTH, y + 6),
            rule,
            words);
    String name = "layout-" + layouts.get(0).blank().replace('_', '-');
    return new Sheet(name, WIDTH, last + 12, String.join(" ", told), marks);
  }

  private String describe(Layout layout) {
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
    return String.join(" ", sentences);
  }
}
