package packetwright.text.document;

import java.util.List;
import org.snakeyaml.engine.v2.exceptions.Mark;
import packetwright.text.source.Span;

/** Turns the parser's marks into places in the file, which count UTF-16 code units. */
final class Places {
  private final String file;
  private final List<String> lines;
  private final int firstLine;
  private final int firstColumn;

  Places(String file, String text, int firstLine, int firstColumn) {
    this.file = file;
    this.lines = List.of(text.split("\n", -1));
    this.firstLine = firstLine;
    this.firstColumn = firstColumn;
  }

  Span start() {
    return new Span(file, firstLine, firstColumn, 1);
  }

  /** A line of the text, from 0; empty past its end. */
  String line(int number) {
    return number < lines.size() ? lines.get(number) : "";
  }

  Span at(Mark mark) {
    return at(mark, mark);
  }

  /** From one mark to another, or to the end of the first line when that comes earlier. */
  Span at(Mark from, Mark to) {
    int start = column(from);
    int end = to.getLine() == from.getLine() ? column(to) : line(from.getLine()).length();
    return new Span(
        file, firstLine + from.getLine(), firstColumn + start, Math.max(1, end - start));
  }

  private int column(Mark mark) {
    String line = line(mark.getLine());
    int points = Math.min(mark.getColumn(), line.codePointCount(0, line.length()));
    return line.offsetByCodePoints(0, points);
  }
}
