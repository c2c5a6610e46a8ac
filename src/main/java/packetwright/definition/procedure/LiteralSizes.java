package packetwright.definition.procedure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Span;

/** Finds dimensions typed into prose: they would go stale when a size changes. */
final class LiteralSizes {
  private static final String NUMBER =
      "(?:\\d+[ -]\\d+/\\d+|\\d+/\\d+|\\d+\\.\\d+|\\d* ?[¼½¾⅛⅜⅝⅞]|\\d+)";
  private static final String METRIC = "mm|cm|millimet(?:er|re)s?|centimet(?:er|re)s?";
  private static final String UNIT =
      "(?:(?:in|inch|inches|ft|foot|feet|thousandths?|"
          + METRIC
          + ")\\b|[\"'\u2033\u2032\u201d\u2019](?![a-z]))";

  /** Foot and feet are left out: the trade also calls the ends of legs so. */
  private static final String WORD_UNIT = "(?:inch|inches|degrees?|" + METRIC + ")\\b";

  private static final String COUNT =
      "(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)";
  private static final String SHARE =
      "(?:half|quarters?|eighths?|sixteenths?|thirty-seconds?|sixty-fourths?)";

  /** {@code half an inch}, {@code three quarters of an inch}. */
  private static final String SHARE_IN_WORDS =
      "(?:" + COUNT + "[ -])?" + SHARE + "(?: of)?(?: an?)?[ -](?:inch|degree)\\b";

  /** {@code two and a half inches}, {@code an inch and a half}. */
  private static final String COUNT_IN_WORDS =
      COUNT + "(?: and an? " + SHARE + ")?[ -]" + WORD_UNIT + "(?: and an? " + SHARE + ")?";

  /** A turn by right angles is no size; a temperature is none of ours. */
  private static final String ANGLE =
      "(?!(?:90|180|270|360)(?![\\d.]))\\d+(?:\\.\\d+)?[ -]?(?:°|degrees?\\b)"
          + "(?! ?(?:[FC]\\b|Fahrenheit|Celsius))";

  private static final String DECIMAL =
      "\\d+\\.\\d+(?!\\.?\\d| ?(?:%|°|degree|percent|hour|minute|ounce|quart|gallon|pound))";
  private static final String FRACTION = "(?:\\d+[ -])?\\d+/\\d+|\\d* ?[¼½¾⅛⅜⅝⅞]";

  private static final Pattern LITERAL =
      Pattern.compile(
          "(?<![\\w/.$€£-])(?:"
              + String.join(
                  "|",
                  NUMBER + "[ -]?" + UNIT,
                  SHARE_IN_WORDS,
                  COUNT_IN_WORDS,
                  ANGLE,
                  DECIMAL,
                  FRACTION)
              + ")",
          Pattern.CASE_INSENSITIVE);

  private LiteralSizes() {}

  /** Warns of each dimension in a text that begins at a place. */
  static void warn(String text, Span at, Findings findings) {
    Matcher literal = LITERAL.matcher(text);
    while (literal.find()) {
      String size = literal.group().strip();
      findings.add(
          found(
              literal,
              at,
              "write {name} with the size's name, or {="
                  + size
                  + "} where it is meant as it stands"));
    }
  }

  /** Warns of each dimension in a heading, where no place is filled in. */
  static void warnOfTitle(Node heading, Source source, Findings findings) {
    for (Node node = heading.getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof Text text) {
        Matcher literal = LITERAL.matcher(text.getLiteral());
        while (literal.find()) {
          findings.add(
              found(
                  literal, source.at(node), "leave it out of the title, and name it in the text"));
        }
      }
    }
  }

  private static Finding found(Matcher literal, Span at, String hint) {
    String size = literal.group().strip();
    int lead = literal.group().indexOf(size);
    return Finding.warning(
        "literal-size",
        at.part(literal.start() + lead, size.length()),
        "`" + size + "` is typed into the text and will not follow when a size changes",
        hint);
  }
}
