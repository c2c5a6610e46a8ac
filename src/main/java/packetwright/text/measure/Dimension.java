package packetwright.text.measure;

/** What kind of thing a quantity measures; only like is added to like. */
public enum Dimension {
  /** Counts, ratios and per cent. */
  NUMBER,
  LENGTH,
  AREA,
  /** Solid volume, board measure among it. */
  VOLUME,
  /** What a bottle holds. */
  FLUID,
  ANGLE,
  TIME,
  TEMPERATURE,
  MONEY;

  /** As a message names it: {@code a length}. */
  public String phrase() {
    return switch (this) {
      case NUMBER -> "a number";
      case LENGTH -> "a length";
      case AREA -> "an area";
      case VOLUME -> "a volume";
      case FLUID -> "a fluid volume";
      case ANGLE -> "an angle";
      case TIME -> "a time";
      case TEMPERATURE -> "a temperature";
      case MONEY -> "an amount of money";
    };
  }
}
