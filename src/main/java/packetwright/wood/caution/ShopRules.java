package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import packetwright.definition.shop.Shop;
import packetwright.text.document.Node;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;

/**
 * Reads a shop's own rules; whatever is wrong with them is a finding.
 *
 * @param shop whose rules they are
 * @param findings where to put what is wrong
 */
record ShopRules(Shop shop, Findings findings) {
  /** Those that can be read, in the order written, after ours. */
  List<HazardRule> after(RuleFile.Rules ours) {
    RuleReader reader = new RuleReader(shop.unit(), findings);
    RuleCheck check = new RuleCheck(new MachineLimits(shop.machines(), ours.limits()), findings);
    Set<String> taken = new HashSet<>();
    ours.rules().forEach(rule -> taken.add(rule.name()));
    Set<String> names = names();
    List<HazardRule> rules = new ArrayList<>();
    for (Node node : shop.cautions()) {
      HazardRule rule = hasShape(node) ? reader.rule((Node.Mapping) node) : null;
      if (rule != null) {
        check.check(rule, (Node.Mapping) node);
        checkNames((Node.Mapping) node, taken, names);
        checkMachines(rule, (Node.Mapping) node);
        rules.add(rule);
      }
    }
    return rules;
  }

  private Set<String> names() {
    return shop.cautions().stream()
        .flatMap(node -> Stream.ofNullable(node.asMapping()))
        .map(rule -> rule.text("name", ""))
        .collect(Collectors.toSet());
  }

  private void checkNames(Node.Mapping rule, Set<String> taken, Set<String> names) {
    Located<String> name = rule.text("name");
    if (name != null && !taken.add(name.value())) {
      findings.add(
          Finding.error(
              "name-taken",
              name.at(),
              "another rule is called `" + name.value() + "`, ours or one of the shop's",
              "give it another name"));
    }
    Set<String> others = new TreeSet<>(names);
    others.remove(rule.text("name", ""));
    for (Located<String> replaced : rule.texts("instead_of")) {
      if (!others.contains(replaced.value())) {
        String hint = NearMiss.hint(replaced.value(), others);
        findings.add(
            Finding.error(
                "unknown-rule",
                replaced.at(),
                "the shop has no other rule of its own called `"
                    + replaced.value()
                    + "`, and ours are always printed",
                hint.isEmpty() ? "delete it" : hint));
      }
    }
  }

  /** A rule about what the shop lacks is put right by whoever buys it, so it stops nothing. */
  private void checkMachines(HazardRule rule, Node.Mapping node) {
    if (rule.at().stream().noneMatch(shop::has)) {
      for (Located<String> word : node.texts("at")) {
        findings.add(
            Finding.warning(
                "rule-without-tool",
                word.at(),
                "the shop has no `" + word.value() + "`, so this rule never fires here",
                "add the `" + word.value() + "` to the profile, or delete the rule"));
      }
    }
  }

  private boolean hasShape(Node rule) {
    Located<String> key = new Located<>("rules", rule.at());
    Node list = new Node.Sequence(List.of(rule), rule.at());
    Node file = new Node.Mapping(List.of(new Node.Entry(key, list)), rule.at(), false);
    List<Finding> wrong = new ArrayList<>(RuleFile.SCHEMA.check(file));
    if (wrong.isEmpty() && ((Node.Mapping) rule).mapping("words") == null) {
      wrong.add(
          Finding.error(
              "missing-key", rule.at(), "a shop's own rule needs `words`", "add `words`"));
    }
    findings.addAll(wrong);
    return wrong.isEmpty();
  }
}
