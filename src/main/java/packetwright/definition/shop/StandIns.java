package packetwright.definition.shop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/**
 * Sizes of whatever machine does a kind of work in a shop: of the first that it has in the list of
 * those that can. Where it has none of them, a hand tool does the work, which has no least length.
 * What a machine that is there should state and does not is left out, so that a formula that needs
 * it is a finding.
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

  /** Other work, by the name of its size. */
  private static final Map<String, List<Value>> LEAST =
      Map.of(
          "rip_shortest",
          List.of(
              new Value(MachineKind.TABLE_SAW, "rip_shortest"),
              new Value(MachineKind.BAND_SAW, "shortest")),
          "plane_shortest",
          List.of(new Value(MachineKind.PLANER, "shortest")),
          "gauge_shortest",
          List.of(
              new Value(MachineKind.DADO_SET, "gauge_shortest"),
              new Value(MachineKind.TABLE_SAW, "gauge_shortest")));

  static Map<String, Located<Length>> of(Shop shop) {
    Map<String, Located<Length>> sizes = new LinkedHashMap<>();
    Value saw = first(shop, CROSSCUTTING);
    Located<Length> kerf = saw == null ? shop.allowances().get("hand_kerf") : stated(shop, saw);
    if (kerf != null) {
      sizes.put(CROSSCUT_KERF, kerf);
    }
    LEAST.forEach(
        (name, values) -> {
          Value here = first(shop, values);
          Located<Length> size =
              here == null
                  ? new Located<>(Length.ZERO, Span.startOf(shop.name()))
                  : stated(shop, here);
          if (size != null) {
            sizes.put(name, size);
          }
        });
    return sizes;
  }

  private static @Nullable Value first(Shop shop, List<Value> values) {
    return values.stream().filter(v -> shop.has(v.kind())).findFirst().orElse(null);
  }

  private static @Nullable Located<Length> stated(Shop shop, Value value) {
    Machine machine = shop.machine(value.kind());
    return machine == null ? null : machine.values().get(value.name());
  }
}
