package packetwright.definition.project;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * When a row of a project stands: {@code if: NAME} and {@code unless: NAME}.
 *
 * @param allOf options that must be on, every one
 * @param noneOf options of which none may be on
 */
public record Condition(Set<String> allOf, Set<String> noneOf) {
  /** Of a row that stands whatever is chosen. */
  public static final Condition ALWAYS = new Condition(Set.of(), Set.of());

  /** Keeps its own copies, in the order written. */
  public Condition {
    allOf = Collections.unmodifiableSet(new LinkedHashSet<>(allOf));
    noneOf = Collections.unmodifiableSet(new LinkedHashSet<>(noneOf));
  }

  /** Whether it holds with those options on, and no other. */
  public boolean holds(Set<String> on) {
    return on.containsAll(allOf) && Collections.disjoint(on, noneOf);
  }

  /** What holds where both hold. */
  Condition and(Condition other) {
    Set<String> all = new LinkedHashSet<>(allOf);
    all.addAll(other.allOf);
    Set<String> none = new LinkedHashSet<>(noneOf);
    none.addAll(other.noneOf);
    return new Condition(all, none);
  }
}
