package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import packetwright.drawing.sheet.Scale;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.view.Projection;
import packetwright.text.measure.Rule;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;

/** The drawing of a part: the views that it needs, at the largest preferred scale that fits. */
public final class PartSheet {
  /** 7.1 in, in points. */
  public static final double WIDTH = 7.1 * 72;

  /** 5.5 in, in points. */
  public static final double MOST_HEIGHT = 5.5 * 72;

  /** A part drawn shorter than 3/4 in is hard to read. */
  private static final double LEAST_DRAWN = 54;

  private PartSheet() {}

  /**
   * How drawings are lettered and arranged.
   *
   * @param rule to which lengths are printed
   * @param words in which they are lettered
   * @param arrangement of the views
   */
  public record Style(Rule rule, Words words, Arrangement arrangement) {}

  /** Draws a part in third-angle arrangement. */
  public static Sheet draw(Part part, Phrase material, Rule rule, Words words) {
    return draw(part, material, new Style(rule, words, Arrangement.THIRD_ANGLE));
  }

  /**
   * Draws a part.
   *
   * @param material as the title strip names it
   */
  public static Sheet draw(Part part, Phrase material, Style style) {
    return largest(part, style).finish(new TitleStrip.Entry(material, 1, 1));
  }

  /** Draws parts in third-angle arrangement. */
  public static List<Sheet> drawAll(
      List<Part> parts, Function<Part, Phrase> material, Rule rule, Words words) {
    return drawAll(parts, material, new Style(rule, words, Arrangement.THIRD_ANGLE));
  }

  /**
   * Draws parts at one scale, the largest preferred one at which all fit; a part that would be too
   * small to read has its own.
   *
   * @param material of a part, as the title strip names it
   */
  public static List<Sheet> drawAll(
      List<Part> parts, Function<Part, Phrase> material, Style style) {
    List<Showing> all = parts.stream().map(part -> Showing.of(part, Fold.NONE)).toList();
    List<PartLayout> own = all.stream().map(showing -> largest(showing, style)).toList();
    int common = own.stream().mapToInt(p -> p.scale().reduced()).max().orElse(1);
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      PartLayout layout = new PartLayout(all.get(i), new Scale(1, common), style);
      Part part = parts.get(i);
      boolean isReadable =
          layout.fits() && !isNarrow(layout) && layout.width(Projection.FRONT) >= LEAST_DRAWN;
      sheets.add(
          (isReadable ? layout : broken(own.get(i), style))
              .finish(new TitleStrip.Entry(material.apply(part), i + 1, parts.size())));
    }
    return sheets;
  }

  private static PartLayout largest(Part part, Style style) {
    return broken(largest(Showing.of(part, Fold.NONE), style), style);
  }

  private static PartLayout largest(Showing showing, Style style) {
    List<Scale> scales = Scale.reducing(style.rule.unit());
    double length = showing.solid().length().inches().approximate();
    for (Scale scale : scales) {
      // Dimensions are arranged only where the part itself has room.
      if (length * scale.pointsPerInch() < WIDTH) {
        PartLayout layout = new PartLayout(showing, scale, style);
        if (layout.fits()) {
          return layout;
        }
      }
    }
    return new PartLayout(showing, scales.get(scales.size() - 1), style);
  }

  private static boolean isNarrow(PartLayout layout) {
    return layout.height(Projection.FRONT) < LEAST_DRAWN;
  }

  /**
   * A long part that would be drawn too narrow to read, with breaks at the next larger scales, as
   * far as they fit, until it can be read.
   */
  private static PartLayout broken(PartLayout whole, Style style) {
    PartLayout best = whole;
    List<Scale> scales =
        new ArrayList<>(Scale.reducing(style.rule.unit()))
            .stream().filter(s -> s.reduced() < whole.scale().reduced()).toList();
    for (int i = scales.size() - 1; i >= 0 && isNarrow(best); i--) {
      Part part = whole.showing().part();
      Fold fold = Fold.of(part.solid(), scales.get(i));
      if (!fold.gaps().isEmpty()) {
        PartLayout layout = new PartLayout(Showing.of(part, fold), scales.get(i), style);
        best = layout.fits() ? layout : best;
      }
    }
    return best;
  }
}
