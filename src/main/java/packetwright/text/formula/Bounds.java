package packetwright.text.formula;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.source.Finding;

/**
 * Bounds of an expression whose names may lie anywhere in their ranges (Moore 1966, "Interval
 * Analysis"): never too narrow, too wide where a name is used twice. A truth is a range of 0 and 1.
 * Where a divisor may be zero is a finding, and one stands in for the quotient.
 */
final class Bounds implements Expression.Cases<Interval> {
  private static final Interval NO = Interval.of(Rational.ZERO);
  private static final Interval YES = Interval.of(Rational.ONE);
  private static final Interval EITHER = NO.with(YES);

  private final Report report;
  private final Unit bareUnit;

  /** As drawn, for the kinds of things. */
  private final Reckoning reckoning;

  private final java.util.function.Function<String, @Nullable Interval> ranges;

  Bounds(
      Report report,
      Unit bareUnit,
      Reckoning reckoning,
      java.util.function.Function<String, @Nullable Interval> ranges) {
    this.report = report;
    this.bareUnit = bareUnit;
    this.reckoning = reckoning;
    this.ranges = ranges;
  }

  /** The bounds of a whole formula, of which a bare number is a length. */
  Interval whole(Expression root) {
    Interval bounds = root.match(this);
    return scaled(root, bounds, true);
  }

  @Override
  public Interval literal(Expression.Literal literal) {
    return drawn(literal);
  }

  @Override
  public Interval name(Expression.Name name) {
    Interval range = ranges.apply(name.name());
    return range == null ? drawn(name) : range;
  }

  private Interval drawn(Expression expression) {
    Operand operand = expression.match(reckoning);
    if (operand.quantity() != null) {
      return Interval.of(operand.quantity().value());
    }
    Boolean truth = operand.truth();
    if (truth == null) {
      throw new IllegalStateException("no value as drawn: " + report.quoted(expression));
    }
    return truth ? YES : NO;
  }

  @Override
  public Interval group(Expression.Group group) {
    return group.inner().match(this);
  }

  @Override
  public Interval prefix(Expression.Prefix prefix) {
    Interval operand = prefix.operand().match(this);
    return prefix.isNot() ? YES.plus(operand.negated()) : operand.negated();
  }

  @Override
  public Interval infix(Expression.Infix infix) {
    Operator operator = infix.operator();
    List<Expression> sides = List.of(infix.left(), infix.right());
    List<Interval> both = operator.multiplies() || operator.isLogic() ? plain(sides) : alike(sides);
    Interval a = both.get(0);
    Interval b = both.get(1);
    return switch (operator) {
      case PLUS -> a.plus(b);
      case MINUS -> a.plus(b.negated());
      case TIMES, AND -> a.times(b);
      case OR -> YES.plus(YES.plus(a.negated()).times(YES.plus(b.negated())).negated());
      case OVER -> quotient(infix, a, b);
      default -> comparison(operator, a.plus(b.negated()));
    };
  }

  private Interval quotient(Expression.Infix infix, Interval a, Interval b) {
    if (b.holdsZero()) {
      report.add(
          Finding.error(
              "division-by-zero",
              report.span(infix.sign()),
              report.quoted(infix.right()) + " may come to zero",
              "divide by something that stays clear of zero, or make the tolerances smaller"));
      return YES;
    }
    return a.dividedBy(b);
  }

  /** What can be said of a comparison when the difference of its sides is known to lie so. */
  private static Interval comparison(Operator operator, Interval difference) {
    List<Rational> seen = new ArrayList<>();
    if (difference.low().signum() < 0) {
      seen.add(truth(operator.holds(-1)));
    }
    if (difference.holdsZero()) {
      seen.add(truth(operator.holds(0)));
    }
    if (difference.high().signum() > 0) {
      seen.add(truth(operator.holds(1)));
    }
    return Interval.around(seen);
  }

  private static Rational truth(boolean holds) {
    return holds ? Rational.ONE : Rational.ZERO;
  }

  @Override
  public Interval call(Expression.Call call) {
    return switch (call.function()) {
      case IF -> choice(call);
      case MIN -> extreme(call, -1);
      case MAX -> extreme(call, 1);
      case ROUND_UP, ROUND_DOWN, ROUND_TO -> rounded(call);
    };
  }

  private Interval choice(Expression.Call call) {
    Interval condition = call.arguments().get(0).match(this);
    List<Expression> branches = call.arguments().subList(1, 3);
    if (condition.equals(EITHER)) {
      List<Interval> both = alike(branches);
      return both.get(0).with(both.get(1));
    }
    int taken = condition.equals(YES) ? 0 : 1;
    Interval bounds = branches.get(taken).match(this);
    return scaled(branches.get(taken), bounds, areLengths(branches));
  }

  private Interval extreme(Expression.Call call, int sign) {
    List<Interval> all = alike(call.arguments());
    return all.stream()
        .reduce(
            (a, b) ->
                new Interval(extreme(a.low(), b.low(), sign), extreme(a.high(), b.high(), sign)))
        .orElseThrow();
  }

  private static Rational extreme(Rational a, Rational b, int sign) {
    return b.compareTo(a) * sign > 0 ? b : a;
  }

  /** To steps of one size the ends are rounded; to others, a value moves by the largest at most. */
  private Interval rounded(Expression.Call call) {
    List<Interval> all = alike(call.arguments());
    Interval value = all.get(0);
    Interval steps = all.size() > 1 ? all.get(1) : Interval.of(one(call.arguments().get(0)));
    Rational step = steps.high();
    if (steps.low().equals(step)) {
      return new Interval(
          Reckoning.rounded(call.function(), value.low(), step),
          Reckoning.rounded(call.function(), value.high(), step));
    }
    return switch (call.function()) {
      case ROUND_UP -> new Interval(value.low(), value.high().plus(step));
      case ROUND_DOWN -> new Interval(value.low().minus(step), value.high());
      default -> value.widened(step);
    };
  }

  /** The step where none is written. */
  private Rational one(Expression value) {
    return value.match(reckoning).isLength() ? bareUnit.inBase() : Rational.ONE;
  }

  private List<Interval> plain(List<Expression> expressions) {
    return expressions.stream().map(expression -> expression.match(this)).toList();
  }

  /** The same, bare numbers beside a length taken as lengths. */
  private List<Interval> alike(List<Expression> expressions) {
    boolean lengths = areLengths(expressions);
    return expressions.stream().map(e -> scaled(e, e.match(this), lengths)).toList();
  }

  private boolean areLengths(List<Expression> expressions) {
    return expressions.stream().anyMatch(e -> e.match(reckoning).isLength());
  }

  private Interval scaled(Expression expression, Interval bounds, boolean asLength) {
    return asLength && expression.match(reckoning).bare()
        ? bounds.times(bareUnit.inBase())
        : bounds;
  }
}
