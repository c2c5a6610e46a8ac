package packetwright.text.words;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import packetwright.text.measure.Figure;

/**
 * A phrase with places to fill in.
 *
 * @param key for reports of bugs
 * @param text as written in the phrase file
 */
record Template(String key, String text) {
  private static final Pattern TOKEN = Pattern.compile("\\*\\*|\\*|\\{(\\d)\\}");

  Phrase fill(Object... arguments) {
    Matcher tokens = TOKEN.matcher(text);
    return new Filling(arguments, tokens).until("");
  }

  /** Reads the template from left to right, one level deeper within stars. */
  private final class Filling {
    private final Object[] arguments;
    private final Matcher tokens;
    private int end;

    Filling(Object[] arguments, Matcher tokens) {
      this.arguments = arguments;
      this.tokens = tokens;
    }

    /** Everything up to the closing stars, or to the end of the template. */
    Phrase until(String closing) {
      List<Phrase.Piece> pieces = new ArrayList<>();
      while (tokens.find()) {
        addText(pieces, text.substring(end, tokens.start()));
        end = tokens.end();
        String token = tokens.group();
        if (token.equals(closing)) {
          return new Phrase(pieces);
        }
        if (tokens.group(1) == null) {
          pieces.add(new Phrase.Emphasis(token.length() == 2, until(token)));
        } else {
          argument(Integer.parseInt(tokens.group(1))).pieces().forEach(p -> add(pieces, p));
        }
      }
      if (!closing.isEmpty()) {
        throw new IllegalArgumentException("phrase " + key + " leaves " + closing + " open");
      }
      addText(pieces, text.substring(end));
      return new Phrase(pieces);
    }

    private Phrase argument(int index) {
      if (index >= arguments.length) {
        throw new IllegalArgumentException(
            "phrase " + key + " asks for {" + index + "} of " + arguments.length + " arguments");
      }
      Object argument = arguments[index];
      if (argument instanceof Phrase phrase) {
        return phrase;
      }
      if (argument instanceof Figure figure) {
        return Phrase.of(figure);
      }
      if (argument instanceof String || argument instanceof Integer || argument instanceof Long) {
        return Phrase.of(argument.toString());
      }
      throw new IllegalArgumentException("phrase " + key + " cannot print " + argument);
    }
  }

  private static void add(List<Phrase.Piece> pieces, Phrase.Piece piece) {
    if (piece instanceof Phrase.Text words) {
      addText(pieces, words.text());
    } else {
      pieces.add(piece);
    }
  }

  /** Keeps neighbouring words in one piece, so that equal phrases are equal records. */
  private static void addText(List<Phrase.Piece> pieces, String words) {
    int last = pieces.size() - 1;
    if (last >= 0 && pieces.get(last) instanceof Phrase.Text before) {
      pieces.set(last, new Phrase.Text(before.text() + words));
    } else if (!words.isEmpty()) {
      pieces.add(new Phrase.Text(words));
    }
  }
}
