package packetwright.wood.part;

import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Cases;
import packetwright.wood.part.Removal.Outline;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.part.Removal.Trough;

/** Whether a place lies within what a removal takes; not when it lies on its surface. */
record Inside(Point place) implements Cases<Boolean> {
  @Override
  public Boolean trough(Trough trough) {
    return isIn(trough.box());
  }

  @Override
  public Boolean bore(Bore bore) {
    Length du = u(bore.axis()).minus(bore.centre().on(Removal.acrossU(bore.axis())));
    Length dv = v(bore.axis()).minus(bore.centre().on(Removal.acrossV(bore.axis())));
    Rational radius = bore.diameter().inches().dividedBy(Rational.of(2));
    return isIn(bore.around()) && squared(du).plus(squared(dv)).compareTo(radius.times(radius)) < 0;
  }

  @Override
  public Boolean slope(Slope slope) {
    return slope.side(u(slope.axis()), v(slope.axis())) > 0;
  }

  @Override
  public Boolean outline(Outline outline) {
    return Ring.of(outline).surrounds(u(outline.axis()), v(outline.axis()));
  }

  private boolean isIn(Box box) {
    for (int axis = 0; axis < 3; axis++) {
      boolean isWithin =
          box.low().on(axis).isLess(place.on(axis)) && place.on(axis).isLess(box.high().on(axis));
      if (!isWithin) {
        return false;
      }
    }
    return true;
  }

  private Length u(int axis) {
    return place.on(Removal.acrossU(axis));
  }

  private Length v(int axis) {
    return place.on(Removal.acrossV(axis));
  }

  private static Rational squared(Length length) {
    return length.inches().times(length.inches());
  }
}
