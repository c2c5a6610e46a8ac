package packetwright.drawing.sheet;

/**
 * An upright rectangle on a sheet, in points.
 *
 * @param left least x
 * @param top least y
 * @param right greatest x
 * @param bottom greatest y
 */
public record Area(double left, double top, double right, double bottom) {
  /** Whether the insides of both meet. */
  public boolean overlaps(Area other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  /** Whether a straight line passes through its inside (Liang and Barsky 1984, clipping). */
  public boolean isCrossedBy(double x1, double y1, double x2, double y2) {
    // Most lines lie wholly at one side.
    if (Math.min(x1, x2) >= right
        || Math.max(x1, x2) <= left
        || Math.min(y1, y2) >= bottom
        || Math.max(y1, y2) <= top) {
      return false;
    }
    double[] delta = {x1 - x2, x2 - x1, y1 - y2, y2 - y1};
    double[] room = {x1 - left, right - x1, y1 - top, bottom - y1};
    double enter = 0;
    double leave = 1;
    for (int i = 0; i < 4; i++) {
      if (delta[i] == 0) {
        if (room[i] <= 0) {
          return false;
        }
      } else if (delta[i] < 0) {
        enter = Math.max(enter, room[i] / delta[i]);
      } else {
        leave = Math.min(leave, room[i] / delta[i]);
      }
    }
    return enter < leave;
  }

  /** Larger on each side. */
  public Area grown(double by) {
    return new Area(left - by, top - by, right + by, bottom + by);
  }

  /** Whether it lies inside another. */
  public boolean isWithin(Area other) {
    return left >= other.left && right <= other.right && top >= other.top && bottom <= other.bottom;
  }

  /** Horizontal extent. */
  public double width() {
    return right - left;
  }

  /** Vertical extent. */
  public double height() {
    return bottom - top;
  }
}
