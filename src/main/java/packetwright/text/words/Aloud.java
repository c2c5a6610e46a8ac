package packetwright.text.words;

import java.math.BigInteger;
import java.util.Locale;
import packetwright.text.measure.Figure;

/** How a figure is read aloud, with the words of one language. */
record Aloud(Words words) {
  /** {@code 5 and 1 half inches}, {@code 9 thirty-seconds of an inch}; without the grade. */
  String read(Figure figure) {
    String number = figure.hasFraction() ? mixed(figure) : unsigned(figure).number();
    String measure = words.plain(unitKey(figure), number);
    return figure.negative() ? words.plain("words.minus", measure) : measure;
  }

  private String mixed(Figure figure) {
    String fraction = fraction(figure.numerator(), figure.denominator());
    return figure.whole().signum() == 0
        ? fraction
        : words.plain("words.mixed", figure.whole().toString(), fraction);
  }

  private String fraction(BigInteger numerator, BigInteger denominator) {
    String key = "words.denominator." + denominator;
    String name = numerator.equals(BigInteger.ONE) ? key + ".one" : key + ".other";
    return words.hasKey(name)
        ? words.plain("words.fraction", numerator.toString(), words.plain(name))
        : words.plain("words.over", numerator.toString(), denominator.toString());
  }

  private static String unitKey(Figure figure) {
    String unit = "words.unit." + figure.unit().name().toLowerCase(Locale.ROOT);
    boolean less = figure.hasFraction() && figure.whole().signum() == 0;
    BigInteger counted = less ? figure.numerator() : figure.whole();
    boolean one = counted.equals(BigInteger.ONE) && (less || figure.numerator().signum() == 0);
    return unit + (less ? ".part" : "") + (one ? ".one" : ".other");
  }

  private static Figure unsigned(Figure figure) {
    return new Figure(
        false,
        figure.whole(),
        figure.numerator(),
        figure.denominator(),
        figure.unit(),
        figure.grade());
  }
}
