package packetwright.definition.size;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.text.formula.Derivation;
import packetwright.text.formula.Formula;
import packetwright.text.formula.Value;
import packetwright.text.formula.Values;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rule;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/** Evaluates sizes one after another, tolerances left aside. */
final class AsDrawn implements Values {
  private final Map<String, Entry> entries;
  private final Rule rule;
  private final Findings findings;
  private final List<Entry> drawn = new ArrayList<>();
  private final Map<String, Quantity> values = new LinkedHashMap<>();
  private final Map<String, Set<String>> fitted = new LinkedHashMap<>();

  AsDrawn(Map<String, Entry> entries, Rule rule, Findings findings) {
    this.entries = entries;
    this.rule = rule;
    this.findings = findings;
  }

  @Override
  public @Nullable Value of(String name) {
    Quantity value = values.get(name);
    return value == null ? null : Value.of(value);
  }

  @Override
  public Set<String> names() {
    return entries.keySet();
  }

  /** The entries that have a value, each after those it needs. */
  List<Entry> inOrder() {
    return drawn;
  }

  /** What the entries with a value make, in the order of the file. */
  List<Size> sizes(WorstCase worstCase) {
    return entries.values().stream()
        .filter(entry -> values.containsKey(entry.name().value()))
        .map(entry -> size(entry, worstCase))
        .toList();
  }

  /** Evaluates one; those it needs were added before, or have findings of their own. */
  void add(Entry entry) {
    boolean hopeless =
        entry.needs().stream()
            .map(Located::value)
            .anyMatch(need -> entries.containsKey(need) && !values.containsKey(need));
    hopeless |= MissingMachines.report(entry.needs(), entries.keySet(), findings);
    Quantity value = hopeless ? null : value(entry);
    if (value != null && isSound(entry, value)) {
      String name = entry.name().value();
      drawn.add(entry);
      values.put(name, value);
      Set<String> measured = new LinkedHashSet<>();
      entry.needs().forEach(need -> measured.addAll(fitted.getOrDefault(need.value(), Set.of())));
      if (entry.isMeasured()) {
        measured.add(name);
      }
      fitted.put(name, measured);
    }
  }

  private @Nullable Quantity value(Entry entry) {
    Formula formula = entry.formula();
    return formula == null ? entry.fixed() : findings.take(formula.evaluate(this));
  }

  private boolean isSound(Entry entry, Quantity value) {
    Formula formula = entry.formula();
    String name = "`" + entry.name().value() + "`";
    if (formula == null) {
      return true;
    }
    if (entry.kind() == Size.Kind.PART && value.dimension() != Dimension.LENGTH) {
      String message =
          name + " comes to " + value.dimension().phrase() + ", and a length is needed";
      findings.add(
          Finding.error("wrong-unit", formula.text().at(), message, "reckon it from lengths"));
      return false;
    }
    Quantity tolerance = entry.tolerance();
    if (tolerance != null && tolerance.dimension() != value.dimension()) {
      String message =
          name
              + " is "
              + value.dimension().phrase()
              + ", and its tolerance "
              + tolerance.dimension().phrase();
      findings.add(Finding.error("wrong-unit", entry.name().at(), message, "give them like units"));
      return false;
    }
    if (entry.isExtent() && value.value().signum() <= 0) {
      String message =
          name + " comes to " + rule.printExactly(value) + ", and a part must be more than nothing";
      findings.add(
          Finding.error("part-too-small", formula.text().at(), message, "make the part larger"));
      return false;
    }
    return true;
  }

  private Size size(Entry entry, WorstCase worstCase) {
    String name = entry.name().value();
    Quantity value = Objects.requireNonNull(values.get(name));
    Formula formula = entry.formula();
    WorstCase.Range range = findings.take(worstCase.of(entry, value));
    return new Size(
        name,
        entry.kind(),
        value,
        formula == null ? asWritten(value) : formula.derivation(this),
        entry.about(),
        entry.tolerance(),
        range == null ? value : range.low(),
        range == null ? value : range.high(),
        entry.isMeasured(),
        Objects.requireNonNull(fitted.get(name)),
        formula == null ? Set.of() : formula.names());
  }

  private Derivation asWritten(Quantity value) {
    return new Derivation(
        rule.printExactly(value).toString(), List.of(new Derivation.Term("", value)));
  }
}
