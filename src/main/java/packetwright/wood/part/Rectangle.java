package packetwright.wood.part;

import java.util.List;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal.Corner;

/** What a box looks like along an axis; it may have no area. */
record Rectangle(Length lowU, Length lowV, Length highU, Length highV) {
  static Rectangle of(Box box, int axis) {
    int u = Removal.acrossU(axis);
    int v = Removal.acrossV(axis);
    return new Rectangle(box.low().on(u), box.low().on(v), box.high().on(u), box.high().on(v));
  }

  /** Counterclockwise from the least. */
  List<Corner> corners() {
    return List.of(
        new Corner(lowU, lowV, null),
        new Corner(highU, lowV, null),
        new Corner(highU, highV, null),
        new Corner(lowU, highV, null));
  }

  Length middleU() {
    return lowU.plus(highU).dividedBy(2);
  }

  Length middleV() {
    return lowV.plus(highV).dividedBy(2);
  }

  /** Whether a place lies in it or on its border. */
  boolean holds(Length u, Length v) {
    return !u.isLess(lowU) && !u.isMore(highU) && !v.isLess(lowV) && !v.isMore(highV);
  }

  /** Whether more than borders is shared; a line meets what it runs into. */
  boolean meets(Rectangle other) {
    return lowU.isLess(other.highU)
        && other.lowU.isLess(highU)
        && lowV.isLess(other.highV)
        && other.lowV.isLess(highV);
  }

  /** What the two share, when they meet. */
  Rectangle common(Rectangle other) {
    return new Rectangle(
        lowU.max(other.lowU), lowV.max(other.lowV), highU.min(other.highU), highV.min(other.highV));
  }
}
