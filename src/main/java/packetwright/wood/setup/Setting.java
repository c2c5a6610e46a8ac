package packetwright.wood.setup;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;

/**
 * What an operation sets on its machine.
 *
 * @param name {@code fence}, {@code height}, {@code stop}, {@code cutter}, {@code passes}, {@code
 *     length}, {@code width}, {@code thickness}, {@code depth}
 * @param value a length, or a count of passes
 * @param datum from where it is measured: {@code near} or {@code far} side of the tooth, or empty
 * @param tolerance plus or minus, or none
 * @param kind whether it bounds a kept surface
 * @param fitted whether the student's own measurement replaces it
 * @param stack what a cutter is put together from: blades, chippers and shims; empty otherwise
 */
public record Setting(
    String name,
    Quantity value,
    String datum,
    @Nullable Length tolerance,
    Kind kind,
    boolean fitted,
    List<Length> stack) {
  /** Keeps its own copy. */
  public Setting {
    stack = List.copyOf(stack);
  }

  /** A setting of a single thing. */
  public Setting(
      String name,
      Quantity value,
      String datum,
      @Nullable Length tolerance,
      Kind kind,
      boolean fitted) {
    this(name, value, datum, tolerance, kind, fitted, List.of());
  }

  /** The same setting at another length. */
  public Setting with(Length length) {
    return new Setting(name, Quantity.of(length), datum, tolerance, kind, fitted, stack);
  }

  /** How a wrong setting would show. */
  public enum Kind {
    /** It bounds a kept surface: 1/64 in off makes a wrong part. */
    BOUND,
    /** It only clears waste. */
    FREE
  }
}
