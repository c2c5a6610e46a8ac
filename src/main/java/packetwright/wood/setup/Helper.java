package packetwright.wood.setup;

import java.util.List;
import packetwright.definition.procedure.Operation.Control;
import packetwright.text.measure.Length;

/**
 * A thing that is made to help with a set-up: a test piece, a block, a backer, a marked stick.
 *
 * @param control what it is
 * @param count how many one station needs
 * @param sizes in the order said; empty where any will do
 * @param check how to see that the set-up is right; none for what is only used
 */
public record Helper(Control control, int count, List<Size> sizes, List<Check> check) {
  /** Keeps its own copies. */
  public Helper {
    sizes = List.copyOf(sizes);
    check = List.copyOf(check);
  }

  /**
   * One of its sizes.
   *
   * @param name {@code length}, {@code width}, {@code thickness}, {@code fence}, {@code at}, {@code
   *     mark}, {@code recess}, {@code height}
   * @param isLeast whether it may be more
   * @param value of it
   */
  public record Size(String name, boolean isLeast, Length value) {}

  /**
   * A look that says go or no go.
   *
   * @param name {@code slides}, {@code flush}, {@code step}, {@code gauge}, {@code measure}
   * @param value that goes with it; zero where none does
   */
  public record Check(String name, Length value) {}

  /** Whether it is cut from the batch that the work is cut from. */
  public boolean isTestPiece() {
    return control == Control.TEST_PIECE;
  }
}
