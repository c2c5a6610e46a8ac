package packetwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.ProjectFolder;
import packetwright.drawing.figure.Drawings;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.svg.SvgWriter;
import packetwright.paper.html.Paper;
import packetwright.paper.publish.OutputFolder;
import packetwright.paper.publish.Publisher;
import packetwright.plan.lesson.Lesson;
import packetwright.text.source.Finding;
import packetwright.text.source.NearMiss;
import packetwright.text.source.Span;
import packetwright.text.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "draw", description = "Writes the drawings of a project as SVG files.")
final class DrawCommand extends ProjectCommand {
  /** Under which findings show the names of drawings on the command line. */
  private static final String SHEET = "--sheet";

  @Option(
      names = SHEET,
      paramLabel = "NAME",
      description = "Draw this one, such as part-side; all of them without it.")
  private List<String> names = new ArrayList<>();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Output folder; drawings/<id>-<term>-with-<options> without it.")
  private @Nullable Path out;

  @Override
  int with(@Nullable Lesson lesson, List<Finding> findings, ProjectFolder folder)
      throws IOException {
    if (lesson == null) {
      terminal().complain(Report.text(findings, folder));
      return Main.HAS_ERRORS;
    }
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(wrongElsewhere(lesson, folder));
    terminal().complain(Report.text(all, folder));
    if (all.stream().anyMatch(Finding::isError)) {
      return Main.HAS_ERRORS;
    }
    Path target = out == null ? usualFolder("drawings", lesson) : out;
    OutputFolder output = new OutputFolder(target);
    output.requireFree();
    terminal().progress("drawing");
    List<Sheet> sheets = new Drawings(lesson, Words.of("en")).all();
    List<Finding> unknown = unknown(sheets);
    if (!unknown.isEmpty()) {
      terminal().complain(Report.text(unknown, folder.with(SHEET, String.join("\n", names))));
      return Main.HAS_ERRORS;
    }
    Map<String, byte[]> files = files(sheets);
    output.replace(files);
    StringBuilder made = new StringBuilder();
    files.keySet().forEach(n -> made.append(target.resolve(n)).append(System.lineSeparator()));
    terminal().print(made.toString());
    return Main.DONE;
  }

  /** What only the way to the pages shows: a project with any error is not drawn. */
  private List<Finding> wrongElsewhere(Lesson lesson, ProjectFolder folder) {
    Publisher.Output plain = new Publisher.Output(Paper.LETTER, "A");
    return new Publisher(folder, project().request(), plain).check(lesson);
  }

  /** A finding for each name on the command line that no drawing has. */
  private List<Finding> unknown(List<Sheet> sheets) {
    List<String> known = sheets.stream().map(Sheet::name).toList();
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      if (!known.contains(name)) {
        String meant = NearMiss.hint(name, known);
        findings.add(
            Finding.error(
                "unknown-name",
                new Span(SHEET, i + 1, 1, Math.max(1, name.length())),
                "no drawing is called `" + name + "`",
                meant.isEmpty() ? "leave " + SHEET + " out: each file bears its name" : meant));
      }
    }
    return findings;
  }

  private Map<String, byte[]> files(List<Sheet> sheets) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (Sheet sheet : sheets) {
      if (names.isEmpty() || names.contains(sheet.name())) {
        files.put(sheet.name() + ".svg", SvgWriter.write(sheet).getBytes(UTF_8));
      }
    }
    return files;
  }
}
