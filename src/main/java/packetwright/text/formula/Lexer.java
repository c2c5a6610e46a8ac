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
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

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
  private final Findings findings = new Findings();

  private Lexer(Located<String> formula) {
    this.formula = formula;
  }

  /** The tokens, the last one an END. */
  static Checked<List<Token>> read(Located<String> formula) {
    Lexer lexer = new Lexer(formula);
    List<Token> tokens = lexer.read();
    return lexer.findings.checked(tokens);
  }

  private List<Token> read() {
    String text = formula.value();
    if (text.length() > LONGEST) {
      String message = "a formula has at most " + LONGEST + " characters, not " + text.length();
      findings.add(
          Finding.error(
              "formula-too-large",
              span(LONGEST, 1),
              message,
              "give parts of it names of their own"));
      return List.of();
    }
    List<Token> tokens = new ArrayList<>();
    Matcher next = TOKEN.matcher(text);
    int at = 0;
    while (at < text.length() && !findings.hasErrors()) {
      if (!next.region(at, text.length()).useTransparentBounds(true).lookingAt()) {
        refuseSign(at);
      } else if (next.group("hyphen") != null) {
        refuseHyphen(next);
      } else if (next.group("space") == null) {
        tokens.add(token(next));
      }
      at = findings.hasErrors() ? text.length() : next.end();
    }
    tokens.add(new Token(Token.Kind.END, "", text.length(), Rational.ZERO));
    return tokens;
  }

  private Token token(Matcher next) {
    String text = next.group();
    if (next.group("word") != null) {
      return new Token(Token.Kind.WORD, text, next.start(), Rational.ZERO);
    }
    if (next.group("sign") != null) {
      return new Token(Token.Kind.SIGN, text, next.start(), Rational.ZERO);
    }
    return new Token(Token.Kind.NUMBER, text, next.start(), number(next));
  }

  private Rational number(Matcher next) {
    int start = next.start();
    String text = next.group();
    if (text.chars().filter(Character::isDigit).count() > MOST_DIGITS) {
      String message = "`" + text + "` has more than " + MOST_DIGITS + " digits";
      findings.add(
          Finding.error("number-too-large", span(start, text.length()), message, "round it"));
      return Rational.ZERO;
    }
    if (next.group("decimal") != null) {
      int point = text.indexOf('.');
      int places = point < 0 ? 0 : text.length() - point - 1;
      return Rational.of(new BigInteger(text.replace(".", "")), BigInteger.TEN.pow(places));
    }
    boolean mixed = next.group("mixed") != null;
    long denominator = Long.parseLong(next.group(mixed ? "bottom" : "under"));
    if (denominator == 0) {
      String message = "`" + text + "` divides by zero";
      findings.add(
          Finding.error(
              "division-by-zero",
              span(start, text.length()),
              message,
              "write another denominator"));
      return Rational.ZERO;
    }
    Rational fraction =
        Rational.of(Long.parseLong(next.group(mixed ? "top" : "over")), denominator);
    return mixed ? Rational.of(Long.parseLong(next.group("whole"))).plus(fraction) : fraction;
  }

  private void refuseHyphen(Matcher found) {
    String text = found.group();
    findings.add(
        Finding.error(
            "hyphen-in-formula",
            span(found.start(), text.length()),
            "`" + text + "` can be read as a mixed number or as a subtraction",
            "write `"
                + text.replace("-", " ")
                + "`, or `"
                + text.replace("-", " - ")
                + "` for minus"));
  }

  private void refuseSign(int at) {
    String sign = Character.toString(formula.value().codePointAt(at));
    String meant = MEANT.get(sign);
    String message = "`" + sign + "` means nothing in a formula";
    String hint = meant == null ? "" : "write `" + meant + "`";
    findings.add(Finding.error("formula-unreadable", span(at, sign.length()), message, hint));
  }

  private Span span(int at, int length) {
    return formula.at().part(at, length);
  }
}
