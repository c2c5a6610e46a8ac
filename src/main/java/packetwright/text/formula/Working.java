package packetwright.text.formula;

import java.util.ArrayList;
import java.util.List;
import packetwright.text.formula.Derivation.Term;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Unit;

/** Writes an expression with numbers for names, each number as the kind that it was taken for. */
final class Working implements Expression.Cases<List<Term>> {
  private final Reckoning reckoning;
  private final Unit bareUnit;

  /** Whether bare numbers here are lengths. */
  private final boolean asLength;

  /** Whether each side of a comparison is written as the one value that it comes to. */
  private final boolean outcome;

  Working(Reckoning reckoning, Unit bareUnit, boolean asLength, boolean outcome) {
    this.reckoning = reckoning;
    this.bareUnit = bareUnit;
    this.asLength = asLength;
    this.outcome = outcome;
  }

  @Override
  public List<Term> literal(Expression.Literal literal) {
    return value(reckoning.literal(literal));
  }

  @Override
  public List<Term> name(Expression.Name name) {
    Operand operand = reckoning.name(name);
    return operand.quantity() == null ? text(name.name()) : value(operand);
  }

  @Override
  public List<Term> group(Expression.Group group) {
    return row(text("("), group.inner().match(this), text(")"));
  }

  @Override
  public List<Term> prefix(Expression.Prefix prefix) {
    return row(text(prefix.isNot() ? "not " : "−"), prefix.operand().match(this));
  }

  @Override
  public List<Term> infix(Expression.Infix infix) {
    List<Term> sign = text(" " + infix.operator().printed() + " ");
    if (infix.operator().isLogic()) {
      return row(infix.left().match(this), sign, infix.right().match(this));
    }
    if (infix.operator().multiplies()) {
      boolean length = asLength && infix.match(reckoning).bare();
      return row(infix.left().match(as(length)), sign, infix.right().match(as(false)));
    }
    List<Expression> sides = List.of(infix.left(), infix.right());
    if (infix.operator().isComparison() && outcome) {
      List<Operand> both =
          reckoning.alike(sides.stream().map(side -> side.match(reckoning)).toList());
      return row(as(false).value(both.get(0)), sign, as(false).value(both.get(1)));
    }
    Working alike = as(lengthsAmong(sides));
    return row(infix.left().match(alike), sign, infix.right().match(alike));
  }

  @Override
  public List<Term> call(Expression.Call call) {
    boolean chooses = call.function() == Function.IF;
    List<Expression> amounts = call.arguments().subList(chooses ? 1 : 0, call.arguments().size());
    Working alike = as(lengthsAmong(amounts));
    List<Term> row = new ArrayList<>(text(call.function().word() + "("));
    for (int i = 0; i < call.arguments().size(); i++) {
      row.addAll(text(i == 0 ? "" : ", "));
      row.addAll(call.arguments().get(i).match(chooses && i == 0 ? as(false) : alike));
    }
    row.addAll(text(")"));
    return row;
  }

  private boolean lengthsAmong(List<Expression> expressions) {
    List<Operand> operands = expressions.stream().map(e -> e.match(reckoning)).toList();
    return operands.stream().anyMatch(Operand::isLength)
        || (asLength && operands.stream().allMatch(Operand::bare));
  }

  private Working as(boolean length) {
    return new Working(reckoning, bareUnit, length, outcome);
  }

  private List<Term> value(Operand operand) {
    Quantity quantity = (asLength ? operand.asLength(bareUnit) : operand).quantity();
    return quantity == null ? text("?") : List.of(new Term("", quantity));
  }

  private static List<Term> text(String text) {
    return text.isEmpty() ? List.of() : List.of(new Term(text, null));
  }

  @SafeVarargs
  private static List<Term> row(List<Term>... parts) {
    List<Term> row = new ArrayList<>();
    for (List<Term> part : parts) {
      row.addAll(part);
    }
    return row;
  }
}
