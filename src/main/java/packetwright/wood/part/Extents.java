package packetwright.wood.part;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Cases;
import packetwright.wood.part.Removal.Corner;
import packetwright.wood.part.Removal.Outline;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.part.Removal.Trough;

/** How far removals reach within a block. */
final class Extents {
  private Extents() {}

  static @Nullable Box reach(Removal removal, Box block) {
    List<Box> reach =
        removal.match(
            new Cases<List<Box>>() {
              @Override
              public List<Box> trough(Trough trough) {
                return List.of(trough.box());
              }

              @Override
              public List<Box> bore(Bore bore) {
                return List.of(bore.around());
              }

              @Override
              public List<Box> slope(Slope slope) {
                return around(
                    slope.axis(), Area.of(block, slope.axis()).takenBy(slope).corners(), block);
              }

              @Override
              public List<Box> outline(Outline outline) {
                return around(outline.axis(), outline.path(), block);
              }
            });
    return reach.isEmpty() ? null : reach.get(0);
  }

  private static List<Box> around(int axis, List<Corner> corners, Box block) {
    if (corners.isEmpty()) {
      return List.of();
    }
    Length lowU = corners.stream().map(Corner::u).reduce(Length::min).orElseThrow();
    Length highU = corners.stream().map(Corner::u).reduce(Length::max).orElseThrow();
    Length lowV = corners.stream().map(Corner::v).reduce(Length::min).orElseThrow();
    Length highV = corners.stream().map(Corner::v).reduce(Length::max).orElseThrow();
    if (!lowU.isLess(highU) || !lowV.isLess(highV)) {
      return List.of();
    }
    int u = Removal.acrossU(axis);
    int v = Removal.acrossV(axis);
    return List.of(
        new Box(
            block.low().with(u, lowU).with(v, lowV), block.high().with(u, highU).with(v, highV)));
  }
}
