package packetwright.definition.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.text.document.Node;
import packetwright.text.document.Schema;
import packetwright.text.document.Yaml;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityFields;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/** Reads {@code project.yaml} and {@code quiz.yaml}, each checked against its schema. */
public final class ProjectReader {
  /** The file that makes a folder a project. */
  public static final String PROJECT = "project.yaml";

  /** The file of questions, which may be missing. */
  public static final String QUIZ = "quiz.yaml";

  private static final Schema SCHEMA = Schema.named("project");

  /** Of the reason for an accepted refusal. */
  private static final int FEWEST_WORDS = 3;

  private static final Rational USUAL_GRADUATION = Rational.of(1, 32);

  private final Node.Mapping root;
  private final Unit unit;
  private final Findings findings;
  private final QuantityFields fields;

  private ProjectReader(Node.Mapping root, Findings findings) {
    this.root = root;
    this.findings = findings;
    this.unit = root.text("units", "inch").equals("mm") ? Unit.MILLIMETRE : Unit.INCH;
    this.fields = new QuantityFields(unit, findings);
  }

  /** The project in a folder with no option on. */
  public static Checked<Project> read(ProjectFolder folder) {
    return read(folder, Set.of());
  }

  /**
   * The project in a folder with those options on: rows that wait for others are checked for their
   * shape and left out. With errors beside it, it holds only what could be read: enough to read the
   * procedure by, and to find what is wrong there too.
   */
  public static Checked<Project> read(ProjectFolder folder, Set<String> on) {
    Findings findings = new Findings();
    Node questions = quiz(folder, findings);
    String text = findings.take(folder.text(PROJECT));
    Node node = text == null ? null : findings.take(Yaml.read(PROJECT, text));
    if (node != null) {
      findings.addAll(SCHEMA.check(node));
    }
    if (!(node instanceof Node.Mapping root)) {
      return new Checked<>(null, findings.list());
    }
    OptionFilter filter =
        new OptionFilter(new OptionsReader(root, findings).options(), on, findings);
    Node.Mapping plain = filter.plain(root);
    QuizDefinition quiz =
        questions instanceof Node.Mapping written
            ? QuizReader.quiz(filter.plain(written))
            : QuizDefinition.NONE;
    Project project = new ProjectReader(plain, findings).project(folder, quiz, filter.options());
    return new Checked<>(project, findings.list());
  }

  private static @Nullable Node quiz(ProjectFolder folder, Findings findings) {
    String text = folder.has(QUIZ) ? findings.take(folder.text(QUIZ)) : null;
    return text == null ? null : QuizReader.read(QUIZ, text, findings);
  }

  private Project project(ProjectFolder folder, QuizDefinition quiz, Options options) {
    PartsReader parts = new PartsReader(root, findings);
    StockReader stock = new StockReader(root, fields, findings);
    List<PartDefinition> read = parts.parts();
    return new Project(
        root.text("id", ""),
        root.text("title", ""),
        root.text("course", ""),
        rule(),
        givens(),
        new ChoiceReader(folder, unit, findings).choices(root.entries("givens")),
        sizes(),
        requirements(),
        read,
        stock.blanks(read),
        stock.materials(),
        stock.supplies(),
        new AssemblyReader(root, findings).assembly(),
        options,
        objectives(),
        rubric(),
        quiz,
        accepted());
  }

  private Rule rule() {
    Located<Quantity> read = fields.length(root, "rule");
    if (read == null) {
      return new Rule(unit == Unit.INCH ? USUAL_GRADUATION : Rational.ONE, unit);
    }
    Rational graduation = read.value().value().dividedBy(unit.inBase());
    if (Rule.isGraduation(graduation, unit)) {
      return new Rule(graduation, unit);
    }
    findings.add(
        Finding.error(
            "bad-rule",
            read.at(),
            "no rule is divided so finely or so oddly: " + graduation + " " + unit.symbol(),
            unit == Unit.INCH ? "write 1/16, 1/32 or 1/64" : "write 1 or 0.5"));
    return new Rule(Rational.ONE, unit);
  }

  private List<Project.Given> givens() {
    List<Project.Given> givens = new ArrayList<>();
    for (Node.Entry entry : root.entries("givens")) {
      Node.Mapping given = entry.value().asMapping();
      if (given != null && !ChoiceReader.isChoice(given)) {
        Located<Quantity> value = fields.length(given, "value");
        Located<Quantity> from = fields.length(given, "from");
        Located<Quantity> to = fields.length(given, "to");
        Located<Quantity> tolerance = fields.extent(given, "tolerance");
        checkRange(from, to);
        requireValue(entry.key(), given);
        if (value != null) {
          String about = given.text("about", "");
          givens.add(new Project.Given(entry.key(), value, from, to, tolerance, about));
        }
      }
    }
    return givens;
  }

  private void requireValue(Located<String> name, Node.Mapping given) {
    if (given.get("value") == null) {
      findings.add(
          Finding.error(
              "missing-key",
              name.at(),
              "`" + name.value() + "` needs `value`, or `choose` and `table`",
              "add `value`"));
    }
  }

  private void checkRange(@Nullable Located<Quantity> from, @Nullable Located<Quantity> to) {
    if (from != null && to != null && from.value().value().compareTo(to.value().value()) > 0) {
      findings.add(
          Finding.error(
              "range-reversed",
              from.at(),
              "`from` is more than `to`, so that no value is allowed",
              "swap the two"));
    }
  }

  private List<Project.DerivedSize> sizes() {
    List<Project.DerivedSize> sizes = new ArrayList<>();
    for (Node.Entry entry : root.entries("sizes")) {
      Located<String> bare = entry.value().asText();
      Node.Mapping full = entry.value().asMapping();
      Located<String> formula = full == null ? bare : full.text("is");
      if (formula != null) {
        Located<Quantity> tolerance = full == null ? null : fields.extent(full, "tolerance");
        boolean measured = full != null && full.flag("measured");
        sizes.add(new Project.DerivedSize(entry.key(), formula, tolerance, measured));
      }
    }
    return sizes;
  }

  private List<Project.Requirement> requirements() {
    List<Project.Requirement> requirements = new ArrayList<>();
    for (Node item : root.items("requires")) {
      Node.Mapping mapping = item.asMapping();
      Located<String> that = mapping == null ? null : mapping.text("that");
      if (mapping != null && that != null) {
        requirements.add(new Project.Requirement(that, mapping.text("or", "")));
      }
    }
    return requirements;
  }

  private List<String> objectives() {
    List<String> objectives = new ArrayList<>();
    for (Node item : root.items("objectives")) {
      Node.Mapping row = item.asMapping();
      Located<String> text = row == null ? item.asText() : row.text("objective");
      if (text != null) {
        objectives.add(text.value());
      }
    }
    return objectives;
  }

  private List<Project.RubricRow> rubric() {
    List<Project.RubricRow> rows = new ArrayList<>();
    for (Node item : root.items("rubric")) {
      Node.Mapping row = item.asMapping();
      if (row != null) {
        rows.add(new Project.RubricRow(row.text("row", ""), row.text("limit")));
      }
    }
    return rows;
  }

  private List<Project.Accepted> accepted() {
    List<Project.Accepted> accepted = new ArrayList<>();
    for (Node item : root.items("accepted")) {
      Node.Mapping entry = item.asMapping();
      Located<String> refusal = entry == null ? null : entry.text("refusal");
      Located<String> step = entry == null ? null : entry.text("step");
      Located<String> because = entry == null ? null : entry.text("because");
      if (refusal != null && step != null && because != null) {
        accepted.add(new Project.Accepted(refusal, step, because));
        requireReason(because);
      }
    }
    return accepted;
  }

  /** One word is no reason that anybody could answer for. */
  private void requireReason(Located<String> because) {
    if (because.value().strip().split("\\s+").length < FEWEST_WORDS) {
      findings.add(
          Finding.error(
              "no-reason",
              because.at(),
              "`" + because.value() + "` does not say why the refusal may be accepted",
              "write in your own words what makes it acceptable here, and who answers for it"));
    }
  }
}
