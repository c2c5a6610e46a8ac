package packetwright.text.formula;

import java.util.ArrayList;
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
  /** Keeps its own copy, neighbouring signs as one. */
  public Derivation {
    numbers = joined(numbers);
  }

  private static List<Term> joined(List<Term> numbers) {
    List<Term> joined = new ArrayList<>();
    for (Term term : numbers) {
      int last = joined.size() - 1;
      if (last >= 0 && term.value() == null && joined.get(last).value() == null) {
        joined.set(last, new Term(joined.get(last).text() + term.text(), null));
      } else {
        joined.add(term);
      }
    }
    return List.copyOf(joined);
  }

  /**
   * A stretch of the formula with numbers.
   *
   * @param text signs, parentheses and function names as printed; empty where a value stands
   * @param value that replaced a name or stood there, or none
   */
  public record Term(String text, @Nullable Quantity value) {}
}
