package packetwright.wood.part;

import java.util.List;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;

/**
 * An exact shape: a block minus removals. The frame has x along the grain from the left end, y
 * across the width from the bottom edge, z from the outside face to the inside face.
 *
 * @param length along x
 * @param width along y
 * @param thickness along z
 * @param removals wood taken out, in any order
 */
public record Solid(Length length, Length width, Length thickness, List<Removal> removals) {
  /** Refuses a block without volume. */
  public Solid {
    if (length.signum() <= 0 || width.signum() <= 0 || thickness.signum() <= 0) {
      throw new IllegalArgumentException(
          "block without volume: " + length + " x " + width + " x " + thickness);
    }
    removals = List.copyOf(removals);
  }

  /** A block with nothing taken out. */
  public static Solid block(Length length, Length width, Length thickness) {
    return new Solid(length, width, thickness, List.of());
  }

  /** Its extent on axis 0 (x), 1 (y) or 2 (z). */
  public Length extent(int axis) {
    return switch (axis) {
      case 0 -> length;
      case 1 -> width;
      case 2 -> thickness;
      default -> throw new IllegalArgumentException("axis " + axis);
    };
  }

  /** The coordinate of a side on its axis. */
  public Length coordinate(Side side) {
    return side.isFar() ? extent(side.axis()) : Length.ZERO;
  }
}
