package packetwright.definition.procedure;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.shop.Shop;

/**
 * What chooses among a procedure's variants.
 *
 * @param shop whose machines decide between passages headed {@code With}
 * @param known names of all the project's options, or none where the project could not be read
 * @param chosen options that are on
 */
public record Variant(Shop shop, @Nullable Set<String> known, Set<String> chosen) {
  /** Keeps its own copies. */
  public Variant {
    known = known == null ? null : Set.copyOf(known);
    chosen = Set.copyOf(chosen);
  }
}
