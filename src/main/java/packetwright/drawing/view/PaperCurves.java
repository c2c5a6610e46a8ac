package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import packetwright.drawing.view.View.Curve;
import packetwright.drawing.view.View.Place;
import packetwright.drawing.view.View.Sight;

/** Short straight stretches of curves, strung together end to end. */
final class PaperCurves {
  private static final double NEAR = 1e-6;

  private final List<Stretch> stretches = new ArrayList<>();

  /** Adds one; where two lie on one another, what is seen hides what is not. */
  void add(Stretch stretch) {
    for (int i = 0; i < stretches.size(); i++) {
      if (isSame(stretches.get(i), stretch)) {
        if (stretch.isSeen()) {
          stretches.set(i, stretch);
        }
        return;
      }
    }
    stretches.add(stretch);
  }

  private static boolean isSame(Stretch one, Stretch other) {
    return (isNear(one.from(), other.from()) && isNear(one.to(), other.to()))
        || (isNear(one.from(), other.to()) && isNear(one.to(), other.from()));
  }

  private static boolean isNear(Place one, Place other) {
    return Math.hypot(one.u() - other.u(), one.v() - other.v()) < NEAR;
  }

  List<Curve> curves() {
    List<Stretch> left = new ArrayList<>(stretches);
    List<Curve> curves = new ArrayList<>();
    while (!left.isEmpty()) {
      Stretch first = left.remove(0);
      List<Place> places = new ArrayList<>(List.of(first.from(), first.to()));
      string(places, left, first.isSeen());
      Collections.reverse(places);
      string(places, left, first.isSeen());
      curves.add(new Curve(first.isSeen() ? Sight.VISIBLE : Sight.HIDDEN, places));
    }
    curves.sort(
        Comparator.comparingDouble((Curve c) -> c.places().get(0).u())
            .thenComparingDouble(c -> c.places().get(0).v())
            .thenComparingDouble(c -> c.places().get(1).u())
            .thenComparingDouble(c -> c.places().get(1).v()));
    return curves;
  }

  /** Goes on from the last place as long as a stretch begins there. */
  private static void string(List<Place> places, List<Stretch> left, boolean isSeen) {
    boolean isGoing = true;
    while (isGoing) {
      isGoing = false;
      Place end = places.get(places.size() - 1);
      for (int i = 0; i < left.size() && !isGoing; i++) {
        Stretch next = left.get(i);
        if (next.isSeen() == isSeen && (isNear(next.from(), end) || isNear(next.to(), end))) {
          places.add(isNear(next.from(), end) ? next.to() : next.from());
          left.remove(i);
          isGoing = true;
        }
      }
    }
  }
}
