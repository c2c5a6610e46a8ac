package packetwright.wood.part;

import java.util.ArrayList;
import java.util.List;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Removal.Corner;
import packetwright.wood.part.Removal.Slope;

/**
 * A convex part of the plane across an axis.
 *
 * @param corners counterclockwise
 */
record Area(List<Corner> corners) {
  Area {
    corners = List.copyOf(corners);
  }

  /** What a box looks like along an axis. */
  static Area of(Box box, int axis) {
    return new Area(Rectangle.of(box, axis).corners());
  }

  /** What of it a slope along the same axis takes. */
  Area takenBy(Slope slope) {
    return cut(slope, 1);
  }

  /** What of it a slope along the same axis leaves. */
  Area leftBy(Slope slope) {
    return cut(slope, -1);
  }

  /** Cut along the line of a slope (Sutherland and Hodgman 1974, for one line). */
  private Area cut(Slope slope, int kept) {
    List<Corner> left = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Corner here = corners.get(i);
      Corner next = corners.get((i + 1) % corners.size());
      int sideHere = slope.side(here.u(), here.v()) * kept;
      int sideNext = slope.side(next.u(), next.v()) * kept;
      if (sideHere >= 0) {
        left.add(here);
      }
      if (sideHere * sideNext < 0) {
        left.add(crossing(slope, here, next));
      }
    }
    return new Area(left);
  }

  private static Corner crossing(Slope slope, Corner one, Corner other) {
    Rational first = slope.over(one.u(), one.v());
    Rational part = first.dividedBy(first.minus(slope.over(other.u(), other.v())));
    return new Corner(between(one.u(), other.u(), part), between(one.v(), other.v(), part), null);
  }

  private static Length between(Length from, Length to, Rational part) {
    return from.plus(new Length(to.minus(from).inches().times(part)));
  }

  /** Whether it has no area. */
  boolean isEmpty() {
    Rational twice = Rational.ZERO;
    for (int i = 0; i < corners.size(); i++) {
      Corner here = corners.get(i);
      Corner next = corners.get((i + 1) % corners.size());
      twice =
          twice
              .plus(here.u().inches().times(next.v().inches()))
              .minus(next.u().inches().times(here.v().inches()));
    }
    return twice.signum() == 0;
  }
}
