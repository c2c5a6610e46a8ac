package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.List;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Trough;

/** The edges and the cells of a placed piece, in inches of the assembly. */
final class Wire {
  private static final int CIRCLE = 32;

  private final Placed placed;
  private final ViewGrid grid;
  private final List<double[][]> edges = new ArrayList<>();
  private final List<double[][]> boxes = new ArrayList<>();

  Wire(Placed placed) {
    this.placed = placed;
    // In the front view u, v and depth are the piece's own x, y and z.
    this.grid = new ViewGrid(placed.solid(), Projection.FRONT);
    for (int axis = 0; axis < 3; axis++) {
      addEdges(axis);
    }
    addBoxes();
    placed.solid().removals().forEach(this::addMouths);
  }

  /** Straight edges, each as its two ends. */
  List<double[][]> edges() {
    return edges;
  }

  /** Boxes full of wood, each as its lowest and highest corner. */
  List<double[][]> boxes() {
    return boxes;
  }

  private void addEdges(int axis) {
    int one = (axis + 1) % 3;
    int other = (axis + 2) % 3;
    for (int i = 0; i <= grid.cells(one); i++) {
      for (int j = 0; j <= grid.cells(other); j++) {
        View.Sight[] intervals = new View.Sight[grid.cells(axis)];
        for (int k = 0; k < intervals.length; k++) {
          if (isEdge(axis, k, i, j)) {
            intervals[k] = View.Sight.VISIBLE;
          }
        }
        for (Joined run : Joined.of(intervals)) {
          edges.add(new double[][] {place(axis, run.from(), i, j), place(axis, run.to(), i, j)});
        }
      }
    }
  }

  private boolean isEdge(int axis, int k, int i, int j) {
    boolean a = isFilled(axis, k, i - 1, j - 1);
    boolean b = isFilled(axis, k, i, j - 1);
    boolean c = isFilled(axis, k, i - 1, j);
    boolean d = isFilled(axis, k, i, j);
    return !((a == b && c == d) || (a == c && b == d));
  }

  private boolean isFilled(int axis, int k, int i, int j) {
    int[] cell = new int[3];
    cell[axis] = k;
    cell[(axis + 1) % 3] = i;
    cell[(axis + 2) % 3] = j;
    return grid.isFilled(cell[0], cell[1], cell[2]);
  }

  private double[] place(int axis, int k, int i, int j) {
    double[] own = new double[3];
    own[axis] = wall(axis, k);
    own[(axis + 1) % 3] = wall((axis + 1) % 3, i);
    own[(axis + 2) % 3] = wall((axis + 2) % 3, j);
    return assembled(own);
  }

  private double wall(int index, int line) {
    return grid.lines(index).get(line).inches().approximate();
  }

  private double[] assembled(double[] own) {
    return new double[] {placed.onAxis(0, own), placed.onAxis(1, own), placed.onAxis(2, own)};
  }

  private void addBoxes() {
    for (int x = 0; x < grid.cells(0); x++) {
      for (int y = 0; y < grid.cells(1); y++) {
        for (int z = 0; z < grid.cells(2); z++) {
          if (grid.isFilled(x, y, z)) {
            addBox(
                assembled(new double[] {wall(0, x), wall(1, y), wall(2, z)}),
                assembled(new double[] {wall(0, x + 1), wall(1, y + 1), wall(2, z + 1)}));
          }
        }
      }
    }
  }

  private void addBox(double[] one, double[] other) {
    double[][] box = new double[2][3];
    for (int i = 0; i < 3; i++) {
      box[0][i] = Math.min(one[i], other[i]);
      box[1][i] = Math.max(one[i], other[i]);
    }
    boxes.add(box);
  }

  /** The rims of a hole on the block's surface. */
  private void addMouths(Removal removal) {
    removal.match(
        new Removal.Cases<Boolean>() {
          @Override
          public Boolean trough(Trough trough) {
            return false;
          }

          @Override
          public Boolean bore(Bore bore) {
            Length start = bore.centre().on(bore.axis());
            Length end = start.plus(bore.depth());
            if (start.signum() <= 0) {
              addRim(bore, 0);
            }
            Length extent = placed.solid().extent(bore.axis());
            if (!end.isLess(extent)) {
              addRim(bore, extent.inches().approximate());
            }
            return true;
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

  private void addRim(Bore bore, double at) {
    double radius = bore.diameter().inches().approximate() / 2;
    double[] before = rimPlace(bore, at, radius, 0);
    for (int i = 1; i <= CIRCLE; i++) {
      double[] next = rimPlace(bore, at, radius, 2 * Math.PI * i / CIRCLE);
      edges.add(new double[][] {before, next});
      before = next;
    }
  }

  private double[] rimPlace(Bore bore, double at, double radius, double turn) {
    int one = (bore.axis() + 1) % 3;
    int other = (bore.axis() + 2) % 3;
    double[] own = new double[3];
    own[bore.axis()] = at;
    own[one] = bore.centre().on(one).inches().approximate() + radius * StrictMath.cos(turn);
    own[other] = bore.centre().on(other).inches().approximate() + radius * StrictMath.sin(turn);
    return assembled(own);
  }
}
