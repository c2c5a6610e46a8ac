package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
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
            .map(
                p ->
                    words()
                        .say("packet.safety.published.by", exactly(p.is()), Naming.typeset(p.by())))
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
                    sentence(a.refused().finding().message()),
                    sentence(a.because())))
        .toList();
  }

  /** Findings and reasons are written without a capital and a full stop. */
  private static Phrase sentence(String text) {
    String end = text.endsWith(".") ? "" : ".";
    return Naming.typeset(text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + end);
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
            ? words().say("packet.safety.local", Naming.typeset(first.source()))
            : Naming.typeset(first.source()),
        fired(cautions.stream().flatMap(c -> c.fired().stream()).toList()));
  }

  /** Every step where a rule fired; steps of which the same is said stand together. */
  private List<Fired> fired(List<Firing> firings) {
    Map<Step, Set<Phrase>> reasons = new LinkedHashMap<>();
    firings.stream()
        .sorted(Comparator.comparingInt(f -> f.run().step().number()))
        .forEach(
            f ->
                reasons.computeIfAbsent(f.run().step(), s -> new LinkedHashSet<>()).add(reason(f)));
    Map<Set<Phrase>, List<Step>> together = new LinkedHashMap<>();
    reasons.forEach((step, why) -> together.computeIfAbsent(why, w -> new ArrayList<>()).add(step));
    List<Fired> fired = new ArrayList<>();
    together.forEach((why, steps) -> fired.add(fired(steps, List.copyOf(why))));
    return fired;
  }

  private static Fired fired(List<Step> steps, List<Phrase> why) {
    List<String> marks = steps.stream().map(Step::mark).toList();
    return new Fired(marks, steps.size() == 1 ? steps.get(0).title() : "", why);
  }

  private Phrase reason(Firing firing) {
    Phrase why = Naming.typeset(firing.why());
    return firing.isReplaced()
        ? words().say("packet.safety.replaced", why, hazard(firing.replacedBy()))
        : why;
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
