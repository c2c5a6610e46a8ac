package packetwright.wood.assembly;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One of the six directions of the assembly.
 *
 * @param axis 0 x, 1 y, 2 z
 * @param isPositive toward greater coordinates
 */
public record Direction(int axis, boolean isPositive) {
  /** Reads {@code +x} to {@code -z}; none for anything else. */
  public static @Nullable Direction of(String text) {
    if (text.length() != 2 || "+-".indexOf(text.charAt(0)) < 0) {
      return null;
    }
    int axis = "xyz".indexOf(text.charAt(1));
    return axis < 0 ? null : new Direction(axis, text.charAt(0) == '+');
  }

  /** All six. */
  static List<Direction> all() {
    return Stream.of("-x", "+x", "-y", "+y", "-z", "+z")
        .map(Direction::of)
        .flatMap(Stream::ofNullable)
        .toList();
  }

  /** As it is written. */
  @Override
  public String toString() {
    return (isPositive ? "+" : "-") + "xyz".charAt(axis);
  }

  /** The third direction of a right-handed frame whose first is this one. */
  Direction cross(Direction second) {
    int third = 3 - axis - second.axis;
    boolean isCyclic = (axis + 1) % 3 == second.axis;
    return new Direction(third, isCyclic == (isPositive == second.isPositive));
  }
}
