package packetwright.text.source;

/** A finding as a terminal shows it, with the line that it concerns and a caret under the place. */
public final class FindingText {
  /** Longest stretch of a source line that is shown. */
  private static final int MAX_SHOWN = 76;

  private static final int MARGIN = 4;
  private static final String CUT = "...";

  private FindingText() {}

  /**
   * A few lines, each ended by a line feed.
   *
   * @param sourceLine the line that the finding points into; empty when there is none to show
   */
  public static String render(Finding finding, String sourceLine) {
    StringBuilder text = new StringBuilder();
    text.append(finding.severity().word()).append(": ").append(finding.message());
    text.append("   [").append(finding.code()).append("]\n");
    text.append("  ").append(finding.at());
    if (!finding.step().isEmpty()) {
      text.append("  step ").append(finding.step());
    }
    text.append('\n');
    if (!sourceLine.isBlank()) {
      excerpt(finding.at(), sourceLine, text);
    }
    if (!finding.hint().isEmpty()) {
      text.append("  try: ").append(finding.hint()).append('\n');
    }
    return text.toString();
  }

  private static void excerpt(Span at, String sourceLine, StringBuilder text) {
    String line = printable(sourceLine);
    int start = Math.min(at.column() - 1, line.length());
    int end = Math.min(start + at.length(), line.length());
    int from = start + MARGIN < MAX_SHOWN ? 0 : start - MAX_SHOWN / 2;
    int to = Math.min(line.length(), from + MAX_SHOWN);
    String shown = (from > 0 ? CUT : "") + line.substring(from, to);
    int caret = start - from + (from > 0 ? CUT.length() : 0);
    String number = Integer.toString(at.line());
    String margin = " ".repeat(Math.max(0, MARGIN + 1 - number.length()));
    text.append(margin).append(number).append(" | ").append(shown);
    text.append(to < line.length() ? CUT : "").append('\n');
    text.append(" ".repeat(margin.length() + number.length())).append(" | ");
    text.append(" ".repeat(caret)).append("^".repeat(Math.max(1, Math.min(end, to) - start)));
    text.append('\n');
  }

  /** Tabs and control characters would move the caret, or the terminal. */
  private static String printable(String line) {
    StringBuilder printable = new StringBuilder();
    for (char c : line.stripTrailing().toCharArray()) {
      printable.append(Character.isISOControl(c) ? ' ' : c);
    }
    return printable.toString();
  }
}
