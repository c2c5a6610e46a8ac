package packetwright.drawing.view;

/**
 * A place or a direction in space, in inches.
 *
 * @param x on axis 0
 * @param y on axis 1
 * @param z on axis 2
 */
record Vector(double x, double y, double z) {
  /** One inch along an axis. */
  static Vector along(int axis) {
    return new Vector(axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0);
  }

  double on(int axis) {
    return axis == 0 ? x : axis == 1 ? y : z;
  }

  Vector plus(Vector other) {
    return new Vector(x + other.x, y + other.y, z + other.z);
  }

  Vector minus(Vector other) {
    return new Vector(x - other.x, y - other.y, z - other.z);
  }

  Vector times(double factor) {
    return new Vector(x * factor, y * factor, z * factor);
  }

  double dot(Vector other) {
    return x * other.x + y * other.y + z * other.z;
  }

  Vector cross(Vector other) {
    return new Vector(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  double length() {
    return Math.sqrt(dot(this));
  }

  /** The same direction, an inch long. */
  Vector unit() {
    return times(1 / length());
  }

  /** So far of the way to another place: 0 here, 1 there. */
  Vector toward(Vector other, double part) {
    return plus(other.minus(this).times(part));
  }
}
