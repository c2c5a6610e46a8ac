package packetwright.wood.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Removal.Bend;
import packetwright.wood.part.Removal.Corner;

/** Brings a closed path to its one form. */
final class OutlinePath {
  private OutlinePath() {}

  /** Counterclockwise, from the least corner, without corners on a straight way. */
  static List<Corner> normal(List<Corner> path) {
    if (path.size() < 2) {
      throw new IllegalArgumentException("a path of " + path.size() + " corners");
    }
    for (int i = 0; i < path.size(); i++) {
      requireQuarter(path.get(i), path.get((i + 1) % path.size()));
    }
    List<Corner> turned = isCounterclockwise(path) ? path : reversed(path);
    List<Corner> bare = new ArrayList<>();
    for (int i = 0; i < turned.size(); i++) {
      Corner before = turned.get((i + turned.size() - 1) % turned.size());
      Corner here = turned.get(i);
      Corner after = turned.get((i + 1) % turned.size());
      boolean isStraight = before.bend() == null && here.bend() == null;
      if (isStraight ? turn(before, here, after).signum() != 0 : !isOnOneArc(before, here)) {
        bare.add(here);
      }
    }
    int first =
        bare.indexOf(
            bare.stream()
                .min(Comparator.comparing(Corner::u).thenComparing(Corner::v))
                .orElseThrow());
    List<Corner> normal = new ArrayList<>(bare.subList(first, bare.size()));
    normal.addAll(bare.subList(0, first));
    return List.copyOf(normal);
  }

  /** Whether an arc goes on through a corner at which it is neither level nor upright. */
  private static boolean isOnOneArc(Corner before, Corner here) {
    Bend bend = here.bend();
    return bend != null
        && bend.equals(before.bend())
        && !here.u().equals(bend.u())
        && !here.v().equals(bend.v());
  }

  /** An arc ends on its own circle and turns within one quarter of it. */
  private static void requireQuarter(Corner from, Corner to) {
    Bend bend = from.bend();
    if (bend == null) {
      return;
    }
    Length u1 = from.u().minus(bend.u());
    Length v1 = from.v().minus(bend.v());
    Length u2 = to.u().minus(bend.u());
    Length v2 = to.v().minus(bend.v());
    boolean isOnCircle =
        product(u1, u1).plus(product(v1, v1)).equals(product(u2, u2).plus(product(v2, v2)));
    boolean isQuarter = u1.signum() * u2.signum() >= 0 && v1.signum() * v2.signum() >= 0;
    int turn = product(u1, v2).compareTo(product(v1, u2));
    if (!isOnCircle || !isQuarter || turn != (bend.isCounterclockwise() ? 1 : -1)) {
      throw new IllegalArgumentException("no arc of a quarter turn: " + from + " to " + to);
    }
  }

  /** Which way it turns at a corner: positive to the left. */
  private static Rational turn(Corner a, Corner b, Corner c) {
    return product(b.u().minus(a.u()), c.v().minus(b.v()))
        .minus(product(b.v().minus(a.v()), c.u().minus(b.u())));
  }

  /**
   * By the area of the polygon of its corners; a path of two corners has none, and its arcs tell.
   */
  private static boolean isCounterclockwise(List<Corner> path) {
    Rational twice = Rational.ZERO;
    int bulges = 0;
    for (int i = 0; i < path.size(); i++) {
      Corner here = path.get(i);
      Corner next = path.get((i + 1) % path.size());
      twice = twice.plus(product(here.u(), next.v())).minus(product(next.u(), here.v()));
      Bend bend = here.bend();
      bulges += bend == null ? 0 : bend.isCounterclockwise() ? 1 : -1;
    }
    return twice.signum() == 0 ? bulges > 0 : twice.signum() > 0;
  }

  private static List<Corner> reversed(List<Corner> path) {
    List<Corner> reversed = new ArrayList<>();
    for (int i = path.size() - 1; i >= 0; i--) {
      @Nullable Bend bend = path.get((i + path.size() - 1) % path.size()).bend();
      reversed.add(
          new Corner(
              path.get(i).u(),
              path.get(i).v(),
              bend == null ? null : new Bend(bend.u(), bend.v(), !bend.isCounterclockwise())));
    }
    return reversed;
  }

  private static Rational product(Length a, Length b) {
    return a.inches().times(b.inches());
  }
}
