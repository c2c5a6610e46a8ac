package packetwright.text.formula;

import java.util.List;
import java.util.stream.Stream;

/** The names in an expression, from left to right. */
final class Names implements Expression.Cases<List<Expression.Name>> {
  @Override
  public List<Expression.Name> literal(Expression.Literal literal) {
    return List.of();
  }

  @Override
  public List<Expression.Name> name(Expression.Name name) {
    return List.of(name);
  }

  @Override
  public List<Expression.Name> group(Expression.Group group) {
    return group.inner().match(this);
  }

  @Override
  public List<Expression.Name> prefix(Expression.Prefix prefix) {
    return prefix.operand().match(this);
  }

  @Override
  public List<Expression.Name> infix(Expression.Infix infix) {
    return Stream.of(infix.left(), infix.right()).flatMap(e -> e.match(this).stream()).toList();
  }

  @Override
  public List<Expression.Name> call(Expression.Call call) {
    return call.arguments().stream().flatMap(e -> e.match(this).stream()).toList();
  }
}
