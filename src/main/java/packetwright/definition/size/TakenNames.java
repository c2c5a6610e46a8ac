package packetwright.definition.size;

import java.util.LinkedHashMap;
import java.util.Map;
import packetwright.definition.project.Project;
import packetwright.definition.shop.MachineKind;
import packetwright.text.formula.Formula;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;

/** Names that no given or derived size may have, because formulas mean something else by them. */
final class TakenNames {
  /** What the shop's allowances begin with. */
  static final String SHOP = "shop";

  private final Map<String, String> meanings = new LinkedHashMap<>();
  private final Findings findings;

  TakenNames(Project project, Findings findings) {
    this.findings = findings;
    Formula.words().forEach(word -> meanings.put(word, "a word of the formula language"));
    MachineKind.words().forEach(word -> meanings.put(word, "a machine or tool"));
    meanings.put(SHOP, "the shop");
    project.blanks().forEach(blank -> meanings.put(blank.name().value(), "a blank"));
    project.parts().forEach(part -> meanings.put(part.name().value(), "a part"));
  }

  void check(Entry entry) {
    String meaning = meanings.get(entry.name().value());
    if (meaning != null) {
      findings.add(
          Finding.error(
              "name-taken",
              entry.name().at(),
              "`" + entry.name().value() + "` is " + meaning + ", and cannot be a size too",
              "give the size another name"));
    }
  }
}
