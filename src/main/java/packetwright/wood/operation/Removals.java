package packetwright.wood.operation;

import java.util.List;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Trough;
import packetwright.wood.part.Solid;

/** What a cutter takes out of a piece, from its settings alone. */
final class Removals {
  private Removals() {}

  /** Right across the piece, between two distances from a side. */
  static Removal band(
      Solid solid, Side from, Length near, Length far, Part.Feature feature, Length depth) {
    List<Length> span = solid.measuredFrom(from, near, far);
    List<Length> deep = solid.measuredFrom(feature.face(), Length.ZERO, depth);
    Point low = new Point(Length.ZERO, Length.ZERO, deep.get(0)).with(from.axis(), span.get(0));
    Point high =
        new Point(solid.length(), solid.width(), deep.get(1)).with(from.axis(), span.get(1));
    return new Trough(new Box(low, high));
  }
}
