package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import packetwright.definition.shop.MachineKind;
import packetwright.text.document.Node;
import packetwright.wood.caution.CautionRulesTest.Row;
import packetwright.wood.caution.HazardMatrix.Cell;

class HazardMatrixTest {
  private static final Path PRINTED = Path.of("DEVELOPERS.md");
  private static final String BEGIN = "<!-- hazard matrix: begin -->\n";
  private static final String END = "<!-- hazard matrix: end -->";

  @Test
  void noCellIsEmpty() {
    List<String> empty = new ArrayList<>();
    Map<String, Map<Hazard, Cell>> rows = HazardMatrix.cells();
    rows.forEach(
        (name, row) ->
            row.forEach(
                (hazard, cell) -> {
                  if (cell.rules().isEmpty() && cell.reason().isEmpty()) {
                    empty.add(name + " " + hazard.word());
                  }
                }));
    assertThat(rows).hasSize(MachineKind.values().length + 1);
    assertThat(empty).isEmpty();
  }

  /** A file of several tools gives its reasons for those of them that have no rule. */
  @Test
  void noReasonStandsWhereEveryToolOfItsFileHasARule() {
    Set<String> given = new LinkedHashSet<>();
    for (String file : RuleFile.FILES) {
      Node.Mapping reasons = RuleFile.file(file).mapping("does_not_apply");
      if (reasons != null) {
        reasons.keys().forEach(hazard -> given.add(file + " " + hazard));
      }
    }
    HazardMatrix.cells()
        .forEach(
            (name, row) ->
                row.forEach(
                    (hazard, cell) -> {
                      if (cell.rules().isEmpty()) {
                        given.remove(HazardMatrix.fileOf(name) + " " + hazard.word());
                      }
                    }));
    assertThat(given).as("reasons that no tool needs").isEmpty();
  }

  @Test
  void everyRuleHasACaseJustInsideAndJustOutsideAtEachOfItsMachines() {
    List<Row> rows = CautionRulesTest.allCautions().toList();
    Set<String> missing = new LinkedHashSet<>();
    for (HazardRule rule : RuleFile.read().rules()) {
      Set<MachineKind> seen = EnumSet.noneOf(MachineKind.class);
      for (Row row : rows) {
        MachineKind tool = row.inside().tool();
        if (row.what().equals(rule.name()) && tool != null) {
          seen.add(tool);
        }
      }
      assertThat(seen).as(rule.name()).isNotEmpty();
      rule.at().stream()
          .sorted()
          .filter(tool -> !seen.contains(tool))
          .forEach(tool -> missing.add(rule.name() + " at " + tool.word()));
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void theMatrixIsPrintedAsItIs() throws IOException {
    String text = Files.readString(PRINTED);
    int from = text.indexOf(BEGIN) + BEGIN.length();
    int to = text.indexOf(END);
    assertThat(to).isGreaterThan(from);
    String printed = text.substring(from, to);
    boolean isUpdate = Boolean.getBoolean("golden.update");
    if (isUpdate) {
      Files.writeString(
          PRINTED, text.substring(0, from) + HazardMatrix.print() + text.substring(to));
    }
    assertThat(printed)
        .as("run with -Dgolden.update=true to print it again")
        .isEqualTo(HazardMatrix.print());
    assertThat(isUpdate).as("the matrix was printed again").isFalse();
  }
}
