package packetwright.definition.size;

import java.util.LinkedHashMap;
import java.util.Map;
import packetwright.definition.project.Project;
import packetwright.definition.shop.MachineKind;
import packetwright.text.formula.Formula;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/** Names that no given or derived size may have, because formulas mean something else by them. */
final class TakenNames {
  /** What the shop's allowances begin with. */
  static final String SHOP = "shop";

  private static final String CHOICE = "a given chosen from a table";

  private final Map<String, String> meanings = new LinkedHashMap<>();
  private final Findings findings;

  TakenNames(Project project, Findings findings) {
    this.findings = findings;
    Formula.words().forEach(word -> meanings.put(word, "a word of the formula language"));
    MachineKind.words().forEach(word -> meanings.put(word, "a machine or tool"));
    meanings.put(SHOP, "the shop");
    project.choices().forEach(choice -> meanings.putIfAbsent(choice.name().value(), CHOICE));
    project.blanks().forEach(blank -> meanings.put(blank.name().value(), "a blank"));
    project.parts().forEach(part -> meanings.put(part.name().value(), "a part"));
  }

  /** Notes an error where the name of a size means something else. */
  void check(Located<String> name) {
    String meaning = meanings.get(name.value());
    if (meaning != null) {
      findings.add(taken(name, meaning, "a size", "the size"));
    }
  }

  /** Notes an error where the name of a choice means something besides. */
  void checkChoice(Located<String> name) {
    String meaning = meanings.get(name.value());
    if (meaning != null && !meaning.equals(CHOICE)) {
      findings.add(taken(name, meaning, CHOICE, "the given"));
    }
  }

  private static Finding taken(Located<String> name, String one, String other, String renamed) {
    return Finding.error(
        "name-taken",
        name.at(),
        "`" + name.value() + "` is " + one + ", and cannot be " + other + " too",
        "give " + renamed + " another name");
  }
}
