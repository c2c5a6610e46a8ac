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

  /** Of each row, how much room its numbers take across. */
  private final List<Double> acrosses = new ArrayList<>();

  /** Of each row, how far from the outline it lies. */
  private final List<Double> offsets = new ArrayList<>();

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
    band.measure();
    return band;
  }

  /** How far the band reaches from the outline; 0 when it is empty. */
  public double depth() {
    if (placed.isEmpty()) {
      return 0;
    }
    int last = offsets.size() - 1;
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
    List<Spot> spots = candidates(wish);
    spots.removeIf(this::isCutByWaiting);
    for (int row = 0; row < placed.size() + waiting.size() + SPARE_ROWS; row++) {
      List<Spot> rivals = rivals(row);
      for (Spot spot : spots) {
        if (isFree(spot, row, rivals)) {
          placed.add(spot.in(row));
          return;
        }
      }
    }
    throw new IllegalStateException("no room for " + wish);
  }

  /**
   * Those in a row or further out. The numbers of those further in kept clear of its extension
   * lines while it was waiting.
   */
  private List<Spot> rivals(int row) {
    return placed.stream().filter(other -> other.row >= row).toList();
  }

  /** In no row yet. */
  private List<Spot> candidates(Wish wish) {
    double room = along(wish) + 2 * Dimension.TEXT_GAP;
    double span = wish.to - wish.from;
    double centre = (wish.from + wish.to) / 2;
    double outside = Dimension.ARROW + Dimension.TAIL;
    List<Spot> spots = new ArrayList<>();
    double slack = (span - room) / 2 - Dimension.ARROW - 2;
    if (slack >= 0) {
      for (double shift = 0; shift <= slack; shift += 3) {
        spots.add(Spot.inside(wish, centre + shift));
        spots.add(Spot.inside(wish, centre - shift));
      }
    } else if (span >= room) {
      spots.add(
          new Spot(
              wish, 0, Dimension.Arrows.OUTSIDE, centre, wish.from - outside, wish.to + outside));
    }
    // Beyond every extension line there is always room, in some row.
    double nearest = outside + room / 2;
    int preferred = wish.isOutwardFirst ? 1 : -1;
    for (double[] reach : new double[][] {{0, NEAR}, {NEAR, FAR}}) {
      for (int direction : new int[] {preferred, -preferred}) {
        for (double more = reach[0]; more <= reach[1]; more += 4) {
          spots.add(outside(wish, direction * (nearest + more), room));
        }
      }
    }
    return spots;
  }

  private static Spot outside(Wish wish, double distance, double room) {
    double outside = Dimension.ARROW + Dimension.TAIL;
    double middle = distance > 0 ? wish.to + distance : wish.from + distance;
    return new Spot(
        wish,
        0,
        Dimension.Arrows.OUTSIDE,
        middle,
        Math.min(wish.from - outside, middle - room / 2),
        Math.max(wish.to + outside, middle + room / 2));
  }

  /** Whether an extension line that is still to come would cross its number. */
  private boolean isCutByWaiting(Spot spot) {
    double half = along(spot.wish) / 2 + CLEAR;
    for (Wish later : waiting) {
      if (isCutBy(later, spot.middle - half, spot.middle + half)) {
        return true;
      }
    }
    return false;
  }

  private boolean isFree(Spot spot, int row, List<Spot> rivals) {
    double half = along(spot.wish) / 2 + CLEAR;
    for (Spot other : rivals) {
      boolean isCut =
          other.row > row
              && (isCutBy(other.wish, spot.middle - half, spot.middle + half)
                  || isCutBy(other.wish, spot.begin, spot.end));
      boolean isCrowded =
          other.row == row && spot.begin < other.end - 0.01 && other.begin < spot.end - 0.01;
      // In a chain the arrowheads of two dimensions may meet at one extension line, tip to tip.
      if (isCut || isCrowded || (other.row == row && isStacked(spot, other))) {
        return false;
      }
    }
    return true;
  }

  /** Numbers right over one another would read as one. */
  private boolean isStacked(Spot one, Spot other) {
    double apart = (along(one.wish) + along(other.wish)) / 2 + APART;
    return !isLevel && Math.abs(one.middle - other.middle) < apart;
  }

  private static boolean isCutBy(Wish wish, double low, double high) {
    return isWithin(wish.from, low, high) || isWithin(wish.to, low, high);
  }

  private static boolean isWithin(double place, double low, double high) {
    return place > low + 0.01 && place < high - 0.01;
  }

  private double offset(int row) {
    return offsets.get(row);
  }

  private double across(int row) {
    return acrosses.get(row);
  }

  /** Reckons where the rows lie, when all is placed. */
  private void measure() {
    for (Spot spot : placed) {
      while (acrosses.size() <= spot.row) {
        acrosses.add(0.0);
      }
      double across = Dimension.across(isLevel, spot.wish.text);
      acrosses.set(spot.row, Math.max(across, acrosses.get(spot.row)));
    }
    for (int row = 0; row < acrosses.size(); row++) {
      // The centre line of a hole reaches past the outline; no number may touch it.
      offsets.add(
          row == 0
              ? Math.max(FIRST, across(0) / 2 + Line.CENTRE_PAST + CLEAR)
              : offset(row - 1) + Math.max(NEXT, (across(row - 1) + across(row)) / 2 + CLEAR));
    }
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

    static Spot inside(Wish wish, double middle) {
      return new Spot(wish, 0, Dimension.Arrows.INSIDE, middle, wish.from, wish.to);
    }

    Spot in(int row) {
      return new Spot(wish, row, arrows, middle, begin, end);
    }
  }
}
