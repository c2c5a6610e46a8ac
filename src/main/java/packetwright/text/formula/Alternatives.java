package packetwright.text.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import packetwright.text.formula.Bound.Linear;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;

/** The ways in which a condition can hold, or fail: its disjunctive normal form. */
final class Alternatives implements Expression.Cases<List<Alternative>> {
  /** Most ways that are told apart; beyond them nothing is known. */
  private static final int MOST = 256;

  private static final List<Alternative> UNKNOWN = List.of(Alternative.ANY);

  private final Report report;
  private final Unit bareUnit;
  private final Reckoning reckoning;
  private final Predicate<String> isOpen;

  /** Whether it shall hold, or fail. */
  private final boolean isWanted;

  Alternatives(
      Report report,
      Unit bareUnit,
      Reckoning reckoning,
      Predicate<String> isOpen,
      boolean isWanted) {
    this.report = report;
    this.bareUnit = bareUnit;
    this.reckoning = reckoning;
    this.isOpen = isOpen;
    this.isWanted = isWanted;
  }

  @Override
  public List<Alternative> literal(Expression.Literal literal) {
    return UNKNOWN;
  }

  @Override
  public List<Alternative> name(Expression.Name name) {
    if (isOpen.test(name.name())) {
      return List.of(Alternative.truth(name.name(), isWanted));
    }
    Boolean holds = name.match(reckoning).truth();
    return holds == null || holds == isWanted ? UNKNOWN : List.of();
  }

  @Override
  public List<Alternative> group(Expression.Group group) {
    return group.inner().match(this);
  }

  @Override
  public List<Alternative> prefix(Expression.Prefix prefix) {
    return prefix.isNot() ? prefix.operand().match(wanting(!isWanted)) : UNKNOWN;
  }

  private Alternatives wanting(boolean other) {
    return new Alternatives(report, bareUnit, reckoning, isOpen, other);
  }

  @Override
  public List<Alternative> infix(Expression.Infix infix) {
    if (infix.operator().isComparison()) {
      return comparison(infix);
    }
    if (!infix.operator().isLogic()) {
      return UNKNOWN;
    }
    List<Alternative> left = infix.left().match(this);
    List<Alternative> right = infix.right().match(this);
    return (infix.operator() == Operator.AND) == isWanted ? both(left, right) : either(left, right);
  }

  @Override
  public List<Alternative> call(Expression.Call call) {
    if (call.function() != Function.IF) {
      return UNKNOWN;
    }
    Expression condition = call.arguments().get(0);
    return either(
        both(condition.match(wanting(true)), call.arguments().get(1).match(this)),
        both(condition.match(wanting(false)), call.arguments().get(2).match(this)));
  }

  /** The ways in which both can be so. */
  static List<Alternative> both(List<Alternative> left, List<Alternative> right) {
    List<Alternative> both = new ArrayList<>();
    for (Alternative one : left) {
      for (Alternative other : right) {
        Alternative together = one.and(other);
        if (together != null) {
          both.add(together);
        }
      }
    }
    return both.size() > MOST ? UNKNOWN : both;
  }

  private static List<Alternative> either(List<Alternative> left, List<Alternative> right) {
    List<Alternative> either = new ArrayList<>(left);
    either.addAll(right);
    return either.size() > MOST ? UNKNOWN : either;
  }

  private List<Alternative> comparison(Expression.Infix infix) {
    Linear difference = difference(infix, Rational.of(-1));
    // Below, at or above nothing: each of the three is a way, when the operator is so there.
    List<Alternative> ways = new ArrayList<>();
    boolean below = infix.operator().holds(-1) == isWanted;
    boolean at = infix.operator().holds(0) == isWanted;
    boolean above = infix.operator().holds(1) == isWanted;
    if (below) {
      ways.add(Alternative.bound(new Bound(difference, !at)));
    }
    if (above) {
      ways.add(Alternative.bound(new Bound(difference.times(Rational.of(-1)), !at)));
    }
    if (at && !below && !above) {
      Bound most = new Bound(difference, false);
      Bound least = new Bound(difference.times(Rational.of(-1)), false);
      ways.add(new Alternative(Alternative.ANY.truths(), List.of(most, least)));
    }
    return ways;
  }

  /** The left side and the right, times a factor; bare numbers beside a length are lengths. */
  private Linear difference(Expression.Infix infix, Rational ofRight) {
    boolean lengths =
        infix.left().match(reckoning).isLength() || infix.right().match(reckoning).isLength();
    Linear left = scaled(infix.left(), lengths);
    Linear right = scaled(infix.right(), lengths);
    return left.plus(right.times(ofRight));
  }

  private Linear scaled(Expression side, boolean asLength) {
    Linear sum = side.match(new Sums());
    return asLength && side.match(reckoning).bare() ? sum.times(bareUnit.inBase()) : sum;
  }

  /**
   * Amounts as linear sums. What is none stands for an amount of its own, called as it is written,
   * of which nothing is known.
   */
  private final class Sums implements Expression.Cases<Linear> {
    @Override
    public Linear literal(Expression.Literal literal) {
      return drawn(literal);
    }

    @Override
    public Linear name(Expression.Name name) {
      return isOpen.test(name.name()) ? Linear.of(name.name()) : drawn(name);
    }

    private Linear unknown(Expression expression) {
      return Linear.of(report.source(expression));
    }

    private Linear drawn(Expression expression) {
      var amount = expression.match(reckoning).quantity();
      return amount == null ? unknown(expression) : Linear.of(amount.value());
    }

    @Override
    public Linear group(Expression.Group group) {
      return group.inner().match(this);
    }

    @Override
    public Linear prefix(Expression.Prefix prefix) {
      return prefix.operand().match(this).times(Rational.of(-1));
    }

    @Override
    public Linear infix(Expression.Infix infix) {
      return switch (infix.operator()) {
        case PLUS -> difference(infix, Rational.ONE);
        case MINUS -> difference(infix, Rational.of(-1));
        case TIMES, OVER -> product(infix);
        default -> unknown(infix);
      };
    }

    private Linear product(Expression.Infix infix) {
      Linear left = infix.left().match(this);
      Linear right = infix.right().match(this);
      if (infix.operator() == Operator.OVER) {
        return right.isConstant() && right.constant().signum() != 0
            ? left.times(Rational.ONE.dividedBy(right.constant()))
            : unknown(infix);
      }
      if (right.isConstant()) {
        return left.times(right.constant());
      }
      return left.isConstant() ? right.times(left.constant()) : unknown(infix);
    }

    @Override
    public Linear call(Expression.Call call) {
      return unknown(call);
    }
  }
}
