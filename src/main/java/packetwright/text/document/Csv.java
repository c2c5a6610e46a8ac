package packetwright.text.document;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/**
 * Reads comma-separated values (RFC 4180) with a header row, within bounds. Stricter than that
 * document in one thing: a cell ends on the line that it begins on, so that a forgotten quotation
 * mark is found where it is missing. Cells without quotes lose the spaces around them, and lines
 * that are blank are passed over.
 */
public final class Csv {
  /** Most rows below the header. */
  private static final int MAX_ROWS = 1000;

  /** Most cells of a row. */
  private static final int MAX_COLUMNS = 40;

  private static final char QUOTE = '"';

  private final String file;
  private final Findings findings = new Findings();

  private Csv(String file) {
    this.file = file;
  }

  /**
   * A table as it is written; each row has as many cells as the header.
   *
   * @param header names of the columns
   * @param rows below the header
   */
  public record Table(List<Located<String>> header, List<List<Located<String>>> rows) {
    /** Keeps its own copies. */
    public Table {
      header = List.copyOf(header);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /**
   * The table in a file, whose lines end in line feeds; rows that cannot be read are left out, and
   * nothing is kept of a table that is too large or has no header that can be read.
   */
  public static Checked<Table> read(String file, String text) {
    Csv csv = new Csv(file);
    Table table = csv.table(text.split("\n", -1));
    return new Checked<>(table, csv.findings.list());
  }

  private @Nullable Table table(String[] lines) {
    List<Located<String>> header = null;
    List<List<Located<String>>> rows = new ArrayList<>();
    for (int i = 0; i < lines.length; i++) {
      List<Located<String>> cells = lines[i].isBlank() ? null : cells(lines[i], i + 1);
      if (rows.size() == MAX_ROWS && cells != null) {
        tooLarge(new Span(file, i + 1, 1, 1), "rows", MAX_ROWS);
        return null;
      } else if (header == null && cells != null) {
        header = cells;
      } else if (header == null && !lines[i].isBlank()) {
        return null; // an unreadable header says nothing of the rows
      } else if (header != null && cells != null && hasLengthOf(header, cells)) {
        rows.add(cells);
      }
    }
    if (header == null) {
      error("empty-file", Span.startOf(file), "nothing is written here", "write a header row");
    }
    return header == null ? null : new Table(header, rows);
  }

  private boolean hasLengthOf(List<Located<String>> header, List<Located<String>> cells) {
    if (cells.size() == header.size()) {
      return true;
    }
    error(
        "csv-syntax",
        cells.get(0).at(),
        "this row has " + cells.size() + " cells, and the header has " + header.size(),
        "give each row one cell for each column, and put a cell that holds a comma in quotes");
    return false;
  }

  /** The cells of a line, or none when it cannot be read. */
  private @Nullable List<Located<String>> cells(String line, int number) {
    List<Located<String>> cells = new ArrayList<>();
    int at = 0;
    while (at <= line.length()) {
      if (cells.size() == MAX_COLUMNS) {
        tooLarge(span(number, at, 1), "columns", MAX_COLUMNS);
        return null;
      }
      int end =
          isQuote(line, at) ? quoted(line, number, at, cells) : plain(line, number, at, cells);
      if (end < 0) {
        return null;
      }
      at = end + 1;
    }
    return cells;
  }

  private static boolean isQuote(String line, int at) {
    return at < line.length() && line.charAt(at) == QUOTE;
  }

  /** Adds a cell without quotes; where it ends, or a negative number when it cannot be read. */
  private int plain(String line, int number, int from, List<Located<String>> cells) {
    int comma = line.indexOf(',', from);
    int end = comma < 0 ? line.length() : comma;
    String cell = line.substring(from, end);
    int quote = cell.indexOf(QUOTE);
    if (quote >= 0) {
      error(
          "csv-syntax",
          span(number, from + quote, 1),
          "a quotation mark stands in a cell that is not in quotes",
          "put the whole cell in quotes and write the mark twice, or leave it out");
      return -1;
    }
    int blank = cell.length() - cell.stripLeading().length();
    String text = cell.strip();
    cells.add(
        new Located<>(text, span(number, text.isEmpty() ? from : from + blank, text.length())));
    return end;
  }

  /** Adds a cell in quotes; where it ends, or a negative number when it cannot be read. */
  private int quoted(String line, int number, int from, List<Located<String>> cells) {
    StringBuilder text = new StringBuilder();
    int at = from + 1;
    while (at < line.length() && (line.charAt(at) != QUOTE || isQuote(line, at + 1))) {
      text.append(line.charAt(at));
      at += line.charAt(at) == QUOTE ? 2 : 1;
    }
    int end = at + 1;
    if (at >= line.length()) {
      error(
          "csv-syntax",
          span(number, from, line.length() - from),
          "the quotes that open here are not closed on this line",
          "close them before the next comma");
      return -1;
    }
    if (end < line.length() && line.charAt(end) != ',') {
      error(
          "csv-syntax",
          span(number, end, 1),
          "`" + line.charAt(end) + "` stands between closing quotes and the next comma",
          "write a quotation mark inside quotes twice, or delete what follows them");
      return -1;
    }
    cells.add(new Located<>(text.toString(), span(number, from, end - from)));
    return end;
  }

  private void tooLarge(Span at, String what, int most) {
    error(
        "file-too-large",
        at,
        "`" + file + "` has more than " + most + " " + what,
        "leave out those that are not needed");
  }

  private void error(String code, Span at, String message, String hint) {
    findings.add(Finding.error(code, at, message, hint));
  }

  private Span span(int line, int from, int length) {
    return new Span(file, line, from + 1, Math.max(1, length));
  }
}
