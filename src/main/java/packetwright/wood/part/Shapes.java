package packetwright.wood.part;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Removal.Bend;
import packetwright.wood.part.Removal.Corner;
import packetwright.wood.part.Removal.Outline;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.part.Removal.Trough;

/**
 * Slanted and round removals from measures, for the drawing from a feature's sizes and for the run
 * from a machine's settings.
 */
public final class Shapes {
  private Shapes() {}

  /**
   * Right across the piece, between two distances from a side and so deep from a face: a groove,
   * dado or rabbet.
   */
  public static Trough band(
      Solid solid, Side from, List<Length> distances, Side face, Length depth) {
    List<Length> span = solid.measuredFrom(from, distances.get(0), distances.get(1));
    List<Length> deep = solid.measuredFrom(face, Length.ZERO, depth);
    Box block = solid.block();
    return new Trough(
        new Box(
            block.low().with(face.axis(), deep.get(0)).with(from.axis(), span.get(0)),
            block.high().with(face.axis(), deep.get(1)).with(from.axis(), span.get(1))));
  }

  /**
   * A slant at a side: nothing comes off at {@code full}, and {@code by} at the side opposite to
   * that. A miter, bevel or taper.
   */
  public static Slope slant(Solid solid, Side at, Side full, Length by) {
    Side shorter = full.opposite();
    Spot begin = new Spot(at, solid.coordinate(at), full, solid.coordinate(full));
    Spot end = new Spot(at, inward(solid, at, by), shorter, solid.coordinate(shorter));
    Spot waste = new Spot(at, solid.coordinate(at), shorter, solid.coordinate(shorter));
    return slope(begin, end, waste);
  }

  /** A chamfer as wide as it is high on the edge where two sides meet. */
  public static Slope chamfer(Solid solid, Side one, Side other, Length size) {
    Spot begin = new Spot(one, inward(solid, one, size), other, solid.coordinate(other));
    Spot end = new Spot(one, solid.coordinate(one), other, inward(solid, other, size));
    Spot waste = new Spot(one, solid.coordinate(one), other, solid.coordinate(other));
    return slope(begin, end, waste);
  }

  private static Slope slope(Spot begin, Spot end, Spot waste) {
    Slope slope = Slope.leftOf(begin.axis(), begin.u(), begin.v(), end.u(), end.v());
    return slope.side(waste.u(), waste.v()) > 0
        ? slope
        : Slope.leftOf(begin.axis(), end.u(), end.v(), begin.u(), begin.v());
  }

  /** The edge where two sides meet rounded to a radius: a roundover, or a rounded corner. */
  public static Outline rounded(Solid solid, Side one, Side other, Length radius) {
    Spot corner = new Spot(one, solid.coordinate(one), other, solid.coordinate(other));
    Spot along = new Spot(one, inward(solid, one, radius), other, solid.coordinate(other));
    Spot back = new Spot(one, solid.coordinate(one), other, inward(solid, other, radius));
    Spot centre = new Spot(one, inward(solid, one, radius), other, inward(solid, other, radius));
    return new Outline(
        corner.axis(),
        List.of(corner.corner(null), along.corner(bend(along, back, centre)), back.corner(null)));
  }

  /**
   * An arc of a circle cut into an edge or end, through the thickness.
   *
   * @param start of the chord, from the left end or the bottom edge
   * @param rise at most half the chord
   */
  public static Outline curve(Solid solid, Side edge, Length start, Length chord, Length rise) {
    Side along = edge.axis() == 0 ? Side.BOTTOM : Side.LEFT;
    Length half = chord.dividedBy(2);
    Rational halfTwice = half.inches().times(half.inches());
    Rational riseTwice = rise.inches().times(rise.inches());
    Length radius =
        new Length(halfTwice.plus(riseTwice).dividedBy(rise.inches().times(Rational.of(2))));
    Spot begin = new Spot(edge, solid.coordinate(edge), along, start);
    Spot top = new Spot(edge, inward(solid, edge, rise), along, start.plus(half));
    Spot end = new Spot(edge, solid.coordinate(edge), along, start.plus(chord));
    Spot centre = new Spot(edge, inward(solid, edge, rise.minus(radius)), along, start.plus(half));
    return new Outline(
        2,
        List.of(
            begin.corner(bend(begin, top, centre)),
            top.corner(bend(top, end, centre)),
            end.corner(null)));
  }

  private static Length inward(Solid solid, Side side, Length by) {
    return side.isFar() ? solid.coordinate(side).minus(by) : by;
  }

  /** An arc of at most a quarter turn. */
  private static Bend bend(Spot from, Spot to, Spot centre) {
    Rational turn =
        from.u()
            .minus(centre.u())
            .inches()
            .times(to.v().minus(centre.v()).inches())
            .minus(from.v().minus(centre.v()).inches().times(to.u().minus(centre.u()).inches()));
    return new Bend(centre.u(), centre.v(), turn.signum() > 0);
  }

  /** A place given by its coordinates on the axes of two sides. */
  private record Spot(Side one, Length onOne, Side other, Length onOther) {
    /** The axis across both. */
    int axis() {
      return 3 - one.axis() - other.axis();
    }

    Length u() {
      return one.axis() < other.axis() ? onOne : onOther;
    }

    Length v() {
      return one.axis() < other.axis() ? onOther : onOne;
    }

    Corner corner(@Nullable Bend bend) {
      return new Corner(u(), v(), bend);
    }
  }
}
