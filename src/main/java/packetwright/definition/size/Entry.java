package packetwright.definition.size;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.formula.Formula;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Located;

/**
 * A size before evaluation.
 *
 * @param fixed its value, or none when a formula gives it
 * @param formula none when its value is fixed, or when it cannot be read
 * @param tolerance its own, or none
 */
record Entry(
    Located<String> name,
    Size.Kind kind,
    @Nullable Quantity fixed,
    @Nullable Formula formula,
    @Nullable Quantity tolerance,
    boolean isMeasured,
    String about) {

  /** The names that it needs, wherever they stand. */
  List<Located<String>> needs() {
    Formula formula = formula();
    return formula == null ? List.of() : formula.places();
  }

  /** Whether it is the length, width or thickness of a part. */
  boolean isExtent() {
    return kind == Size.Kind.PART && name.value().matches("[^.]+\\.(length|width|thickness)");
  }
}
