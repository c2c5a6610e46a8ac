package packetwright.paper.html;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import packetwright.drawing.sheet.Sheet;
import packetwright.text.measure.Figure;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/** Writes phrases, figures and drawings as markup. */
final class Markup {
  private final Words words;

  Markup(Words words) {
    this.words = words;
  }

  /**
   * A phrase. Every stretch is an element of its own when there is more than one, for the layout
   * engine writes a line's bare text before its elements, and a reader would hear it so.
   */
  String phrase(Phrase phrase) {
    if (phrase.pieces().size() == 1 && phrase.pieces().get(0) instanceof Phrase.Text text) {
      return escape(text.text());
    }
    StringBuilder out = new StringBuilder();
    List<Phrase.Piece> pieces = joined(phrase.pieces());
    for (int i = 0; i < pieces.size(); i++) {
      String punctuation = i + 1 < pieces.size() ? opening(pieces.get(i + 1)) : "";
      if (pieces.get(i) instanceof Phrase.Measure measure && !punctuation.isEmpty()) {
        out.append("<span class=\"keep\">")
            .append(figure(measure.figure()))
            .append(span(escape(punctuation)))
            .append("</span>");
        pieces = rest(pieces, i + 1, punctuation.length());
      } else {
        out.append(piece(pieces.get(i)));
      }
    }
    return out.toString();
  }

  /** Neighbouring words as one stretch, so that no line breaks before a full stop. */
  private static List<Phrase.Piece> joined(List<Phrase.Piece> pieces) {
    List<Phrase.Piece> joined = new ArrayList<>();
    for (Phrase.Piece piece : pieces) {
      int last = joined.size() - 1;
      if (last >= 0
          && piece instanceof Phrase.Text text
          && joined.get(last) instanceof Phrase.Text before) {
        joined.set(last, new Phrase.Text(before.text() + text.text()));
      } else {
        joined.add(piece);
      }
    }
    return joined;
  }

  /** Punctuation that a piece begins with: it must not begin a line. */
  private static String opening(Phrase.Piece piece) {
    int end = 0;
    if (piece instanceof Phrase.Text text) {
      while (end < text.text().length() && ".,;:!?)".indexOf(text.text().charAt(end)) >= 0) {
        end++;
      }
      return text.text().substring(0, end);
    }
    return "";
  }

  private static List<Phrase.Piece> rest(List<Phrase.Piece> pieces, int at, int without) {
    List<Phrase.Piece> rest = new ArrayList<>(pieces);
    if (pieces.get(at) instanceof Phrase.Text text) {
      rest.set(at, new Phrase.Text(text.text().substring(without)));
    }
    return rest;
  }

  private String piece(Phrase.Piece piece) {
    return piece.match(
        new Phrase.Cases<String>() {
          @Override
          public String text(Phrase.Text text) {
            return text.text().isEmpty() ? "" : span(escape(text.text()));
          }

          @Override
          public String measure(Phrase.Measure measure) {
            return figure(measure.figure());
          }

          @Override
          public String emphasis(Phrase.Emphasis emphasis) {
            String tag = emphasis.strong() ? "strong" : "em";
            return "<" + tag + ">" + phrase(emphasis.phrase()) + "</" + tag + ">";
          }
        });
  }

  /** A figure with small raised and lowered digits, and how it is read aloud. */
  private String figure(Figure figure) {
    if (figure.grade() != Figure.Grade.EXACT) {
      String key = "words.printed." + figure.grade().name().toLowerCase(Locale.ROOT);
      return "<span class=\"figure\">" + phrase(words.say(key, exact(figure))) + "</span>";
    }
    return "<span class=\"figure\" title=\""
        + escape(words.aloud(figure))
        + "\">"
        + number(figure)
        + (figure.unit().symbol().isEmpty() ? "" : span(" " + escape(figure.unit().symbol())))
        + "</span>";
  }

  private static String number(Figure figure) {
    if (!figure.hasFraction()) {
      return span(figure.number().replace('-', '\u2212'));
    }
    boolean whole = !figure.whole().equals(BigInteger.ZERO);
    return (figure.negative() ? span("\u2212") : "")
        + (whole ? span(figure.whole() + " ") : "")
        + "<span class=\"up\">"
        + figure.numerator()
        + "</span>"
        + span("\u2044")
        + "<span class=\"down\">"
        + figure.denominator()
        + "</span>";
  }

  private static Figure exact(Figure figure) {
    return new Figure(
        figure.negative(),
        figure.whole(),
        figure.numerator(),
        figure.denominator(),
        figure.unit(),
        Figure.Grade.EXACT);
  }

  /** The place of a drawing. */
  static String drawing(Sheet sheet) {
    return "<svg data-sheet=\""
        + escape(sheet.name())
        + "\" alt=\""
        + escape(sheet.alternative())
        + "\"></svg>";
  }

  private static String span(String markup) {
    return "<span>" + markup + "</span>";
  }

  static String escape(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
