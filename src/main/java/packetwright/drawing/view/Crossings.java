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

  /** Around each line: least u and v, greatest u and v. */
  private final double[][] boxes;

  /**
   * Of lines that are not points.
   *
   * @param lines each as u and v of one end, then of the other
   */
  Crossings(List<double[]> lines) {
    this.lines = lines.toArray(double[][]::new);
    this.boxes = lines.stream().map(Crossings::box).toArray(double[][]::new);
  }

  /** How far along a line, from 0 to 1 and in order, others cut it; both ends are included. */
  List<Double> cuts(int index) {
    double[] line = lines[index];
    double u = line[0];
    double v = line[1];
    double du = line[2] - u;
    double dv = line[3] - v;
    TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
    double[] box = boxes[index];
    for (int i = 0; i < lines.length; i++) {
      if (isFar(box, boxes[i])) {
        continue;
      }
      double[] other = lines[i];
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

  private static double[] box(double[] line) {
    return new double[] {
      Math.min(line[0], line[2]),
      Math.min(line[1], line[3]),
      Math.max(line[0], line[2]),
      Math.max(line[1], line[3])
    };
  }

  private static boolean isFar(double[] one, double[] other) {
    return one[0] > other[2] + AIR
        || other[0] > one[2] + AIR
        || one[1] > other[3] + AIR
        || other[1] > one[3] + AIR;
  }

  private static void addInside(Set<Double> cuts, double cut) {
    if (cut > 0 && cut < 1) {
      cuts.add(cut);
    }
  }
}
