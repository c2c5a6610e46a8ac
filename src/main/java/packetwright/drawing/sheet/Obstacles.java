package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.lettering.Lettering;

/** What stands on a sheet already, to find room for a label that crosses nothing. */
public final class Obstacles implements Painter {
  private static final double CLEAR = 2;
  private static final double STEP = 2;
  private static final int CHORDS = 6;

  private final Lines lines = new Lines();
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
    double above = text.above(size);
    double below = text.below(size);
    double[] lefts = places(bounds.left(), bounds.right(), width);
    double[] tops = places(bounds.top(), bounds.bottom(), height);
    Rings rings =
        new Rings(
            lefts, tops, squares(lefts, width / 2, wish.x), squares(tops, height / 2, wish.y));
    while (rings.hasNext()) {
      for (double[] corner : rings.next()) {
        double left = corner[0];
        double baseline = corner[1] + above;
        Area ink = new Area(left, baseline - above, left + width, baseline + below);
        if (isFree(ink.grown(CLEAR))) {
          Label label = new Label(left, baseline, size, text);
          if (wish.suits.test(label)) {
            return label;
          }
        }
      }
    }
    return null;
  }

  /** Where something so long may begin. */
  private static double[] places(double low, double high, double length) {
    int count = 0;
    for (double at = low; at + length <= high; at += STEP) {
      count++;
    }
    double[] places = new double[count];
    double at = low;
    for (int i = 0; i < count; i++) {
      places[i] = at;
      at += STEP;
    }
    return places;
  }

  /** How far middles lie from where they would like to, squared. */
  private static double[] squares(double[] places, double half, double wish) {
    double[] squares = new double[places.length];
    for (int i = 0; i < places.length; i++) {
      double off = places[i] + half - wish;
      squares[i] = off * off;
    }
    return squares;
  }

  /** Whether a line runs through a text. */
  public boolean crossesText(double x1, double y1, double x2, double y2) {
    for (Area text : texts) {
      if (text.grown(1).isCrossedBy(x1, y1, x2, y2)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a level or upright line meets another. */
  public boolean crossesLine(double x1, double y1, double x2, double y2) {
    Area along = new Area(Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2));
    return lines.cross(along.grown(1));
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
    for (Area text : texts) {
      if (area.overlaps(text)) {
        return false;
      }
    }
    return true;
  }

  /** Whether nothing stands in an area. */
  public boolean isFree(Area area) {
    return isApart(area) && !lines.cross(area);
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
        lines.add(x, y, nextX, nextY);
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
      lines.add(beforeX, beforeY, nextX, nextY);
      beforeX = nextX;
      beforeY = nextY;
    }
  }

  private static double bezier(double t, double a, double b, double c, double d) {
    double s = 1 - t;
    return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
  }

  /**
   * Corners of a grid, the nearest first, ring by ring: most labels find room close by, and sorting
   * all of a sheet's corners took longer than all else.
   */
  private static final class Rings implements Iterator<List<double[]>> {
    private static final double FIRST = 12;
    private static final double WIDER = 1.5;

    /** By distance, then from the left, then from the top. */
    private static final Comparator<double[]> NEAREST =
        Comparator.<double[]>comparingDouble(c -> c[2])
            .thenComparingDouble(c -> c[0])
            .thenComparingDouble(c -> c[1]);

    private final double[] lefts;
    private final double[] tops;
    private final double[] across;
    private final double[] down;
    private final double farthest;
    private double inner;
    private double radius;
    private double step = FIRST;

    /** {@code across} and {@code down}: how far, squared, of each column and row. */
    Rings(double[] lefts, double[] tops, double[] across, double[] down) {
      this.lefts = lefts;
      this.tops = tops;
      this.across = across;
      this.down = down;
      this.radius = Math.sqrt(least(across) + least(down));
      this.farthest =
          lefts.length == 0 || tops.length == 0
              ? -1
              : Arrays.stream(across).max().orElse(0) + Arrays.stream(down).max().orElse(0);
    }

    private static double least(double[] squares) {
      return Arrays.stream(squares).min().orElse(0);
    }

    @Override
    public boolean hasNext() {
      return inner <= farthest;
    }

    @Override
    public List<double[]> next() {
      if (!hasNext()) {
        throw new NoSuchElementException();
      }
      radius += step;
      step *= WIDER;
      double outer = radius * radius;
      List<double[]> ring = new ArrayList<>();
      for (int i = 0; i < lefts.length; i++) {
        for (int j = 0; across[i] < outer && j < tops.length; j++) {
          double distance = across[i] + down[j];
          if (distance >= inner && distance < outer) {
            ring.add(new double[] {lefts[i], tops[j], distance});
          }
        }
      }
      inner = outer;
      ring.sort(NEAREST);
      return ring;
    }
  }

  /** Straight lines, found by where they run: each is listed in every cell that it may run into. */
  private static final class Lines {
    private static final int CELL = 16;
    private static final int CELLS = 48;

    private final List<List<double[]>> cells = new ArrayList<>();

    Lines() {
      for (int i = 0; i < CELLS * CELLS; i++) {
        cells.add(List.of());
      }
    }

    void add(double x1, double y1, double x2, double y2) {
      double[] line = {x1, y1, x2, y2};
      for (int i = cell(Math.min(x1, x2)); i <= cell(Math.max(x1, x2)); i++) {
        for (int j = cell(Math.min(y1, y2)); j <= cell(Math.max(y1, y2)); j++) {
          List<double[]> lines = cells.get(i * CELLS + j);
          if (lines.isEmpty()) {
            lines = new ArrayList<>();
            cells.set(i * CELLS + j, lines);
          }
          lines.add(line);
        }
      }
    }

    boolean cross(Area area) {
      for (int i = cell(area.left()); i <= cell(area.right()); i++) {
        for (int j = cell(area.top()); j <= cell(area.bottom()); j++) {
          for (double[] line : cells.get(i * CELLS + j)) {
            if (area.isCrossedBy(line[0], line[1], line[2], line[3])) {
              return true;
            }
          }
        }
      }
      return false;
    }

    /** What lies beyond the cells counts to the outermost, so that nothing is missed. */
    private static int cell(double place) {
      return (int) Math.max(0, Math.min(CELLS - 1, Math.floor(place / CELL)));
    }
  }
}
