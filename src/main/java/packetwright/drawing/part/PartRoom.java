package packetwright.drawing.part;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import packetwright.drawing.sheet.DimensionBand;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Scale;
import packetwright.drawing.view.Projection;
import packetwright.drawing.view.View;
import packetwright.text.measure.Length;

/**
 * How much room the views of a part and the dimensions around them take, and where the views stand,
 * in points from the top left corner of all that is drawn.
 *
 * @param showing the views
 * @param bands the dimensions beside them
 * @param scale at which they are drawn
 * @param arrangement which view stands where
 */
record PartRoom(
    Showing showing, Map<Band, DimensionBand> bands, Scale scale, Arrangement arrangement) {
  private static final double LEAST_GAP = 30;

  /** Half the height of a number in a level band, and air. */
  private static final double ROW_HALF = 12;

  /** A line of small text over a view. */
  private static final double NAME_ROOM = 15;

  /** Between the dimensions of neighbours. */
  private static final double AIR = 8;

  /** What an arrow of a cutting plane takes beside the front view. */
  static final double CUT_ROOM = 26;

  double width(Projection projection) {
    return points(view(projection).width().inches().approximate());
  }

  double height(Projection projection) {
    return points(view(projection).height().inches().approximate());
  }

  /**
   * The dimensions of a band.
   *
   * @param origin of the places along the side, on the sheet
   * @param outline where the view's side lies on the sheet
   */
  List<Mark> marks(Band band, double origin, double outline) {
    return band(band).marks(origin, outline, band.outward(), push(band));
  }

  private View view(Projection projection) {
    return showing.view(projection);
  }

  private boolean has(Projection projection) {
    return showing.has(projection);
  }

  private DimensionBand band(Band band) {
    return Objects.requireNonNull(bands.get(band));
  }

  private double points(double inches) {
    return inches * scale.pointsPerInch();
  }

  /**
   * How far a band moves outward: all of them beyond the arrows of a cutting plane, and a level one
   * so that what hangs over at its ends clears what hangs over from the upright bands at its
   * corners.
   */
  private double push(Band band) {
    double cut = cutRoom(band) > 0 ? cutRoom(band) - DimensionBand.FIRST + ROW_HALF : 0;
    double push = Math.max(0, cut);
    if (band.isLevel()) {
      for (Band upright : Band.of(band.projection())) {
        if (!upright.isLevel()) {
          push = Math.max(push, clash(band, upright));
        }
      }
    }
    return push;
  }

  private double clash(Band level, Band upright) {
    double over =
        upright.outward() < 0
            ? -band(level).least()
            : band(level).greatest() - width(level.projection());
    double hang =
        level.outward() < 0
            ? -band(upright).least()
            : band(upright).greatest() - height(level.projection());
    boolean meets = over > band(upright).nearest() + push(upright);
    return meets ? Math.max(0, hang - DimensionBand.FIRST + ROW_HALF) : 0;
  }

  private double cutRoom(Band band) {
    Projection cut = band.isLevel() ? Projection.END : Projection.TOP;
    boolean isBeside = band.projection() == Projection.FRONT && showing.cuts().containsKey(cut);
    return isBeside ? CUT_ROOM : 0;
  }

  /** How far what belongs to a view reaches beyond one of its sides. */
  private double reach(Projection projection, boolean isLevel, int outward) {
    double reach = centres(view(projection), isLevel, outward);
    double extent = isLevel ? height(projection) : width(projection);
    for (Band band : Band.of(projection)) {
      if (band.isLevel() != isLevel) {
        reach = Math.max(reach, outward < 0 ? -band(band).least() : band(band).greatest() - extent);
      } else if (band.outward() == outward) {
        double depth = band(band).depth();
        reach = Math.max(reach, depth > 0 ? depth + push(band) : cutRoom(band));
      }
    }
    boolean isCut =
        projection == Projection.FRONT
            && showing.cuts().containsKey(isLevel ? Projection.END : Projection.TOP);
    return Math.max(reach, isCut ? CUT_ROOM : 0);
  }

  /** How far centre lines reach beyond one side of a view. */
  private double centres(View view, boolean isLevel, int outward) {
    // Upward on paper is outward above, and v counts upward.
    boolean isFromFar = isLevel ? outward < 0 : outward > 0;
    Length extent = isLevel ? view.height() : view.width();
    double nearest = Double.MAX_VALUE;
    for (View.Hole hole : view.holes()) {
      Length centre = isLevel ? hole.v() : hole.u();
      nearest = Math.min(nearest, points(isFromFar ? extent.minus(centre) : centre, hole.radius()));
    }
    for (View.Edge edge : view.edges()) {
      if (edge.sight() == View.Sight.CENTRE && edge.isUpright() == isLevel) {
        Length end =
            isFromFar
                ? extent.minus(isLevel ? edge.v2() : edge.u2())
                : isLevel ? edge.v1() : edge.u1();
        nearest = Math.min(nearest, points(end, Length.ZERO));
      }
    }
    return Math.max(0, Line.CENTRE_PAST + 2 - nearest);
  }

  private double points(Length from, Length less) {
    return points(from.minus(less).inches().approximate());
  }

  private double left(Projection projection) {
    return has(projection) ? reach(projection, false, -1) : 0;
  }

  private double right(Projection projection) {
    return has(projection) ? reach(projection, false, 1) : 0;
  }

  private double above(Projection projection) {
    return has(projection) ? Math.max(NAME_ROOM, reach(projection, true, -1)) : 0;
  }

  private double below(Projection projection) {
    return has(projection) ? Math.max(NAME_ROOM, reach(projection, true, 1)) : 0;
  }

  private double wide(Projection projection) {
    return has(projection) ? width(projection) : 0;
  }

  private double high(Projection projection) {
    return has(projection) ? height(projection) : 0;
  }

  private boolean isThird() {
    return arrangement == Arrangement.THIRD_ANGLE;
  }

  /** Left of the front view, with the end view where that stands there. */
  private double columnLeft() {
    return Math.max(left(Projection.FRONT), left(Projection.TOP));
  }

  private double columnRight() {
    return Math.max(right(Projection.FRONT), right(Projection.TOP));
  }

  private double gapAcross() {
    double beside =
        isThird()
            ? right(Projection.FRONT) + left(Projection.END)
            : right(Projection.END) + columnLeft();
    return Math.max(LEAST_GAP, beside + AIR);
  }

  private double rowAbove() {
    return Math.max(above(Projection.FRONT), above(Projection.END));
  }

  private double rowBelow() {
    return Math.max(below(Projection.FRONT), below(Projection.END));
  }

  private double gapUp() {
    double between =
        isThird()
            ? reach(Projection.TOP, true, 1) + rowAbove()
            : rowBelow() + above(Projection.TOP);
    return Math.max(LEAST_GAP, between);
  }

  double contentWidth() {
    if (!has(Projection.END)) {
      return columnLeft() + width(Projection.FRONT) + columnRight();
    }
    double front = width(Projection.FRONT) + gapAcross() + width(Projection.END);
    return isThird()
        ? columnLeft()
            + Math.max(
                front + right(Projection.END), width(Projection.FRONT) + right(Projection.TOP))
        : left(Projection.END) + front + columnRight();
  }

  double contentHeight() {
    double front = height(Projection.FRONT);
    if (!has(Projection.TOP)) {
      return rowAbove() + front + rowBelow();
    }
    double both = front + gapUp() + height(Projection.TOP);
    return isThird()
        ? above(Projection.TOP) + both + rowBelow()
        : rowAbove() + both + below(Projection.TOP);
  }

  /** Where the left side of a view stands. */
  double x(Projection projection) {
    boolean isEnd = projection == Projection.END;
    if (isThird()) {
      return columnLeft() + (isEnd ? width(Projection.FRONT) + gapAcross() : 0);
    }
    double column =
        has(Projection.END)
            ? left(Projection.END) + wide(Projection.END) + gapAcross()
            : columnLeft();
    return isEnd ? left(Projection.END) : column;
  }

  /** Where the top of a view stands. */
  double y(Projection projection) {
    boolean isTop = projection == Projection.TOP;
    if (isThird()) {
      double row =
          has(Projection.TOP) ? above(Projection.TOP) + high(Projection.TOP) + gapUp() : rowAbove();
      return isTop ? above(Projection.TOP) : row;
    }
    return rowAbove() + (isTop ? height(Projection.FRONT) + gapUp() : 0);
  }
}
