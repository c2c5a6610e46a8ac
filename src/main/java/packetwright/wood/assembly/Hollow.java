package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Box;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bend;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Corner;
import packetwright.wood.part.Removal.Outline;

/** Whether a box lies wholly within one hole, or within what one outline takes away. */
final class Hollow {
  private Hollow() {}

  /** Looks at holes and outlines only; troughs and slopes are in the chunks already. */
  static boolean holds(List<Removal> removals, Box box) {
    return removals.stream()
        .anyMatch(
            r ->
                r instanceof Bore bore
                    ? holds(bore, box)
                    : r instanceof Outline outline && holds(outline, Section.of(box, outline)));
  }

  private static boolean holds(Bore bore, Box box) {
    Length begin = bore.centre().on(bore.axis());
    Length end = begin.plus(bore.depth());
    if (box.low().on(bore.axis()).isLess(begin) || box.high().on(bore.axis()).isMore(end)) {
      return false;
    }
    int u = Removal.acrossU(bore.axis());
    int v = Removal.acrossV(bore.axis());
    Section section =
        new Section(box.low().on(u), box.low().on(v), box.high().on(u), box.high().on(v));
    Length radius = bore.diameter().dividedBy(2);
    return section.farthest(bore.centre().on(u), bore.centre().on(v)).compareTo(square(radius))
        <= 0;
  }

  /** No part of the path runs through the section, and its middle is within. */
  private static boolean holds(Outline outline, Section section) {
    List<Corner> path = outline.path();
    boolean isWithin = false;
    for (int i = 0; i < path.size(); i++) {
      Corner here = path.get(i);
      Corner next = path.get((i + 1) % path.size());
      if (crosses(here, next, section)) {
        return false;
      }
      isWithin ^= isPassedUpward(here, next, section.middle());
    }
    return isWithin;
  }

  private static boolean crosses(Corner from, Corner to, Section section) {
    Section clipped =
        section.common(
            new Section(
                from.u().min(to.u()),
                from.v().min(to.v()),
                from.u().max(to.u()),
                from.v().max(to.v())));
    Bend bend = from.bend();
    if (bend == null) {
      int left = 0;
      int right = 0;
      for (Corner corner : section.corners()) {
        int side = side(from, to, corner);
        left += side > 0 ? 1 : 0;
        right += side < 0 ? 1 : 0;
      }
      return left > 0 && right > 0 && clipped.isNotBehind();
    }
    // Within the box of its ends an arc of a quarter turn at most is all that there is of the
    // circle.
    Rational radius = distance(from.u(), from.v(), bend.u(), bend.v());
    return clipped.isNotBehind()
        && clipped.nearest(bend.u(), bend.v()).compareTo(radius) < 0
        && clipped.farthest(bend.u(), bend.v()).compareTo(radius) > 0;
  }

  /** Whether a ray to the right from a place passes that part of the path. */
  private static boolean isPassedUpward(Corner from, Corner to, Corner place) {
    if (from.v().isMore(place.v()) == to.v().isMore(place.v())) {
      return false;
    }
    Bend bend = from.bend();
    boolean goesUp = to.v().isMore(from.v());
    if (bend == null) {
      return side(from, to, place) > 0 == goesUp;
    }
    if (!place.u().isLess(from.u().max(to.u())) || place.u().isLess(from.u().min(to.u()))) {
      return place.u().isLess(from.u().min(to.u()));
    }
    Rational radius = distance(from.u(), from.v(), bend.u(), bend.v());
    boolean isOutside = distance(place.u(), place.v(), bend.u(), bend.v()).compareTo(radius) > 0;
    boolean isLeftHalf = !from.u().max(to.u()).isMore(bend.u());
    return isOutside == isLeftHalf;
  }

  /** Positive at the left of the straight way from one corner to the next. */
  private static int side(Corner from, Corner to, Corner place) {
    Rational across = to.u().minus(from.u()).inches().times(place.v().minus(from.v()).inches());
    Rational along = to.v().minus(from.v()).inches().times(place.u().minus(from.u()).inches());
    return across.compareTo(along);
  }

  private static Rational square(Length length) {
    return length.inches().times(length.inches());
  }

  private static Rational distance(Length u, Length v, Length toU, Length toV) {
    return square(u.minus(toU)).plus(square(v.minus(toV)));
  }

  /** A rectangle across an axis. */
  private record Section(Length lowU, Length lowV, Length highU, Length highV) {
    static Section of(Box box, Outline outline) {
      int u = Removal.acrossU(outline.axis());
      int v = Removal.acrossV(outline.axis());
      return new Section(box.low().on(u), box.low().on(v), box.high().on(u), box.high().on(v));
    }

    Section common(Section other) {
      return new Section(
          lowU.max(other.lowU),
          lowV.max(other.lowV),
          highU.min(other.highU),
          highV.min(other.highV));
    }

    /** Whether it has an extent both ways, which may be nought. */
    boolean isNotBehind() {
      return !lowU.isMore(highU) && !lowV.isMore(highV);
    }

    List<Corner> corners() {
      List<Corner> corners = new ArrayList<>();
      for (Length u : List.of(lowU, highU)) {
        for (Length v : List.of(lowV, highV)) {
          corners.add(new Corner(u, v, null));
        }
      }
      return corners;
    }

    Corner middle() {
      return new Corner(lowU.plus(highU).dividedBy(2), lowV.plus(highV).dividedBy(2), null);
    }

    /** Squared distance of the corner that is farthest from a place. */
    Rational farthest(Length u, Length v) {
      return corners().stream()
          .map(c -> distance(c.u(), c.v(), u, v))
          .max(Rational::compareTo)
          .orElseThrow();
    }

    /** Squared distance of the corner that is nearest to a place. */
    Rational nearest(Length u, Length v) {
      return corners().stream()
          .map(c -> distance(c.u(), c.v(), u, v))
          .min(Rational::compareTo)
          .orElseThrow();
    }
  }
}
