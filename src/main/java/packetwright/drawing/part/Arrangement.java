package packetwright.drawing.part;

/** Where the views stand about the front view: ISO 5456-2. */
public enum Arrangement {
  /** The top view above the front view, the right end at its right. */
  THIRD_ANGLE,
  /** The top view below the front view, the right end at its left. */
  FIRST_ANGLE
}
