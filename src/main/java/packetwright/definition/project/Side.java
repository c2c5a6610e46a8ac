package packetwright.definition.project;

import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One of the six sides of a piece. Left and right are its ends, as seen with the inside face toward
 * you and the bottom edge down.
 */
public enum Side {
  LEFT(0, false),
  RIGHT(0, true),
  BOTTOM(1, false),
  TOP(1, true),
  OUTSIDE(2, false),
  INSIDE(2, true);

  private final int axis;
  private final boolean far;

  Side(int axis, boolean far) {
    this.axis = axis;
    this.far = far;
  }

  /** As written in files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The side of that name, or none. */
  public static @Nullable Side of(String word) {
    return Arrays.stream(values()).filter(s -> s.word().equals(word)).findFirst().orElse(null);
  }

  /** The side across the piece. */
  public Side opposite() {
    return switch (this) {
      case LEFT -> RIGHT;
      case RIGHT -> LEFT;
      case BOTTOM -> TOP;
      case TOP -> BOTTOM;
      case OUTSIDE -> INSIDE;
      case INSIDE -> OUTSIDE;
    };
  }

  /** 0 along the grain, 1 across the width, 2 through the thickness. */
  public int axis() {
    return axis;
  }

  /** Whether its coordinate is the piece's extent rather than 0. */
  public boolean isFar() {
    return far;
  }
}
