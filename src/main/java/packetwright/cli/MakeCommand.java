package packetwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.html.Paper;
import packetwright.paper.publish.OutputFolder;
import packetwright.paper.publish.Publisher;
import packetwright.plan.lesson.Lesson;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "make", description = "Makes the student packet and the answer key of a project.")
final class MakeCommand extends ProjectCommand {
  @Option(
      names = "--paper",
      paramLabel = "letter|a4",
      description = "Paper size; letter without it.")
  private Paper paper = Paper.LETTER;

  @Option(
      names = "--form",
      paramLabel = "TEXT",
      description = "Which form of the quiz; A without it.")
  private String form = "A";

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Output folder; packets/<id>-<term>-with-<options> without it.")
  private @Nullable Path out;

  @Override
  int with(@Nullable Lesson lesson, List<Finding> findings, ProjectFolder folder)
      throws IOException {
    terminal().complain(Report.text(findings, folder));
    if (lesson == null) {
      return Main.HAS_ERRORS;
    }
    Path target = out == null ? usualFolder("packets", lesson) : out;
    OutputFolder output = new OutputFolder(target);
    output.requireFree();
    Publisher publisher =
        new Publisher(folder, project().request(), new Publisher.Output(paper, form));
    Checked<Map<String, byte[]>> files = publisher.files(lesson, terminal()::progress);
    terminal().complain(Report.text(files.findings(), folder));
    if (!files.isGood()) {
      return Main.HAS_ERRORS;
    }
    output.replace(files.value());
    StringBuilder made = new StringBuilder();
    for (String name : files.value().keySet()) {
      if (name.endsWith(".pdf")) {
        made.append(target.resolve(name)).append(System.lineSeparator());
      }
    }
    terminal().print(made.toString());
    return Main.DONE;
  }
}
