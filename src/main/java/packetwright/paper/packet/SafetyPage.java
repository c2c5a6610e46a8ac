package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import packetwright.definition.procedure.Step;
import packetwright.definition.shop.MachineKind;
import packetwright.paper.packet.AnswerKey.AcceptedRow;
import packetwright.paper.packet.AnswerKey.Fired;
import packetwright.paper.packet.AnswerKey.LimitRow;
import packetwright.paper.packet.AnswerKey.Safety;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.caution.Caution;
import packetwright.wood.caution.Caution.Firing;
import packetwright.wood.caution.CautionRules;
import packetwright.wood.caution.ComparedLimit;

/** The key's safety page: which rules fired, where, why, and on whose word. */
record SafetyPage(Lesson lesson, Naming naming) {
  /** Where the shop allows more than our own limits do. */
  List<LimitRow> looser() {
    return rows(CautionRules.builtIn().looserLimits(lesson.shop()));
  }

  /** Where others publish another value, for the machines of this procedure. */
  List<LimitRow> disputed() {
    return rows(
        CautionRules.builtIn().disputedLimits(lesson.shop()).stream()
            .filter(
                limit ->
                    lesson.run().operations().stream()
                        .anyMatch(run -> run.tool() == MachineKind.of(limit.machine())))
            .toList());
  }

  private List<LimitRow> rows(List<ComparedLimit> limits) {
    return limits.stream().map(this::row).toList();
  }

  private LimitRow row(ComparedLimit limit) {
    MachineKind kind = MachineKind.of(limit.machine());
    String machine = kind == null ? Naming.title(limit.machine()) : naming.machine(kind);
    return new LimitRow(
        Phrase.of(machine),
        words().say("packet.limit." + limit.name()),
        exactly(limit.stated()),
        exactly(limit.own()),
        Naming.typeset(limit.source()),
        limit.published().stream()
            .map(p -> words().say("packet.safety.published.by", exactly(p.is()), p.by()))
            .toList());
  }

  /** The refusals that the instructor answers for. */
  List<AcceptedRow> accepted() {
    return lesson.accepted().stream()
        .map(
            a ->
                new AcceptedRow(
                    a.refused().run().step().mark(),
                    a.refused().run().step().title(),
                    a.refused().finding().code(),
                    Naming.typeset(a.refused().finding().message()),
                    Naming.typeset(a.because())))
        .toList();
  }

  /** Each rule that fired, most severe first. */
  List<Safety> fired() {
    Map<String, List<Caution>> byRule = new LinkedHashMap<>();
    lesson.cautions().stream()
        .sorted(Comparator.comparing(Caution::signal))
        .forEach(c -> byRule.computeIfAbsent(c.rule(), r -> new ArrayList<>()).add(c));
    return byRule.values().stream().map(this::safety).toList();
  }

  private Safety safety(List<Caution> cautions) {
    Caution first = cautions.get(0);
    String severity = CautionPlaces.severity(first.signal());
    return new Safety(
        severity,
        words().say("packet.signal." + severity),
        CautionPlaces.statement(first),
        first.isLocal()
            ? words().say("packet.safety.local", first.source())
            : Naming.typeset(first.source()),
        together(cautions.stream().map(this::fired).toList()));
  }

  /** Steps at which a rule fired for the same reasons, as one entry that names no title. */
  private List<Fired> together(List<Fired> all) {
    Map<List<Phrase>, List<Fired>> byReasons = new LinkedHashMap<>();
    all.forEach(f -> byReasons.computeIfAbsent(f.why(), w -> new ArrayList<>()).add(f));
    List<Fired> told = new ArrayList<>();
    byReasons.forEach(
        (why, same) -> {
          List<String> marks = same.stream().flatMap(f -> f.marks().stream()).distinct().toList();
          told.add(marks.size() == 1 ? same.get(0) : new Fired(marks, "", why));
        });
    return told;
  }

  private Fired fired(Caution caution) {
    Step step = caution.fired().get(0).run().step();
    Set<Phrase> reasons = new LinkedHashSet<>();
    for (Firing firing : caution.fired()) {
      Phrase why = Naming.typeset(firing.why());
      reasons.add(
          firing.isReplaced()
              ? words().say("packet.safety.replaced", why, hazard(firing.replacedBy()))
              : why);
    }
    return new Fired(List.of(step.mark()), step.title(), List.copyOf(reasons));
  }

  /** What is printed in a rule's place. */
  private String hazard(String rule) {
    return lesson.cautions().stream()
        .filter(c -> c.rule().equals(rule))
        .map(Caution::hazard)
        .findFirst()
        .orElseThrow();
  }

  private Phrase exactly(Length length) {
    return naming.exactly(Quantity.of(length));
  }

  private Words words() {
    return naming.words();
  }
}
