package packetwright.definition.procedure;

import java.util.List;
import packetwright.text.source.Span;

/**
 * One step of the procedure, in the variant that this shop and these options give.
 *
 * @param number from 1, as printed
 * @param id slug of the heading
 * @param title the heading
 * @param at the heading's place
 * @param operations in order
 * @param prose what the student reads
 */
public record Step(
    int number, String id, String title, Span at, List<Operation> operations, List<Block> prose) {
  /** Keeps its own copies. */
  public Step {
    operations = List.copyOf(operations);
    prose = List.copyOf(prose);
  }

  /** As findings name it: {@code 9, Trim the front end}. */
  public String label() {
    return number + ", " + title;
  }
}
