package packetwright.wood.part;

import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Removal.Bend;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Cases;
import packetwright.wood.part.Removal.Corner;
import packetwright.wood.part.Removal.Outline;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.part.Removal.Trough;

/** Whether removals reach into boxes and into one another; exact. */
final class Touch {
  private Touch() {}

  /** Whether a removal takes anything of a box. */
  static boolean reaches(Removal removal, Box box) {
    return removal.match(
        new Cases<Boolean>() {
          @Override
          public Boolean trough(Trough trough) {
            return trough.box().overlaps(box);
          }

          @Override
          public Boolean bore(Bore bore) {
            Rectangle section = Rectangle.of(box, bore.axis());
            Bend centre = centre(bore);
            Length u = centre.u().max(section.lowU()).min(section.highU());
            Length v = centre.v().max(section.lowV()).min(section.highV());
            return bore.around().overlaps(box)
                && Ring.squares(u, v, centre).compareTo(squared(bore)) < 0;
          }

          @Override
          public Boolean slope(Slope slope) {
            return !Area.of(box, slope.axis()).takenBy(slope).isEmpty();
          }

          @Override
          public Boolean outline(Outline outline) {
            return !Ring.of(outline).misses(Rectangle.of(box, outline.axis()));
          }
        });
  }

  /** Whether a hole takes all of a box, or of what another hole along its axis takes of it. */
  static boolean takesAll(Bore bore, Box box, Removal removal) {
    Box around = bore.around();
    int axis = bore.axis();
    return !box.low().on(axis).isLess(around.low().on(axis))
        && !box.high().on(axis).isMore(around.high().on(axis))
        && (Rectangle.of(box, axis).corners().stream().allMatch(c -> isIn(bore, c))
            || (removal instanceof Bore other && other.axis() == axis && isIn(bore, other)));
  }

  private static boolean isIn(Bore bore, Corner corner) {
    return Ring.squares(corner.u(), corner.v(), centre(bore)).compareTo(squared(bore)) <= 0;
  }

  /** Whether one circle lies within another, however long the holes are. */
  private static boolean isIn(Bore bore, Bore inner) {
    Length wider = bore.diameter().minus(inner.diameter()).dividedBy(2);
    Rational apart = Ring.squares(centre(inner).u(), centre(inner).v(), centre(bore));
    return wider.signum() >= 0 && apart.compareTo(wider.inches().times(wider.inches())) <= 0;
  }

  /** Whether an outline takes all of a box. */
  static boolean takesAll(Outline outline, Box box) {
    return Ring.of(outline).surrounds(Rectangle.of(box, outline.axis()));
  }

  /** Whether a slope takes all that a round removal along its axis does. */
  static boolean takesAll(Slope slope, Removal removal) {
    if (removal instanceof Bore bore && bore.axis() == slope.axis()) {
      Rational beyond = slope.over(centre(bore).u(), centre(bore).v());
      Rational steep = slope.a().times(slope.a()).plus(slope.b().times(slope.b()));
      return beyond.signum() > 0 && beyond.times(beyond).compareTo(steep.times(squared(bore))) >= 0;
    }
    return removal instanceof Outline outline
        && outline.axis() == slope.axis()
        && Ring.of(outline).hull().stream().allMatch(c -> slope.side(c.u(), c.v()) >= 0);
  }

  private static Bend centre(Bore bore) {
    return new Bend(
        bore.centre().on(Removal.acrossU(bore.axis())),
        bore.centre().on(Removal.acrossV(bore.axis())),
        true);
  }

  /** The square of a hole's radius. */
  private static Rational squared(Bore bore) {
    return bore.diameter().inches().times(bore.diameter().inches()).dividedBy(Rational.of(4));
  }
}
