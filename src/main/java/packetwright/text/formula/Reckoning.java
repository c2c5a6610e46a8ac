package packetwright.text.formula;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.source.Finding;
import packetwright.text.source.NearMiss;

/** Works an expression out for given values, and checks that only like is added to like. */
final class Reckoning implements Expression.Cases<Operand> {
  /** Longest numerator or denominator, in bits; a chain of products could grow without end. */
  private static final int MOST_BITS = 512;

  private final Report report;
  private final Unit bareUnit;
  private final Values values;

  /**
   * Whether the value is wanted. In a branch that is not taken only the kinds of things count:
   * where its value has none, one stands in for it.
   */
  private final boolean isNeeded;

  Reckoning(Report report, Unit bareUnit, Values values) {
    this(report, bareUnit, values, true);
  }

  private Reckoning(Report report, Unit bareUnit, Values values, boolean isNeeded) {
    this.report = report;
    this.bareUnit = bareUnit;
    this.values = values;
    this.isNeeded = isNeeded;
  }

  @Override
  public Operand literal(Expression.Literal literal) {
    Unit unit = literal.unit();
    return unit == null
        ? Operand.bare(literal.number())
        : Operand.of(new Quantity(literal.number().times(unit.inBase()), unit.dimension()), false);
  }

  @Override
  public Operand name(Expression.Name name) {
    Value value = values.of(name.name());
    if (value == null) {
      String hint = NearMiss.hint(name.name(), values.names());
      report.add(
          Finding.error(
              "unknown-name", report.span(name), "nothing is called " + report.quoted(name), hint));
      return Operand.FAILED;
    }
    return new Operand(value, false);
  }

  @Override
  public Operand group(Expression.Group group) {
    return group.inner().match(this);
  }

  @Override
  public Operand prefix(Expression.Prefix prefix) {
    if (prefix.isNot()) {
      Boolean holds = truth(prefix.operand());
      return holds == null ? Operand.FAILED : Operand.of(!holds);
    }
    Operand operand = prefix.operand().match(this);
    Quantity amount = amount(prefix.operand(), operand);
    return amount == null
        ? Operand.FAILED
        : Operand.of(new Quantity(amount.value().negated(), amount.dimension()), operand.bare());
  }

  @Override
  public Operand infix(Expression.Infix infix) {
    if (infix.operator().isLogic()) {
      return logic(infix);
    }
    List<Operand> both = List.of(infix.left().match(this), infix.right().match(this));
    if (!infix.operator().multiplies()) {
      both = alike(both);
    }
    Quantity a = amount(infix.left(), both.get(0));
    Quantity b = amount(infix.right(), both.get(1));
    if (a == null || b == null) {
      return Operand.FAILED;
    }
    boolean bare = both.get(0).bare() && both.get(1).bare();
    return switch (infix.operator()) {
      case TIMES -> product(infix, a, b, bare);
      case OVER -> quotient(infix, a, b, bare);
      default -> sum(infix, a, b, bare);
    };
  }

  /** A sum, a difference or a comparison. */
  private Operand sum(Expression.Infix infix, Quantity a, Quantity b, boolean bare) {
    boolean compares = infix.operator().isComparison();
    if (a.dimension() != b.dimension()) {
      return unlike(infix, a, b, compares ? "compare like with like" : "add only like to like");
    }
    if (compares) {
      return Operand.of(infix.operator().holds(a.value().compareTo(b.value())));
    }
    boolean adds = infix.operator() == Operator.PLUS;
    Rational value = adds ? a.value().plus(b.value()) : a.value().minus(b.value());
    return bounded(infix, new Quantity(value, a.dimension()), bare);
  }

  private Operand product(Expression.Infix infix, Quantity a, Quantity b, boolean bare) {
    Dimension dimension = Dimensions.product(a.dimension(), b.dimension());
    return dimension == null
        ? unlike(infix, a, b, "multiply by a number instead")
        : bounded(infix, new Quantity(a.value().times(b.value()), dimension), bare);
  }

  private Operand quotient(Expression.Infix infix, Quantity a, Quantity b, boolean bare) {
    Dimension dimension = Dimensions.quotient(a.dimension(), b.dimension());
    if (dimension == null) {
      return unlike(infix, a, b, "divide by a number, or by a like amount");
    }
    if (b.value().signum() == 0 && !isNeeded) {
      return Operand.of(new Quantity(Rational.ONE, dimension), bare);
    }
    if (b.value().signum() == 0) {
      String divisor = report.quoted(infix.right());
      report.add(
          Finding.error(
              "division-by-zero",
              report.span(infix.sign()),
              divisor + " is zero here",
              "divide by something else"));
      return Operand.FAILED;
    }
    return bounded(infix, new Quantity(a.value().dividedBy(b.value()), dimension), bare);
  }

  private Operand unlike(Expression.Infix infix, Quantity a, Quantity b, String hint) {
    String message = report.said(infix.left(), a) + ", " + report.said(infix.right(), b);
    report.add(Finding.error("wrong-unit", report.span(infix.sign()), message, hint));
    return Operand.FAILED;
  }

  private Operand logic(Expression.Infix infix) {
    boolean deciding = infix.operator() == Operator.OR;
    Boolean left = truth(infix.left());
    if (left != null && left == deciding) {
      unneeded().truth(infix.right());
      return Operand.of(deciding);
    }
    Boolean right = truth(infix.right());
    return left == null || right == null ? Operand.FAILED : Operand.of(right);
  }

  @Override
  public Operand call(Expression.Call call) {
    return switch (call.function()) {
      case IF -> choice(call);
      case MIN -> extreme(call, -1);
      case MAX -> extreme(call, 1);
      case ROUND_UP, ROUND_DOWN, ROUND_TO -> rounded(call);
    };
  }

  private Operand choice(Expression.Call call) {
    Boolean condition = truth(call.arguments().get(0));
    int taken = condition == null || condition ? 1 : 2;
    List<Expression> branches =
        List.of(call.arguments().get(taken), call.arguments().get(3 - taken));
    Operand chosen = branches.get(0).match(this);
    Operand other = branches.get(1).match(unneeded());
    if (condition == null || chosen.failed()) {
      return Operand.FAILED;
    }
    if (other.failed() || (chosen.truth() != null && other.truth() != null)) {
      return chosen;
    }
    List<Operand> both = alike(List.of(chosen, other));
    return amounts(branches, both).isEmpty() ? Operand.FAILED : both.get(0);
  }

  /** The least of all for sign -1, the greatest for 1. */
  private Operand extreme(Expression.Call call, int sign) {
    List<Operand> operands = alike(call.arguments().stream().map(a -> a.match(this)).toList());
    List<Quantity> amounts = amounts(call.arguments(), operands);
    return amounts.stream()
        .reduce((a, b) -> b.value().compareTo(a.value()) * sign > 0 ? b : a)
        .map(found -> Operand.of(found, operands.get(0).bare()))
        .orElse(Operand.FAILED);
  }

  /** Without a step, to a whole number, or to a whole inch or millimetre. */
  private Operand rounded(Expression.Call call) {
    List<Expression> arguments = new ArrayList<>(call.arguments());
    if (arguments.size() == 1) {
      arguments.add(new Expression.Literal(call.start(), call.end(), Rational.ONE, null));
    }
    List<Operand> operands = alike(arguments.stream().map(a -> a.match(this)).toList());
    List<Quantity> amounts = amounts(arguments, operands);
    if (amounts.isEmpty()) {
      return Operand.FAILED;
    }
    Rational step = amounts.get(1).value();
    if (step.signum() <= 0 && !isNeeded) {
      return Operand.of(amounts.get(0), operands.get(0).bare());
    }
    if (step.signum() <= 0) {
      String message = "a step is more than zero, " + report.quoted(arguments.get(1)) + " is not";
      report.add(
          Finding.error(
              "wrong-step", report.span(arguments.get(1)), message, "write a step above zero"));
      return Operand.FAILED;
    }
    Rational value = rounded(call.function(), amounts.get(0).value(), step);
    boolean bare = operands.get(0).bare();
    return bounded(call, new Quantity(value, amounts.get(0).dimension()), bare);
  }

  static Rational rounded(Function function, Rational value, Rational step) {
    Rational steps = value.dividedBy(step);
    return switch (function) {
      case ROUND_UP -> Rational.of(steps.ceiling(), BigInteger.ONE).times(step);
      case ROUND_DOWN -> Rational.of(steps.floor(), BigInteger.ONE).times(step);
      default -> value.roundedTo(step);
    };
  }

  private Operand bounded(Expression expression, Quantity amount, boolean bare) {
    Rational value = amount.value();
    if (Math.max(value.numerator().bitLength(), value.denominator().bitLength()) > MOST_BITS) {
      if (!isNeeded) {
        return Operand.of(new Quantity(Rational.ONE, amount.dimension()), bare);
      }
      String message = report.quoted(expression) + " comes to a number too long to print";
      report.add(
          Finding.error("number-too-large", report.span(expression), message, "multiply less"));
      return Operand.FAILED;
    }
    return Operand.of(amount, bare);
  }

  /** Bare numbers beside a length are lengths; beside anything else they are numbers. */
  List<Operand> alike(List<Operand> operands) {
    if (operands.stream().allMatch(Operand::bare)) {
      return operands;
    }
    boolean lengths = operands.stream().anyMatch(Operand::isLength);
    return operands.stream()
        .map(o -> lengths ? o.asLength(bareUnit) : new Operand(o.value(), false))
        .toList();
  }

  /** Amounts of one dimension; empty, and a finding at the first that differs, when they do. */
  private List<Quantity> amounts(List<Expression> expressions, List<Operand> operands) {
    List<Quantity> amounts = new ArrayList<>();
    for (int i = 0; i < operands.size(); i++) {
      Quantity amount = amount(expressions.get(i), operands.get(i));
      if (amount != null) {
        amounts.add(amount);
      }
    }
    if (amounts.size() < operands.size()) {
      return List.of();
    }
    for (int i = 1; i < amounts.size(); i++) {
      if (amounts.get(i).dimension() != amounts.get(0).dimension()) {
        String message =
            report.said(expressions.get(i), amounts.get(i))
                + ", "
                + report.said(expressions.get(0), amounts.get(0));
        report.add(
            Finding.error(
                "wrong-unit",
                report.span(expressions.get(i)),
                message,
                "give amounts of one kind"));
        return List.of();
      }
    }
    return amounts;
  }

  @Nullable Quantity amount(Expression expression, Operand operand) {
    if (operand.truth() != null) {
      String message = report.quoted(expression) + " is a condition, and an amount is needed";
      String hint = "choose by it: `if(" + report.source(expression) + ", ..., ...)`";
      report.add(Finding.error("wrong-unit", report.span(expression), message, hint));
    }
    return operand.quantity();
  }

  @Nullable Boolean truth(Expression expression) {
    Operand operand = expression.match(this);
    if (operand.quantity() != null) {
      String message = report.quoted(expression) + " is an amount, and a condition is needed";
      report.add(
          Finding.error(
              "wrong-unit", report.span(expression), message, "compare it with another amount"));
    }
    return operand.truth();
  }

  /** The same for a branch that is not taken. */
  Reckoning unneeded() {
    return new Reckoning(report, bareUnit, values, false);
  }
}
