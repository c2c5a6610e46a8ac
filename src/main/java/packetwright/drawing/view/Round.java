package packetwright.drawing.view;

/**
 * A circle that a round surface runs along.
 *
 * @param axis across the circle: 0, 1 or 2
 * @param u its centre on the lesser of the other two axes
 * @param v its centre on the greater
 * @param radius of the circle
 */
record Round(int axis, double u, double v, double radius) {
  /** Chords leave the circle by no more than this, in inches. */
  private static final double SAGITTA = 1.0 / 2000;

  /** A full turn is cut into no fewer chords. */
  private static final int LEAST = 64;

  /** Into how many chords a full turn is cut; a power of two, so that angles add up exactly. */
  int chords() {
    double step = 2 * StrictMath.acos(Math.max(0, 1 - SAGITTA / radius));
    int chords = LEAST;
    while (chords * step < 2 * Math.PI && chords < 1 << 14) {
      chords *= 2;
    }
    return chords;
  }

  /** Square to the axis, from it toward a place, an inch long. */
  Vector outward(Vector place) {
    return switch (axis) {
      case 0 -> new Vector(0, place.y() - u, place.z() - v).unit();
      case 1 -> new Vector(place.x() - u, 0, place.z() - v).unit();
      default -> new Vector(place.x() - u, place.y() - v, 0).unit();
    };
  }
}
