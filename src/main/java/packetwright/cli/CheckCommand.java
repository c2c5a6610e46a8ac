package packetwright.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.html.Paper;
import packetwright.paper.publish.Publisher;
import packetwright.plan.lesson.Lesson;
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

  @Override
  int with(@Nullable Lesson lesson, List<Finding> findings, ProjectFolder folder) {
    List<Finding> all = new ArrayList<>(findings);
    if (lesson != null) {
      all.addAll(new Publisher(folder, project().request(), PLAIN).check(lesson));
    }
    boolean good = lesson != null && all.stream().noneMatch(Finding::isError);
    if (json) {
      terminal().print(Report.json(all));
    } else {
      terminal().complain(Report.text(all, folder));
      if (lesson != null && good) {
        terminal().print(summary(lesson));
      }
    }
    return good ? Main.DONE : Main.HAS_ERRORS;
  }

  private static String summary(Lesson lesson) {
    int pieces = lesson.parts().stream().mapToInt(part -> part.count()).sum();
    return "%s: %d steps, %d operations; all %d pieces come out as drawn%n"
        .formatted(
            lesson.project().title(),
            lesson.procedure().steps().size(),
            lesson.run().operations().size(),
            pieces);
  }
}
