package packetwright.plan.lesson;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import packetwright.definition.project.Project;
import packetwright.definition.project.Project.Given;
import packetwright.definition.size.Substitution;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Unit;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/** Reads what is written after {@code --set}: a value for a given, or the row of a table. */
final class Substitutions {
  private final Project project;
  private final Findings findings;
  private final Map<String, Located<Quantity>> values = new LinkedHashMap<>();
  private final Map<String, Located<String>> rows = new LinkedHashMap<>();

  Substitutions(Project project, Findings findings) {
    this.project = project;
    this.findings = findings;
  }

  Substitution read(List<String> set) {
    for (int i = 0; i < set.size(); i++) {
      String text = set.get(i);
      int equals = text.indexOf('=');
      Span at = new Span(Lessons.SET, i + 1, 1, Math.max(1, text.length()));
      if (equals < 1 || equals == text.length() - 1) {
        findings.add(
            Finding.error(
                "not-a-substitution",
                at,
                "`" + text + "` does not give a value to a name",
                "write --set name=value, such as --set board_width=5-1/2"));
      } else {
        String name = text.substring(0, equals).strip();
        String value = text.substring(equals + 1);
        Span place = at.part(equals + 1, value.length());
        put(name, new Located<>(value.strip(), place), at);
      }
    }
    return new Substitution(values, rows);
  }

  private void put(String name, Located<String> value, Span whole) {
    if (isChoice(name)) {
      rows.put(name, value);
      return;
    }
    Quantity quantity = findings.take(QuantityReader.read(value, unit(name)));
    if (quantity != null) {
      values.put(name, new Located<>(quantity, whole));
    }
  }

  private boolean isChoice(String name) {
    return project.choices().stream().anyMatch(choice -> choice.name().value().equals(name));
  }

  /**
   * The unit of a bare number given to a name: that of the project, unless the given is a count.
   */
  private Unit unit(String name) {
    for (Given given : project.givens()) {
      if (given.name().value().equals(name)
          && given.value().value().dimension() == Dimension.NUMBER) {
        return Unit.ONE;
      }
    }
    return project.rule().unit();
  }

  /** The values as they were typed, by name. */
  static Map<String, String> written(List<String> set, Substitution substitution) {
    Map<String, String> written = new LinkedHashMap<>();
    substitution
        .values()
        .forEach(
            (name, value) -> {
              String text = set.get(value.at().line() - 1);
              written.put(name, text.substring(text.indexOf('=') + 1).strip());
            });
    return written;
  }
}
