package packetwright.text.formula;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Quantity;

/** What the names in a formula stand for. */
@FunctionalInterface
public interface Values {
  /** The value of a name, or none when there is no such name. */
  @Nullable Value of(String name);

  /** Every name there is, for near misses; may be empty. */
  default Collection<String> names() {
    return List.of();
  }

  /** No names at all. */
  static Values none() {
    return name -> null;
  }

  /** Names that all stand for amounts. */
  static Values amounts(Amounts amounts) {
    return name -> {
      Quantity quantity = amounts.of(name);
      return quantity == null ? null : Value.of(quantity);
    };
  }

  /** Amounts by name. */
  @FunctionalInterface
  interface Amounts {
    /** The amount of a name, or none when there is no such name. */
    @Nullable Quantity of(String name);
  }
}
