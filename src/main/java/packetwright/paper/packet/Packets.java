package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Operation.By;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.Project;
import packetwright.definition.project.Project.Supply;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.size.Evaluated;
import packetwright.definition.size.Size;
import packetwright.drawing.figure.Drawings;
import packetwright.drawing.sheet.Sheet;
import packetwright.paper.packet.AnswerKey.StepChecks;
import packetwright.paper.packet.StudentPacket.Cover;
import packetwright.paper.packet.StudentPacket.PartRow;
import packetwright.paper.packet.StudentPacket.Question;
import packetwright.paper.packet.StudentPacket.QuizPage;
import packetwright.paper.quiz.Quiz;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.blank.Blank;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.part.Part;

/** Turns a lesson and a quiz into the two documents. */
public final class Packets {
  private final Lesson lesson;
  private final Quiz quiz;
  private final Words words;
  private final Rule rule;
  private final Naming naming;
  private final Findings findings = new Findings();

  private Packets(Lesson lesson, Quiz quiz, Words words) {
    this.lesson = lesson;
    this.quiz = quiz;
    this.words = words;
    this.rule = lesson.project().rule();
    this.naming = new Naming(words, rule);
  }

  /**
   * Both documents of a lesson.
   *
   * @param student packet
   * @param key to it
   */
  public record Documents(StudentPacket student, AnswerKey key) {}

  /** The documents, or what is wrong with the places of the prose. */
  public static Checked<Documents> of(Lesson lesson, Quiz quiz, Words words) {
    Packets packets = new Packets(lesson, quiz, words);
    PlaceText text = new PlaceText(lesson, packets.naming, packets.findings);
    CautionPlaces cautions = new CautionPlaces(lesson, packets.naming);
    List<PacketStep> steps = new StepPages(lesson, packets.naming, text, cautions).steps();
    Documents documents =
        new Documents(packets.student(steps, text, cautions), packets.key(steps, cautions));
    return packets.findings.checked(documents);
  }

  private StudentPacket student(List<PacketStep> steps, PlaceText text, CautionPlaces cautions) {
    Handout handout = new Handout(lesson, naming);
    Drawings drawings = new Drawings(lesson, words);
    return new StudentPacket(
        heading(),
        cover(text),
        drawings.apart(),
        drawings.parts(),
        lesson.parts().stream().map(this::row).toList(),
        handout.handed(),
        handout.rough(),
        steps.stream().filter(s -> !s.prepared()).toList(),
        cautions.machines(true),
        new Fitting(lesson, naming).sheet(),
        quizPage(),
        lesson.project().rubric().stream().map(this::rubric).toList(),
        Glossary.of(steps, words));
  }

  private AnswerKey key(List<PacketStep> steps, CautionPlaces cautions) {
    KeyTables tables = new KeyTables(lesson, naming);
    SafetyPage safety = new SafetyPage(lesson, naming);
    return new AnswerKey(
        heading(),
        tables.result(),
        tables.substituted(),
        steps.stream().filter(PacketStep::prepared).toList(),
        cautions.machines(false),
        steps.stream().filter(PacketStep::isBetween).toList(),
        new HelperLines(lesson, naming).rows(),
        new HelperLines(lesson, naming).stock(),
        tables.sizes(),
        tables.blanks(),
        tables.settings(),
        checks(steps),
        new FittingAnswers(lesson, naming).tables(),
        quiz.form(),
        KeyTables.answers(quiz),
        safety.looser(),
        safety.accepted(),
        safety.disputed(),
        safety.fired());
  }

  /** The set-ups of the steps that students read. */
  private static List<StepChecks> checks(List<PacketStep> steps) {
    return steps.stream()
        .filter(s -> !s.prepared() && !s.isBetween() && !s.checks().isEmpty())
        .map(s -> new StepChecks(s.mark(), s.title(), s.checks()))
        .toList();
  }

  private Heading heading() {
    Project project = lesson.project();
    return new Heading(
        project.title(),
        project.course(),
        lesson.choices().term(),
        lesson.shop().name(),
        lesson.run().operations().stream()
            .map(OperationRun::tool)
            .anyMatch(kind -> kind != null && kind.isPowered()),
        project.options().chosen().stream()
            .map(
                option ->
                    new Heading.Chosen(
                        Phrase.of(Naming.plain(option.name().value())),
                        Naming.typeset(option.about())))
            .toList());
  }

  private Cover cover(PlaceText text) {
    Set<MachineKind> tools = new LinkedHashSet<>();
    Set<String> supplies = new LinkedHashSet<>();
    for (OperationRun run : lesson.run().operations()) {
      if (run.operation().by() != By.INSTRUCTOR) {
        run.operation().using().forEach(u -> supplies.add(u.value()));
      }
    }
    lesson.procedure().steps().stream()
        .filter(step -> !CautionPlaces.isInstructors(step))
        .forEach(step -> tools.addAll(StepPages.tools(lesson, naming, step)));
    Map<String, String> gear = new LinkedHashMap<>(Map.of("eye", words.plain("packet.gear.eyes")));
    if (tools.stream().anyMatch(MachineKind::isPowered)) {
      gear.put("ear", words.plain("packet.gear.ears"));
    }
    if (lesson.run().operations().stream().anyMatch(o -> isSanding(o.operation()))) {
      gear.put("dust", words.plain("packet.gear.dust"));
    }
    return new Cover(
        TrueScale.strip(rule.unit(), words),
        new Drawings(lesson, words).finished(),
        text.fill(lesson.procedure().introduction(), null),
        lesson.project().objectives().stream().map(Naming::typeset).toList(),
        names(tools, true),
        names(tools, false),
        lesson.project().supplies().stream()
            .filter(s -> supplies.contains(s.name().value()))
            .map(this::supply)
            .toList(),
        gear.values().stream().map(Phrase::of).toList(),
        gear.entrySet().stream().map(g -> Signs.sheet(g.getKey(), 34, g.getValue())).toList(),
        lesson.shop().rules().stream().map(Naming::typeset).toList());
  }

  private static boolean isSanding(Operation operation) {
    return operation.verb().value() == Verb.SAND;
  }

  private List<Phrase> names(Set<MachineKind> tools, boolean powered) {
    return tools.stream()
        .filter(k -> k.isPowered() == powered)
        .map(k -> Phrase.of(naming.machine(k)))
        .toList();
  }

  private Phrase supply(Supply supply) {
    String name = Naming.plain(supply.name().value());
    if (supply.grits().isEmpty()) {
      return Phrase.of(name);
    }
    List<Phrase> grits = supply.grits().stream().map(g -> Phrase.of(g.toString())).toList();
    return words.say("packet.grits", name, words.list(grits));
  }

  private Phrase material(Part part) {
    for (Blank blank : lesson.blanks()) {
      if (blank.name().equals(part.blank())) {
        return Phrase.of(Naming.plain(blank.material()));
      }
    }
    return Naming.nothing();
  }

  private PartRow row(Part part) {
    return new PartRow(
        part.letter(),
        Phrase.of(Naming.title(part.name())),
        part.count(),
        material(part),
        marked(part, ".length", part.solid().length()),
        marked(part, ".width", part.solid().width()),
        marked(part, ".thickness", part.solid().thickness()));
  }

  /** A finished size, with a dagger where it is cut to fit. */
  private Phrase marked(Part part, String dimension, Length length) {
    Size size = lesson.sizes().find(part.name() + dimension);
    Phrase printed = naming.size(length);
    return size == null || size.fitted().isEmpty()
        ? printed
        : words.say("packet.cut_to_fit", printed);
  }

  private QuizPage quizPage() {
    boolean inches = rule.unit() == Unit.INCH;
    List<Question> questions = new ArrayList<>();
    for (Quiz.Question question : quiz.questions()) {
      Sheet drawing = question.drawing();
      questions.add(
          new Question(
              questions.size() + 1,
              question.prompt(),
              drawing == null ? List.of() : List.of(drawing)));
    }
    return new QuizPage(
        quiz.form(),
        TrueScale.bar(rule.unit(), words),
        words.say("packet.bar.text", words.plain(inches ? "packet.bar.inch" : "packet.bar.metric")),
        questions);
  }

  private Phrase rubric(Project.RubricRow row) {
    Located<String> limit = row.limit();
    Evaluated value = limit == null ? null : findings.take(lesson.sizes().evaluate(limit));
    return value == null
        ? Naming.typeset(row.row())
        : words.say("packet.rubric", row.row(), naming.exactly(value.value()));
  }
}
