package packetwright.text.source;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Collects what one run can find, so that all of it is shown at once. */
public final class Findings {
  private final List<Finding> all = new ArrayList<>();

  /** Adds one. */
  public void add(Finding finding) {
    all.add(finding);
  }

  /** Adds several. */
  public void addAll(List<Finding> findings) {
    all.addAll(findings);
  }

  /** Keeps the findings of a result and hands on its value, which may be missing. */
  public <T> @Nullable T take(Checked<T> checked) {
    all.addAll(checked.findings());
    return checked.valueOrNull();
  }

  /** Whether any of them stops the packet. */
  public boolean hasErrors() {
    return all.stream().anyMatch(Finding::isError);
  }

  /** What was found so far, in the order found. */
  public List<Finding> list() {
    return List.copyOf(all);
  }

  /** The value when nothing found stops the packet, none otherwise. */
  public <T> Checked<T> checked(@Nullable T value) {
    return new Checked<>(hasErrors() ? null : value, all);
  }
}
