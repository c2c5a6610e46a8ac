package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Queue;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.lettering.Lettering;

/** What stands on a sheet already, to find room for a label that crosses nothing. */
public final class Obstacles implements Painter {
  private static final double CLEAR = 2;
  private static final double STEP = 2;
  private static final int CHORDS = 6;

  private final List<double[]> lines = new ArrayList<>();
  private final List<Area> texts = new ArrayList<>();

  /** Counts in everything painted so far. */
  public static Obstacles of(List<Mark> marks) {
    Obstacles obstacles = new Obstacles();
    marks.forEach(mark -> mark.paint(obstacles));
    return obstacles;
  }

  /** The free place nearest to a wanted middle, or null when the label does not fit. */
  public @Nullable Label place(Inscription text, double size, Area bounds, double x, double y) {
    return place(text, size, bounds, new Wish(x, y, label -> true));
  }

  /** The same, where the label suits as well. */
  public @Nullable Label place(Inscription text, double size, Area bounds, Wish wish) {
    double width = text.width(size);
    double height = text.above(size) + text.below(size);
    // A heap: the first few are wanted, and sorting them all took longer than all else.
    Queue<double[]> corners =
        new PriorityQueue<>(
            Comparator.<double[]>comparingDouble(c -> c[2])
                .thenComparingDouble(c -> c[0])
                .thenComparingDouble(c -> c[1]));
    for (double left = bounds.left(); left + width <= bounds.right(); left += STEP) {
      for (double top = bounds.top(); top + height <= bounds.bottom(); top += STEP) {
        double across = left + width / 2 - wish.x;
        double down = top + height / 2 - wish.y;
        corners.add(new double[] {left, top, across * across + down * down});
      }
    }
    for (double[] c = corners.poll(); c != null; c = corners.poll()) {
      Label label = new Label(c[0], c[1] + text.above(size), size, text);
      if (isFree(label.area().grown(CLEAR)) && wish.suits.test(label)) {
        return label;
      }
    }
    return null;
  }

  /** Whether a line runs through a text. */
  public boolean crossesText(double x1, double y1, double x2, double y2) {
    return texts.stream().anyMatch(t -> t.grown(1).isCrossedBy(x1, y1, x2, y2));
  }

  /** Whether a level or upright line meets another. */
  public boolean crossesLine(double x1, double y1, double x2, double y2) {
    Area along = new Area(Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2));
    return lines.stream().anyMatch(l -> along.grown(1).isCrossedBy(l[0], l[1], l[2], l[3]));
  }

  /**
   * What a label would like.
   *
   * @param x of its middle
   * @param y of its middle
   * @param suits what else it asks for
   */
  public record Wish(double x, double y, Predicate<Label> suits) {}

  /** Whether no text stands in an area. */
  public boolean isApart(Area area) {
    return texts.stream().noneMatch(area::overlaps);
  }

  /** Whether nothing stands in an area. */
  public boolean isFree(Area area) {
    return texts.stream().noneMatch(area::overlaps)
        && lines.stream().noneMatch(l -> area.isCrossedBy(l[0], l[1], l[2], l[3]));
  }

  @Override
  public void stroke(Outline path, Pen pen) {
    add(path);
  }

  @Override
  public void fill(Outline path, double grey) {
    // Tones and hatching may lie under text; black may not.
    if (grey < 0.5) {
      add(path);
    }
  }

  @Override
  public void text(double x, double y, double angle, double size, Face face, String text) {
    texts.add(
        new Area(
            x,
            y - Lettering.capHeight(face, size),
            x + Lettering.width(face, size, text),
            y + size * 0.22));
  }

  private void add(Outline path) {
    double startX = 0;
    double startY = 0;
    double x = 0;
    double y = 0;
    for (Outline.Segment segment : path.segments()) {
      List<Double> xy = segment.xy();
      double nextX = segment.kind() == 'Z' ? startX : xy.get(xy.size() - 2);
      double nextY = segment.kind() == 'Z' ? startY : xy.get(xy.size() - 1);
      if (segment.kind() == 'M') {
        startX = nextX;
        startY = nextY;
      } else if (segment.kind() == 'C') {
        addCurve(x, y, xy);
      } else {
        lines.add(new double[] {x, y, nextX, nextY});
      }
      x = nextX;
      y = nextY;
    }
  }

  /** A curve counts as chords: ours turn at most a quarter, and labels keep clear. */
  private void addCurve(double x, double y, List<Double> xy) {
    double beforeX = x;
    double beforeY = y;
    for (int i = 1; i <= CHORDS; i++) {
      double t = (double) i / CHORDS;
      double nextX = bezier(t, x, xy.get(0), xy.get(2), xy.get(4));
      double nextY = bezier(t, y, xy.get(1), xy.get(3), xy.get(5));
      lines.add(new double[] {beforeX, beforeY, nextX, nextY});
      beforeX = nextX;
      beforeY = nextY;
    }
  }

  private static double bezier(double t, double a, double b, double c, double d) {
    double s = 1 - t;
    return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
  }
}
