package packetwright.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.size.Size;
import packetwright.paper.publish.LessonJson;
import packetwright.plan.lesson.Lesson;
import packetwright.text.formula.Derivation;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Finding;
import packetwright.text.source.NearMiss;
import packetwright.text.source.Span;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "show",
    description = "Shows sizes, each with the formula and the numbers that it comes from.")
final class ShowCommand extends ProjectCommand {
  /** Under which findings show the names on the command line. */
  private static final String NAMES = "show";

  @Parameters(
      index = "1..*",
      paramLabel = "NAME",
      description = "Sizes to show; all of the project's own without one.")
  private List<String> names = new ArrayList<>();

  @Option(names = "--json", description = "Print sizes, parts and steps as JSON.")
  private boolean json;

  @Override
  int with(@Nullable Lesson lesson, List<Finding> findings, ProjectFolder folder) {
    terminal().complain(Report.text(findings, folder));
    if (lesson == null) {
      return Main.HAS_ERRORS;
    }
    if (json) {
      terminal().print(LessonJson.of(lesson));
      return Main.DONE;
    }
    List<Finding> unknown = unknown(lesson);
    if (!unknown.isEmpty()) {
      terminal().complain(Report.text(unknown, folder.with(NAMES, String.join("\n", names))));
      return Main.HAS_ERRORS;
    }
    StringBuilder text = new StringBuilder();
    for (Size size : lesson.sizes().all()) {
      boolean isAsked = names.isEmpty() ? isOwn(size) : names.contains(size.name());
      if (isAsked) {
        text.append(line(lesson, size));
      }
    }
    terminal().print(text.toString());
    return Main.DONE;
  }

  /** A finding for each name on the command line that is no size. */
  private List<Finding> unknown(Lesson lesson) {
    List<String> known = lesson.sizes().all().stream().map(Size::name).toList();
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      if (lesson.sizes().find(name) == null) {
        findings.add(
            Finding.error(
                "unknown-name",
                new Span(NAMES, i + 1, 1, Math.max(1, name.length())),
                "no size is called `" + name + "`",
                NearMiss.hint(name, known)));
      }
    }
    return findings;
  }

  private static boolean isOwn(Size size) {
    return size.kind() == Size.Kind.GIVEN || size.kind() == Size.Kind.DERIVED;
  }

  private static String line(Lesson lesson, Size size) {
    StringBuilder line = new StringBuilder();
    line.append("%-18s %s".formatted(size.name(), print(lesson, size.value())));
    if (size.kind() != Size.Kind.GIVEN && !size.from().isEmpty()) {
      line.append("   = ").append(size.derivation().formula()).append("   = ");
      for (Derivation.Term term : size.derivation().numbers()) {
        Quantity value = term.value();
        line.append(value == null ? term.text() : print(lesson, value));
      }
    }
    if (!size.low().equals(size.high())) {
      line.append("   (")
          .append(print(lesson, size.low()))
          .append(" to ")
          .append(print(lesson, size.high()))
          .append(")");
    }
    return line.append(System.lineSeparator()).toString();
  }

  private static String print(Lesson lesson, Quantity quantity) {
    return quantity.dimension() == Dimension.LENGTH
        ? lesson.project().rule().printExactly(quantity.asLength()).graded()
        : quantity.value().toString();
  }
}
