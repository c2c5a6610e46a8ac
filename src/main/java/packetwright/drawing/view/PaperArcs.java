package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import packetwright.drawing.view.View.Arc;
import packetwright.drawing.view.View.Hole;
import packetwright.drawing.view.View.Place;
import packetwright.drawing.view.View.Sight;

/** Chords of circles seen end-on, turned back into arcs of the circles. */
final class PaperArcs {
  /** In radians; nearer turns are one. */
  private static final double NEAR = 1e-7;

  /** A turn this near, in radians, to a whole part of a circle is that part. */
  private static final double SNAP = 1e-9;

  private static final double PART = 2 * Math.PI / 4096;

  private final Map<Hole, List<Arc>> chords = new LinkedHashMap<>();

  void add(Hole circle, Stretch chord) {
    double one = turn(circle, chord.from());
    double other = turn(circle, chord.to());
    double from = Math.min(one, other);
    double to = Math.max(one, other);
    // A chord is far shorter than half a turn; this one ends at a whole turn.
    boolean isAcross = to - from > Math.PI;
    Sight sight = chord.isSeen() ? Sight.VISIBLE : Sight.HIDDEN;
    chords
        .computeIfAbsent(circle, c -> new ArrayList<>())
        .add(new Arc(sight, circle, isAcross ? to : from, isAcross ? from + 2 * Math.PI : to));
  }

  private static double turn(Hole circle, Place place) {
    double turn =
        StrictMath.atan2(
            place.v() - circle.v().inches().approximate(),
            place.u() - circle.u().inches().approximate());
    double part = Math.rint(turn / PART) * PART;
    double snapped = Math.abs(turn - part) < SNAP ? part : turn;
    return snapped < 0 ? snapped + 2 * Math.PI : snapped;
  }

  /** Arcs in the order in which their circles were first met, each as long as it looks the same. */
  List<Arc> arcs() {
    List<Arc> arcs = new ArrayList<>();
    chords.forEach((circle, parts) -> arcs.addAll(joined(circle, parts)));
    return arcs;
  }

  private static List<Arc> joined(Hole circle, List<Arc> parts) {
    TreeSet<Double> cuts = new TreeSet<>();
    for (Arc part : parts) {
      cuts.add(part.from());
      cuts.add(part.to());
    }
    List<Arc> joined = new ArrayList<>();
    double before = cuts.first();
    for (double cut : cuts) {
      if (cut - before > NEAR) {
        double middle = (before + cut) / 2;
        List<Sight> sights =
            parts.stream()
                .filter(p -> p.from() < middle && middle < p.to())
                .map(Arc::sight)
                .toList();
        if (!sights.isEmpty()) {
          Sight sight = sights.contains(Sight.VISIBLE) ? Sight.VISIBLE : Sight.HIDDEN;
          append(joined, new Arc(sight, circle, before, cut));
        }
        before = cut;
      }
    }
    return joined;
  }

  private static void append(List<Arc> arcs, Arc arc) {
    Arc last = arcs.isEmpty() ? null : arcs.get(arcs.size() - 1);
    if (last != null && last.sight() == arc.sight() && Math.abs(last.to() - arc.from()) < NEAR) {
      arcs.set(arcs.size() - 1, new Arc(arc.sight(), arc.hole(), last.from(), arc.to()));
    } else {
      arcs.add(arc);
    }
  }
}
