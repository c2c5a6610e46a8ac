package packetwright.definition.size;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import packetwright.text.formula.Formula;
import packetwright.text.formula.Value;
import packetwright.text.formula.Values;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Checked;

/** What sizes come to when some of them were measured on the piece. */
final class AsMeasured {
  private final List<Entry> order;
  private final Values drawn;

  /** Takes the sizes in an order in which each stands after those it needs, and their values. */
  AsMeasured(List<Entry> order, Values drawn) {
    this.order = order;
    this.drawn = drawn;
  }

  /** The formula's value; what does not hang on a measured size is as drawn. */
  Checked<Quantity> evaluate(Formula formula, Map<String, Quantity> measured) {
    Map<String, Quantity> moved = new LinkedHashMap<>(measured);
    Values values =
        name -> {
          Quantity there = moved.get(name);
          return there == null ? drawn.of(name) : Value.of(there);
        };
    for (Entry entry : order) {
      Formula its = entry.formula();
      boolean hangs = entry.needs().stream().anyMatch(need -> moved.containsKey(need.value()));
      if (its != null && hangs && !measured.containsKey(entry.name().value())) {
        Checked<Quantity> value = its.evaluate(values);
        if (!value.hasValue()) {
          return value;
        }
        moved.put(entry.name().value(), value.value());
      }
    }
    return formula.evaluate(values);
  }
}
