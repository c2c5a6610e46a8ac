package packetwright.definition.project;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import packetwright.text.document.Csv;
import packetwright.text.document.Node;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;

/** Reads givens that are chosen from a table, and the tables. */
final class ChoiceReader {
  private static final String ROW = "choose";
  private static final String TABLE = "table";
  private static final Pattern COLUMN = Pattern.compile("[a-z][a-z0-9_]{0,39}");

  private final ProjectFolder folder;
  private final Unit unit;
  private final Findings findings;

  ChoiceReader(ProjectFolder folder, Unit unit, Findings findings) {
    this.folder = folder;
    this.unit = unit;
    this.findings = findings;
  }

  /** Whether a given is chosen from a table, whatever it lacks. */
  static boolean isChoice(Node.Mapping given) {
    return given.get(ROW) != null || given.get(TABLE) != null;
  }

  List<Choice> choices(List<Node.Entry> givens) {
    List<Choice> choices = new ArrayList<>();
    for (Node.Entry entry : givens) {
      Node.Mapping given = entry.value().asMapping();
      if (given != null && isChoice(given)) {
        checkKeys(entry.key(), given);
        Located<String> row = given.text(ROW);
        Located<String> file = given.text(TABLE);
        if (row != null) {
          choices.add(choice(entry.key(), row, given.text("about", ""), file));
        }
      }
    }
    return choices;
  }

  private void checkKeys(Located<String> name, Node.Mapping given) {
    for (String key : List.of(ROW, TABLE)) {
      if (given.text(key) == null) {
        findings.add(
            Finding.error(
                "missing-key",
                name.at(),
                "`" + name.value() + "` is chosen from a table, and needs `" + key + "`",
                "add `" + key + "`"));
      }
    }
    for (Node.Entry entry : given.entries()) {
      if (!List.of(ROW, TABLE, "about").contains(entry.key().value())) {
        findings.add(
            Finding.error(
                "unknown-key",
                entry.key().at(),
                "`" + entry.key().value() + "` is not a key of a given chosen from a table",
                "delete it"));
      }
    }
  }

  private Choice choice(
      Located<String> name, Located<String> row, String about, @Nullable Located<String> file) {
    Csv.Table table = file == null ? null : table(file);
    if (table == null || !isGood(table.header())) {
      return new Choice(name, row, about, List.of(), Map.of());
    }
    List<Located<String>> columns = table.header().subList(1, table.header().size());
    Choice choice = new Choice(name, row, about, columns, rows(table));
    if (!choice.rows().containsKey(row.value())) {
      findings.add(choice.noSuchRow(row));
    }
    return choice;
  }

  private Csv.@Nullable Table table(Located<String> file) {
    if (!folder.has(file.value())) {
      findings.add(
          Finding.error(
              "missing-file",
              file.at(),
              "the project has no file `" + file.value() + "`",
              NearMiss.hint(file.value(), tables())));
      return null;
    }
    Checked<String> text = folder.text(file.value());
    findings.addAll(text.findings());
    return text.hasValue() ? findings.take(Csv.read(file.value(), text.value())) : null;
  }

  private List<String> tables() {
    return folder.files().stream().filter(name -> name.endsWith(".csv")).toList();
  }

  private boolean isGood(List<Located<String>> header) {
    int before = findings.list().size();
    Set<String> seen = new LinkedHashSet<>();
    for (Located<String> column : header) {
      if (!COLUMN.matcher(column.value()).matches()) {
        findings.add(
            Finding.error(
                "bad-name",
                column.at(),
                "`" + column.value() + "` cannot be the name of a column",
                "write a name of at most 40 lower-case letters, digits and underscores that begins"
                    + " with a letter"));
      } else if (!seen.add(column.value())) {
        duplicate(column, "the name of another column");
      }
    }
    if (header.size() == 1) {
      findings.add(
          Finding.error(
              "csv-syntax",
              header.get(0).at(),
              "the table has no column beside `" + header.get(0).value() + "`, so it gives no size",
              "add a column"));
    }
    return findings.list().size() == before;
  }

  private Map<String, List<@Nullable Located<Quantity>>> rows(Csv.Table table) {
    Map<String, List<@Nullable Located<Quantity>>> rows = new LinkedHashMap<>();
    for (List<Located<String>> cells : table.rows()) {
      Located<String> key = cells.get(0);
      List<@Nullable Located<Quantity>> read = new ArrayList<>();
      cells.subList(1, cells.size()).forEach(cell -> read.add(quantity(cell)));
      if (key.value().isEmpty()) {
        findings.add(
            Finding.error(
                "empty-cell", key.at(), "this row has no name", "write one to choose by"));
      } else if (rows.putIfAbsent(key.value(), read) != null) {
        duplicate(key, "the name of another row");
      }
    }
    return rows;
  }

  private @Nullable Located<Quantity> quantity(Located<String> cell) {
    if (cell.value().isEmpty()) {
      findings.add(
          Finding.error("empty-cell", cell.at(), "nothing is written here", "write a quantity"));
      return null;
    }
    Quantity quantity = findings.take(QuantityReader.read(cell, unit));
    return quantity == null ? null : new Located<>(quantity, cell.at());
  }

  private void duplicate(Located<String> cell, String other) {
    findings.add(
        Finding.error(
            "duplicate-key",
            cell.at(),
            "`" + cell.value() + "` is " + other + " too",
            "give one of them another name, or delete it"));
  }
}
