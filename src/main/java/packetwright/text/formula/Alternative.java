package packetwright.text.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What must be so at once for a condition to hold: one of the ways in which it can.
 *
 * @param truths by name, each as it must be
 * @param bounds of amounts; what a linear sum cannot say is left out
 */
public record Alternative(Map<String, Boolean> truths, List<Bound> bounds) {
  /** Nothing at all need be so. */
  public static final Alternative ANY = new Alternative(Map.of(), List.of());

  /** Keeps its own copies, truths sorted. */
  public Alternative {
    truths = Collections.unmodifiableMap(new TreeMap<>(truths));
    bounds = List.copyOf(bounds);
  }

  static Alternative truth(String name, boolean holds) {
    return new Alternative(Map.of(name, holds), List.of());
  }

  static Alternative bound(Bound bound) {
    return new Alternative(Map.of(), List.of(bound));
  }

  /** Both at once; none where they want a truth both ways. */
  public @Nullable Alternative and(Alternative other) {
    Map<String, Boolean> both = new TreeMap<>(truths);
    for (Map.Entry<String, Boolean> truth : other.truths.entrySet()) {
      Boolean own = both.put(truth.getKey(), truth.getValue());
      if (own != null && !own.equals(truth.getValue())) {
        return null;
      }
    }
    List<Bound> all = new ArrayList<>(bounds);
    all.addAll(other.bounds);
    return new Alternative(both, all);
  }

  /** Whether there are amounts that keep all the bounds. */
  public boolean hasAmounts() {
    TreeSet<String> names = new TreeSet<>();
    bounds.forEach(b -> names.addAll(b.sum().factors().keySet()));
    List<String> variables = List.copyOf(names);
    return Inequality.isPossible(bounds.stream().map(b -> b.over(variables)).toList());
  }
}
