package packetwright.paper.pdf;

/**
 * A page that cannot be laid out as it is written: markup that is not well-formed, a character or
 * typeface that we lack, a drawing that would be stretched. With our own templates this is a bug of
 * ours; with a project's own it is theirs to mend.
 */
public final class PageRefused extends IllegalArgumentException {
  private final int codePoint;

  PageRefused(String message) {
    this(message, -1);
  }

  PageRefused(String message, int codePoint) {
    super(message);
    this.codePoint = codePoint;
  }

  /** The character that no typeface of ours has, or -1 when it was refused for another reason. */
  public int codePoint() {
    return codePoint;
  }
}
