package packetwright.wood.part;

import packetwright.text.measure.Length;

/**
 * A place in a piece's frame.
 *
 * @param x along the grain from the left end
 * @param y across the width from the bottom edge
 * @param z through the thickness from the outside face
 */
public record Point(Length x, Length y, Length z) {
  /** The coordinate on axis 0 (x), 1 (y) or 2 (z). */
  public Length on(int axis) {
    return switch (axis) {
      case 0 -> x;
      case 1 -> y;
      case 2 -> z;
      default -> throw new IllegalArgumentException("axis " + axis);
    };
  }

  /** The same place but for one coordinate. */
  public Point with(int axis, Length value) {
    return new Point(axis == 0 ? value : x, axis == 1 ? value : y, axis == 2 ? value : z);
  }
}
