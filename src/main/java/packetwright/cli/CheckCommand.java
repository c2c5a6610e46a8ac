package packetwright.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.html.Paper;
import packetwright.paper.publish.Publisher;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
    name = "check",
    description = "Checks a project and runs its procedure, and says what is wrong with it.")
final class CheckCommand extends ProjectCommand {
  /** Paper and form change nothing that can be wrong before pages are laid out. */
  private static final Publisher.Output PLAIN = new Publisher.Output(Paper.LETTER, "A");

  @Option(names = "--json", description = "Print the findings as JSON.")
  private boolean json;

  @Option(
      names = "--all-options",
      description =
          "Check every combination of the options that the shop can do; those named with --option"
              + " are on in each.")
  private boolean allOptions;

  /** How one request ends. */
  private record Outcome(Request request, @Nullable Lesson lesson, List<Finding> findings) {
    boolean isGood() {
      return lesson != null && findings.stream().noneMatch(Finding::isError);
    }
  }

  @Override
  int with(@Nullable Lesson lesson, List<Finding> findings, ProjectFolder folder) {
    return report(
        allOptions
            ? everyCombination(folder)
            : List.of(outcome(project().request(), lesson, findings, folder)),
        folder);
  }

  private List<Outcome> everyCombination(ProjectFolder folder) {
    List<Outcome> outcomes = new ArrayList<>();
    List<Request> requests = Lessons.combinations(folder, project().request());
    for (Request request : requests) {
      terminal().progress("checking %d of %d".formatted(outcomes.size() + 1, requests.size()));
      Checked<Lesson> worked = Lessons.workOut(folder, request);
      Lesson lesson = worked.isGood() ? worked.value() : null;
      outcomes.add(outcome(request, lesson, worked.findings(), folder));
    }
    terminal().clearProgress();
    return outcomes;
  }

  private static Outcome outcome(
      Request request, @Nullable Lesson lesson, List<Finding> findings, ProjectFolder folder) {
    List<Finding> all = new ArrayList<>(findings);
    if (lesson != null) {
      all.addAll(new Publisher(folder, request, PLAIN).check(lesson));
    }
    return new Outcome(request, lesson, all);
  }

  /** What several combinations have in common is said once. */
  private int report(List<Outcome> outcomes, ProjectFolder folder) {
    List<Finding> all = outcomes.stream().flatMap(o -> o.findings().stream()).distinct().toList();
    if (json) {
      terminal().print(Report.json(all));
    } else {
      terminal().complain(Report.text(all, folder));
      outcomes.forEach(outcome -> terminal().print(summary(outcome)));
    }
    return outcomes.stream().allMatch(Outcome::isGood) ? Main.DONE : Main.HAS_ERRORS;
  }

  /** One line; nothing of a project that has errors, unless there are options to tell apart. */
  private String summary(Outcome outcome) {
    Lesson lesson = outcome.lesson();
    String with =
        outcome.request().options().isEmpty()
            ? ""
            : ", with " + String.join(" and ", outcome.request().options());
    if (lesson == null || !outcome.isGood()) {
      String without = with.isEmpty() ? ", without options" : with;
      return allOptions ? "errors%s%n".formatted(without) : "";
    }
    int pieces = lesson.parts().stream().mapToInt(part -> part.count()).sum();
    return "%s%s: %d steps, %d operations; all %d pieces come out as drawn%n"
        .formatted(
            lesson.project().title(),
            with,
            lesson.procedure().steps().size(),
            lesson.run().operations().size(),
            pieces);
  }
}
