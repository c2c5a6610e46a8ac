package packetwright.definition.procedure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Span;

/** Finds dimensions typed into prose: they would go stale when a size changes. */
final class LiteralSizes {
  private static final String NUMBER =
      "(?:\\d+[ -]\\d+/\\d+|\\d+/\\d+|\\d+\\.\\d+|\\d* ?[¼½¾⅛⅜⅝⅞]|\\d+)";
  private static final String UNIT =
      "(?:(?:in|inch|inches|ft|foot|feet|mm|cm)\\b|[\"'\u2033\u2032\u201d\u2019](?![a-z]))";
  private static final Pattern LITERAL =
      Pattern.compile(
          "(?<![\\w/.])(?:" + NUMBER + "[ -]?" + UNIT + "|(?:\\d+[ -])?\\d+/\\d+|\\d* ?[¼½¾⅛⅜⅝⅞])");

  private LiteralSizes() {}

  /** Warns of each dimension in a text that begins at a place. */
  static void warn(String text, Span at, Findings findings) {
    Matcher literal = LITERAL.matcher(text);
    while (literal.find()) {
      String size = literal.group().strip();
      int lead = literal.group().indexOf(size);
      findings.add(
          Finding.warning(
              "literal-size",
              at.part(literal.start() + lead, size.length()),
              "`" + size + "` is typed into the text and will not follow when a size changes",
              "write {name} with the size's name, or {="
                  + size
                  + "} where it is meant as it stands"));
    }
  }
}
