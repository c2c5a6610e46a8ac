package packetwright.drawing.view;

import java.util.List;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Solid;

/**
 * A round hole in the coordinates of a view.
 *
 * @param index along which it runs: 0 across, 1 up, 2 toward the eye
 * @param centre u, v and depth of its axis; along {@code index}, of its lesser end
 * @param depth along its axis
 * @param radius of the hole
 */
record BoreInView(int index, List<Length> centre, Length depth, Length radius) {

  static BoreInView of(Bore bore, Solid solid, Projection projection) {
    List<Integer> axes = List.of(projection.across(), projection.up(), projection.depth());
    List<Length> centre =
        axes.stream()
            .map(
                axis -> {
                  Length start = projection.onPaper(solid, axis, bore.centre().on(axis));
                  if (axis != bore.axis()) {
                    return start;
                  }
                  Length end = bore.centre().on(axis).plus(bore.depth());
                  return start.min(projection.onPaper(solid, axis, end));
                })
            .toList();
    return new BoreInView(
        axes.indexOf(bore.axis()), centre, bore.depth(), bore.diameter().dividedBy(2));
  }

  /** Its least coordinate. */
  Length low(int i) {
    return i == index ? centre.get(i) : centre.get(i).minus(radius);
  }

  /** Its greatest coordinate. */
  Length high(int i) {
    return i == index ? centre.get(i).plus(depth) : centre.get(i).plus(radius);
  }
}
