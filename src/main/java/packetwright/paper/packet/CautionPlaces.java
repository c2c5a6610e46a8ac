package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import packetwright.definition.procedure.Operation.By;
import packetwright.definition.procedure.Step;
import packetwright.definition.shop.MachineKind;
import packetwright.drawing.sheet.Sheet;
import packetwright.paper.packet.PacketStep.MachineRules;
import packetwright.paper.packet.PacketStep.Panel;
import packetwright.paper.packet.PacketStep.Statement;
import packetwright.plan.lesson.Lesson;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.caution.Caution;
import packetwright.wood.caution.Caution.Firing;
import packetwright.wood.caution.Caution.Signal;
import packetwright.wood.caution.Hazard;
import packetwright.wood.operation.OperationRun;

/**
 * Where each hazard statement is printed. A step has at most three, the most severe; what is over,
 * and what holds for a machine as a whole, stands once on the page of the machines.
 */
final class CautionPlaces {
  /** A student reads three, not thirteen. */
  static final int MOST_AT_A_STEP = 3;

  /** What is no machine's: its head, and the kinds of hazard under it. */
  private static final String EVERYWHERE = "everywhere";

  private final Lesson lesson;
  private final Naming naming;
  private final Words words;
  private final Sheet alert;
  private final Map<Integer, List<Said>> atStep = new LinkedHashMap<>();
  private final Map<Integer, List<Said>> over = new LinkedHashMap<>();

  CautionPlaces(Lesson lesson, Naming naming) {
    this.lesson = lesson;
    this.naming = naming;
    this.words = naming.words();
    this.alert = Signs.sheet("alert", 23, words.plain("packet.alert"));
    for (Step step : lesson.procedure().steps()) {
      List<Said> chosen = mostSevereFirst(said(step.number()));
      int most = Math.min(MOST_AT_A_STEP, chosen.size());
      atStep.put(
          step.number(),
          chosen.subList(0, most).stream().sorted(Comparator.comparing(Said::signal)).toList());
      over.put(step.number(), chosen.subList(most, chosen.size()));
    }
  }

  /** Whether the instructor does all of a step, so that no student reads it. */
  static boolean isInstructors(Step step) {
    return !step.operations().isEmpty()
        && step.operations().stream().allMatch(o -> o.by() == By.INSTRUCTOR);
  }

  /** The statements of a step, the most severe first. */
  List<Panel> panels(Step step) {
    return panels(
        atStep.getOrDefault(step.number(), List.of()).stream()
            .map(s -> new Entry(s.signal(), at(step, s)))
            .toList());
  }

  /** The heads on the page of the machines under which a step has more to read; may be empty. */
  List<Phrase> more(Step step) {
    Set<String> heads = new LinkedHashSet<>();
    over.getOrDefault(step.number(), List.of()).forEach(s -> heads.add(head(s.first())));
    return heads.stream().map(this::name).toList();
  }

  /** The page of the machines: the student's, or the instructor's own. */
  List<MachineRules> machines(boolean isStudents) {
    Map<List<Entry>, List<String>> heads = new LinkedHashMap<>();
    for (String head : order(isStudents)) {
      List<Entry> entries = new ArrayList<>();
      once(head, isStudents).forEach(s -> entries.add(new Entry(s.signal(), statement(s))));
      for (Step step : steps(isStudents)) {
        over.getOrDefault(step.number(), List.of()).stream()
            .filter(s -> head(s.first()).equals(head))
            .forEach(s -> entries.add(new Entry(s.signal(), over(step, s))));
      }
      if (!entries.isEmpty()) {
        heads.computeIfAbsent(entries, e -> new ArrayList<>()).add(head);
      }
    }
    return heads.entrySet().stream()
        .map(
            h ->
                new MachineRules(
                    names(h.getValue()),
                    isPowered(h.getValue().get(0)),
                    where(h.getValue(), isStudents),
                    panels(h.getKey())))
        .toList();
  }

  /** {@code Bench plane and block plane}: tools of which the same is said share a head. */
  private Phrase names(List<String> heads) {
    Phrase first = name(heads.get(0));
    return heads.size() == 1
        ? first
        : words.list(
            Stream.concat(
                    Stream.of(first),
                    heads.stream().skip(1).map(h -> Phrase.of(lower(words.plain(name(h))))))
                .toList());
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  static String severity(Signal signal) {
    return signal.name().toLowerCase(Locale.ROOT);
  }

  static Statement statement(Caution caution) {
    return new Statement(
        Naming.nothing(),
        Naming.typeset(caution.hazard()),
        Naming.typeset(caution.consequence()),
        Naming.typeset(caution.avoid()));
  }

  // ---- what is said

  /** Cautions that are printed in the same words. */
  private record Said(List<Caution> cautions) {
    Caution first() {
      return cautions.get(0);
    }

    Signal signal() {
      return cautions.stream().map(Caution::signal).min(Comparator.naturalOrder()).orElseThrow();
    }

    boolean refuses() {
      return cautions.stream().anyMatch(Caution::refuses);
    }

    Hazard against() {
      return first().against();
    }

    List<OperationRun> runs() {
      return cautions.stream()
          .flatMap(c -> c.fired().stream())
          .filter(f -> !f.isReplaced())
          .map(Firing::run)
          .toList();
    }
  }

  private List<Said> said(int step) {
    return merged(
        lesson.cautions().stream()
            .filter(c -> c.step() == step && !c.isOnce() && !c.isReplaced())
            .toList());
  }

  private static List<Said> merged(List<Caution> cautions) {
    Map<String, List<Caution>> byText = new LinkedHashMap<>();
    for (Caution caution : cautions) {
      String text = String.join("\n", caution.hazard(), caution.consequence(), caution.avoid());
      byText.computeIfAbsent(text, t -> new ArrayList<>()).add(caution);
    }
    return byText.values().stream().map(Said::new).toList();
  }

  /**
   * A refusal that was accepted stands first; of two as severe, each machine's first stand first.
   */
  private static List<Said> mostSevereFirst(List<Said> all) {
    List<Said> sorted =
        all.stream()
            .sorted(
                Comparator.comparing((Said s) -> !s.refuses())
                    .thenComparing(Said::signal)
                    .thenComparing(Said::against))
            .toList();
    Map<Said, Integer> turn = new LinkedHashMap<>();
    Map<String, Integer> count = new LinkedHashMap<>();
    sorted.forEach(s -> turn.put(s, count.merge(head(s.first()), 1, Integer::sum)));
    return sorted.stream()
        .sorted(
            Comparator.comparing((Said s) -> !s.refuses())
                .thenComparing(Said::signal)
                .thenComparing(s -> turn.getOrDefault(s, 0)))
        .toList();
  }

  // ---- at a step

  private Statement at(Step step, Said said) {
    return only(work(step, said), said);
  }

  private Statement only(Phrase lead, Said said) {
    Statement plain = statement(said.first());
    return lead.pieces().isEmpty()
        ? plain
        : new Statement(
            words.say("packet.caution.only", lead),
            plain.hazard(),
            plain.consequence(),
            plain.avoid());
  }

  /** Which cuts of a step it speaks of; nothing where it speaks of every one at that machine. */
  private Phrase work(Step step, Said said) {
    MachineKind tool = said.first().tool();
    List<OperationRun> cuts =
        lesson.run().ofStep(step.number()).stream()
            .filter(r -> r.work() != null && r.tool() == tool)
            .toList();
    List<OperationRun> own = said.runs().stream().filter(cuts::contains).distinct().toList();
    if (tool == null || own.isEmpty() || own.size() == cuts.size()) {
      return Naming.nothing();
    }
    return own.stream()
        .map(r -> naming.work(r.operation()))
        .distinct()
        .reduce((a, b) -> words.say("packet.caution.works", a, b))
        .orElseThrow();
  }

  // ---- on the page of the machines

  private Statement statement(Said said) {
    return statement(said.first());
  }

  private Statement over(Step step, Said said) {
    Phrase work = work(step, said);
    Phrase at =
        work.pieces().isEmpty()
            ? words.say("packet.caution.step", step.mark())
            : words.say("packet.caution.step.work", step.mark(), work);
    return only(at, said);
  }

  private List<Said> once(String head, boolean isStudents) {
    return merged(
            lesson.cautions().stream()
                .filter(c -> c.isOnce() && isStudents(c) == isStudents && head(c).equals(head))
                .toList())
        .stream()
        .sorted(Comparator.comparing(Said::signal))
        .toList();
  }

  private static boolean isStudents(Caution caution) {
    return caution.fired().stream().anyMatch(f -> f.run().operation().by() != By.INSTRUCTOR);
  }

  private static String head(Caution caution) {
    MachineKind tool = caution.tool();
    if (tool != null && !caution.isGeneral()) {
      return tool.word();
    }
    return switch (caution.against()) {
      case DUST -> "dust";
      case CHEMICAL, FIRE -> "finish";
      default -> EVERYWHERE;
    };
  }

  /** Everywhere first, then machines and hand tools as they are used, then dust and finish. */
  private List<String> order(boolean isStudents) {
    List<String> heads = new ArrayList<>(List.of(EVERYWHERE));
    Collection<MachineKind> used = used(isStudents);
    used.stream().filter(MachineKind::isPowered).map(MachineKind::word).forEach(heads::add);
    used.stream().filter(k -> !k.isPowered()).map(MachineKind::word).forEach(heads::add);
    heads.addAll(List.of("dust", "finish"));
    return heads;
  }

  private Collection<MachineKind> used(boolean isStudents) {
    Set<MachineKind> used = new LinkedHashSet<>();
    if (isStudents) {
      steps(true).forEach(step -> used.addAll(StepPages.tools(lesson, naming, step)));
      return used;
    }
    for (OperationRun run : lesson.run().operations()) {
      MachineKind kind = run.tool();
      if (kind != null && run.operation().by() == By.INSTRUCTOR) {
        used.add(kind);
      }
    }
    return used;
  }

  private List<Step> steps(boolean isStudents) {
    return lesson.procedure().steps().stream().filter(s -> isInstructors(s) != isStudents).toList();
  }

  private Phrase name(String head) {
    MachineKind kind = MachineKind.of(head);
    return kind == null ? words.say("packet.head." + head) : Phrase.of(naming.machine(kind));
  }

  private static boolean isPowered(String head) {
    MachineKind kind = MachineKind.of(head);
    return kind != null && kind.isPowered();
  }

  /** {@code Steps 2 and 9}: where machines are used. */
  private Phrase where(List<String> heads, boolean isStudents) {
    List<MachineKind> kinds = heads.stream().map(MachineKind::of).filter(Objects::nonNull).toList();
    List<Phrase> marks =
        steps(isStudents).stream()
            .filter(s -> StepPages.tools(lesson, naming, s).stream().anyMatch(kinds::contains))
            .map(s -> Phrase.of(s.mark()))
            .toList();
    return marks.isEmpty()
        ? Naming.nothing()
        : words.counted("packet.steps", marks.size(), words.list(marks));
  }

  /** A statement with its severity. */
  private record Entry(Signal signal, Statement statement) {}

  private List<Panel> panels(List<Entry> entries) {
    List<Panel> panels = new ArrayList<>();
    for (Signal signal : Signal.values()) {
      List<Statement> statements =
          entries.stream().filter(e -> e.signal() == signal).map(Entry::statement).toList();
      if (!statements.isEmpty()) {
        panels.add(
            new Panel(
                severity(signal),
                words.say("packet.signal." + severity(signal)),
                signal == Signal.NOTICE ? List.of() : List.of(alert),
                statements));
      }
    }
    return panels;
  }
}
