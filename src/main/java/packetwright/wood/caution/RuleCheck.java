package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.text.document.Node;
import packetwright.text.formula.Formula;
import packetwright.text.formula.Interval;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.text.source.Span;
import packetwright.wood.caution.HazardRule.Refusal;

/**
 * Whether a rule makes sense: its names stand for something, its conditions compare like with like
 * and can hold, and what may never be accepted is not offered to be.
 *
 * @param limits of machines
 * @param findings where to put what is wrong
 */
record RuleCheck(MachineLimits limits, Findings findings) {
  private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)\\}");

  /** What a message may name beside lengths. */
  private static final Set<String> SAID = Set.of("piece", "tool");

  private static final Formula GUIDED = guided();

  /** Longer than any board: the top of what a name may stand for. */
  private static final Rational MOST = Rational.of(100_000);

  /** Shorter than any piece. */
  private static final Rational LEAST = Rational.of(1, 100_000);

  private static Formula guided() {
    String text = "not work.freehand";
    Span at = new Span("rules", 1, 1, text.length());
    return Formula.parse(new Located<>(text, at), Unit.INCH).value();
  }

  /** Looks at a rule and the node that it was read from. */
  void check(HazardRule rule, Node.Mapping node) {
    Stream<Formula> refused = rule.refusals().stream().map(Refusal::when);
    List<Formula> formulas = Stream.concat(Stream.of(rule.when()), refused).toList();
    // Every formula is looked at, so that one run finds all.
    boolean areSound = formulas.stream().map(f -> isSound(rule, f)).reduce(true, (a, b) -> a && b);
    checkTexts(rule, node);
    checkWaivers(rule, node, areSound);
    if (areSound) {
      checkFires(rule, node);
    }
  }

  // ---- formulas

  private boolean isSound(HazardRule rule, Formula formula) {
    List<Finding> unknown =
        formula.places().stream().flatMap(name -> unknown(rule, name).stream()).toList();
    List<Finding> wrong = unknown.isEmpty() ? unlike(rule, formula) : unknown;
    findings.addAll(wrong);
    return wrong.isEmpty();
  }

  /** What a name lacks to stand for something at every tool of the rule. */
  private List<Finding> unknown(HazardRule rule, Located<String> name) {
    String word = name.value();
    if (Vocabulary.kind(word) == null) {
      String message = "nothing is called `" + word + "`";
      return List.of(unknown(name, message, NearMiss.hint(word, names(rule))));
    }
    if (!word.startsWith(Vocabulary.MACHINE)) {
      return List.of();
    }
    if (rule.at().isEmpty()) {
      return List.of(
          unknown(
              name,
              "`" + word + "` is a value of a machine, and the rule is about none",
              "name the machines under `at`"));
    }
    String value = word.substring(Vocabulary.MACHINE.length());
    return rule.at().stream()
        .sorted()
        .filter(tool -> limits.of(tool, value) == null)
        .limit(1)
        .map(tool -> unstated(name, tool, value))
        .toList();
  }

  private Finding unstated(Located<String> name, MachineKind tool, String value) {
    String nearest = NearMiss.nearest(value, limits.names(tool));
    return unknown(
        name,
        "the `" + tool.word() + "` has no `" + value + "` here",
        nearest.isEmpty()
            ? "state `" + value + "` under `" + tool.word() + "`, or write a length"
            : "write `" + Vocabulary.MACHINE + nearest + "`");
  }

  private static Finding unknown(Located<String> name, String message, String hint) {
    return Finding.error("unknown-name", name.at(), message, hint);
  }

  private List<String> names(HazardRule rule) {
    List<String> names = new ArrayList<>(Vocabulary.names());
    for (MachineKind tool : rule.at()) {
      limits.names(tool).forEach(name -> names.add(Vocabulary.MACHINE + name));
    }
    return names;
  }

  /** What does not go together, or divides by what may be zero. */
  private List<Finding> unlike(HazardRule rule, Formula formula) {
    MachineKind tool = rule.at().stream().sorted().findFirst().orElse(null);
    TypicalValues ones = new TypicalValues(tool, Verb.INSPECT, limits, Rational.ONE);
    TypicalValues zeros = new TypicalValues(tool, Verb.INSPECT, limits, Rational.ZERO);
    return Stream.<java.util.function.Supplier<List<Finding>>>of(
            () -> formula.holds(ones).findings(),
            () -> formula.holds(zeros).findings(),
            () -> formula.bounds(ones, RuleCheck::range).findings())
        .map(java.util.function.Supplier::get)
        .filter(found -> !found.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  private static @Nullable Interval range(String name) {
    Vocabulary.Kind kind = Vocabulary.kind(name);
    if (kind == Vocabulary.Kind.TRUTH) {
      return new Interval(Rational.ZERO, Rational.ONE);
    }
    if (name.startsWith(Vocabulary.MACHINE)) {
      return null;
    }
    Rational low = name.startsWith("piece.") ? LEAST : Rational.ZERO;
    return new Interval(kind == Vocabulary.Kind.EXTENT ? low : MOST.negated(), MOST);
  }

  // ---- texts

  private void checkTexts(HazardRule rule, Node.Mapping node) {
    node.texts("shows").forEach(name -> checkShown(rule, name, name.value()));
    Node.Mapping words = node.mapping("words");
    checkFilled(rule, words == null ? null : words.text("why"));
    for (Node refusal : node.items("refusals")) {
      checkFilled(rule, ((Node.Mapping) refusal).text("message"));
    }
  }

  private void checkFilled(HazardRule rule, @Nullable Located<String> text) {
    if (text != null) {
      BRACES
          .matcher(text.value())
          .results()
          .map((MatchResult found) -> found.group(1))
          .filter(name -> !SAID.contains(name))
          .forEach(name -> checkShown(rule, text, name));
    }
  }

  private void checkShown(HazardRule rule, Located<String> text, String name) {
    List<Finding> unknown = unknown(rule, new Located<>(name, text.at()));
    Vocabulary.Kind kind = Vocabulary.kind(name);
    if (unknown.isEmpty() && kind != null && !kind.isLength()) {
      String message = "`" + name + "` is no length, and only lengths are printed";
      findings.add(Finding.error("wrong-unit", text.at(), message, "leave it out"));
    }
    findings.addAll(unknown);
  }

  // ---- waivers

  private void checkWaivers(HazardRule rule, Node.Mapping node, boolean areSound) {
    for (int i = 0; i < rule.refusals().size(); i++) {
      Refusal refusal = rule.refusals().get(i);
      String reason = refusal.isWaivable() ? never(rule, refusal, areSound) : "";
      Located<String> waivable = ((Node.Mapping) node.items("refusals").get(i)).text("waivable");
      if (!reason.isEmpty() && waivable != null) {
        findings.add(
            Finding.error(
                "never-waivable",
                waivable.at(),
                reason + " is never accepted, whatever the reason",
                "write `false`"));
      }
    }
  }

  /** Why a refusal can never be accepted; empty when it can. */
  private String never(HazardRule rule, Refusal refusal, boolean areSound) {
    if (!rule.against().isWaivable()) {
      return "a hazard of kind `" + rule.against().word() + "`";
    }
    Firing firing = new Firing(limits);
    boolean isFreehand =
        areSound
            && !firing.at(rule, rule.when(), refusal.when()).isEmpty()
            && firing.at(rule, rule.when(), refusal.when(), GUIDED).isEmpty();
    return isFreehand ? "work steered by hand" : "";
  }

  // ---- firing

  private void checkFires(HazardRule rule, Node.Mapping node) {
    Firing firing = new Firing(limits);
    Set<MachineKind> at = firing.at(rule, rule.when());
    if (at.isEmpty() && !firing.withoutTool(rule, rule.when())) {
      findings.add(neverFires(rule.when()));
      return;
    }
    Map<String, Located<String>> named = new LinkedHashMap<>();
    node.texts("at").forEach(word -> named.put(word.value(), word));
    rule.at().stream()
        .sorted()
        .filter(tool -> !at.contains(tool))
        .flatMap(tool -> Stream.ofNullable(named.get(tool.word())))
        .forEach(word -> findings.add(neverFires(word)));
    for (Refusal refusal : rule.refusals()) {
      if (firing.at(rule, rule.when(), refusal.when()).isEmpty()
          && !firing.withoutTool(rule, rule.when(), refusal.when())) {
        findings.add(neverFires(refusal.when()));
      }
    }
  }

  private static Finding neverFires(Formula when) {
    return Finding.error(
        "rule-never-fires",
        when.text().at(),
        "`" + when + "` is never so of any operation that the rule is about",
        "take out what contradicts the rest, or delete the rule");
  }

  private static Finding neverFires(Located<String> tool) {
    return Finding.error(
        "rule-never-fires",
        tool.at(),
        "what the rule asks for is never so at the `" + tool.value() + "`",
        "take `" + tool.value() + "` out of `at`");
  }
}
