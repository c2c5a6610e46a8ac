package packetwright.text.source;

/**
 * A stretch of input text on one line, 1-based as editors show it.
 *
 * @param file name inside the project folder, or the name of a file or option on the command line
 * @param line 1 or more
 * @param column 1 or more, in UTF-16 code units
 * @param length in UTF-16 code units, 1 or more
 */
public record Span(String file, int line, int column, int length) implements Comparable<Span> {
  /** Rejects places that no editor could show. */
  public Span {
    if (line < 1 || column < 1 || length < 1) {
      throw new IllegalArgumentException(
          "line, column and length start at 1: " + line + ":" + column + "+" + length);
    }
  }

  /** The first character of a file, for what concerns the file as a whole. */
  public static Span startOf(String file) {
    return new Span(file, 1, 1, 1);
  }

  /** A part of this span, {@code offset} characters in. */
  public Span part(int offset, int partLength) {
    return new Span(file, line, column + offset, Math.max(1, partLength));
  }

  @Override
  public int compareTo(Span other) {
    int byFile = file.compareTo(other.file);
    if (byFile != 0) {
      return byFile;
    }
    int byLine = Integer.compare(line, other.line);
    return byLine != 0 ? byLine : Integer.compare(column, other.column);
  }

  @Override
  public String toString() {
    return file + ":" + line + ":" + column;
  }
}
