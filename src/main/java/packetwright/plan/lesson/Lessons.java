package packetwright.plan.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.ProcedureReader;
import packetwright.definition.procedure.Variant;
import packetwright.definition.project.Choice;
import packetwright.definition.project.Options;
import packetwright.definition.project.Project;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.project.ProjectReader;
import packetwright.definition.shop.Shop;
import packetwright.definition.shop.ShopReader;
import packetwright.definition.size.Sizes;
import packetwright.definition.size.Substitution;
import packetwright.plan.lesson.Lesson.Choices;
import packetwright.plan.lesson.Plan.Fixed;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.wood.assembly.Assembly;
import packetwright.wood.caution.CautionRules;
import packetwright.wood.caution.Verdict;
import packetwright.wood.operation.Run;
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
    /** Keeps its own copies, in the order given. */
    public Request {
      set = List.copyOf(set);
      options = Collections.unmodifiableSet(new LinkedHashSet<>(options));
    }

    /** The project as its author left it. */
    public static Request plain() {
      return new Request("", List.of(), Set.of(), "");
    }
  }

  /** Works everything out; findings come sorted by place. */
  public static Checked<Lesson> workOut(ProjectFolder folder, Request request) {
    Findings findings = new Findings();
    Project project = findings.take(ProjectReader.read(folder, request.options()));
    List<WaysOut.Found> refusals = new ArrayList<>();
    Lesson lesson = workOut(folder, request, new Reading(project, findings, refusals));
    refusals.forEach(found -> findings.add(found.finding()));
    Options options = project == null ? Options.NONE : project.options();
    List<Finding> sorted =
        findings.list().stream()
            .distinct()
            .map(finding -> options.explained(finding, folder.line(finding.at())))
            .sorted(Comparator.comparing(Finding::severity).thenComparing(Finding::at))
            .toList();
    return new Checked<>(findings.hasErrors() ? null : lesson, sorted);
  }

  /** What is refused under a request, each with the ways out of it. */
  static List<WaysOut.Found> waysOut(ProjectFolder folder, Request request) {
    Findings findings = new Findings();
    Project project = findings.take(ProjectReader.read(folder, request.options()));
    List<WaysOut.Found> refusals = new ArrayList<>();
    workOut(folder, request, new Reading(project, findings, refusals));
    return refusals;
  }

  /**
   * A project while it is worked out.
   *
   * @param project as read, or none
   * @param findings takes what is found
   * @param refusals takes what is refused and not accepted
   */
  private record Reading(
      @Nullable Project project, Findings findings, List<WaysOut.Found> refusals) {}

  /**
   * The same request with every set of options that can be on together in its shop and holds those
   * asked for, in the order written; as it stands where there is no such set, or where the project
   * or the shop cannot be read.
   */
  public static List<Request> combinations(ProjectFolder folder, Request request) {
    Project project = ProjectReader.read(folder).valueOrNull();
    Shop shop = shop(folder, request).valueOrNull();
    List<Request> requests =
        project == null || shop == null
            ? List.of()
            : project.options().combinations(shop).stream()
                .filter(on -> on.containsAll(request.options()))
                .map(on -> new Request(request.shopFile(), request.set(), on, request.term()))
                .toList();
    return requests.isEmpty() ? List.of(request) : requests;
  }

  private static @Nullable Lesson workOut(ProjectFolder folder, Request request, Reading reading) {
    Project project = reading.project();
    Findings findings = reading.findings();
    Shop shop = findings.take(shop(folder, request));
    CautionRules rules = shop == null ? null : findings.take(CautionRules.of(shop));
    // What is wrong in the procedure is said even where the project or the shop cannot be read.
    Shop readable = shop == null ? ShopReader.builtIn() : shop;
    Variant variant = Variant.of(readable, project, request.options());
    Procedure procedure = findings.take(procedure(folder, variant));
    if (project == null || shop == null) {
      return null;
    }
    OptionCheck options = new OptionCheck(project.options());
    findings.addAll(options.unknown(request.options()));
    findings.addAll(options.clashes());
    if (procedure != null) {
      findings.addAll(options.idle(procedure));
      findings.addAll(options.lacking(shop, procedure));
    }
    if (procedure != null && rules != null) {
      findings.addAll(Acceptance.wrong(project, procedure, rules));
    }
    Substitution substitution = new Substitutions(project, findings).read(request.set());
    if (project.choices().stream().anyMatch(Choice::isUnread)) {
      return null; // without its table, every size of a choice would be reported as unknown
    }
    Sizes given = findings.take(Sizes.of(project, shop, substitution));
    if (given == null || procedure == null || findings.hasErrors()) {
      return null;
    }
    List<Part> parts = findings.take(Parts.of(project, given));
    if (parts == null) {
      return null;
    }
    Assembly assembly = findings.take(Assembly.of(project, given, parts));
    Fixed fixed = new Fixed(variant, shop, given, parts, assembly, rules);
    Plan plan = findings.take(Plan.of(fixed, project, procedure));
    Run run = plan == null ? null : plan.run();
    if (plan == null || run == null || assembly == null || rules == null) {
      return null;
    }
    Verdict verdict = plan.verdict(run);
    Acceptance acceptance = Acceptance.of(project, verdict.refused(), findings);
    reading.refusals().addAll(new WaysOut(plan, verdict.refused()).of(acceptance.standing()));
    Choices choices =
        new Choices(
            shop,
            substitution,
            Substitutions.written(request.set(), substitution),
            request.options(),
            request.term());
    return new Lesson(
        project,
        choices,
        procedure,
        plan.sizes(),
        parts,
        assembly,
        plan.blanks(),
        run,
        verdict.cautions(),
        acceptance.accepted());
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
}
