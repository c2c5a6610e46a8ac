package packetwright.drawing.lettering;

/** The typefaces that we print with. */
public enum Face {
  REGULAR("Roboto", 400, false, "/com/formdev/flatlaf/fonts/roboto/Roboto-Regular.ttf"),
  ITALIC("Roboto", 400, true, "/com/formdev/flatlaf/fonts/roboto/Roboto-Italic.ttf"),
  BOLD("Roboto", 700, false, "/com/formdev/flatlaf/fonts/roboto/Roboto-Bold.ttf"),
  BOLD_ITALIC("Roboto", 700, true, "/com/formdev/flatlaf/fonts/roboto/Roboto-BoldItalic.ttf"),
  /** For signs that the text faces lack. */
  SYMBOL("DejaVu Sans", 400, false, "/net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf");

  private final String family;
  private final int weight;
  private final boolean italic;
  private final String resource;

  Face(String family, int weight, boolean italic, String resource) {
    this.family = family;
    this.weight = weight;
    this.italic = italic;
    this.resource = resource;
  }

  /** Family name, as style sheets use it. */
  public String family() {
    return family;
  }

  /** 400 or 700. */
  public int weight() {
    return weight;
  }

  /** Whether it slants. */
  public boolean isItalic() {
    return italic;
  }

  /** Class-path name of the TrueType file. */
  public String resource() {
    return resource;
  }
}
