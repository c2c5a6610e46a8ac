package packetwright.drawing.sheet;

import java.util.List;

/**
 * A finished drawing. Coordinates are points (1/72 in), x to the right and y downward from the top
 * left corner.
 *
 * @param name unique within a document: {@code part-side}, {@code layout-wall}
 * @param width in points
 * @param height in points
 * @param alternative what a reader who cannot see it is told; never empty
 * @param marks painted in order
 */
public record Sheet(
    String name, double width, double height, String alternative, List<Mark> marks) {
  /** Refuses a drawing that cannot be described. */
  public Sheet {
    if (alternative.isBlank()) {
      throw new IllegalArgumentException("drawing " + name + " has no text alternative");
    }
    marks = List.copyOf(marks);
  }

  /** The same drawing under another name. */
  public Sheet named(String other) {
    return new Sheet(other, width, height, alternative, marks);
  }

  /** Paints every mark. */
  public void paint(Painter painter) {
    for (Mark mark : marks) {
      mark.paint(painter);
    }
  }
}
