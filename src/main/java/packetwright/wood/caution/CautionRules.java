package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;
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

  /** A machine's limit: the shop's own, ours where it states none, or none that anybody has set. */
  public @Nullable Length limit(Shop shop, MachineKind kind, String name) {
    Limit own = rules.limits().get(kind.word() + "." + name);
    Machine machine = shop.machine(kind);
    return machine != null && machine.states(name)
        ? machine.value(name, Length.ZERO)
        : own == null ? null : own.is();
  }

  /** Where a shop's limits allow more than ours, in the order of our limits. */
  public List<ComparedLimit> looserLimits(Shop shop) {
    return compared(shop, (limit, stated) -> limit.isLooser(stated));
  }

  /** The limits of a shop's machines on which others publish another value than ours. */
  public List<ComparedLimit> disputedLimits(Shop shop) {
    return compared(
        shop,
        (limit, stated) -> limit.published().stream().anyMatch(p -> !p.is().equals(limit.is())));
  }

  private List<ComparedLimit> compared(Shop shop, BiPredicate<Limit, Length> isTold) {
    List<ComparedLimit> told = new ArrayList<>();
    for (Limit limit : rules.limits().values()) {
      MachineKind kind = MachineKind.of(limit.machine());
      Machine machine = kind == null ? null : shop.machine(kind);
      Length stated = machine == null ? limit.is() : machine.value(limit.name(), limit.is());
      if (machine != null && isTold.test(limit, stated)) {
        told.add(
            new ComparedLimit(
                limit.machine(),
                limit.name(),
                stated,
                limit.is(),
                limit.source(),
                limit.published()));
      }
    }
    return told;
  }

  /** What the rules say about a procedure; the reasons print lengths in the shop's unit. */
  public Verdict apply(Run run, Shop shop, Words words) {
    Rule rule = new Rule(Rational.ONE, shop.unit() == Unit.INCH ? Unit.INCH : Unit.MILLIMETRE);
    RefusalReport report = new RefusalReport(rule);
    Printing printing = new Printing(words, rule, report);
    List<Refused> refused = new ArrayList<>();
    Map<String, Caution> merged = new LinkedHashMap<>();
    for (OperationRun operation : run.operations()) {
      RunValues values = new RunValues(operation, rules.limits());
      List<HazardRule> here = rules.rules().stream().filter(h -> applies(h, values)).toList();
      Map<String, String> replaced = replaced(here);
      for (HazardRule hazard : here) {
        List<Refused> refusals = refusals(hazard, values, report);
        refused.addAll(refusals);
        String by = replaced.getOrDefault(hazard.name(), "");
        Caution caution = printing.caution(hazard, values, !refusals.isEmpty(), by);
        merged.merge(place(caution), caution, Caution::and);
      }
    }
    List<Caution> cautions = new ArrayList<>(merged.values());
    cautions.sort(Comparator.comparingInt(Caution::step).thenComparing(Caution::signal));
    return new Verdict(cautions, refused);
  }

  private static List<Refused> refusals(HazardRule hazard, RunValues values, RefusalReport report) {
    return hazard.refusals().stream()
        .filter(r -> holds(r.when(), values))
        .map(r -> report.refused(hazard, r, values))
        .toList();
  }

  /**
   * What is told as one: at a step, or once for a machine. A student does not see the instructor's
   * steps, so what holds for a machine as a whole is told to each of the two.
   */
  private static String place(Caution caution) {
    OperationRun run = caution.fired().get(0).run();
    return caution.rule()
        + " "
        + (caution.isOnce() ? run.tool() + " " + run.operation().by() : caution.step());
  }

  /**
   * By the name of a rule that is not printed at an operation, the one that is in its place. A rule
   * that is itself replaced replaces none, so that what it stood for is still printed.
   */
  private static Map<String, String> replaced(List<HazardRule> here) {
    Map<String, String> replaced = new HashMap<>();
    List<HazardRule> rest = new ArrayList<>(here.stream().filter(h -> !h.isOnce()).toList());
    while (!rest.isEmpty()) {
      HazardRule stands =
          rest.stream()
              .filter(h -> rest.stream().noneMatch(o -> o.replaces(h)))
              .findFirst()
              .orElse(rest.get(0));
      rest.remove(stands);
      rest.stream().filter(stands::replaces).forEach(h -> replaced.put(h.name(), stands.name()));
      rest.removeIf(stands::replaces);
    }
    return replaced;
  }

  private static boolean applies(HazardRule hazard, RunValues values) {
    return values.hasPiece()
        && hazard.concerns(values.run().tool())
        && holds(hazard.when(), values);
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
    Caution caution(HazardRule hazard, RunValues values, boolean refuses, String replacedBy) {
      HazardRule.OwnWords said = said(hazard, values);
      return new Caution(
          hazard.name(),
          hazard.against(),
          hazard.signal(),
          said.hazard(),
          said.consequence(),
          said.avoid(),
          hazard.source(),
          hazard.words() != null,
          hazard.at().isEmpty(),
          hazard.isOnce(),
          refuses,
          List.of(new Caution.Firing(values.run(), said.why(), look(hazard, values), replacedBy)));
    }

    private HazardRule.OwnWords said(HazardRule hazard, RunValues values) {
      HazardRule.OwnWords own = hazard.words();
      if (own != null) {
        return new HazardRule.OwnWords(
            own.hazard(), own.consequence(), own.avoid(), report.filled(own.why(), values));
      }
      Object[] amounts = amounts(hazard, values);
      String phrase = "caution." + hazard.name();
      return new HazardRule.OwnWords(
          words.plain(phrase + ".hazard", amounts),
          words.plain(phrase + ".consequence"),
          words.plain(phrase + ".avoid", amounts),
          words.plain(phrase + ".why", amounts));
    }

    private Object[] amounts(HazardRule hazard, RunValues values) {
      return hazard.shows().stream().map(name -> figure(name, values)).toArray(Object[]::new);
    }

    /** Not every hazard has something to look at beforehand. */
    private String look(HazardRule hazard, RunValues values) {
      String key = "caution." + hazard.name() + ".look";
      return words.hasKey(key) ? words.plain(key, amounts(hazard, values)) : "";
    }

    private Figure figure(String name, RunValues values) {
      return rule.printExactly(values.amount(name).asLength());
    }
  }
}
