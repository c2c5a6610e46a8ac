package packetwright.text.formula;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The signs between two operands, from the loosest to the tightest. */
enum Operator {
  OR("or", "or", 1),
  AND("and", "and", 2),
  LESS("<", "<", 3),
  AT_MOST("<=", "≤", 3),
  EQUAL("=", "=", 3),
  UNEQUAL("!=", "≠", 3),
  AT_LEAST(">=", "≥", 3),
  MORE(">", ">", 3),
  PLUS("+", "+", 4),
  MINUS("-", "−", 4),
  TIMES("*", "×", 5),
  OVER("/", "÷", 5);

  /** How tightly a comparison binds: {@code not} takes a whole one. */
  static final int COMPARISON = 3;

  /** Tighter than every sign between operands. */
  static final int TIGHTEST = 6;

  private final String written;
  private final String printed;
  private final int precedence;

  Operator(String written, String printed, int precedence) {
    this.written = written;
    this.printed = printed;
    this.precedence = precedence;
  }

  static @Nullable Operator of(Token token) {
    return token.kind() == Token.Kind.NUMBER
        ? null
        : Arrays.stream(values())
            .filter(o -> o.written.equals(token.text()))
            .findFirst()
            .orElse(null);
  }

  String printed() {
    return printed;
  }

  int precedence() {
    return precedence;
  }

  boolean isLogic() {
    return precedence < COMPARISON;
  }

  boolean isComparison() {
    return precedence == COMPARISON;
  }

  boolean multiplies() {
    return this == TIMES || this == OVER;
  }

  /** Whether it is true of how the left compares to the right. */
  boolean holds(int comparison) {
    return switch (this) {
      case LESS -> comparison < 0;
      case AT_MOST -> comparison <= 0;
      case EQUAL -> comparison == 0;
      case UNEQUAL -> comparison != 0;
      case AT_LEAST -> comparison >= 0;
      case MORE -> comparison > 0;
      default -> throw new IllegalStateException(this + " compares nothing");
    };
  }
}
