package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import packetwright.drawing.view.View;
import packetwright.drawing.view.View.Sight;
import packetwright.text.measure.Length;

/**
 * The places in a view at which an extension line can begin: ends of lines, where an arc turns
 * back, and centres.
 */
final class Places {
  /** Two places nearer than this, in inches, are one. */
  private static final double SAME = 1e-7;

  private final Set<Long> seenAcross = new HashSet<>();
  private final Set<Long> seenUp = new HashSet<>();
  private final Set<Long> drawnAcross = new HashSet<>();
  private final Set<Long> drawnUp = new HashSet<>();

  private Places(View view) {
    for (View.Edge edge : view.edges()) {
      add(edge.u1(), edge.v1(), edge.sight());
      add(edge.u2(), edge.v2(), edge.sight());
    }
    for (View.Arc arc : view.arcs()) {
      arc.turningPoints().forEach(point -> add(point.get(0), point.get(1), arc.sight()));
    }
    view.holes().forEach(hole -> add(hole.u(), hole.v(), Sight.VISIBLE));
  }

  static Places of(View view) {
    return new Places(view);
  }

  private void add(Length u, Length v, Sight sight) {
    drawnAcross.add(key(u));
    drawnUp.add(key(v));
    if (sight == Sight.VISIBLE) {
      seenAcross.add(key(u));
      seenUp.add(key(v));
    }
  }

  private static long key(Length length) {
    return Math.round(length.inches().approximate() / SAME);
  }

  /** Whether anything that is seen ends at a place across or up the paper. */
  boolean isSeen(boolean isAcross, Length at) {
    return (isAcross ? seenAcross : seenUp).contains(key(at));
  }

  /** Whether anything ends there, seen or hidden. */
  boolean isDrawn(boolean isAcross, Length at) {
    return (isAcross ? drawnAcross : drawnUp).contains(key(at));
  }

  /** The places as u and v. */
  static List<List<Length>> ends(View view) {
    List<List<Length>> ends = new ArrayList<>();
    for (View.Edge edge : view.edges()) {
      ends.add(List.of(edge.u1(), edge.v1()));
      ends.add(List.of(edge.u2(), edge.v2()));
    }
    view.arcs().forEach(arc -> ends.addAll(arc.turningPoints()));
    return ends;
  }
}
