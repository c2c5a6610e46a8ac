package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Operation.By;
import packetwright.definition.procedure.Step;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.drawing.sheet.LayoutSheet;
import packetwright.drawing.sheet.Sheet;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Quantity;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.caution.Caution;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.part.Part;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Layout;
import packetwright.wood.workpiece.Workpiece;

/** Prepares the steps of the procedure for printing. */
final class StepPages {
  private final Lesson lesson;
  private final Naming naming;
  private final Words words;
  private final PlaceText text;
  private final Sheet alert;
  private final FastenerWords fasteners;

  StepPages(Lesson lesson, Naming naming, PlaceText text) {
    this.lesson = lesson;
    this.naming = naming;
    this.words = naming.words();
    this.text = text;
    this.fasteners = new FastenerWords(lesson, naming);
    this.alert = Signs.sheet("alert", 23, words.plain("packet.alert"));
  }

  List<PacketStep> steps() {
    return lesson.procedure().steps().stream().map(this::step).toList();
  }

  private PacketStep step(Step step) {
    List<OperationRun> runs = lesson.run().ofStep(step.number());
    boolean isBetween = isInstructors(step) && !step.isPreparation();
    return new PacketStep(
        step.mark(),
        step.id(),
        step.title(),
        tools(runs),
        step.isPreparation(),
        isBetween ? new Handout(lesson, naming).back(runs) : Naming.nothing(),
        text.fill(step.prose(), step),
        settings(runs),
        new HelperLines(lesson, naming).of(runs),
        panels(step.number()),
        isInstructors(step) ? ownCheck(runs) : check(runs),
        isInstructors(step) ? new MillingTables(lesson, naming).of(runs) : List.of(),
        drawings(runs));
  }

  /** Whether the instructor does all of it. */
  private static boolean isInstructors(Step step) {
    return !step.operations().isEmpty()
        && step.operations().stream().allMatch(o -> o.by() == By.INSTRUCTOR);
  }

  private List<PacketStep.Tool> tools(List<OperationRun> runs) {
    Set<PacketStep.Tool> powered = new LinkedHashSet<>();
    Set<PacketStep.Tool> byHand = new LinkedHashSet<>();
    for (OperationRun run : runs) {
      MachineKind kind = run.tool();
      if (kind != null) {
        (kind.isPowered() ? powered : byHand)
            .add(new PacketStep.Tool(naming.machine(kind), kind.isPowered()));
      }
    }
    List<PacketStep.Tool> tools = new ArrayList<>(powered);
    tools.addAll(byHand);
    return tools;
  }

  /** One box for each set-up; operations that share one share its box. */
  private List<PacketStep.SettingsBox> settings(List<OperationRun> runs) {
    Map<List<PacketStep.Setting>, Phrase> boxes = new LinkedHashMap<>();
    for (OperationRun run : runs) {
      List<PacketStep.Setting> lines =
          new ArrayList<>(run.settings().stream().map(s -> setting(run, s)).toList());
      lines.addAll(fasteners.lines(run));
      if (!lines.isEmpty()) {
        boxes.putIfAbsent(lines, naming.work(run.operation()));
      }
    }
    List<PacketStep.SettingsBox> list = new ArrayList<>();
    boxes.forEach(
        (lines, work) ->
            list.add(
                new PacketStep.SettingsBox(boxes.size() == 1 ? Naming.nothing() : work, lines)));
    return list;
  }

  private PacketStep.Setting setting(OperationRun run, Setting setting) {
    return new PacketStep.Setting(
        naming.setting(run, setting),
        naming.exactly(setting.value()),
        datum(run, setting),
        note(setting));
  }

  /** From where it is measured; on a mirror image left is right. */
  Phrase datum(OperationRun run, Setting setting) {
    if (setting.datum().isEmpty()) {
      return Naming.nothing();
    }
    Phrase datum = words.say("packet.datum." + setting.datum());
    List<String> mirrored =
        run.before().stream().map(Workpiece::name).filter(this::isMirrored).toList();
    Side side = Side.of(setting.datum());
    return mirrored.isEmpty() || side == null || side.axis() != 0
        ? datum
        : words.say(
            "packet.datum.mirrored",
            datum,
            words.list(mirrored.stream().map(p -> Phrase.of(letter(p))).toList()),
            words.say("packet.datum." + side.opposite().word()));
  }

  private boolean isMirrored(String piece) {
    Part part = part(piece);
    return part != null && part.isMirrored(piece);
  }

  private String letter(String piece) {
    Part part = part(piece);
    return part == null ? piece : part.pieceLetter(piece);
  }

  private @Nullable Part part(String piece) {
    return lesson.parts().stream()
        .filter(part -> part.name().equals(Part.nameOf(piece)))
        .findFirst()
        .orElse(null);
  }

  /** A cutter's make-up, or that a measurement comes in place of the value. */
  Phrase note(Setting setting) {
    if (!setting.stack().isEmpty()) {
      Phrase sum = Naming.nothing();
      for (int i = 0; i < setting.stack().size(); i++) {
        Phrase width = naming.exactly(Quantity.of(setting.stack().get(i)));
        sum = i == 0 ? width : words.say("packet.sum", sum, width);
      }
      return words.say("packet.stack", sum);
    }
    return setting.fitted() ? words.say("packet.setting.fitted") : Naming.nothing();
  }

  /** The step's cautions under one signal word each, most severe first. */
  private List<PacketStep.Panel> panels(int step) {
    List<PacketStep.Panel> panels = new ArrayList<>();
    for (Caution.Signal signal : Caution.Signal.values()) {
      List<PacketStep.Statement> statements =
          lesson.cautions().stream()
              .filter(c -> c.step() == step && c.signal() == signal)
              .map(StepPages::statement)
              .toList();
      if (!statements.isEmpty()) {
        panels.add(
            new PacketStep.Panel(
                severity(signal),
                words.say("packet.signal." + severity(signal)),
                signal == Caution.Signal.NOTICE ? List.of() : List.of(alert),
                statements));
      }
    }
    return panels;
  }

  static String severity(Caution.Signal signal) {
    return signal.name().toLowerCase(Locale.ROOT);
  }

  static PacketStep.Statement statement(Caution caution) {
    return new PacketStep.Statement(
        Naming.typeset(caution.hazard()),
        Naming.typeset(caution.consequence()),
        Naming.typeset(caution.avoid()));
  }

  private Phrase check(List<OperationRun> runs) {
    List<Phrase> machines =
        checked(runs).stream().map(k -> Phrase.of(lower(naming.machine(k)))).toList();
    return machines.isEmpty()
        ? Naming.nothing()
        : words.say("packet.check.ask", words.list(machines));
  }

  /** What the instructor looks at where no student stands at the machine. */
  private Phrase ownCheck(List<OperationRun> runs) {
    Looks looks = new Looks(naming);
    List<Phrase.Piece> said = new ArrayList<>();
    for (MachineKind kind : lesson.shop().setupCheck()) {
      List<OperationRun> own = runs.stream().filter(r -> r.tool() == kind).toList();
      if (!own.isEmpty()) {
        Phrase look = words.say("packet.check.own", naming.machine(kind), looks.machine(kind));
        Phrase set = looks.settings(own);
        look = set.pieces().isEmpty() ? look : words.say("packet.check.own.set", look, set);
        said.addAll((said.isEmpty() ? look : words.say("packet.check.next", look)).pieces());
      }
    }
    return new Phrase(said);
  }

  /** Machines whose set-up a student makes and the instructor looks at, in the order used. */
  Set<MachineKind> checked(List<OperationRun> runs) {
    Set<MachineKind> kinds = new LinkedHashSet<>();
    for (OperationRun run : runs) {
      Operation operation = run.operation();
      MachineKind kind = run.tool();
      if (kind != null
          && operation.by() != By.INSTRUCTOR
          && lesson.shop().setupCheck().contains(kind)) {
        kinds.add(kind);
      }
    }
    return kinds;
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** What tells a blank's second lay-out from its first. */
  private String again(OperationRun run, Layout layout) {
    List<OperationRun> all = lesson.run().operations();
    long earlier =
        all.subList(0, all.indexOf(run)).stream()
            .map(OperationRun::layout)
            .filter(other -> other != null && other.blank().equals(layout.blank()))
            .count();
    return earlier == 0 ? "" : "-" + (earlier + 1);
  }

  private List<Sheet> drawings(List<OperationRun> runs) {
    List<Sheet> sheets = new ArrayList<>();
    for (OperationRun run : runs) {
      Layout layout = run.layout();
      if (layout != null) {
        Sheet sheet = LayoutSheet.draw(layout, naming.rule(), words);
        sheets.add(sheet.named(sheet.name() + again(run, layout)));
      }
    }
    return sheets;
  }
}
