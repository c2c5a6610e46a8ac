package packetwright.text.source;

/** How much a finding weighs: only an error stops a packet from being printed. */
public enum Severity {
  ERROR,
  WARNING,
  NOTE;

  /** The word that a report begins with. */
  public String word() {
    return switch (this) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case NOTE -> "note";
    };
  }
}
