package packetwright.definition.shop;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import packetwright.text.measure.Length;
import packetwright.text.source.Located;

/**
 * A machine that the shop has.
 *
 * @param kind trade word, {@code table_saw}
 * @param count how many there are
 * @param values its lengths by name, {@code kerf}, {@code rip_shortest}, {@code hand_distance};
 *     each is also a size, {@code table_saw.kerf}
 */
public record Machine(MachineKind kind, int count, Map<String, Located<Length>> values) {
  /** Keeps its own copy, in the order written. */
  public Machine {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** A value by name, or the given one where the profile does not state it. */
  public Length value(String name, Length otherwise) {
    Located<Length> stated = values.get(name);
    return stated == null ? otherwise : stated.value();
  }

  /** Whether the profile states it. */
  public boolean states(String name) {
    return values.containsKey(name);
  }
}
