package packetwright.paper.packet;

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
import packetwright.definition.size.Substitution;
import packetwright.paper.quiz.Quiz;
import packetwright.paper.quiz.QuizInput;
import packetwright.paper.quiz.QuizMaker;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lesson.Choices;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Checked;
import packetwright.text.source.Located;
import packetwright.text.words.Words;
import packetwright.wood.assembly.Assembly;
import packetwright.wood.blank.Blank;
import packetwright.wood.blank.Blanks;
import packetwright.wood.caution.CautionRules;
import packetwright.wood.operation.Run;
import packetwright.wood.operation.Simulation;
import packetwright.wood.part.Part;
import packetwright.wood.part.Parts;

/** The sample project worked out, with its quiz. */
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
    return lesson(laidOut(ProjectFolder.sample("sliding-lid-box")), substitution);
  }

  /** The same from another procedure. */
  public static Lesson mended(ProjectFolder folder) {
    return lesson(laidOut(folder), Map.of());
  }

  private static ProjectFolder laidOut(ProjectFolder folder) {
    String procedure = good(folder.text("procedure.md"));
    String laidOut =
        procedure.contains("lay_out: panel")
            ? procedure
            : procedure.replace(
                "- crosscut: bottom", "- lay_out: panel\n  from: left\n- crosscut: bottom");
    return folder.with("procedure.md", laidOut);
  }

  private static Lesson lesson(ProjectFolder folder, Map<String, Located<Quantity>> substitution) {
    Project project = good(ProjectReader.read(folder));
    Shop shop = good(ShopReader.read("shop.yaml", good(folder.text("shop.yaml"))));
    Sizes drawn = good(Sizes.of(project, shop, Substitution.of(substitution)));
    Procedure procedure =
        good(
            ProcedureReader.read(
                "procedure.md",
                good(folder.text("procedure.md")),
                Variant.of(shop, project, Set.of())));
    List<Part> parts = good(Parts.of(project, drawn));
    List<Blank> blanks = good(Blanks.of(project, procedure, shop, drawn, parts));
    Sizes sizes = drawn.with(Blanks.sizes(blanks));
    Run run =
        good(Simulation.run(new Simulation.Inputs(project, procedure, shop, sizes, parts, blanks)));
    return new Lesson(
        project,
        new Choices(
            shop,
            Substitution.of(substitution),
            Map.of("board_width", "139.7 mm"),
            Set.of(),
            "2027 spring"),
        procedure,
        sizes,
        parts,
        good(Assembly.of(project, sizes, parts)),
        blanks,
        run,
        CautionRules.builtIn().apply(run, shop, WORDS).cautions(),
        List.of());
  }

  /** Form A of its quiz. */
  public static Quiz quiz(Lesson lesson) {
    return good(
        QuizMaker.make(
            new QuizInput(
                lesson.project().id(),
                lesson.project().rule(),
                lesson.choices().term(),
                "A",
                lesson.project().quiz().questions(),
                lesson.sizes(),
                lesson.project().givens(),
                WORDS)));
  }

  /** Both documents. */
  public static Packets.Documents documents() {
    Lesson lesson = lesson();
    return good(Packets.of(lesson, quiz(lesson), WORDS));
  }
}
