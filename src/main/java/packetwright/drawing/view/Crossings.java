package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Straight lines on paper, each cut where another crosses it or ends on it. */
final class Crossings {
  private static final double NEAR = 1e-9;

  /** Lines farther apart, in inches, do not cross. */
  private static final double AIR = 1e-3;

  private final double[][] lines;

  /**
   * Of lines that are not points.
   *
   * @param lines each as u and v of one end, then of the other
   */
  Crossings(List<double[]> lines) {
    this.lines = lines.toArray(double[][]::new);
  }

  /** How far along a line, from 0 to 1 and in order, others cut it; both ends are included. */
  List<Double> cuts(int index) {
    double[] line = lines[index];
    double u = line[0];
    double v = line[1];
    double du = line[2] - u;
    double dv = line[3] - v;
    TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
    for (double[] other : lines) {
      if (isFar(line, other)) {
        continue;
      }
      double u2 = other[0];
      double v2 = other[1];
      double du2 = other[2] - u2;
      double dv2 = other[3] - v2;
      double turn = du * dv2 - dv * du2;
      double apart = (u2 - u) * dv - (v2 - v) * du;
      if (Math.abs(turn) > NEAR) {
        double mine = ((u2 - u) * dv2 - (v2 - v) * du2) / turn;
        double theirs = apart / turn;
        if (theirs > -NEAR && theirs < 1 + NEAR) {
          addInside(cuts, mine);
        }
      } else if (Math.abs(apart) < NEAR) {
        double length = du * du + dv * dv;
        addInside(cuts, ((u2 - u) * du + (v2 - v) * dv) / length);
        addInside(cuts, ((u2 + du2 - u) * du + (v2 + dv2 - v) * dv) / length);
      }
    }
    return new ArrayList<>(cuts);
  }

  private static boolean isFar(double[] one, double[] other) {
    return isFar(one[0], one[2], other[0], other[2]) || isFar(one[1], one[3], other[1], other[3]);
  }

  private static boolean isFar(double from1, double to1, double from2, double to2) {
    return Math.min(from1, to1) > Math.max(from2, to2) + AIR
        || Math.min(from2, to2) > Math.max(from1, to1) + AIR;
  }

  private static void addInside(Set<Double> cuts, double cut) {
    if (cut > 0 && cut < 1) {
      cuts.add(cut);
    }
  }
}
