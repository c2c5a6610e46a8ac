package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import packetwright.drawing.view.View.Edge;
import packetwright.drawing.view.View.Place;
import packetwright.drawing.view.View.Sight;

/**
 * Straight stretches, gathered by the line that they lie on and joined where they look the same.
 */
final class PaperLines {
  /** Nearer than this, in inches, is on the line. */
  private static final double ON = 1e-7;

  private final List<Ruler> rulers = new ArrayList<>();

  void add(Stretch stretch) {
    for (Ruler ruler : rulers) {
      if (ruler.holds(stretch.from()) && ruler.holds(stretch.to())) {
        ruler.stretches.add(stretch);
        return;
      }
    }
    rulers.add(new Ruler(stretch));
  }

  /** Level lines from below upward, then upright ones from left to right, then the others. */
  List<Edge> edges() {
    return rulers.stream()
        .flatMap(ruler -> ruler.edges().stream())
        .sorted(
            Comparator.comparing((Edge e) -> e.isLevel() ? 0 : e.isUpright() ? 1 : 2)
                .thenComparing(e -> e.isLevel() ? e.v1() : e.u1())
                .thenComparing(e -> e.isLevel() ? e.u1() : e.v1())
                .thenComparing(Edge::u2)
                .thenComparing(Edge::v2))
        .toList();
  }

  /** A line on paper and what lies on it. */
  private static final class Ruler {
    private final Place start;
    private final double du;
    private final double dv;
    private final List<Stretch> stretches = new ArrayList<>();

    Ruler(Stretch stretch) {
      start = stretch.from();
      double u = (stretch.to().u() - start.u()) / stretch.length();
      double v = (stretch.to().v() - start.v()) / stretch.length();
      boolean isBackward = u < -ON || (u < ON && v < 0);
      du = isBackward ? -u : u;
      dv = isBackward ? -v : v;
      stretches.add(stretch);
    }

    boolean holds(Place place) {
      return Math.abs((place.u() - start.u()) * dv - (place.v() - start.v()) * du) < ON;
    }

    private double at(Place place) {
      return (place.u() - start.u()) * du + (place.v() - start.v()) * dv;
    }

    List<Edge> edges() {
      TreeSet<Double> cuts = new TreeSet<>();
      for (Stretch stretch : stretches) {
        cuts.add(at(stretch.from()));
        cuts.add(at(stretch.to()));
      }
      List<Edge> edges = new ArrayList<>();
      Sight run = Sight.CENTRE;
      double begin = cuts.first();
      double before = cuts.first();
      for (double cut : cuts) {
        if (cut - before > ON) {
          Sight sight = sight((before + cut) / 2);
          if (sight != run) {
            addEdge(edges, run, begin, before);
            run = sight;
            begin = before;
          }
          before = cut;
        }
      }
      addEdge(edges, run, begin, before);
      return edges;
    }

    /** {@code CENTRE} stands for nothing here. */
    private Sight sight(double at) {
      Sight sight = Sight.CENTRE;
      for (Stretch stretch : stretches) {
        double one = at(stretch.from());
        double other = at(stretch.to());
        if (Math.min(one, other) < at && at < Math.max(one, other)) {
          if (stretch.isSeen()) {
            return Sight.VISIBLE;
          }
          sight = Sight.HIDDEN;
        }
      }
      return sight;
    }

    private void addEdge(List<Edge> edges, Sight sight, double from, double to) {
      if (sight != Sight.CENTRE && to - from > ON) {
        double v1 = start.v() + from * dv;
        double v2 = start.v() + to * dv;
        double u1 = start.u() + from * du;
        double u2 = start.u() + to * du;
        edges.add(new Edge(sight, Exact.of(u1), Exact.of(v1), Exact.of(u2), Exact.of(v2)));
      }
    }
  }
}
