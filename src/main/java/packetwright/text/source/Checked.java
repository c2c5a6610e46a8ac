package packetwright.text.source;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a stage made of its input: a value, or none when errors stood in the way; and its findings.
 *
 * @param valueOrNull absent only when an error is among the findings
 * @param findings in the order found
 */
public record Checked<T>(@Nullable T valueOrNull, List<Finding> findings) {
  /** Refuses a missing value that nothing explains. */
  public Checked {
    findings = List.copyOf(findings);
    if (valueOrNull == null && findings.stream().noneMatch(Finding::isError)) {
      throw new IllegalArgumentException("no value and no error: " + findings);
    }
  }

  /** A value with nothing to remark. */
  public static <T> Checked<T> of(T value) {
    return new Checked<>(value, List.of());
  }

  /** No value, for one reason. */
  public static <T> Checked<T> failed(Finding finding) {
    return new Checked<>(null, List.of(finding));
  }

  /** Whether there is a value and no error beside it. */
  public boolean isGood() {
    return valueOrNull != null && findings.stream().noneMatch(Finding::isError);
  }

  /** Whether there is a value, with or without errors beside it. */
  public boolean hasValue() {
    return valueOrNull != null;
  }

  /** The value; asking for a missing one is a bug. */
  public T value() {
    T value = valueOrNull;
    if (value == null) {
      throw new NoSuchElementException("no value: " + findings);
    }
    return value;
  }

  /** The value turned into another; findings are kept. */
  public <R> Checked<R> map(Function<? super T, ? extends R> change) {
    T value = valueOrNull;
    return new Checked<>(value == null ? null : change.apply(value), findings);
  }
}
