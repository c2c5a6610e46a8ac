package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import packetwright.text.measure.Length;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Trough;
import packetwright.wood.part.Solid;

/**
 * The block cut into cells by every coordinate of its removals, as seen in one projection: index 0
 * runs along u, 1 along v, 2 toward the eye. Troughs empty cells; bores only cut them smaller.
 */
final class ViewGrid {
  private final List<List<Length>> lines = new ArrayList<>();
  private final List<Extent> troughs = new ArrayList<>();
  private final List<BoreInView> bores = new ArrayList<>();
  private final boolean[][][] filled;

  ViewGrid(Solid solid, Projection projection) {
    int[] axes = {projection.across(), projection.up(), projection.depth()};
    for (Removal removal : solid.removals()) {
      removal.match(
          new Removal.Cases<Boolean>() {
            @Override
            public Boolean trough(Trough trough) {
              return troughs.add(
                  extent(solid, projection, trough.box().low(), trough.box().high()));
            }

            @Override
            public Boolean bore(Bore bore) {
              return bores.add(BoreInView.of(bore, solid, projection));
            }

            @Override
            public Boolean slope(Removal.Slope slope) {
              return false;
            }

            @Override
            public Boolean outline(Removal.Outline outline) {
              return false;
            }
          });
    }
    for (int i = 0; i < 3; i++) {
      lines.add(lines(i, solid.extent(axes[i])));
    }
    filled = new boolean[cells(0)][cells(1)][cells(2)];
    for (int u = 0; u < cells(0); u++) {
      for (int v = 0; v < cells(1); v++) {
        for (int d = 0; d < cells(2); d++) {
          filled[u][v][d] = isWood(u, v, d);
        }
      }
    }
  }

  List<BoreInView> bores() {
    return bores;
  }

  /** Coordinates of the cell walls along one index, from 0 to the block's extent. */
  List<Length> lines(int index) {
    return lines.get(index);
  }

  int cells(int index) {
    return lines.get(index).size() - 1;
  }

  /** Whether a cell holds wood; nothing does beyond the block. */
  boolean isFilled(int u, int v, int d) {
    return u >= 0
        && v >= 0
        && d >= 0
        && u < cells(0)
        && v < cells(1)
        && d < cells(2)
        && filled[u][v][d];
  }

  /** The cell nearest to the eye that holds wood in a column, or -1. */
  int top(int u, int v) {
    for (int d = cells(2) - 1; d >= 0; d--) {
      if (isFilled(u, v, d)) {
        return d;
      }
    }
    return -1;
  }

  /** The cell that a coordinate falls in; on a wall the one above it; -1 beyond the block. */
  int cellAt(int index, double coordinate) {
    List<Length> walls = lines.get(index);
    for (int i = walls.size() - 1; i >= 0; i--) {
      if (walls.get(i).inches().approximate() <= coordinate) {
        return i < walls.size() - 1 ? i : -1;
      }
    }
    return -1;
  }

  private boolean isWood(int u, int v, int d) {
    int[] cell = {u, v, d};
    for (Extent trough : troughs) {
      boolean isInside = true;
      for (int i = 0; i < 3; i++) {
        isInside &=
            trough.low.get(i).compareTo(lines.get(i).get(cell[i])) <= 0
                && trough.high.get(i).compareTo(lines.get(i).get(cell[i] + 1)) >= 0;
      }
      if (isInside) {
        return false;
      }
    }
    return true;
  }

  private List<Length> lines(int index, Length extent) {
    TreeSet<Length> walls = new TreeSet<>(List.of(Length.ZERO, extent));
    for (Extent trough : troughs) {
      walls.add(trough.low.get(index));
      walls.add(trough.high.get(index));
    }
    for (BoreInView bore : bores) {
      walls.add(bore.low(index));
      walls.add(bore.high(index));
    }
    return List.copyOf(walls.subSet(Length.ZERO, true, extent, true));
  }

  private static Extent extent(Solid solid, Projection projection, Point from, Point to) {
    List<Length> low = new ArrayList<>();
    List<Length> high = new ArrayList<>();
    for (int axis : List.of(projection.across(), projection.up(), projection.depth())) {
      Length one = projection.onPaper(solid, axis, from.on(axis));
      Length other = projection.onPaper(solid, axis, to.on(axis));
      low.add(one.min(other));
      high.add(one.max(other));
    }
    return new Extent(low, high);
  }

  private record Extent(List<Length> low, List<Length> high) {}
}
