package packetwright.wood.workpiece;

import java.util.ArrayList;
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
 * @param dryFits pieces that have been put together without glue, one set for each time
 * @param wholes pieces that are glued, nailed or screwed to each other, named or not
 */
public record Bench(
    Map<String, Workpiece> pieces,
    Map<String, List<String>> groups,
    Map<String, String> gone,
    List<Set<String>> dryFits,
    List<Set<String>> wholes) {
  /** Keeps its own copies, in order. */
  public Bench {
    pieces = Collections.unmodifiableMap(new LinkedHashMap<>(pieces));
    groups = Collections.unmodifiableMap(new TreeMap<>(groups));
    gone = Collections.unmodifiableMap(new TreeMap<>(gone));
    dryFits = List.copyOf(dryFits);
    wholes = List.copyOf(wholes);
  }

  public static Bench empty() {
    return new Bench(Map.of(), Map.of(), Map.of(), List.of(), List.of());
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

  /** Whether a piece is glued, nailed or screwed to another. */
  public boolean isJoined(String piece) {
    return wholes.stream().anyMatch(whole -> whole.contains(piece));
  }

  /** Whether all of the pieces have been put together without glue at one time. */
  public boolean isDryFitted(Collection<String> names) {
    return dryFits.stream().anyMatch(fit -> fit.containsAll(names));
  }

  public Bench with(Workpiece piece) {
    Map<String, Workpiece> more = new LinkedHashMap<>(pieces);
    more.put(piece.name(), piece);
    return new Bench(more, groups, gone, dryFits, wholes);
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
    return new Bench(fewer, groups, used, dryFits, wholes);
  }

  public Bench withGroup(String name, List<String> members) {
    Map<String, List<String>> more = new TreeMap<>(groups);
    more.put(name, List.copyOf(members));
    return new Bench(pieces, more, gone, dryFits, wholes);
  }

  public Bench withDryFit(Collection<String> names) {
    List<Set<String>> more = new ArrayList<>(dryFits);
    more.add(Collections.unmodifiableSet(new TreeSet<>(names)));
    return new Bench(pieces, groups, gone, more, wholes);
  }

  /** With pieces that no earlier dry fit counts for any more, since they have been cut. */
  public Bench withoutDryFit(Collection<String> names) {
    List<Set<String>> fewer = new ArrayList<>();
    for (Set<String> fit : dryFits) {
      Set<String> left = new TreeSet<>(fit);
      left.removeAll(names);
      fewer.add(Collections.unmodifiableSet(left));
    }
    return new Bench(pieces, groups, gone, fewer, wholes);
  }

  /** With pieces joined for good; wholes that share a piece become one. */
  public Bench joined(Collection<String> names) {
    Set<String> whole = new TreeSet<>(names);
    List<Set<String>> apart = new ArrayList<>();
    for (Set<String> other : wholes) {
      if (Collections.disjoint(other, whole)) {
        apart.add(other);
      } else {
        whole.addAll(other);
      }
    }
    apart.add(Collections.unmodifiableSet(whole));
    return new Bench(pieces, groups, gone, dryFits, apart);
  }

  /** All that is joined to one of the pieces, the pieces among them. */
  public Set<String> wholeOf(Collection<String> names) {
    Set<String> whole = new TreeSet<>(names);
    wholes.stream().filter(w -> !Collections.disjoint(w, names)).forEach(whole::addAll);
    return Collections.unmodifiableSet(whole);
  }
}
