package packetwright.definition.size;

import java.util.Set;
import packetwright.text.formula.Derivation;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;

/**
 * What a formula comes to.
 *
 * @param value drawn value
 * @param derivation formula and numbers
 * @param low worst case
 * @param high worst case
 * @param fitted the measured sizes it depends on
 * @param from the names it uses
 */
public record Evaluated(
    Quantity value,
    Derivation derivation,
    Quantity low,
    Quantity high,
    Set<String> fitted,
    Set<String> from) {
  /** The value as a length; anything else is a bug. */
  public Length length() {
    return value.asLength();
  }
}
