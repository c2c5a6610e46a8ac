package packetwright.definition.shop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/**
 * Sizes of whatever machines do a kind of work in a shop. Where it has none of them, a hand tool
 * does the work, which has no least length. What a machine that is there should state and does not
 * is left out, so that a formula that needs it is a finding.
 */
final class StandIns {
  /** Of the saw that cuts boards to length. */
  static final String CROSSCUT_KERF = "crosscut_kerf";

  private StandIns() {}

  /**
   * A value of a machine.
   *
   * @param kind of the machine
   * @param name of the value, {@code rip_shortest}
   */
  private record Value(MachineKind kind, String name) {}

  /** The saws that cut to length, the usual one first. */
  private static final List<Value> CROSSCUTTING =
      List.of(new Value(MachineKind.MITER_SAW, "kerf"), new Value(MachineKind.TABLE_SAW, "kerf"));

  /**
   * Other work, by the name of its size; where a piece goes through several machines, the greatest
   * counts.
   */
  private static final Map<String, List<Value>> LEAST =
      Map.of(
          "gauge_shortest", List.of(new Value(MachineKind.DADO_SET, "gauge_shortest")),
          "held_shortest", List.of(new Value(MachineKind.MITER_SAW, "held_shortest")),
          "mill_shortest",
              List.of(
                  new Value(MachineKind.JOINTER, "shortest"),
                  new Value(MachineKind.PLANER, "shortest")),
          "rip_shortest", List.of(new Value(MachineKind.TABLE_SAW, "rip_shortest")));

  static Map<String, Located<Length>> of(Shop shop) {
    Map<String, Located<Length>> sizes = new LinkedHashMap<>();
    Value saw = first(shop, CROSSCUTTING);
    Located<Length> kerf = saw == null ? shop.allowances().get("hand_kerf") : stated(shop, saw);
    if (kerf != null) {
      sizes.put(CROSSCUT_KERF, kerf);
    }
    LEAST.forEach(
        (name, values) -> {
          Located<Length> least = greatest(shop, values);
          if (least != null) {
            sizes.put(name, least);
          }
        });
    return sizes;
  }

  private static @Nullable Value first(Shop shop, List<Value> values) {
    return values.stream().filter(v -> shop.has(v.kind())).findFirst().orElse(null);
  }

  /** Of those that the shop has; zero where it has none, nothing where one does not say. */
  private static @Nullable Located<Length> greatest(Shop shop, List<Value> values) {
    Located<Length> greatest = new Located<>(Length.ZERO, Span.startOf(shop.name()));
    for (Value value : values) {
      Located<Length> stated = shop.has(value.kind()) ? stated(shop, value) : greatest;
      if (stated == null) {
        return null;
      }
      greatest = stated.value().isMore(greatest.value()) ? stated : greatest;
    }
    return greatest;
  }

  private static @Nullable Located<Length> stated(Shop shop, Value value) {
    Machine machine = shop.machine(value.kind());
    return machine == null ? null : machine.values().get(value.name());
  }
}
