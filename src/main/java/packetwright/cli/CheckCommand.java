package packetwright.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lesson;
import packetwright.text.source.Finding;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
    name = "check",
    description = "Checks a project and runs its procedure, and says what is wrong with it.")
final class CheckCommand extends ProjectCommand {
  @Option(names = "--json", description = "Print the findings as JSON.")
  private boolean json;

  @Override
  int with(@Nullable Lesson lesson, List<Finding> findings, ProjectFolder folder) {
    if (json) {
      terminal().print(Report.json(findings));
    } else {
      terminal().complain(Report.text(findings, folder));
      if (lesson != null) {
        terminal().print(summary(lesson));
      }
    }
    return lesson == null ? Main.HAS_ERRORS : Main.DONE;
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
