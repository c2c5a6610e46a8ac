package packetwright.text.formula;

import java.util.List;
import java.util.stream.Stream;

/** Every part of an expression, itself first. */
final class Nodes implements Expression.Cases<Stream<Expression>> {
  @Override
  public Stream<Expression> literal(Expression.Literal literal) {
    return Stream.of(literal);
  }

  @Override
  public Stream<Expression> name(Expression.Name name) {
    return Stream.of(name);
  }

  @Override
  public Stream<Expression> group(Expression.Group group) {
    return with(group, List.of(group.inner()));
  }

  @Override
  public Stream<Expression> prefix(Expression.Prefix prefix) {
    return with(prefix, List.of(prefix.operand()));
  }

  @Override
  public Stream<Expression> infix(Expression.Infix infix) {
    return with(infix, List.of(infix.left(), infix.right()));
  }

  @Override
  public Stream<Expression> call(Expression.Call call) {
    return with(call, call.arguments());
  }

  private Stream<Expression> with(Expression whole, List<Expression> parts) {
    return Stream.concat(Stream.of(whole), parts.stream().flatMap(part -> part.match(this)));
  }
}
