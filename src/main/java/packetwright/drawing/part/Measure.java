package packetwright.drawing.part;

import packetwright.text.measure.Length;

/**
 * A distance between two places on one axis of the part.
 *
 * @param axis 0, 1 or 2
 * @param from the lesser
 * @param to the greater
 */
record Measure(int axis, Length from, Length to) {
  Length value() {
    return to.minus(from);
  }
}
