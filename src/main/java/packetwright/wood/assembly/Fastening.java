package packetwright.wood.assembly;

import java.util.List;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;

/**
 * Fasteners through one piece into another, placed.
 *
 * @param joint its name
 * @param fastener which
 * @param driven the piece that they go through
 * @param into the piece that they hold in
 * @param line where they stand on the driven piece
 * @param prisms what they take up, in the assembly, in the order of the line's places
 */
public record Fastening(
    String joint, Fastener fastener, String driven, String into, Line line, List<Box> prisms) {
  /** Keeps its own copy. */
  public Fastening {
    prisms = List.copyOf(prisms);
  }

  /** How many there are. */
  public int count() {
    return prisms.size();
  }

  /**
   * Places on a line, as they are measured on the driven piece.
   *
   * @param beside the side of the piece that the line runs beside
   * @param inset how far the line is from it
   * @param from the side from which the places are measured
   * @param places least first
   */
  public record Line(Side beside, Length inset, Side from, List<Length> places) {
    /** Keeps its own copy. */
    public Line {
      places = List.copyOf(places);
    }
  }
}
