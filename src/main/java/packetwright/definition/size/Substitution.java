package packetwright.definition.size;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import packetwright.definition.project.Choice;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Located;

/**
 * What stands in place of a project's own givens.
 *
 * @param values by the names of givens
 * @param rows by the names of givens that are chosen from tables
 */
public record Substitution(
    Map<String, Located<Quantity>> values, Map<String, Located<String>> rows) {
  /** The project as its author left it. */
  public static final Substitution NONE = new Substitution(Map.of(), Map.of());

  /** Keeps its own copies. */
  public Substitution {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    rows = Collections.unmodifiableMap(new LinkedHashMap<>(rows));
  }

  /** Values alone. */
  public static Substitution of(Map<String, Located<Quantity>> values) {
    return new Substitution(values, Map.of());
  }

  /** The row of a table that is chosen. */
  public Located<String> row(Choice choice) {
    return rows.getOrDefault(choice.name().value(), choice.row());
  }
}
