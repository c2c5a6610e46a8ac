package packetwright.text.formula;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;

/** What a formula is made of; places are offsets into its text, the end past the last character. */
sealed interface Expression {
  int start();

  int end();

  <R> R match(Cases<R> cases);

  /** One method for each kind of expression. */
  interface Cases<R> {
    R literal(Literal literal);

    R name(Name name);

    R group(Group group);

    R prefix(Prefix prefix);

    R infix(Infix infix);

    R call(Call call);
  }

  /** A number as written; without a unit it takes the one that its neighbours need. */
  record Literal(int start, int end, Rational number, @Nullable Unit unit) implements Expression {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.literal(this);
    }
  }

  /** What a size or a truth is called. */
  record Name(int start, int end, String name) implements Expression {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.name(this);
    }
  }

  /** Parentheses; kept, so that the working looks as its author wrote it. */
  record Group(int start, int end, Expression inner) implements Expression {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.group(this);
    }
  }

  /** A minus sign, or {@code not}. */
  record Prefix(int start, boolean isNot, Expression operand) implements Expression {
    @Override
    public int end() {
      return operand.end();
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.prefix(this);
    }
  }

  /** Two operands and the sign between them. */
  record Infix(Expression left, Token sign, Operator operator, Expression right)
      implements Expression {
    @Override
    public int start() {
      return left.start();
    }

    @Override
    public int end() {
      return right.end();
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.infix(this);
    }
  }

  /** A function of its arguments, as many as it takes. */
  record Call(int start, int end, Function function, List<Expression> arguments)
      implements Expression {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.call(this);
    }
  }
}
