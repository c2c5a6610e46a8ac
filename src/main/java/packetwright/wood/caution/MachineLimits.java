package packetwright.wood.caution;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.shop.Machine;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Length;

/**
 * What {@code machine.NAME} stands for: the shop's value, or else our limit.
 *
 * @param machines of the shop
 * @param own our limits, by machine and name
 */
record MachineLimits(Map<MachineKind, Machine> machines, Map<String, Limit> own) {
  /** The value of a name at a tool, or none. */
  @Nullable Length of(@Nullable MachineKind tool, String name) {
    if (tool == null) {
      return null;
    }
    Machine machine = machines.get(tool);
    if (machine != null && machine.states(name)) {
      return machine.value(name, Length.ZERO);
    }
    Limit limit = own.get(tool.word() + "." + name);
    return limit == null ? null : limit.is();
  }

  /** The names that have a value at a tool. */
  List<String> names(MachineKind tool) {
    Machine machine = machines.get(tool);
    Set<String> names = new LinkedHashSet<>(machine == null ? Set.of() : machine.values().keySet());
    own.values().stream()
        .filter(limit -> limit.machine().equals(tool.word()))
        .forEach(limit -> names.add(limit.name()));
    return List.copyOf(names);
  }
}
