package packetwright.text.formula;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Quantity;

/**
 * How a value came about: the formula, and the same with numbers for names.
 *
 * @param formula as written
 * @param numbers the formula with each name replaced by its value
 */
public record Derivation(String formula, List<Term> numbers) {
  /** Keeps its own copy. */
  public Derivation {
    numbers = List.copyOf(numbers);
  }

  /**
   * A stretch of the formula with numbers.
   *
   * @param text signs, parentheses and function names as printed; empty where a value stands
   * @param value that replaced a name or stood there, or none
   */
  public record Term(String text, @Nullable Quantity value) {}
}
