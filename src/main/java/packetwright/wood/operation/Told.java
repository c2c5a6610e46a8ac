package packetwright.wood.operation;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What has been said of a procedure, so that one mistake is said once and not at every step. */
final class Told {
  private final Set<List<String>> said;

  Told() {
    this(Set.of());
  }

  private Told(Set<List<String>> said) {
    this.said = new HashSet<>(said);
  }

  /** The same so far; what is said to one from now on is not said to the other. */
  Told copy() {
    return new Told(said);
  }

  /** Whether this is said for the first time; from now on it is said. */
  boolean isNew(String code, String... about) {
    return said.add(key(code, about));
  }

  /** Whether this has been said. */
  boolean has(String code, String... about) {
    return said.contains(key(code, about));
  }

  private static List<String> key(String code, String... about) {
    return List.of(code, String.join(" ", about));
  }
}
