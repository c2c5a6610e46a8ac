package packetwright.definition.size;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import packetwright.definition.project.Project;
import packetwright.text.formula.Derivation;
import packetwright.text.formula.Formula;
import packetwright.text.measure.Rule;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;

/** Checks that what a project requires is so. */
final class Requirements {
  private final Sizes sizes;
  private final Rule rule;
  private final Findings findings;

  Requirements(Sizes sizes, Rule rule, Findings findings) {
    this.sizes = sizes;
    this.rule = rule;
    this.findings = findings;
  }

  /** Leaves out those over sizes that have no value, which have findings of their own. */
  void check(List<Project.Requirement> requirements, Map<String, Entry> entries) {
    for (Project.Requirement requirement : requirements) {
      Formula formula = findings.take(Formula.parse(requirement.that(), rule.unit()));
      boolean hopeless =
          formula == null
              || formula.names().stream()
                  .anyMatch(name -> entries.containsKey(name) && sizes.find(name) == null);
      if (formula != null
          && !hopeless
          && !MissingMachines.report(formula.places(), entries.keySet(), findings)) {
        check(requirement, formula);
      }
    }
  }

  private void check(Project.Requirement requirement, Formula formula) {
    Checked<Boolean> holds = formula.holds(sizes.values());
    findings.addAll(holds.findings());
    if (holds.hasValue() && !holds.value()) {
      String message =
          requirement.or()
              + ": `"
              + requirement.that().value()
              + "` comes to "
              + print(formula.outcome(sizes.values()));
      String hint = hint(sizes.givensBehind(formula));
      findings.add(Finding.error("requirement-fails", requirement.that().at(), message, hint));
    }
  }

  private static String hint(List<String> givens) {
    return switch (givens.size()) {
      case 0 -> "";
      case 1 -> "change " + givens.get(0);
      default -> "change one of " + String.join(", ", givens);
    };
  }

  private String print(Derivation outcome) {
    return outcome.numbers().stream()
        .map(
            term -> term.value() == null ? term.text() : rule.printExactly(term.value()).toString())
        .collect(Collectors.joining());
  }
}
