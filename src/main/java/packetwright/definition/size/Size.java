package packetwright.definition.size;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.text.formula.Derivation;
import packetwright.text.measure.Quantity;

/**
 * A named quantity under one substitution.
 *
 * @param name {@code end_length}, {@code side.length}, {@code side.lid_groove.depth}, {@code
 *     table_saw.kerf}, {@code wall.rough_length}
 * @param kind where it comes from
 * @param value drawn value
 * @param derivation formula and numbers; for a given, the value as written
 * @param about one sentence; empty when the author gave none
 * @param tolerance its own, plus or minus, or none
 * @param low worst case
 * @param high worst case
 * @param isMeasured whether students measure it themselves
 * @param fitted the measured sizes it depends on, itself among them; a cut to it is cut to fit
 * @param from the names its formula uses
 */
public record Size(
    String name,
    Kind kind,
    Quantity value,
    Derivation derivation,
    String about,
    @Nullable Quantity tolerance,
    Quantity low,
    Quantity high,
    boolean isMeasured,
    Set<String> fitted,
    Set<String> from) {
  /** Where a size comes from. */
  public enum Kind {
    GIVEN,
    DERIVED,
    PART,
    SHOP,
    BLANK
  }
}
