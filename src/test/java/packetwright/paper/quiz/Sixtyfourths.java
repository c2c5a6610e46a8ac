package packetwright.paper.quiz;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Inches read and written with whole numbers only, apart from the code under test. */
final class Sixtyfourths {
  private static final Pattern AMOUNT =
      Pattern.compile("(?:(\\d+) )??(?:(\\d+)/(\\d+)|(\\d+)) in\\b");

  private Sixtyfourths() {}

  static String write(long sixtyFourths) {
    long whole = sixtyFourths / 64;
    long top = sixtyFourths % 64;
    long bottom = 64;
    while (top > 0 && top % 2 == 0) {
      top /= 2;
      bottom /= 2;
    }
    String fraction = top + "/" + bottom;
    return (top == 0 ? whole + "" : whole == 0 ? fraction : whole + " " + fraction) + " in";
  }

  /** Every amount of a text, in order. */
  static List<Long> readAll(String text) {
    List<Long> amounts = new ArrayList<>();
    Matcher m = AMOUNT.matcher(text);
    while (m.find()) {
      long whole = m.group(1) != null ? Long.parseLong(m.group(1)) : 0;
      long part =
          m.group(4) != null
              ? 64 * Long.parseLong(m.group(4))
              : 64 * Long.parseLong(m.group(2)) / Long.parseLong(m.group(3));
      amounts.add(64 * whole + part);
    }
    return amounts;
  }
}
