package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.text.document.Node;
import packetwright.wood.operation.ToolCheck;

/** Machines by kinds of hazard: the rules of each cell, or why there are none. */
final class HazardMatrix {
  private static final RuleFile.Rules ALL = RuleFile.read();
  private static final Firing FIRING = new Firing(new MachineLimits(Map.of(), ALL.limits()));
  private static final String WET = "glue_and_finish";

  private HazardMatrix() {}

  /**
   * A cell.
   *
   * @param rules against that hazard at that tool, in the order of the files
   * @param reason why it does not apply; empty when none is given
   */
  record Cell(List<String> rules, String reason) {}

  /** The rows in order: each tool, and glue and finish. */
  static Map<String, Map<Hazard, Cell>> cells() {
    Map<String, Map<Hazard, Cell>> rows = new LinkedHashMap<>();
    for (MachineKind tool : MachineKind.values()) {
      Node.Mapping file = RuleFile.file(fileOf(tool));
      Map<Hazard, Cell> row = new LinkedHashMap<>();
      for (Hazard hazard : Hazard.values()) {
        row.put(hazard, new Cell(rules(tool, hazard), reason(file, hazard)));
      }
      rows.put(tool.word(), row);
    }
    rows.put(WET, wet());
    return rows;
  }

  private static Map<Hazard, Cell> wet() {
    Node.Mapping file = RuleFile.file(WET);
    Map<Hazard, Cell> row = new LinkedHashMap<>();
    for (Hazard hazard : Hazard.values()) {
      List<String> rules =
          file.items("rules").stream()
              .map(rule -> ((Node.Mapping) rule))
              .filter(rule -> rule.text("against", "").equals(hazard.word()))
              .map(rule -> rule.text("name", ""))
              .toList();
      row.put(hazard, new Cell(rules, reason(file, hazard)));
    }
    return row;
  }

  private static String reason(Node.Mapping file, Hazard hazard) {
    Node.Mapping reasons = file.mapping("does_not_apply");
    return reasons == null ? "" : reasons.text(hazard.word(), "");
  }

  /** Rules of glue and finish have a row of their own. */
  private static List<String> rules(MachineKind tool, Hazard hazard) {
    Set<String> wet =
        RuleFile.file(WET).items("rules").stream()
            .map(rule -> ((Node.Mapping) rule).text("name", ""))
            .collect(Collectors.toSet());
    return ALL.rules().stream()
        .filter(rule -> rule.against() == hazard && !wet.contains(rule.name()))
        .filter(rule -> concerns(rule, tool))
        .map(HazardRule::name)
        .toList();
  }

  /** Whether a rule can fire at a tool, at work that is done there. */
  static boolean concerns(HazardRule rule, MachineKind tool) {
    boolean isUsed = Arrays.stream(Verb.values()).anyMatch(verb -> ToolCheck.isDone(verb, tool));
    return isUsed && FIRING.at(rule, rule.when()).contains(tool);
  }

  /** The file of a row. */
  static String fileOf(String row) {
    MachineKind tool = MachineKind.of(row);
    return tool == null ? row : fileOf(tool);
  }

  private static String fileOf(MachineKind tool) {
    if (!tool.isPowered()) {
      return "hand_tools";
    }
    return tool.word().endsWith("_sander") ? "sanders" : tool.word();
  }

  /** As it is printed: marks in a table, then what they stand for, row by row. */
  static String print() {
    StringBuilder text = new StringBuilder();
    List<String> heads = Arrays.stream(Hazard.values()).map(h -> plain(h.word())).toList();
    text.append("| |").append(String.join("|", heads)).append("|\n|---|");
    text.append(":-:|".repeat(heads.size())).append('\n');
    Map<String, Map<Hazard, Cell>> rows = cells();
    rows.forEach(
        (name, row) -> {
          text.append("| ").append(plain(name)).append(" |");
          row.values()
              .forEach(c -> text.append(c.rules().isEmpty() ? "–" : c.rules().size()).append('|'));
          text.append('\n');
        });
    rows.forEach(
        (name, row) ->
            text.append("\n**").append(plain(name)).append("** ").append(told(row)).append('\n'));
    return text.toString();
  }

  private static String told(Map<Hazard, Cell> row) {
    List<String> parts = new ArrayList<>();
    row.forEach(
        (hazard, cell) ->
            parts.add(
                plain(hazard.word())
                    + ": "
                    + (cell.rules().isEmpty()
                        ? "*" + cell.reason() + "*"
                        : "`" + String.join("`, `", cell.rules()) + "`")));
    return String.join("; ", parts) + ".";
  }

  private static String plain(String word) {
    return word.replace('_', ' ');
  }
}
