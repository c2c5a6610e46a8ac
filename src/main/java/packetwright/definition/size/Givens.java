package packetwright.definition.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Choice;
import packetwright.definition.project.Project;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rule;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;

/** Gives each given its value, substituted or its own, and checks it. */
final class Givens {
  private final Rule rule;
  private final Substitution substitution;
  private final Findings findings;

  Givens(Project project, Substitution substitution, Findings findings) {
    this.rule = project.rule();
    this.substitution = substitution;
    this.findings = findings;
    List<String> names = new ArrayList<>();
    project.givens().forEach(given -> names.add(given.name().value()));
    substitution.values().entrySet().stream()
        .filter(entry -> !names.contains(entry.getKey()))
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            entry -> {
              List<String> all = new ArrayList<>(names);
              project.choices().forEach(choice -> all.add(choice.name().value()));
              findings.add(notAGiven(entry.getKey(), entry.getValue(), all));
            });
  }

  /**
   * The row that is chosen; one that the table has not is a finding, unless it is the project's.
   */
  Located<String> row(Choice choice) {
    Located<String> row = substitution.row(choice);
    if (!row.equals(choice.row()) && !choice.rows().containsKey(row.value())) {
      findings.add(choice.noSuchRow(row));
    }
    return row;
  }

  Entry entry(Project.Given given) {
    Located<Quantity> value = given.value();
    Located<Quantity> substituted = substitution.values().get(given.name().value());
    checkRange(given, value);
    if (substituted != null && hasUnitOf(substituted, value.value())) {
      value = substituted;
      checkRange(given, value);
    }
    return new Entry(
        given.name(), Size.Kind.GIVEN, value.value(), null, tolerance(given), false, given.about());
  }

  private @Nullable Quantity tolerance(Project.Given given) {
    Located<Quantity> tolerance = given.tolerance();
    if (tolerance == null || !hasUnitOf(tolerance, given.value().value())) {
      return null;
    }
    return tolerance.value();
  }

  private void checkRange(Project.Given given, Located<Quantity> value) {
    Located<Quantity> from = given.from();
    Located<Quantity> to = given.to();
    boolean tooLittle = from != null && isMore(from, value);
    boolean tooMuch = to != null && isMore(value, to);
    if (tooLittle || tooMuch) {
      String range = range(from, to);
      String message =
          "`" + given.name().value() + "` is " + print(value) + ", and must be " + range;
      findings.add(
          Finding.error("value-out-of-range", value.at(), message, "give a value " + range));
    }
  }

  private boolean isMore(Located<Quantity> one, Located<Quantity> other) {
    return one.value().dimension() == other.value().dimension()
        && one.value().value().compareTo(other.value().value()) > 0;
  }

  private String range(@Nullable Located<Quantity> from, @Nullable Located<Quantity> to) {
    if (from == null || to == null) {
      return (from == null ? "at most " : "at least ")
          + print(from != null ? from : Objects.requireNonNull(to));
    }
    return "from " + print(from) + " to " + print(to);
  }

  private boolean hasUnitOf(Located<Quantity> given, Quantity model) {
    boolean same = given.value().dimension() == model.dimension();
    if (!same) {
      String message =
          print(given)
              + " is "
              + given.value().dimension().phrase()
              + ", and "
              + model.dimension().phrase()
              + " is needed";
      findings.add(Finding.error("wrong-unit", given.at(), message, "change its unit"));
    }
    return same;
  }

  private Finding notAGiven(String name, Located<Quantity> value, List<String> names) {
    String hint = NearMiss.hint(name, names);
    return Finding.error(
        "not-a-given",
        value.at(),
        "`" + name + "` is no given of this project, and only givens are substituted",
        hint);
  }

  private String print(Located<Quantity> quantity) {
    return rule.printExactly(quantity.value()).toString();
  }
}
