package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.text.document.Node;
import packetwright.text.formula.Formula;
import packetwright.text.measure.Unit;
import packetwright.text.source.Located;
import packetwright.text.source.Span;
import packetwright.wood.operation.ToolCheck;

/** Machines by kinds of hazard: the rules of each cell, or why there are none. */
final class HazardMatrix {
  private static final RuleFile.Rules ALL = RuleFile.read();
  private static final Firing FIRING = new Firing(new MachineLimits(Map.of(), ALL.limits()));
  private static final Formula OWN_WORK = ownWork();
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

  /** Whether a rule can fire at a tool, at work that is the tool's own or a clamp's. */
  static boolean concerns(HazardRule rule, MachineKind tool) {
    return tool == MachineKind.CLAMP
        ? FIRING.at(rule, rule.when()).contains(tool)
        : FIRING.at(rule, rule.when(), OWN_WORK).contains(tool);
  }

  /** Work that any tool may help with is the clamp's here. */
  private static Formula ownWork() {
    String shared =
        Arrays.stream(Verb.values())
            .filter(
                verb ->
                    Arrays.stream(MachineKind.values()).allMatch(t -> ToolCheck.isDone(verb, t)))
            .map(verb -> "is_" + verb.word())
            .collect(Collectors.joining(" or "));
    String text = "not (" + shared + ")";
    Span at = new Span("test", 1, 1, text.length());
    return Formula.parse(new Located<>(text, at), Unit.INCH).value();
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
    Map<String, Map<Hazard, Cell>> rows = grouped();
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

  /** With all hand tools in one row; a reason there is of those without a rule. */
  private static Map<String, Map<Hazard, Cell>> grouped() {
    Map<String, Map<Hazard, Cell>> rows = new LinkedHashMap<>();
    cells()
        .forEach(
            (name, row) -> {
              MachineKind tool = MachineKind.of(name);
              String group = tool == null || tool.isPowered() ? name : "hand_tools";
              rows.merge(group, row, HazardMatrix::joined);
            });
    return rows;
  }

  private static Map<Hazard, Cell> joined(Map<Hazard, Cell> one, Map<Hazard, Cell> other) {
    Map<Hazard, Cell> joined = new LinkedHashMap<>(one);
    other.forEach(
        (hazard, cell) ->
            joined.merge(
                hazard,
                cell,
                (a, b) ->
                    new Cell(
                        Stream.concat(a.rules().stream(), b.rules().stream()).distinct().toList(),
                        a.reason())));
    return joined;
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
