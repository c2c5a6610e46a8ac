package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Distances from one end, each at its own line: the number of a cut line stands left of it, that of
 * a start right of it, in as few rows as cross nothing. Where lines stand too close for that, every
 * number stands left of its line, so that going one row deeper always finds room.
 */
public final class RunningDimensions {
  private static final double ROW = 20;
  private static final double FIRST = 20;
  private static final double CLEAR = 2.5;
  private static final int FEW_ROWS = 3;
  private static final double SIZE = Dimension.SIZE;

  private final List<Placed> placed = new ArrayList<>();

  private RunningDimensions() {}

  /**
   * Adds the numbers below an edge; answers how many rows they take. None goes past {@code
   * rightmost}.
   */
  public static int add(List<Mark> marks, List<Entry> entries, double edge, double rightmost) {
    RunningDimensions dimensions = new RunningDimensions();
    boolean isPlaced =
        entries.stream().filter(Entry::isRight).allMatch(e -> e.x + e.room() < rightmost)
            && entries.stream()
                .sorted(Comparator.comparing(Entry::isRight))
                .allMatch(entry -> dimensions.place(entry, FEW_ROWS));
    if (!isPlaced) {
      dimensions.placed.clear();
      entries.stream()
          .sorted(Comparator.comparingDouble(Entry::x))
          .map(entry -> new Entry(entry.x, false, entry.text))
          .forEach(entry -> dimensions.place(entry, entries.size()));
    }
    for (Placed one : dimensions.placed) {
      double y = edge + FIRST + ROW * one.row;
      double x = one.entry.x;
      double width = one.entry.text.width(SIZE);
      marks.add(Stroke.of(Line.EXTENSION, x, edge + 6, x, y + 7));
      marks.add(
          Label.right(one.entry.isRight ? x + CLEAR : x - CLEAR - width, y, SIZE, one.entry.text));
    }
    return dimensions.placed.stream().mapToInt(Placed::row).max().orElse(-1) + 1;
  }

  private boolean place(Entry entry, int rows) {
    for (int row = 0; row < rows; row++) {
      Placed spot = new Placed(entry, row);
      if (isFree(spot)) {
        placed.add(spot);
        return true;
      }
    }
    return false;
  }

  private boolean isFree(Placed one) {
    for (Placed other : placed) {
      boolean isCrowded =
          one.row == other.row && one.left() < other.right() && other.left() < one.right();
      boolean isCut = other.row >= one.row && one.isCrossedAt(other.entry.x);
      boolean cuts = one.row >= other.row && other.isCrossedAt(one.entry.x);
      if (isCrowded || isCut || cuts) {
        return false;
      }
    }
    return true;
  }

  /**
   * A number at a line.
   *
   * @param x of the line
   * @param isRight whether the number stands right of it
   * @param text the number
   */
  public record Entry(double x, boolean isRight, Inscription text) {
    double room() {
      return 2 * CLEAR + text.width(SIZE);
    }
  }

  private record Placed(Entry entry, int row) {
    double left() {
      return entry.isRight ? entry.x : entry.x - 2 * CLEAR - entry.text.width(SIZE);
    }

    double right() {
      return entry.isRight ? entry.x + 2 * CLEAR + entry.text.width(SIZE) : entry.x;
    }

    boolean isCrossedAt(double x) {
      return x > left() && x < right();
    }
  }
}
