package packetwright.definition.size;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/** Puts sizes so that each stands after those it needs, without recursion, however many. */
final class Order {
  /** Longest chain that a message spells out. */
  private static final int MOST_NAMED = 10;

  private final Map<String, Entry> entries;
  private final Findings findings;

  private Order(Map<String, Entry> entries, Findings findings) {
    this.entries = entries;
    this.findings = findings;
  }

  /** The entries that can be evaluated one after another; a cycle is found and left out. */
  static List<Entry> of(Map<String, Entry> entries, Findings findings) {
    return new Order(entries, findings).sorted();
  }

  /** Kahn (1962): take what waits for nothing, then see what waited for it. */
  private List<Entry> sorted() {
    Map<String, Set<String>> waiting = new LinkedHashMap<>();
    Map<String, List<String>> wanted = new LinkedHashMap<>();
    Deque<String> free = new ArrayDeque<>();
    for (Map.Entry<String, Entry> entry : entries.entrySet()) {
      Set<String> needs = known(entry.getValue());
      waiting.put(entry.getKey(), needs);
      needs.forEach(n -> wanted.computeIfAbsent(n, k -> new ArrayList<>()).add(entry.getKey()));
      if (needs.isEmpty()) {
        free.add(entry.getKey());
      }
    }
    List<Entry> sorted = new ArrayList<>();
    while (!free.isEmpty()) {
      String name = free.remove();
      waiting.remove(name);
      sorted.add(entry(name));
      for (String other : wanted.getOrDefault(name, List.of())) {
        Set<String> left = Objects.requireNonNull(waiting.get(other));
        left.remove(name);
        if (left.isEmpty()) {
          free.add(other);
        }
      }
    }
    findCycles(waiting);
    return sorted;
  }

  private Set<String> known(Entry entry) {
    Set<String> needs = new LinkedHashSet<>();
    entry.needs().stream().map(Located::value).filter(entries::containsKey).forEach(needs::add);
    return needs;
  }

  /** Every size left waits for another one left; following them comes round to a cycle. */
  private void findCycles(Map<String, Set<String>> waiting) {
    Set<String> seen = new LinkedHashSet<>();
    for (String start : waiting.keySet()) {
      List<String> chain = new ArrayList<>();
      String name = start;
      while (seen.add(name)) {
        chain.add(name);
        name = Objects.requireNonNull(waiting.get(name)).iterator().next();
      }
      int from = chain.indexOf(name);
      if (from >= 0) {
        report(chain.subList(from, chain.size()));
      }
    }
  }

  private void report(List<String> cycle) {
    Entry first = entry(cycle.get(0));
    String next = cycle.get(1 % cycle.size());
    Located<String> place =
        first.needs().stream().filter(n -> n.value().equals(next)).findFirst().orElseThrow();
    findings.add(
        Finding.error(
            "size-cycle",
            place.at(),
            "sizes wait for each other: " + chain(cycle) + " -> " + cycle.get(0),
            "reckon one of them from something else"));
  }

  private static String chain(List<String> cycle) {
    return cycle.size() <= MOST_NAMED
        ? String.join(" -> ", cycle)
        : String.join(" -> ", cycle.subList(0, MOST_NAMED)) + " -> ...";
  }

  private Entry entry(String name) {
    return Objects.requireNonNull(entries.get(name));
  }
}
