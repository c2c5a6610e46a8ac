package packetwright.text.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.text.source.Span;

/**
 * Reads tokens by precedence climbing. At the first thing wrong it keeps the finding and moves to
 * the end, where every loop stops.
 */
final class Parser {
  /** Deepest nesting read; keeps hostile input off the stack's end. */
  private static final int DEEPEST = 50;

  private final Located<String> formula;
  private final List<Token> tokens;
  private int position;
  private int depth;
  private @Nullable Finding finding;

  private Parser(Located<String> formula, List<Token> tokens) {
    this.formula = formula;
    this.tokens = tokens;
  }

  static Checked<Expression> parse(Located<String> formula) {
    Checked<List<Token>> tokens = Lexer.read(formula);
    return tokens.hasValue()
        ? new Parser(formula, tokens.value()).parse()
        : new Checked<>(null, tokens.findings());
  }

  private Checked<Expression> parse() {
    Expression whole = expression(0);
    if (peek().kind() != Token.Kind.END) {
      fail(
          peek(),
          Finding.error(
              "formula-unreadable",
              span(peek()),
              "`" + peek().text() + "` stands where a sign should",
              ""));
    }
    return finding == null ? Checked.of(whole) : Checked.failed(finding);
  }

  /** An expression whose signs all bind tighter than a precedence. */
  private Expression expression(int loosest) {
    if (++depth > DEEPEST) {
      fail(
          peek(),
          Finding.error(
              "formula-too-large",
              span(peek()),
              "a formula nests at most " + DEEPEST + " deep",
              "give parts of it names of their own"));
    }
    Expression left = operand();
    Operator operator = Operator.of(peek());
    while (operator != null && operator.precedence() > loosest) {
      Token sign = take();
      refuseTwoReadings(operator);
      left = new Expression.Infix(left, sign, operator, expression(operator.precedence()));
      Operator next = Operator.of(peek());
      if (operator.isComparison() && next != null && next.isComparison()) {
        fail(
            peek(),
            Finding.error(
                "formula-unreadable",
                span(peek()),
                "a comparison has two sides",
                "join two by `and`"));
      }
      operator = Operator.of(peek());
    }
    depth--;
    return left;
  }

  private void refuseTwoReadings(Operator operator) {
    Token next = peek();
    if (operator == Operator.OVER && next.isFraction()) {
      fail(
          next,
          Finding.error(
              "formula-unreadable",
              span(next),
              "`/ " + next.text() + "` can be read two ways",
              "write `/ (" + next.text() + ")`, or `/ " + next.text().replace("/", " / ") + "`"));
    }
  }

  private Expression operand() {
    Token token = take();
    if (token.kind() == Token.Kind.NUMBER) {
      return literal(token);
    }
    if (token.is("-") || token.is("not")) {
      int tightness = token.is("-") ? Operator.TIGHTEST : Operator.COMPARISON - 1;
      return new Expression.Prefix(token.start(), token.is("not"), expression(tightness));
    }
    if (token.is("(")) {
      Expression inner = expression(0);
      return new Expression.Group(token.start(), closing(token).end(), inner);
    }
    if (token.kind() == Token.Kind.WORD && Operator.of(token) == null && !token.is("%")) {
      return peek().is("(")
          ? call(token)
          : new Expression.Name(token.start(), token.end(), token.text());
    }
    return fail(
        token,
        Finding.error(
            "formula-unreadable",
            span(token),
            token.kind() == Token.Kind.END
                ? "the formula ends where a value should stand"
                : "`" + token.text() + "` stands where a value should",
            token.kind() == Token.Kind.END ? "finish it with a number or a name" : ""));
  }

  private Expression literal(Token number) {
    Token word = peek();
    if (word.kind() != Token.Kind.WORD || Operator.of(word) != null) {
      return new Expression.Literal(number.start(), number.end(), number.number(), null);
    }
    String name = unitName();
    Unit unit = Unit.named(name);
    if (unit == null) {
      return fail(
          word,
          Finding.error(
              "unknown-unit",
              span(word),
              "`" + word.text() + "` is no unit",
              word.text().length() < 2 ? "" : unitHint(word.text())));
    }
    Token last = take();
    if (name.length() > last.text().length()) {
      last = take();
    }
    return new Expression.Literal(number.start(), last.end(), number.number(), unit);
  }

  private static String unitHint(String word) {
    String nearest = NearMiss.nearest(word, Unit.names());
    Stream<String> lengths =
        Unit.names().stream().filter(n -> n.length() > 1 && isLength(Unit.named(n)));
    return nearest.isEmpty()
        ? "write one of " + lengths.collect(Collectors.joining(", "))
        : "write `" + nearest + "`";
  }

  private static boolean isLength(@Nullable Unit unit) {
    return unit != null && unit.dimension() == Dimension.LENGTH;
  }

  /** The next word, or the next two where they name a unit together: {@code sq in}. */
  private String unitName() {
    String word = peek().text();
    Token after = tokens.get(Math.min(position + 1, tokens.size() - 1));
    String both = word + " " + after.text();
    return after.kind() == Token.Kind.WORD && Unit.named(both) != null ? both : word;
  }

  private Expression call(Token word) {
    Function function = Function.of(word.text());
    if (function == null) {
      return fail(
          word,
          Finding.error(
              "unknown-function",
              span(word),
              "`" + word.text() + "` is no function",
              NearMiss.hint(word.text(), Function.words())));
    }
    Token open = take();
    List<Expression> arguments = new ArrayList<>();
    arguments.add(expression(0));
    while (peek().is(",")) {
      take();
      arguments.add(expression(0));
    }
    Token close = closing(open);
    if (!function.takes(arguments.size())) {
      fail(
          word,
          Finding.error(
              "formula-unreadable",
              span(word),
              "`"
                  + word.text()
                  + "` takes "
                  + function.arguments()
                  + " values, not "
                  + arguments.size(),
              ""));
    }
    return new Expression.Call(word.start(), close.end(), function, List.copyOf(arguments));
  }

  private Token closing(Token open) {
    if (!peek().is(")")) {
      boolean ends = peek().kind() == Token.Kind.END;
      fail(
          ends ? open : peek(),
          Finding.error(
              "formula-unreadable",
              span(ends ? open : peek()),
              ends
                  ? "this parenthesis is never closed"
                  : "`" + peek().text() + "` stands where `)` should",
              "write `)`"));
    }
    return take();
  }

  private Token peek() {
    return tokens.get(position);
  }

  private Token take() {
    Token token = tokens.get(position);
    position = Math.min(position + 1, tokens.size() - 1);
    return token;
  }

  /** Keeps the first finding; nothing after it is worth reading. */
  private Expression fail(Token at, Finding wrong) {
    finding = finding == null ? wrong : finding;
    position = tokens.size() - 1;
    return new Expression.Literal(at.start(), at.end(), Rational.ONE, null);
  }

  /** A token's place; that of the end is the last character. */
  private Span span(Token token) {
    int offset = Math.min(token.start(), Math.max(0, formula.value().length() - 1));
    return formula.at().part(offset, token.text().length());
  }
}
