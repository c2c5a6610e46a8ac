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
import packetwright.paper.packet.AnswerKey.Fired;
import packetwright.paper.packet.AnswerKey.Looser;
import packetwright.paper.packet.AnswerKey.Safety;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.caution.Caution;
import packetwright.wood.caution.Caution.Firing;
import packetwright.wood.caution.CautionRules;
import packetwright.wood.caution.LooserLimit;

/** The key's safety page: which rules fired, where, why, and on whose word. */
record SafetyPage(Lesson lesson, Naming naming) {
  /** Where the shop allows more than our own limits do. */
  List<Looser> looser() {
    return CautionRules.builtIn().looserLimits(lesson.shop()).stream().map(this::looser).toList();
  }

  private Looser looser(LooserLimit limit) {
    MachineKind kind = MachineKind.of(limit.machine());
    String machine = kind == null ? Naming.title(limit.machine()) : naming.machine(kind);
    return new Looser(
        Phrase.of(machine),
        words().say("packet.limit." + limit.name()),
        exactly(limit.stated()),
        exactly(limit.own()),
        Naming.typeset(limit.source()));
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
        Naming.typeset(first.source()),
        cautions.stream().map(this::fired).toList());
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
    return new Fired(step.mark(), step.title(), List.copyOf(reasons));
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
