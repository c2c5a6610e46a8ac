package packetwright.definition.size;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import packetwright.definition.shop.MachineKind;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/** Tells a machine that the shop does not have from a name that is misspelt. */
final class MissingMachines {
  private MissingMachines() {}

  /** Whether a formula asks for a machine that none of the known names speaks of; found once. */
  static boolean report(List<Located<String>> needs, Set<String> known, Findings findings) {
    List<String> missing = new ArrayList<>();
    for (Located<String> need : needs) {
      String kind = need.value().split("\\.", 2)[0];
      boolean isMachine = MachineKind.of(kind) != null && need.value().contains(".");
      if (isMachine
          && known.stream().noneMatch(name -> name.startsWith(kind + "."))
          && !missing.contains(kind)) {
        missing.add(kind);
        String message =
            "the shop has no `" + kind + "`, and `" + need.value() + "` is needed here";
        String hint = "add `" + kind + "` to the shop profile, or reckon without it";
        findings.add(Finding.error("machine-missing", need.at(), message, hint));
      }
    }
    return !missing.isEmpty();
  }
}
