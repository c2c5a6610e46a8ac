package packetwright.drawing.part;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import packetwright.drawing.part.PartMeasures.Band;
import packetwright.drawing.sheet.DimensionBand;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.view.Projection;
import packetwright.drawing.view.View;
import packetwright.text.measure.Length;

/**
 * How much room the three views of a part and the dimensions around them take, and how far apart
 * the views stand, in points.
 *
 * @param views by projection
 * @param bands the dimensions beside them
 * @param scale at which they are drawn
 */
record PartRoom(
    Map<Projection, View> views, Map<Band, DimensionBand> bands, ViewMarks.Scale scale) {
  private static final double LEAST_GAP = 30;

  /** Half the height of a number in a level band, and air. */
  private static final double ROW_HALF = 12;

  /** A line of small text over the top view. */
  private static final double NAME_ROOM = 15;

  double width(Projection projection) {
    return points(view(projection).width());
  }

  double height(Projection projection) {
    return points(view(projection).height());
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
    return Objects.requireNonNull(views.get(projection));
  }

  private DimensionBand band(Band band) {
    return Objects.requireNonNull(bands.get(band));
  }

  private double points(Length length) {
    return length.inches().approximate() * scale.pointsPerInch();
  }

  private double depth(Band band) {
    return reach(band(band).depth(), push(band));
  }

  /**
   * How far a level band moves outward so that what hangs over at its ends clears what hangs over
   * from the upright bands at the same corner.
   */
  private double push(Band band) {
    double over = band(band).greatest() - width(band.projection());
    double before = -band(band).least();
    double height = height(band.projection());
    return switch (band) {
      case FRONT_BELOW -> clash(before, band(Band.FRONT_LEFT), false, height);
      case END_BELOW ->
          Math.max(
              clash(before, band(Band.END_LEFT), false, height),
              clash(over, band(Band.END_RIGHT), false, height));
      case TOP_ABOVE ->
          Math.max(
              clash(before, band(Band.TOP_LEFT), true, height),
              clash(over, band(Band.TOP_RIGHT), true, height));
      default -> 0;
    };
  }

  private static double clash(double over, DimensionBand upright, boolean isAbove, double height) {
    double hang = isAbove ? -upright.least() : upright.greatest() - height;
    boolean meets = over > upright.nearest();
    return meets ? Math.max(0, hang - DimensionBand.FIRST + ROW_HALF) : 0;
  }

  double contentWidth() {
    double right = reach(band(Band.END_RIGHT).depth(), 0);
    double below = band(Band.END_BELOW).greatest() - width(Projection.END);
    return leftReach()
        + width(Projection.FRONT)
        + gapAcross()
        + width(Projection.END)
        + Math.max(right, below);
  }

  double contentHeight() {
    double below =
        Math.max(
            Math.max(depth(Band.FRONT_BELOW), depth(Band.END_BELOW)),
            sideReach(height(Projection.FRONT)));
    return aboveReach()
        + height(Projection.TOP)
        + gapUp()
        + height(Projection.FRONT)
        + Math.max(below, DimensionBand.FIRST);
  }

  /** How far numbers of the upright bands beside the front and end views reach below them. */
  private double sideReach(double height) {
    return Math.max(
            Math.max(band(Band.FRONT_LEFT).greatest(), band(Band.END_LEFT).greatest()),
            band(Band.END_RIGHT).greatest())
        - height;
  }

  double leftReach() {
    return Math.max(
        Math.max(band(Band.FRONT_LEFT).depth(), band(Band.TOP_LEFT).depth()),
        Math.max(-band(Band.FRONT_BELOW).least(), -band(Band.TOP_ABOVE).least()));
  }

  double aboveReach() {
    return Math.max(
        Math.max(NAME_ROOM, depth(Band.TOP_ABOVE)),
        Math.max(-band(Band.TOP_LEFT).least(), -band(Band.TOP_RIGHT).least()));
  }

  double gapUp() {
    double down =
        Math.max(band(Band.TOP_LEFT).greatest(), band(Band.TOP_RIGHT).greatest())
            - height(Projection.TOP);
    double up =
        Math.max(
            Math.max(-band(Band.FRONT_LEFT).least(), -band(Band.END_LEFT).least()),
            -band(Band.END_RIGHT).least());
    return Math.max(LEAST_GAP, reach(down, 0) + reach(up, 6));
  }

  double gapAcross() {
    double below =
        band(Band.FRONT_BELOW).greatest()
            - width(Projection.FRONT)
            - Math.min(0, band(Band.END_BELOW).least());
    double beside = reach(band(Band.END_LEFT).depth(), 12);
    boolean hangs =
        band(Band.END_LEFT).greatest() - height(Projection.FRONT) > DimensionBand.FIRST - ROW_HALF;
    double needed = hangs ? reach(below, 4) + beside : Math.max(reach(below, 4), beside);
    return Math.max(LEAST_GAP, needed);
  }

  private static double reach(double distance, double more) {
    return distance > 0 ? distance + more : 0;
  }
}
