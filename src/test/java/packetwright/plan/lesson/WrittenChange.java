package packetwright.plan.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.procedure.Step;
import packetwright.definition.project.ProjectFolder;
import packetwright.text.source.Located;

/** Carries a change out in the files, as an instructor who obeys the hint does. */
final class WrittenChange implements Change.Cases<ProjectFolder> {
  private static final String PROCEDURE = "procedure.md";

  private final ProjectFolder folder;
  private final List<String> lines;

  WrittenChange(ProjectFolder folder) {
    this.folder = folder;
    this.lines = new ArrayList<>(List.of(folder.text(PROCEDURE).value().split("\n", -1)));
  }

  private ProjectFolder written() {
    return folder.with(PROCEDURE, String.join("\n", lines));
  }

  /** From the hyphen of an operation to the next, or to the end of its block. */
  private List<String> operation(Operation operation) {
    int first = operation.place().line() - 1;
    int end = first + 1;
    while (!lines.get(end).startsWith("- ") && !lines.get(end).startsWith("```")) {
      end++;
    }
    return lines.subList(first, end);
  }

  /** From a heading to the next of the same level. */
  private List<String> step(Step step) {
    int first = step.at().line() - 1;
    int end = first + 1;
    while (end < lines.size() && !lines.get(end).startsWith("## ")) {
      end++;
    }
    return lines.subList(first, end);
  }

  private static void put(List<String> operation, String key, String value) {
    operation.removeIf(line -> line.startsWith("  " + key + ":"));
    operation.add("  " + key + ": " + value);
  }

  private static void write(List<String> operation, Operation old, Operation instead) {
    List<String> names = instead.targets().stream().map(Located::value).toList();
    operation.set(
        0,
        "- " + instead.verb().value().word() + ": " + (names.size() == 1 ? names.get(0) : names));
    Located<String> piece = instead.piece();
    if (piece != null) {
      put(operation, "piece", piece.value());
    }
    if (instead.at() != null) {
      put(operation, "at", instead.at().value().word());
    }
    if (instead.stacked() != old.stacked()) {
      put(operation, "stacked", Integer.toString(instead.stacked()));
    }
    if (!instead.set().keySet().equals(old.set().keySet())) {
      operation.removeIf(line -> line.startsWith("  set:"));
      assertThat(instead.set()).as("the tests write one setting").isEmpty();
    }
    if (old.stop() && !instead.stop()) {
      operation.removeIf(line -> line.startsWith("  stop:"));
    }
    if (!instead.with().isEmpty()) {
      List<String> controls =
          instead.with().stream()
              .map(Control::name)
              .map(name -> name.toLowerCase(Locale.ROOT))
              .toList();
      put(operation, "with", controls.toString());
    }
  }

  @Override
  public ProjectFolder rewritten(Change.Rewritten change) {
    write(operation(change.old()), change.old(), change.instead());
    return written();
  }

  @Override
  public ProjectFolder stepMoved(Change.StepMoved change) {
    List<String> operation = operation(change.old());
    List<String> changed = new ArrayList<>(operation);
    write(changed, change.old(), change.instead());
    boolean isIts = change.step().operations().contains(change.old());
    List<String> step = step(change.step());
    List<String> moved = new ArrayList<>(step);
    if (isIts) {
      int at = change.old().place().line() - change.step().at().line();
      moved.subList(at, at + operation.size()).clear();
      moved.addAll(at, changed);
    }
    step.clear();
    lines.addAll(change.before().at().line() - 1, moved);
    return written();
  }

  @Override
  public ProjectFolder moved(Change.Moved change) {
    List<String> operation = operation(change.old());
    List<String> changed = new ArrayList<>(operation);
    write(changed, change.old(), change.instead());
    operation.clear();
    lines.addAll(change.before().place().line() - 1, changed);
    return written();
  }

  @Override
  public ProjectFolder longer(Change.Longer change) {
    String file = "project.yaml";
    List<String> project = new ArrayList<>(List.of(folder.text(file).value().split("\n", -1)));
    int line = change.blank().at().line() - 1;
    String sections =
        change
            .sections(
                packetwright.definition.project.ProjectReader.read(folder).value().blanks().stream()
                    .filter(b -> b.name().value().equals(change.blank().value()))
                    .findFirst()
                    .orElseThrow())
            .entrySet()
            .stream()
            .map(e -> e.getKey() + ": \"" + e.getValue().value() + "\"")
            .collect(Collectors.joining(", ", "{", "}"));
    if (project.get(line).endsWith(":")) { // its alternatives stand below
      for (int i = line + 1; project.get(i).startsWith("    - "); i++) {
        project.set(i, withSections(project.get(i), sections));
      }
    } else {
      project.set(line, withSections(project.get(line), sections));
    }
    return folder.with(file, String.join("\n", project));
  }

  private static String withSections(String blank, String sections) {
    assertThat(blank).endsWith("}");
    String without = blank.replaceFirst(", sections: \\{[^}]*\\}", "");
    return without.substring(0, without.length() - 1) + ", sections: " + sections + "}";
  }
}
