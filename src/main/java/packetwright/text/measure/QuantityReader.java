package packetwright.text.measure;

import java.math.BigInteger;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;

/** Reads a quantity in any of the shop's notations; formulas are read elsewhere. */
public final class QuantityReader {
  private static final int MAX_TEXT = 40;

  /** The Unicode number forms that a keyboard or word processor makes of a typed fraction. */
  private static final Map<Character, String> VULGAR =
      Map.ofEntries(
          Map.entry('¼', "1/4"),
          Map.entry('½', "1/2"),
          Map.entry('¾', "3/4"),
          Map.entry('⅐', "1/7"),
          Map.entry('⅑', "1/9"),
          Map.entry('⅒', "1/10"),
          Map.entry('⅓', "1/3"),
          Map.entry('⅔', "2/3"),
          Map.entry('⅕', "1/5"),
          Map.entry('⅖', "2/5"),
          Map.entry('⅗', "3/5"),
          Map.entry('⅘', "4/5"),
          Map.entry('⅙', "1/6"),
          Map.entry('⅚', "5/6"),
          Map.entry('⅛', "1/8"),
          Map.entry('⅜', "3/8"),
          Map.entry('⅝', "5/8"),
          Map.entry('⅞', "7/8"));

  private static final String WHOLE = "\\d{1,9}";
  private static final String NUMBER =
      "(?<decimal>\\d{0,9}\\.\\d{1,9})"
          + "|(?:(?<whole>"
          + WHOLE
          + ")[- ])?(?<top>\\d{1,6})/(?<bottom>\\d{1,6})"
          + "|(?<alone>"
          + WHOLE
          + ")";
  private static final Pattern QUANTITY =
      Pattern.compile(
          "(?<sign>-?)(?:(?<feet>"
              + WHOLE
              + ")\\s*(?:'|ft)\\s*)?(?:"
              + NUMBER
              + ")\\s*(?<unit>\\D*)");
  private static final Pattern DECIMAL_COMMA = Pattern.compile(".*\\d,\\d.*");

  private static final String NOTATIONS =
      "write it like 5 1/2, 5-1/2, 5.5, 5 1/2 in, 1' 6\", 140 mm or 14 cm";

  private QuantityReader() {}

  /**
   * The quantity that a text says.
   *
   * @param text as written
   * @param bare the unit of a number that names none; the quantity must be of its dimension
   */
  public static Checked<Quantity> read(Located<String> text, Unit bare) {
    String plain = plain(text.value());
    if (DECIMAL_COMMA.matcher(plain).matches()) {
      return unreadable(text, bare, "write a point, not a comma, before the decimals");
    }
    Matcher m = QUANTITY.matcher(plain);
    if (plain.length() > MAX_TEXT || !m.matches()) {
      return unreadable(text, bare, hint(bare));
    }
    String symbol = m.group("unit").strip();
    Unit unit =
        symbol.isEmpty() ? (m.group("feet") == null ? bare : Unit.INCH) : Unit.named(symbol);
    Rational number = number(m);
    if (unit == null || number == null || (m.group("feet") != null && unit != Unit.INCH)) {
      return unreadable(text, bare, hint(bare));
    }
    if (unit.dimension() != bare.dimension()) {
      return wrongUnit(text, unit, bare);
    }
    Rational value = number.times(unit.inBase());
    if (m.group("feet") != null) {
      value = value.plus(whole(m.group("feet")).times(Unit.FOOT.inBase()));
    }
    boolean negative = !m.group("sign").isEmpty();
    return Checked.of(new Quantity(negative ? value.negated() : value, unit.dimension()));
  }

  /** One kind of space, quotes and minus, and no number forms. */
  private static String plain(String text) {
    StringBuilder plain = new StringBuilder();
    for (char c : text.strip().toCharArray()) {
      String fraction = VULGAR.get(c);
      switch (c) {
        case '\u00a0', '\u2009', '\u202f' -> plain.append(' ');
        case '\u2032', '\u2019' -> plain.append('\'');
        case '\u2033', '\u201d' -> plain.append('"');
        case '\u2212' -> plain.append('-');
        case '\u2044' -> plain.append('/');
        default -> plain.append(fraction == null ? String.valueOf(c) : " " + fraction);
      }
    }
    return plain.toString().replaceAll("([- ]) +", "$1").strip();
  }

  private static @Nullable Rational number(Matcher m) {
    if (m.group("decimal") != null) {
      String[] parts = m.group("decimal").split("\\.", -1);
      BigInteger scale = BigInteger.TEN.pow(parts[1].length());
      return Rational.of(new BigInteger("0" + parts[0] + parts[1]), scale);
    }
    if (m.group("alone") != null) {
      return whole(m.group("alone"));
    }
    BigInteger bottom = new BigInteger(m.group("bottom"));
    if (bottom.signum() == 0) {
      return null;
    }
    Rational part = Rational.of(new BigInteger(m.group("top")), bottom);
    String whole = m.group("whole");
    return whole == null ? part : whole(whole).plus(part);
  }

  private static Rational whole(String digits) {
    return Rational.of(new BigInteger(digits), BigInteger.ONE);
  }

  private static String hint(Unit bare) {
    return switch (bare.dimension()) {
      case LENGTH -> NOTATIONS;
      case MONEY -> "write it like 5.50, without a sign";
      case NUMBER -> "write it like 3, 1/2, 0.5 or 45 %";
      case TIME -> "write it like 45 min or 1 h";
      case TEMPERATURE -> "write it like 68 F";
      case ANGLE -> "write it like 30 deg or 22.5 deg";
      default -> "write it like 16 " + bare.symbol() + " or 1/2 " + bare.symbol();
    };
  }

  private static Checked<Quantity> unreadable(Located<String> text, Unit bare, String hint) {
    return Checked.failed(
        Finding.error(
            "unreadable-length",
            text.at(),
            "`" + text.value() + "` cannot be read as " + bare.dimension().phrase(),
            hint));
  }

  private static Checked<Quantity> wrongUnit(Located<String> text, Unit unit, Unit bare) {
    return Checked.failed(
        Finding.error(
            "wrong-unit",
            text.at(),
            "`"
                + text.value()
                + "` is "
                + unit.dimension().phrase()
                + ", where "
                + bare.dimension().phrase()
                + " must stand",
            hint(bare)));
  }
}
