package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import packetwright.definition.shop.Machine;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.text.formula.Formula;
import packetwright.text.measure.Figure;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Findings;
import packetwright.text.words.Words;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.operation.Run;

/** Hazard rules, ours and a shop's own, and what they say about a procedure. */
public final class CautionRules {
  private final RuleFile.Rules rules;

  private CautionRules(RuleFile.Rules rules) {
    this.rules = rules;
  }

  /** The rules that every packet is held to. */
  public static CautionRules builtIn() {
    return new CautionRules(RuleFile.read());
  }

  /** The same with the shop's own after them; a shop can only add to ours. */
  public static Checked<CautionRules> of(Shop shop) {
    Findings findings = new Findings();
    RuleFile.Rules ours = RuleFile.read();
    List<HazardRule> own = new ShopRules(shop, findings).after(ours);
    return findings.checked(new CautionRules(ours.and(own)));
  }

  /** Names of the rules, in the order written. */
  public List<String> names() {
    return rules.rules().stream().map(HazardRule::name).toList();
  }

  /** Codes of all refusals, in the order of the rules. */
  public Set<String> codes() {
    Set<String> codes = new LinkedHashSet<>();
    rules.rules().forEach(rule -> rule.refusals().forEach(r -> codes.add(r.code())));
    return codes;
  }

  /** Whether an instructor may accept every refusal of that code. */
  public boolean isWaivable(String code) {
    List<HazardRule.Refusal> ofCode =
        rules.rules().stream()
            .flatMap(h -> h.refusals().stream())
            .filter(r -> r.code().equals(code))
            .toList();
    return !ofCode.isEmpty() && ofCode.stream().allMatch(HazardRule.Refusal::isWaivable);
  }

  /** Whether an instructor may accept some refusal of that code, at one machine or another. */
  public boolean isEverWaivable(String code) {
    return rules.rules().stream()
        .flatMap(h -> h.refusals().stream())
        .anyMatch(r -> r.code().equals(code) && r.isWaivable());
  }

  /** Where a shop's limits allow more than ours, in the order of our limits. */
  public List<LooserLimit> looserLimits(Shop shop) {
    List<LooserLimit> looser = new ArrayList<>();
    for (Limit limit : rules.limits().values()) {
      MachineKind kind = MachineKind.of(limit.machine());
      Machine machine = kind == null ? null : shop.machine(kind);
      if (machine != null && limit.isLooser(machine.value(limit.name(), limit.is()))) {
        Length stated = machine.value(limit.name(), limit.is());
        looser.add(
            new LooserLimit(limit.machine(), limit.name(), stated, limit.is(), limit.source()));
      }
    }
    return looser;
  }

  /** What the rules say about a procedure; the reasons print lengths in the shop's unit. */
  public Verdict apply(Run run, Shop shop, Words words) {
    Rule rule = new Rule(Rational.ONE, shop.unit() == Unit.INCH ? Unit.INCH : Unit.MILLIMETRE);
    RefusalReport report = new RefusalReport(rule);
    List<Refused> refused = new ArrayList<>();
    Map<String, Caution> merged = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    for (OperationRun operation : run.operations()) {
      RunValues values = new RunValues(operation, rules.limits());
      for (HazardRule hazard : rules.rules()) {
        if (!applies(hazard, values) || (hazard.isOnce() && !isNew(hazard, values, seen))) {
          continue;
        }
        List<Refused> here =
            hazard.refusals().stream()
                .filter(r -> holds(r.when(), values))
                .map(r -> report.refused(hazard, r, values))
                .toList();
        refused.addAll(here);
        Caution caution =
            new Printing(words, rule, report).caution(hazard, values, !here.isEmpty());
        merged.merge(caution.step() + " " + caution.rule(), caution, Caution::and);
      }
    }
    List<Caution> cautions = new ArrayList<>(merged.values());
    cautions.sort(Comparator.comparingInt(Caution::step).thenComparing(Caution::signal));
    return new Verdict(cautions, refused);
  }

  private static boolean applies(HazardRule hazard, RunValues values) {
    return values.hasPiece()
        && hazard.concerns(values.run().tool())
        && holds(hazard.when(), values);
  }

  /** A student does not see the instructor's steps, so each of the two is told once. */
  private static boolean isNew(HazardRule rule, RunValues values, Set<String> seen) {
    MachineKind tool = values.run().tool();
    return seen.add(
        rule.name()
            + " "
            + values.run().operation().by()
            + " "
            + (tool == null ? "" : tool.word()));
  }

  private static boolean holds(Formula when, RunValues values) {
    Checked<Boolean> holds = when.holds(values);
    if (!holds.isGood()) {
      throw new IllegalStateException(holds.findings().toString());
    }
    return holds.value();
  }

  /** Puts a rule into words. */
  private record Printing(Words words, Rule rule, RefusalReport report) {
    Caution caution(HazardRule hazard, RunValues values, boolean refuses) {
      HazardRule.OwnWords said = said(hazard, values);
      return new Caution(
          hazard.name(),
          hazard.against(),
          hazard.signal(),
          said.hazard(),
          said.consequence(),
          said.avoid(),
          hazard.source(),
          said.why(),
          values.run().step().number(),
          values.run().tool(),
          hazard.isOnce(),
          values.piece().name(),
          refuses,
          values.run().operation().place());
    }

    private HazardRule.OwnWords said(HazardRule hazard, RunValues values) {
      HazardRule.OwnWords own = hazard.words();
      if (own != null) {
        return new HazardRule.OwnWords(
            own.hazard(), own.consequence(), own.avoid(), report.filled(own.why(), values));
      }
      Object[] amounts =
          hazard.shows().stream().map(name -> figure(name, values)).toArray(Object[]::new);
      String phrase = "caution." + hazard.name();
      return new HazardRule.OwnWords(
          words.plain(phrase + ".hazard"),
          words.plain(phrase + ".consequence"),
          words.plain(phrase + ".avoid"),
          words.plain(phrase + ".why", amounts));
    }

    private Figure figure(String name, RunValues values) {
      return rule.printExactly(values.amount(name).asLength());
    }
  }
}
