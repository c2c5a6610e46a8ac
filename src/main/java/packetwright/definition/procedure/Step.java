package packetwright.definition.procedure;

import java.util.List;
import packetwright.text.source.Span;

/**
 * One step of the procedure, in the variant that this shop and these options give.
 *
 * @param number from 1, its place in the order of the file
 * @param mark as printed: students' steps are {@code 1}, {@code 2} without gaps, those that the
 *     instructor does before class are {@code P1}, {@code P2}
 * @param id slug of the heading
 * @param title the heading
 * @param at the heading's place
 * @param operations in order
 * @param prose what the student reads
 */
public record Step(
    int number,
    String mark,
    String id,
    String title,
    Span at,
    List<Operation> operations,
    List<Block> prose) {
  /** What the mark of a preparation step begins with. */
  static final String PREPARED = "P";

  /** Keeps its own copies. */
  public Step {
    operations = List.copyOf(operations);
    prose = List.copyOf(prose);
  }

  /** A step that is marked with its number. */
  public Step(
      int number, String id, String title, Span at, List<Operation> operations, List<Block> prose) {
    this(number, Integer.toString(number), id, title, at, operations, prose);
  }

  /** Whether the instructor does it before class: the student's packet leaves it out. */
  public boolean isPreparation() {
    return mark.startsWith(PREPARED);
  }

  /** The same step in another place. */
  Step numbered(int other) {
    return new Step(other, mark, id, title, at, operations, prose);
  }

  /** The same step with another mark. */
  Step marked(String other) {
    return new Step(number, other, id, title, at, operations, prose);
  }

  /** The same step with other operations. */
  public Step with(List<Operation> others) {
    return new Step(number, mark, id, title, at, others, prose);
  }

  /** As findings name it: {@code 9, Trim the front end}, {@code P1, Cut the rough pieces}. */
  public String label() {
    return mark + ", " + title;
  }
}
