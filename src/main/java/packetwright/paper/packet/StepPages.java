package packetwright.paper.packet;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import packetwright.definition.procedure.Step;
import packetwright.definition.shop.MachineKind;
import packetwright.drawing.figure.Drawings;
import packetwright.plan.lesson.Lesson;
import packetwright.text.source.Findings;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.operation.OperationRun;

/** Prepares the steps of the procedure for printing. */
final class StepPages {
  /** More do not fit beside the text of a step. */
  private static final int MOST_FIGURES = 3;

  private final Lesson lesson;
  private final Naming naming;
  private final Words words;
  private final PlaceText text;
  private final SetUps setUps;
  private final CautionPlaces cautions;
  private final Drawings drawings;

  StepPages(Lesson lesson, Naming naming, PlaceText text, CautionPlaces cautions) {
    this.lesson = lesson;
    this.naming = naming;
    this.words = naming.words();
    this.text = text;
    this.setUps = new SetUps(lesson, naming);
    this.cautions = cautions;
    this.drawings = new Drawings(lesson, words);
  }

  List<PacketStep> steps() {
    return lesson.procedure().steps().stream().map(this::step).toList();
  }

  private PacketStep step(Step step) {
    List<OperationRun> runs = lesson.run().ofStep(step.number());
    boolean isInstructors = CautionPlaces.isInstructors(step);
    boolean isBetween = isInstructors && !step.isPreparation();
    List<PacketStep.Check> checks = setUps.checks(runs, isInstructors);
    return new PacketStep(
        step.mark(),
        step.id(),
        step.title(),
        named(step),
        step.isPreparation(),
        isBetween ? new Handout(lesson, naming).back(runs) : Naming.nothing(),
        text.fill(step.prose(), step),
        setUps.boxes(runs),
        new HelperLines(lesson, naming).of(runs),
        cautions.panels(step),
        cautions.more(step),
        check(checks, isInstructors),
        checks,
        isInstructors ? new MillingTables(lesson, naming).of(runs) : List.of(),
        new DryFit(lesson, naming).rows(runs),
        isInstructors ? List.of() : drawings.kindsOfSetUp(step, MOST_FIGURES),
        drawings.layouts(step));
  }

  private List<PacketStep.Tool> named(Step step) {
    return tools(lesson, naming, step).stream()
        .sorted(Comparator.comparing(kind -> !kind.isPowered()))
        .map(kind -> new PacketStep.Tool(naming.machine(kind), kind.isPowered()))
        .toList();
  }

  /** What a step is done with, in the order used; then the hand tools that only its text names. */
  static Set<MachineKind> tools(Lesson lesson, Naming naming, Step step) {
    Set<MachineKind> tools = new LinkedHashSet<>();
    for (OperationRun run : lesson.run().ofStep(step.number())) {
      MachineKind kind = run.tool();
      if (kind != null) {
        tools.add(kind);
      }
    }
    List<Prose> prose = new PlaceText(lesson, naming, new Findings()).fill(step.prose(), step);
    String text = Glossary.text(prose, naming.words());
    for (MachineKind kind : MachineKind.values()) {
      // Clamps stand among the helpers, and every second sentence says to clamp something.
      if (!kind.isPowered() && kind != MachineKind.CLAMP && naming.isNamed(kind, text)) {
        tools.add(kind);
      }
    }
    return tools;
  }

  /** Who looks, and at which machines, in the order used. */
  private Phrase check(List<PacketStep.Check> checks, boolean isInstructors) {
    List<Phrase> machines =
        checks.stream().map(c -> Phrase.of(lower(words.plain(c.machine())))).distinct().toList();
    if (machines.isEmpty()) {
      return Naming.nothing();
    }
    return isInstructors
        ? words.say("packet.check.own")
        : words.say("packet.check.ask", words.list(machines));
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
