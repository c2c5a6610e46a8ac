package packetwright.wood.part;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Trough;

/**
 * A solid's troughs cut into the cells of a grid. The grid has a line at each coordinate at which
 * anything begins or ends, so that each cell is wholly wood or wholly air.
 */
final class Cells {
  private final List<List<Length>> lines;
  private final List<Box> air;

  /** The grid of several solids of one size together, filled as the first of them is. */
  Cells(Solid filled, Solid... alsoOnGrid) {
    List<SortedSet<Length>> coordinates =
        List.of(new TreeSet<>(), new TreeSet<>(), new TreeSet<>());
    addLines(filled, coordinates);
    for (Solid other : alsoOnGrid) {
      addLines(other, coordinates);
    }
    lines = coordinates.stream().<List<Length>>map(List::copyOf).toList();
    air = troughs(filled);
  }

  private static void addLines(Solid solid, List<SortedSet<Length>> coordinates) {
    for (int axis = 0; axis < 3; axis++) {
      coordinates.get(axis).add(Length.ZERO);
      coordinates.get(axis).add(solid.extent(axis));
      for (Box box : troughs(solid)) {
        for (Length end : List.of(box.low().on(axis), box.high().on(axis))) {
          if (end.signum() > 0 && end.isLess(solid.extent(axis))) {
            coordinates.get(axis).add(end);
          }
        }
      }
    }
  }

  private static List<Box> troughs(Solid solid) {
    return solid.removals().stream()
        .filter(Trough.class::isInstance)
        .map(r -> ((Trough) r).box())
        .toList();
  }

  /** How many cells lie along an axis. */
  int count(int axis) {
    return lines.get(axis).size() - 1;
  }

  /** The cell at three indices. */
  Box cell(int i, int j, int k) {
    return new Box(
        new Point(lines.get(0).get(i), lines.get(1).get(j), lines.get(2).get(k)),
        new Point(lines.get(0).get(i + 1), lines.get(1).get(j + 1), lines.get(2).get(k + 1)));
  }

  /** Whether a cell is wood. */
  boolean isWood(Box cell) {
    return air.stream().noneMatch(trough -> trough.contains(cell));
  }

  /** All cells, in the order of x, then y, then z. */
  List<Box> all() {
    List<Box> cells = new ArrayList<>();
    for (int i = 0; i < count(0); i++) {
      for (int j = 0; j < count(1); j++) {
        for (int k = 0; k < count(2); k++) {
          cells.add(cell(i, j, k));
        }
      }
    }
    return cells;
  }

  /** Holes as they are seen: clipped to the block, those wholly in air left out, sorted. */
  static List<Bore> bores(Solid solid) {
    return solid.removals().stream()
        .filter(Bore.class::isInstance)
        .map(r -> clipped((Bore) r, solid))
        .filter(bore -> bore.depth().signum() > 0 && !isGone(bore, solid))
        .distinct()
        .sorted(java.util.Comparator.comparing(Bore::toString))
        .toList();
  }

  private static Bore clipped(Bore bore, Solid solid) {
    Length begin = bore.centre().on(bore.axis()).max(Length.ZERO);
    Length end = bore.centre().on(bore.axis()).plus(bore.depth()).min(solid.extent(bore.axis()));
    return new Bore(
        bore.axis(), bore.centre().with(bore.axis(), begin), end.minus(begin), bore.diameter());
  }

  /** Whether nothing of a hole is left to see: all of it in air, or outside the block. */
  private static boolean isGone(Bore bore, Solid solid) {
    Box around = bore.around();
    return !solid.block().overlaps(around)
        || troughs(solid).stream().anyMatch(trough -> trough.contains(around));
  }
}
