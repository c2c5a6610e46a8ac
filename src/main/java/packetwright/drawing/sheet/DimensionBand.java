package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * Puts the dimensions of one side of a view into rows: the first 10 mm from the outline, the next 6
 * mm or more further out, shorter ones inside longer ones, so that no extension line crosses a
 * number or the line of another dimension.
 */
public final class DimensionBand {
  /** 10 mm: ASME Y14.5 (from memory) and ISO 129-1 ask no less. */
  public static final double FIRST = 10 * 72 / 25.4;

  /** 6 mm between dimension lines. */
  private static final double NEXT = 6 * 72 / 25.4;

  private static final double CLEAR = 3;

  /** Between a number and the next above it. */
  private static final double APART = 12;

  /** In so many more rows than dimensions there is always room. */
  private static final int SPARE_ROWS = 40;

  /** How far along its line a number that does not fit is pushed before it goes the other way. */
  private static final double NEAR = 60;

  /** Beyond every extension line of a sheet. */
  private static final double FAR = 1000;

  private final boolean isLevel;
  private final List<Wish> waiting;
  private final List<Spot> placed = new ArrayList<>();

  /** Room that the number of each wish takes along the side: asked for very often. */
  private final IdentityHashMap<Wish, Double> rooms = new IdentityHashMap<>();

  private DimensionBand(boolean isLevel, List<Wish> wishes) {
    this.isLevel = isLevel;
    this.waiting = new ArrayList<>(wishes);
  }

  /** Places dimensions along a level or an upright side. */
  public static DimensionBand arrange(boolean isLevel, List<Wish> wishes) {
    DimensionBand band = new DimensionBand(isLevel, wishes);
    band.waiting.sort(
        Comparator.comparingDouble((Wish w) -> w.to - w.from).thenComparingDouble(w -> w.from));
    while (!band.waiting.isEmpty()) {
      band.place(band.waiting.remove(0));
    }
    return band;
  }

  /** How far the band reaches from the outline; 0 when it is empty. */
  public double depth() {
    if (placed.isEmpty()) {
      return 0;
    }
    int last = rows() - 1;
    return offset(last) + across(last) / 2 + CLEAR;
  }

  /** How near to the outline its numbers come; without any, as far as can be. */
  public double nearest() {
    return placed.isEmpty() ? Double.MAX_VALUE : offset(0) - across(0) / 2 - CLEAR;
  }

  /** The least place along the side that anything takes. */
  public double least() {
    return placed.stream().mapToDouble(s -> s.begin - CLEAR).min().orElse(Double.MAX_VALUE);
  }

  /** The greatest place along the side that anything takes. */
  public double greatest() {
    return placed.stream().mapToDouble(s -> s.end + CLEAR).max().orElse(-Double.MAX_VALUE);
  }

  /**
   * The dimensions as marks.
   *
   * @param origin of the places along the side, on the sheet
   * @param outline where the view's side lies on the sheet
   * @param outward 1 where the band lies below or right of the view, -1 above or left
   * @param push how much further out than usual the band lies
   */
  public List<Mark> marks(double origin, double outline, int outward, double push) {
    List<Mark> marks = new ArrayList<>();
    for (Spot spot : placed) {
      Wish wish = spot.wish;
      marks.add(
          new Dimension(
              isLevel,
              origin + wish.from,
              origin + wish.to,
              outline + outward * (offset(spot.row) + push),
              outline - outward * wish.insetFrom,
              outline - outward * wish.insetTo,
              spot.arrows,
              origin + spot.middle,
              wish.text));
    }
    return marks;
  }

  private double along(Wish wish) {
    return rooms.computeIfAbsent(wish, w -> Dimension.along(isLevel, w.text));
  }

  private void place(Wish wish) {
    for (int row = 0; row < placed.size() + waiting.size() + SPARE_ROWS; row++) {
      for (Spot spot : candidates(wish, row)) {
        if (isFree(spot)) {
          placed.add(spot);
          return;
        }
      }
    }
    throw new IllegalStateException("no room for " + wish);
  }

  private List<Spot> candidates(Wish wish, int row) {
    double room = along(wish) + 2 * Dimension.TEXT_GAP;
    double span = wish.to - wish.from;
    double centre = (wish.from + wish.to) / 2;
    double outside = Dimension.ARROW + Dimension.TAIL;
    List<Spot> spots = new ArrayList<>();
    double slack = (span - room) / 2 - Dimension.ARROW - 2;
    if (slack >= 0) {
      for (double shift = 0; shift <= slack; shift += 3) {
        spots.add(Spot.inside(wish, row, centre + shift));
        spots.add(Spot.inside(wish, row, centre - shift));
      }
    } else if (span >= room) {
      spots.add(
          new Spot(
              wish, row, Dimension.Arrows.OUTSIDE, centre, wish.from - outside, wish.to + outside));
    }
    // Beyond every extension line there is always room, in some row.
    double nearest = outside + room / 2;
    int preferred = wish.isOutwardFirst ? 1 : -1;
    for (double[] reach : new double[][] {{0, NEAR}, {NEAR, FAR}}) {
      for (int direction : new int[] {preferred, -preferred}) {
        for (double more = reach[0]; more <= reach[1]; more += 4) {
          spots.add(outside(wish, row, direction * (nearest + more), room));
        }
      }
    }
    return spots;
  }

  private static Spot outside(Wish wish, int row, double distance, double room) {
    double outside = Dimension.ARROW + Dimension.TAIL;
    double middle = distance > 0 ? wish.to + distance : wish.from + distance;
    return new Spot(
        wish,
        row,
        Dimension.Arrows.OUTSIDE,
        middle,
        Math.min(wish.from - outside, middle - room / 2),
        Math.max(wish.to + outside, middle + room / 2));
  }

  private boolean isFree(Spot spot) {
    double half = along(spot.wish) / 2 + CLEAR;
    double low = spot.middle - half;
    double high = spot.middle + half;
    for (Wish later : waiting) {
      if (isWithin(later.from, low, high) || isWithin(later.to, low, high)) {
        return false;
      }
    }
    for (Spot other : placed) {
      boolean isCut =
          other.row > spot.row
              && (isWithin(other.wish.from, low, high)
                  || isWithin(other.wish.to, low, high)
                  || isWithin(other.wish.from, spot.begin, spot.end)
                  || isWithin(other.wish.to, spot.begin, spot.end));
      boolean isCrowded =
          other.row == spot.row && spot.begin < other.end - 0.01 && other.begin < spot.end - 0.01;
      // In a chain the arrowheads of two dimensions may meet at one extension line, tip to tip.
      if (isCut || isCrowded || isStacked(spot, other) || isCutBy(other, spot)) {
        return false;
      }
    }
    return true;
  }

  /** Numbers right over one another would read as one. */
  private boolean isStacked(Spot one, Spot other) {
    if (isLevel || one.row != other.row) {
      return false;
    }
    double apart = (along(one.wish) + along(other.wish)) / 2 + APART;
    return Math.abs(one.middle - other.middle) < apart;
  }

  /** Whether an extension line of a dimension further out would cross a number. */
  private boolean isCutBy(Spot spot, Spot further) {
    if (further.row <= spot.row) {
      return false;
    }
    double half = along(spot.wish) / 2 + CLEAR;
    return isWithin(further.wish.from, spot.middle - half, spot.middle + half)
        || isWithin(further.wish.to, spot.middle - half, spot.middle + half);
  }

  private static boolean isWithin(double place, double low, double high) {
    return place > low + 0.01 && place < high - 0.01;
  }

  private int rows() {
    return placed.stream().mapToInt(s -> s.row).max().orElse(-1) + 1;
  }

  private double offset(int row) {
    // The centre line of a hole reaches past the outline; no number may touch it.
    double offset = Math.max(FIRST, across(0) / 2 + Line.CENTRE_PAST + CLEAR);
    for (int i = 1; i <= row; i++) {
      offset += Math.max(NEXT, (across(i - 1) + across(i)) / 2 + CLEAR);
    }
    return offset;
  }

  private double across(int row) {
    return placed.stream()
        .filter(s -> s.row == row)
        .mapToDouble(s -> Dimension.across(isLevel, s.wish.text))
        .max()
        .orElse(0);
  }

  /**
   * A dimension that wants a place.
   *
   * @param from along the side, in points
   * @param to greater
   * @param insetFrom how far inside the outline its first extension line begins
   * @param insetTo how far inside the outline its second extension line begins
   * @param isOutwardFirst whether a number that does not fit goes beyond {@code to} rather than
   *     before {@code from}
   * @param text its number
   */
  public record Wish(
      double from,
      double to,
      double insetFrom,
      double insetTo,
      boolean isOutwardFirst,
      Inscription text) {}

  private record Spot(
      Wish wish, int row, Dimension.Arrows arrows, double middle, double begin, double end) {

    static Spot inside(Wish wish, int row, double middle) {
      return new Spot(wish, row, Dimension.Arrows.INSIDE, middle, wish.from, wish.to);
    }
  }
}
