package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;
import packetwright.wood.part.Part.Feature;

/** What a part drawing shows, in words. */
final class PartWords {
  /** Sizes of a feature, in the order in which they are said. */
  private static final List<String> ORDER = List.of("width", "length", "diameter", "depth", "at");

  private PartWords() {}

  /** A part's name as it is printed. */
  static String name(Part part) {
    return part.name().replace('_', ' ');
  }

  /** The whole drawing, read aloud. */
  static String describe(Part part, Rule rule, Words words) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        words.plain(
            "sheet.part",
            part.letter(),
            name(part),
            (long) part.count(),
            words.aloud(rule.print(part.solid().length())),
            words.aloud(rule.print(part.solid().width())),
            words.aloud(rule.print(part.solid().thickness()))));
    for (Feature feature : part.features()) {
      sentences.add(describe(feature, rule, words));
    }
    return String.join(" ", sentences);
  }

  private static String describe(Feature feature, Rule rule, Words words) {
    List<String> sizes = new ArrayList<>();
    for (String size : ORDER) {
      Length length = feature.sizes().get(size);
      if (length != null) {
        String value = words.aloud(rule.print(length));
        boolean isPlace = size.equals("at") && feature.from() != null;
        sizes.add(
            isPlace
                ? words.plain("sheet.size.from", value, side(feature, words))
                : words.plain("sheet.size." + size, value));
      }
    }
    return words.plain(
        "sheet.feature",
        words.plain("sheet.kind." + feature.kind().name().toLowerCase(Locale.ROOT)),
        feature.where(),
        words.plain("sheet.side." + feature.face().word()),
        String.join(", ", sizes));
  }

  private static String side(Feature feature, Words words) {
    return feature.from() == null ? "" : words.plain("sheet.side." + feature.from().word());
  }
}
