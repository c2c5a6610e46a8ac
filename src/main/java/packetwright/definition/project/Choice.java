package packetwright.definition.project;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;

/**
 * A given chosen from a table: the cells of one row are sizes, {@code species.floor}.
 *
 * @param name as formulas use it, before a dot and the name of a column
 * @param row the row unless another is substituted
 * @param about one sentence
 * @param columns names of the sizes, without the given's name
 * @param rows the cells by the row's key, in the order written, one for each column; none where a
 *     cell cannot be read
 */
public record Choice(
    Located<String> name,
    Located<String> row,
    String about,
    List<Located<String>> columns,
    Map<String, List<@Nullable Located<Quantity>>> rows) {
  /** Keeps its own copies. */
  public Choice {
    columns = List.copyOf(columns);
    Map<String, List<@Nullable Located<Quantity>>> copies = new LinkedHashMap<>();
    rows.forEach(
        (key, cells) -> copies.put(key, Collections.unmodifiableList(new ArrayList<>(cells))));
    rows = Collections.unmodifiableMap(copies);
  }

  /** What is said of a row that the table has not. */
  public Finding noSuchRow(Located<String> wanted) {
    String hint = NearMiss.hint(wanted.value(), rows.keySet());
    return Finding.error(
        "unknown-row",
        wanted.at(),
        "the table of `" + name.value() + "` has no row `" + wanted.value() + "`",
        hint.isEmpty() ? "write the first cell of one of its rows" : hint);
  }

  /** Whether its table could not be read, so that nobody knows which sizes it gives. */
  public boolean isUnread() {
    return columns.isEmpty();
  }
}
