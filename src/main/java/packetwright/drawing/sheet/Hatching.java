package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Section lining: thin parallel lines at 45 degrees over cut wood. They are clipped here, so that
 * every output draws the same straight lines.
 */
public final class Hatching {
  /** Between lines, in points: 1/16 in to 1/8 in is usual (from memory). */
  public static final double APART = 5;

  private Hatching() {}

  /**
   * The lines over an area.
   *
   * @param rings its outline and its holes, each as x, y, x, y and so on, in points
   * @param isRising whether they rise to the right; neighbours are lined the other way
   */
  public static List<Mark> of(List<double[]> rings, boolean isRising) {
    double least = Double.MAX_VALUE;
    double most = -Double.MAX_VALUE;
    for (double[] ring : rings) {
      for (int i = 0; i < ring.length; i += 2) {
        least = Math.min(least, row(ring[i], ring[i + 1], isRising));
        most = Math.max(most, row(ring[i], ring[i + 1], isRising));
      }
    }
    List<Mark> lines = new ArrayList<>();
    double step = APART * Math.sqrt(2);
    // Rows are counted from the sheet's corner, so that the lining of areas side by side agrees.
    for (double row = (Math.floor(least / step) + 0.5) * step; row < most; row += step) {
      List<Double> cuts = cuts(rings, row, isRising);
      for (int i = 0; i + 1 < cuts.size(); i += 2) {
        double from = cuts.get(i);
        double to = cuts.get(i + 1);
        lines.add(Stroke.of(Line.HATCH, from, y(from, row, isRising), to, y(to, row, isRising)));
      }
    }
    return lines;
  }

  /** Which line a place lies on. */
  private static double row(double x, double y, boolean isRising) {
    return isRising ? x + y : y - x;
  }

  private static double y(double x, double row, boolean isRising) {
    return isRising ? row - x : row + x;
  }

  /** Where a line crosses the rings, from left to right. */
  private static List<Double> cuts(List<double[]> rings, double row, boolean isRising) {
    List<Double> cuts = new ArrayList<>();
    for (double[] ring : rings) {
      for (int i = 0; i < ring.length; i += 2) {
        int next = (i + 2) % ring.length;
        double one = row(ring[i], ring[i + 1], isRising) - row;
        double other = row(ring[next], ring[next + 1], isRising) - row;
        if ((one > 0) != (other > 0)) {
          cuts.add(ring[i] + one / (one - other) * (ring[next] - ring[i]));
        }
      }
    }
    cuts.sort(Double::compare);
    return cuts;
  }
}
