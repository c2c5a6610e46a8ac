package packetwright.drawing.view;

import packetwright.text.measure.Length;
import packetwright.wood.part.Solid;

/**
 * From where a piece is seen, in third-angle arrangement: the top view stands above the front view
 * and the end view at its right. Each view has u to the right and v upward on paper.
 */
public enum Projection {
  /** Looking at the inside face, bottom edge down. */
  FRONT(0, false, 1, false, 2),
  /** Looking down at the top edge; the inside face is below, towards the front view. */
  TOP(0, false, 2, true, 1),
  /** Looking at the right end; the inside face is at the left, towards the front view. */
  END(2, true, 1, false, 0);

  private final int across;
  private final boolean acrossTurned;
  private final int up;
  private final boolean upTurned;
  private final int depth;

  Projection(int across, boolean acrossTurned, int up, boolean upTurned, int depth) {
    this.across = across;
    this.acrossTurned = acrossTurned;
    this.up = up;
    this.upTurned = upTurned;
    this.depth = depth;
  }

  /** The piece's axis that runs across the paper. */
  public int across() {
    return across;
  }

  /** The piece's axis that runs up the paper. */
  public int up() {
    return up;
  }

  /** The piece's axis that runs toward the eye. */
  public int depth() {
    return depth;
  }

  /** Where a coordinate of the piece comes to lie on paper, from the view's left or lower edge. */
  public Length onPaper(Solid solid, int axis, Length coordinate) {
    boolean turned = axis == across ? acrossTurned : axis == up && upTurned;
    return turned ? solid.extent(axis).minus(coordinate) : coordinate;
  }

  /** The same in inches, to floating point. */
  public double onPaper(Solid solid, int axis, double coordinate) {
    boolean turned = axis == across ? acrossTurned : axis == up && upTurned;
    return turned ? solid.extent(axis).inches().approximate() - coordinate : coordinate;
  }
}
