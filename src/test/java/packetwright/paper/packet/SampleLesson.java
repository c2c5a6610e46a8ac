package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.ProcedureReader;
import packetwright.definition.procedure.Variant;
import packetwright.definition.project.Project;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.project.ProjectReader;
import packetwright.definition.shop.Shop;
import packetwright.definition.shop.ShopReader;
import packetwright.definition.size.Sizes;
import packetwright.drawing.sheet.RuleSheet;
import packetwright.drawing.sheet.RuleSheet.Pointer;
import packetwright.paper.quiz.Quiz;
import packetwright.paper.quiz.Quiz.Mistake;
import packetwright.paper.quiz.Quiz.Question;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lesson.Choices;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Located;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.assembly.Assembly;
import packetwright.wood.blank.Blank;
import packetwright.wood.blank.Blanks;
import packetwright.wood.caution.CautionRules;
import packetwright.wood.operation.Run;
import packetwright.wood.operation.Simulation;
import packetwright.wood.part.Part;
import packetwright.wood.part.Parts;

/** The sample project worked out, with a quiz made by hand. */
public final class SampleLesson {
  /** English. */
  public static final Words WORDS = Words.of("en");

  private SampleLesson() {}

  private static <T> T good(Checked<T> checked) {
    if (!checked.hasValue()) {
      throw new AssertionError(checked.findings());
    }
    return checked.value();
  }

  /** Everything at the sample's own sizes. */
  public static Lesson lesson() {
    return lesson(Map.of());
  }

  /** The same with other givens. */
  public static Lesson lesson(Map<String, Located<Quantity>> substitution) {
    ProjectFolder folder = ProjectFolder.sample("sliding-lid-box");
    String procedure = good(folder.text("procedure.md"));
    String laidOut =
        procedure.contains("lay_out: panel")
            ? procedure
            : procedure.replace(
                "- crosscut: bottom", "- lay_out: panel\n  from: left\n- crosscut: bottom");
    return lesson(folder.with("procedure.md", laidOut), substitution);
  }

  /** The same from another folder. */
  public static Lesson lesson(ProjectFolder folder, Map<String, Located<Quantity>> substitution) {
    Project project = good(ProjectReader.read(folder));
    Shop shop = good(ShopReader.read("shop.yaml", good(folder.text("shop.yaml"))));
    Sizes drawn = good(Sizes.of(project, shop, substitution));
    Procedure procedure =
        good(
            ProcedureReader.read(
                "procedure.md",
                good(folder.text("procedure.md")),
                new Variant(shop, project.options().keySet(), Set.of())));
    List<Part> parts = good(Parts.of(project, drawn));
    List<Blank> blanks = good(Blanks.of(project, procedure, shop, drawn, parts));
    Sizes sizes = drawn.with(Blanks.sizes(blanks));
    Run run =
        good(Simulation.run(new Simulation.Inputs(project, procedure, shop, sizes, parts, blanks)));
    return new Lesson(
        project,
        new Choices(shop, substitution, Set.of(), "2027 spring"),
        procedure,
        sizes,
        parts,
        good(Assembly.of(project, sizes, parts)),
        blanks,
        run,
        good(CautionRules.builtIn().apply(run, shop, WORDS)));
  }

  /** Two readings and a difference. */
  public static Quiz quiz() {
    Rule sixteenths = new Rule(Rational.of(1, 16), Unit.INCH);
    Rule sixtyFourths = new Rule(Rational.of(1, 64), Unit.INCH);
    List<Question> questions = new ArrayList<>();
    for (int n : List.of(37, 61)) {
      Length at = Length.ofInches(n, 16);
      questions.add(
          new Question(
              Phrase.of("To which mark does the arrow point?"),
              RuleSheet.draw(
                  "quiz-" + n, sixteenths, Length.ofInches(6), List.of(new Pointer("", at)), WORDS),
              Phrase.of(sixteenths.print(at)),
              List.of(
                  Naming.typeset("Count the sixteenths after the inch mark: " + n % 16 + "/16.")),
              List.of(
                  new Mistake(
                      Phrase.of(sixteenths.print(Length.ofInches(n / 16 * 8 + n % 16, 8))),
                      Phrase.of("read sixteenths as eighths")))));
    }
    questions.add(
        new Question(
            Naming.typeset(
                "The box is 5 in wide outside. The two tongues together measure 1/2 in. How long"
                    + " is the back end?"),
            null,
            Phrase.of(sixtyFourths.print(Length.ofInches(9, 2))),
            List.of(Naming.typeset("5 in − 1/2 in = 4 1/2 in")),
            List.of(
                new Mistake(
                    Phrase.of(sixtyFourths.print(Length.ofInches(19, 4))),
                    Phrase.of("took off one tongue only")))));
    return new Quiz("A", questions);
  }

  /** Both documents. */
  public static Packets.Documents documents() {
    return good(Packets.of(lesson(), quiz(), WORDS));
  }
}
