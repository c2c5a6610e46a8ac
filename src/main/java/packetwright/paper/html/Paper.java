package packetwright.paper.html;

import java.util.Locale;

/** Sizes of paper. */
public enum Paper {
  LETTER,
  A4;

  /** As style sheets name it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
