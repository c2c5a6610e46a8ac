package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.List;
import packetwright.definition.shop.Shop;
import packetwright.text.document.Node;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/**
 * Reads a shop's own rules; whatever is wrong with them is a finding.
 *
 * @param shop whose rules they are
 * @param findings where to put what is wrong
 */
record ShopRules(Shop shop, Findings findings) {
  /** Those that can be read, in the order written. */
  List<HazardRule> read() {
    RuleReader reader = new RuleReader(shop.unit(), findings);
    List<HazardRule> rules = new ArrayList<>();
    for (Node node : shop.cautions()) {
      HazardRule rule = hasShape(node) ? reader.rule((Node.Mapping) node) : null;
      if (rule != null) {
        rules.add(rule);
      }
    }
    return rules;
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
