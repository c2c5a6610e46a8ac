package packetwright.wood.workpiece;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import packetwright.wood.part.Part;

/**
 * Everything in the shop at a moment of the procedure.
 *
 * @param pieces by name, in the order they came into being
 * @param groups pieces that are glued together, by the name of the whole
 * @param gone names that no longer stand for a piece, with the step that used them up
 * @param dryFitted pieces that have been put together without glue
 */
public record Bench(
    Map<String, Workpiece> pieces,
    Map<String, List<String>> groups,
    Map<String, String> gone,
    Set<String> dryFitted) {
  /** Keeps its own copies, in order. */
  public Bench {
    pieces = Collections.unmodifiableMap(new LinkedHashMap<>(pieces));
    groups = Collections.unmodifiableMap(new TreeMap<>(groups));
    gone = Collections.unmodifiableMap(new TreeMap<>(gone));
    dryFitted = Collections.unmodifiableSet(new TreeSet<>(dryFitted));
  }

  public static Bench empty() {
    return new Bench(Map.of(), Map.of(), Map.of(), Set.of());
  }

  public @Nullable Workpiece piece(String name) {
    return pieces.get(name);
  }

  /** The pieces that a target stands for: itself, all of a part's pieces, or a glued whole. */
  public List<Workpiece> named(String target) {
    List<String> members = groups.get(target);
    if (members != null) {
      return members.stream().map(this::piece).filter(java.util.Objects::nonNull).toList();
    }
    return pieces.values().stream()
        .filter(p -> p.name().equals(target) || Part.nameOf(p.name()).equals(target))
        .toList();
  }

  /** The glued whole that holds a piece, or none. */
  public @Nullable String wholeWith(String piece) {
    return groups.entrySet().stream()
        .filter(g -> g.getValue().contains(piece))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(null);
  }

  public Bench with(Workpiece piece) {
    Map<String, Workpiece> more = new LinkedHashMap<>(pieces);
    more.put(piece.name(), piece);
    return new Bench(more, groups, gone, dryFitted);
  }

  public Bench withAll(Collection<Workpiece> changed) {
    Bench bench = this;
    for (Workpiece piece : changed) {
      bench = bench.with(piece);
    }
    return bench;
  }

  public Bench without(String name, String step) {
    Map<String, Workpiece> fewer = new LinkedHashMap<>(pieces);
    fewer.remove(name);
    Map<String, String> used = new TreeMap<>(gone);
    used.put(name, step);
    return new Bench(fewer, groups, used, dryFitted);
  }

  public Bench withGroup(String name, List<String> members) {
    Map<String, List<String>> more = new TreeMap<>(groups);
    more.put(name, List.copyOf(members));
    return new Bench(pieces, more, gone, dryFitted);
  }

  public Bench withDryFitted(Collection<String> names) {
    Set<String> more = new TreeSet<>(dryFitted);
    more.addAll(names);
    return new Bench(pieces, groups, gone, more);
  }
}
