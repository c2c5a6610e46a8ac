package packetwright.plan.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.Step;
import packetwright.definition.project.Options;
import packetwright.definition.project.Options.Option;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.text.source.Span;

/** Whether the options chosen are there, go together, and can be done in the shop. */
final class OptionCheck {
  /** The name under which findings show options on the command line. */
  private static final String OPTION = "--option";

  private final Options options;

  OptionCheck(Options options) {
    this.options = options;
  }

  /** Names on the command line that the project has not. */
  List<Finding> unknown(Set<String> chosen) {
    List<Finding> findings = new ArrayList<>();
    List<String> sorted = chosen.stream().sorted().toList();
    for (String name : sorted) {
      if (!options.names().contains(name)) {
        Span at = new Span(OPTION, sorted.indexOf(name) + 1, 1, Math.max(1, name.length()));
        findings.add(
            Finding.error(
                "unknown-option",
                at,
                "the project has no option `" + name + "`",
                options.all().isEmpty()
                    ? "leave it out: the project has no options"
                    : NearMiss.hint(name, options.names())));
      }
    }
    return findings;
  }

  /** Pairs of chosen options of which one excludes the other. */
  List<Finding> clashes() {
    List<Finding> findings = new ArrayList<>();
    List<Option> chosen = options.chosen();
    for (int i = 0; i < chosen.size(); i++) {
      for (Option earlier : chosen.subList(0, i)) {
        if (chosen.get(i).clashesWith(earlier)) {
          findings.add(clash(earlier, chosen.get(i)));
        }
      }
    }
    return findings;
  }

  private static Finding clash(Option one, Option other) {
    String first = one.name().value();
    String second = other.name().value();
    return Finding.error(
        "options-clash",
        other.name().at(),
        "the options `" + first + "` and `" + second + "` exclude one another, and both are on",
        "leave out `--option " + first + "` or `--option " + second + "`");
  }

  /** Machines that a chosen option needs and the shop has not, with the step that is done there. */
  List<Finding> lacking(Shop shop, Procedure procedure) {
    List<Finding> findings = new ArrayList<>();
    for (Option option : options.chosen()) {
      for (Located<MachineKind> machine : option.needs()) {
        if (!shop.has(machine.value())) {
          findings.add(lacking(option, machine, procedure));
        }
      }
    }
    return findings;
  }

  private static Finding lacking(Option option, Located<MachineKind> machine, Procedure procedure) {
    String name = option.name().value();
    String step =
        procedure.steps().stream()
            .filter(s -> isDoneAt(s, machine.value()))
            .map(Step::label)
            .findFirst()
            .orElse("");
    return Finding.error(
            "option-needs-machine",
            machine.at(),
            "the option `"
                + name
                + "` needs `"
                + machine.value().word()
                + "`, which the shop has not",
            "leave out `--option " + name + "`")
        .inStep(step);
  }

  private static boolean isDoneAt(Step step, MachineKind machine) {
    return step.operations().stream()
        .map(operation -> operation.at())
        .anyMatch(at -> at != null && at.value() == machine);
  }

  /** Options that nothing in the project waits for. */
  List<Finding> idle(Procedure procedure) {
    List<Finding> findings = new ArrayList<>();
    for (Option option : options.all()) {
      String name = option.name().value();
      if (!options.mentioned().contains(name) && !procedure.options().contains(name)) {
        findings.add(
            Finding.error(
                "idle-option",
                option.name().at(),
                "nothing waits for the option `" + name + "`, so it changes nothing",
                "write `if: "
                    + name
                    + "` at a row, `### If "
                    + name
                    + "` in a step, or delete it"));
      }
    }
    return findings;
  }
}
