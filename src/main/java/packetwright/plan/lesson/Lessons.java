package packetwright.plan.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.ProcedureReader;
import packetwright.definition.procedure.Variant;
import packetwright.definition.project.Project;
import packetwright.definition.project.Project.Given;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.project.ProjectReader;
import packetwright.definition.shop.Shop;
import packetwright.definition.shop.ShopReader;
import packetwright.definition.size.Sizes;
import packetwright.plan.lesson.Lesson.Choices;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.text.source.Span;
import packetwright.text.words.Words;
import packetwright.wood.assembly.Assembly;
import packetwright.wood.blank.Blank;
import packetwright.wood.blank.Blanks;
import packetwright.wood.caution.Caution;
import packetwright.wood.caution.CautionRules;
import packetwright.wood.operation.Run;
import packetwright.wood.operation.Simulation;
import packetwright.wood.part.Part;
import packetwright.wood.part.Parts;

/** Works a project folder out into a lesson, or into findings that say why it is none. */
public final class Lessons {
  /**
   * The name under which findings show what was written on the command line after {@code --set}.
   */
  public static final String SET = "--set";

  private Lessons() {}

  /**
   * What an instructor asks for.
   *
   * @param shopFile name of the shop profile in the folder; empty for {@code shop.yaml}, or the
   *     built-in profile where there is none
   * @param set {@code name=value}, one each
   * @param options switched on
   * @param term label; may be empty
   */
  public record Request(String shopFile, List<String> set, Set<String> options, String term) {
    /** Keeps its own copies. */
    public Request {
      set = List.copyOf(set);
      options = Set.copyOf(options);
    }

    /** The project as its author left it. */
    public static Request plain() {
      return new Request("", List.of(), Set.of(), "");
    }
  }

  /** Works everything out; findings come sorted by place. */
  public static Checked<Lesson> workOut(ProjectFolder folder, Request request) {
    Findings findings = new Findings();
    Lesson lesson = workOut(folder, request, findings);
    List<Finding> sorted =
        findings.list().stream()
            .distinct()
            .sorted(Comparator.comparing(Finding::severity).thenComparing(Finding::at))
            .toList();
    return new Checked<>(findings.hasErrors() ? null : lesson, sorted);
  }

  private static @Nullable Lesson workOut(
      ProjectFolder folder, Request request, Findings findings) {
    Project project = findings.take(ProjectReader.read(folder));
    Shop shop = findings.take(shop(folder, request));
    // What is wrong in the procedure is said even where the project or the shop cannot be read.
    Shop readable = shop == null ? ShopReader.builtIn() : shop;
    Procedure procedure =
        findings.take(procedure(folder, Variant.of(readable, project, request.options())));
    if (project == null || shop == null) {
      return null;
    }
    findings.addAll(unknownOptions(project, request));
    Map<String, Located<Quantity>> substituted = substituted(project, request, findings);
    Sizes given = findings.take(Sizes.of(project, shop, substituted));
    if (given == null || procedure == null || findings.hasErrors()) {
      return null;
    }
    List<Part> parts = findings.take(Parts.of(project, given));
    if (parts == null) {
      return null;
    }
    Assembly assembly = findings.take(Assembly.of(project, given, parts));
    List<Blank> blanks = findings.take(Blanks.of(project, procedure, shop, given, parts));
    if (blanks == null) {
      return null;
    }
    Sizes sizes = given.with(Blanks.sizes(blanks));
    Run run =
        findings.take(
            Simulation.run(new Simulation.Inputs(project, procedure, shop, sizes, parts, blanks)));
    if (run == null || assembly == null) {
      return null;
    }
    List<Caution> cautions = findings.take(CautionRules.builtIn().apply(run, shop, Words.of("en")));
    if (cautions == null) {
      return null;
    }
    Choices choices =
        new Choices(
            shop, substituted, written(request, substituted), request.options(), request.term());
    return new Lesson(project, choices, procedure, sizes, parts, assembly, blanks, run, cautions);
  }

  private static Checked<Shop> shop(ProjectFolder folder, Request request) {
    String file = request.shopFile().isEmpty() ? "shop.yaml" : request.shopFile();
    if (request.shopFile().isEmpty() && !folder.has(file)) {
      return Checked.of(ShopReader.builtIn());
    }
    Checked<String> text = folder.text(file);
    return text.hasValue()
        ? ShopReader.read(file, text.value())
        : new Checked<>(null, text.findings());
  }

  private static Checked<Procedure> procedure(ProjectFolder folder, Variant variant) {
    Checked<String> text = folder.text(ProcedureReader.PROCEDURE);
    return text.hasValue()
        ? ProcedureReader.read(ProcedureReader.PROCEDURE, text.value(), variant)
        : new Checked<>(null, text.findings());
  }

  private static List<Finding> unknownOptions(Project project, Request request) {
    List<Finding> findings = new ArrayList<>();
    for (String option : new TreeSet<>(request.options())) {
      if (!project.options().containsKey(option)) {
        findings.add(
            Finding.error(
                "unknown-option",
                Span.startOf("project.yaml"),
                "the project has no option `" + option + "`",
                NearMiss.hint(option, project.options().keySet())));
      }
    }
    return findings;
  }

  private static Map<String, Located<Quantity>> substituted(
      Project project, Request request, Findings findings) {
    Map<String, Located<Quantity>> substituted = new LinkedHashMap<>();
    for (int i = 0; i < request.set().size(); i++) {
      String text = request.set().get(i);
      int equals = text.indexOf('=');
      Span at = new Span(SET, i + 1, 1, Math.max(1, text.length()));
      if (equals < 1 || equals == text.length() - 1) {
        findings.add(
            Finding.error(
                "not-a-substitution",
                at,
                "`" + text + "` does not give a value to a name",
                "write --set name=value, such as --set board_width=5-1/2"));
        continue;
      }
      String name = text.substring(0, equals).strip();
      String value = text.substring(equals + 1);
      Located<String> written = new Located<>(value.strip(), at.part(equals + 1, value.length()));
      Quantity quantity = findings.take(QuantityReader.read(written, unit(project, name)));
      if (quantity != null) {
        substituted.put(name, new Located<>(quantity, at));
      }
    }
    return substituted;
  }

  /** The values of {@code --set} as they were typed, by name. */
  private static Map<String, String> written(
      Request request, Map<String, Located<Quantity>> substituted) {
    Map<String, String> written = new LinkedHashMap<>();
    substituted.forEach(
        (name, value) -> {
          String text = request.set().get(value.at().line() - 1);
          written.put(name, text.substring(text.indexOf('=') + 1).strip());
        });
    return written;
  }

  /**
   * The unit of a bare number given to a name: that of the project, unless the given is a count.
   */
  private static Unit unit(Project project, String name) {
    for (Given given : project.givens()) {
      if (given.name().value().equals(name)
          && given.value().value().dimension() == Dimension.NUMBER) {
        return Unit.ONE;
      }
    }
    return project.rule().unit();
  }
}
