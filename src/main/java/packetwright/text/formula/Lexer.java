package packetwright.text.formula;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import packetwright.text.measure.Rational;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;

/** Cuts a formula into numbers, words and signs; stops at the first thing it cannot read. */
final class Lexer {
  /** Longest formula read, in characters; keeps hostile input from costing time. */
  static final int LONGEST = 1000;

  /** Most digits in a row; longer numbers measure nothing in a shop. */
  private static final int MOST_DIGITS = 12;

  private static final Pattern TOKEN =
      Pattern.compile(
          """
          (?<space>\\s+)
          |(?<hyphen>\\d++-\\d++/\\d++)
          |(?<mixed>(?<whole>\\d++)\\s++(?<top>\\d++)/(?<bottom>\\d++)(?!\\.\\d))
          |(?<fraction>(?<over>\\d++)/(?<under>\\d++)(?!\\.\\d))
          |(?<decimal>\\d++(?:\\.\\d++)?)
          |(?<word>[A-Za-z_]\\w*+(?:\\.[A-Za-z_]\\w*+)*+|%)
          |(?<sign><=|>=|!=|[<>=+*/(),-])
          """,
          Pattern.COMMENTS);

  /** What people write for the signs that we read. */
  private static final Map<String, String> MEANT =
      Map.of("×", "*", "÷", "/", "−", "-", "–", "-", "≤", "<=", "≥", ">=", "≠", "!=", "\"", "in");

  private final Located<String> formula;
  private final List<Token> tokens = new ArrayList<>();

  private Lexer(Located<String> formula) {
    this.formula = formula;
  }

  /** The tokens, the last one an END. */
  static Checked<List<Token>> read(Located<String> formula) {
    return new Lexer(formula).read();
  }

  private Checked<List<Token>> read() {
    String text = formula.value();
    if (text.length() > LONGEST) {
      return failed(
          "formula-too-large",
          LONGEST,
          1,
          "a formula has at most " + LONGEST + " characters, this one has " + text.length(),
          "give parts of it names of their own");
    }
    Matcher next = TOKEN.matcher(text);
    int at = 0;
    while (at < text.length()) {
      if (!next.region(at, text.length()).useTransparentBounds(true).lookingAt()) {
        return unknownSign(at);
      }
      if (next.group("hyphen") != null) {
        return hyphen(next);
      }
      Checked<List<Token>> bad = next.group("space") == null ? add(next) : Checked.of(tokens);
      if (!bad.isGood()) {
        return bad;
      }
      at = next.end();
    }
    tokens.add(new Token(Token.Kind.END, "", text.length(), Rational.ZERO));
    return Checked.of(tokens);
  }

  private Checked<List<Token>> add(Matcher next) {
    String text = next.group();
    if (next.group("word") != null || next.group("sign") != null) {
      Token.Kind kind = next.group("word") != null ? Token.Kind.WORD : Token.Kind.SIGN;
      tokens.add(new Token(kind, text, next.start(), Rational.ZERO));
      return Checked.of(tokens);
    }
    if (text.chars().filter(Character::isDigit).count() > MOST_DIGITS) {
      return failed(
          "number-too-large",
          next.start(),
          text.length(),
          "`" + text + "` has more than " + MOST_DIGITS + " digits",
          "round it");
    }
    BigInteger denominator = denominator(next);
    if (denominator.signum() == 0) {
      return failed(
          "division-by-zero",
          next.start(),
          text.length(),
          "`" + text + "` divides by zero",
          "write another denominator");
    }
    Rational number = Rational.of(numerator(next, denominator), denominator);
    tokens.add(new Token(Token.Kind.NUMBER, text, next.start(), number));
    return Checked.of(tokens);
  }

  private static BigInteger denominator(Matcher next) {
    if (next.group("mixed") != null) {
      return new BigInteger(next.group("bottom"));
    }
    if (next.group("fraction") != null) {
      return new BigInteger(next.group("under"));
    }
    String decimal = next.group();
    int point = decimal.indexOf('.');
    return BigInteger.TEN.pow(point < 0 ? 0 : decimal.length() - point - 1);
  }

  private static BigInteger numerator(Matcher next, BigInteger denominator) {
    if (next.group("mixed") != null) {
      return new BigInteger(next.group("whole"))
          .multiply(denominator)
          .add(new BigInteger(next.group("top")));
    }
    if (next.group("fraction") != null) {
      return new BigInteger(next.group("over"));
    }
    return new BigInteger(next.group().replace(".", ""));
  }

  private Checked<List<Token>> hyphen(Matcher found) {
    String text = found.group();
    return failed(
        "hyphen-in-formula",
        found.start(),
        text.length(),
        "`" + text + "` can be read as a mixed number or as a subtraction",
        "write `" + text.replace("-", " ") + "`, or `" + text.replace("-", " - ") + "` for minus");
  }

  private Checked<List<Token>> unknownSign(int at) {
    String sign = Character.toString(formula.value().codePointAt(at));
    String meant = MEANT.get(sign);
    return failed(
        "formula-unreadable",
        at,
        sign.length(),
        "`" + sign + "` means nothing in a formula",
        meant == null ? "" : "write `" + meant + "`");
  }

  private <T> Checked<T> failed(String code, int at, int length, String message, String hint) {
    return Checked.failed(Finding.error(code, formula.at().part(at, length), message, hint));
  }
}
