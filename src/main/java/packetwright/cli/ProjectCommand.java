package packetwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;

/** A command on a project: reads it, works it out, reports, and goes on when all is well. */
abstract class ProjectCommand implements Callable<Integer> {
  @Mixin private ProjectOptions project = new ProjectOptions();
  @ParentCommand private @Nullable Main main;

  /** Goes on with a lesson that has no errors, or with none when it has. */
  abstract int with(@Nullable Lesson lesson, List<Finding> findings, ProjectFolder folder)
      throws IOException;

  ProjectOptions project() {
    return project;
  }

  Terminal terminal() {
    Main parent = main;
    if (parent == null) {
      throw new IllegalStateException("a command is always run by its parent");
    }
    return parent.terminal();
  }

  /** Where files go without {@code --out}; those with different options lie side by side. */
  static Path usualFolder(String above, Lesson lesson) {
    String term = lesson.choices().term().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String suffix = term.isEmpty() || term.equals("-") ? "" : "-" + term;
    Set<String> options = lesson.project().options().on();
    String with = options.isEmpty() ? "" : "-with-" + String.join("-", options);
    return Path.of(above, lesson.project().id() + suffix + with.replace('_', '-'));
  }

  @Override
  public Integer call() throws IOException {
    terminal().progress("reading the project");
    Checked<ProjectFolder> folder = project.folder();
    if (!folder.isGood()) {
      terminal().complain(Report.text(folder.findings(), null));
      return Main.HAS_ERRORS;
    }
    terminal().progress("working it out");
    Checked<Lesson> lesson = Lessons.workOut(folder.value(), project.request());
    terminal().clearProgress();
    return with(lesson.isGood() ? lesson.value() : null, lesson.findings(), folder.value());
  }
}
