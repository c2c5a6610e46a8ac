package packetwright.drawing.template;

/**
 * How a template is parted into pages. Coordinates are points on one great sheet, x to the right
 * and y downward; the template lies in its middle.
 *
 * @param columns of tiles
 * @param rows of tiles
 * @param width of the template
 * @param height of the template
 */
record Tiling(int columns, int rows, double width, double height) {
  /** What a tile adds to the one before it: 6 1/2 in. */
  static final double ACROSS = 468;

  /** 7 1/2 in. */
  static final double DOWN = 540;

  /** What a tile shows beyond its own share at each side: 1/4 in. */
  static final double OVERLAP = 18;

  static Tiling of(double width, double height) {
    return new Tiling(
        Math.max(1, (int) Math.ceil(width / ACROSS)),
        Math.max(1, (int) Math.ceil(height / DOWN)),
        width,
        height);
  }

  int count() {
    return columns * rows;
  }

  /** Where the template begins on the great sheet. */
  double left() {
    return (columns * ACROSS - width) / 2;
  }

  double top() {
    return (rows * DOWN - height) / 2;
  }

  /** The name of a corner where tiles meet: a, b, c along each line of them, then on. */
  String corner(int column, int row) {
    int number = row * (columns + 1) + column;
    String last = String.valueOf((char) ('a' + number % 26));
    return number < 26 ? last : (char) ('a' + number / 26 - 1) + last;
  }
}
