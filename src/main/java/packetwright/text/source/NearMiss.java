package packetwright.text.source;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;

/** Which known word was probably meant. */
public final class NearMiss {
  private NearMiss() {}

  /**
   * A hint that names the nearest known word, or lists the known ones when none is near and they
   * are few; empty when there is nothing useful to say.
   */
  public static String hint(String word, Collection<String> known) {
    String nearest = nearest(word, known);
    if (!nearest.isEmpty()) {
      return "write `" + nearest + "`";
    }
    return known.isEmpty() || known.size() > 12
        ? ""
        : "write one of " + String.join(", ", known.stream().sorted().toList());
  }

  /** The nearest known word, at most a third of its letters away; empty when none is. */
  public static String nearest(String word, Collection<String> known) {
    String folded = fold(word);
    return known.stream()
        .filter(k -> distance(folded, fold(k)) <= Math.max(1, k.length() / 3))
        .min(
            Comparator.<String>comparingInt(k -> distance(folded, fold(k)))
                .thenComparing(Comparator.naturalOrder()))
        .orElse("");
  }

  private static String fold(String word) {
    return word.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
  }

  /** Restricted Damerau-Levenshtein distance: insert, delete, replace, swap two neighbours. */
  private static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
