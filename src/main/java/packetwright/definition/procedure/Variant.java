package packetwright.definition.procedure;

import java.util.Set;
import packetwright.definition.shop.Shop;

/**
 * What chooses among a procedure's variants.
 *
 * @param shop whose machines decide between passages headed {@code With}
 * @param known names of all the project's options
 * @param chosen options that are on
 */
public record Variant(Shop shop, Set<String> known, Set<String> chosen) {
  /** Keeps its own copies. */
  public Variant {
    known = Set.copyOf(known);
    chosen = Set.copyOf(chosen);
  }
}
