package packetwright.drawing.view;

import packetwright.drawing.view.View.Place;

/**
 * A stretch of a crease as it is seen on paper, between two places where other lines cross it.
 *
 * @param from one end
 * @param to other end
 * @param isSeen whether nothing stands before it
 */
record Stretch(Place from, Place to, boolean isSeen) {
  double length() {
    return Math.hypot(to.u() - from.u(), to.v() - from.v());
  }

  Place middle() {
    return new Place((from.u() + to.u()) / 2, (from.v() + to.v()) / 2);
  }
}
