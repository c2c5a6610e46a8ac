package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import packetwright.wood.part.Solid;

/** A solid in floating point: what is wood, what a ray meets, and the facets of its surface. */
final class Body {
  /** Wood thinner than this along a ray, in inches, hides nothing: it is only touched. */
  static final double TOUCH = 5e-4;

  private final Prism block;
  private final List<Prism> removed;
  private final List<Facet> facets = new ArrayList<>();

  Body(Solid solid) {
    block = Prism.of(solid.block());
    removed = solid.removals().stream().map(r -> Prism.of(r, solid.block())).toList();
    facets.addAll(block.facets(solid.block()));
    removed.forEach(prism -> facets.addAll(prism.facets(solid.block())));
  }

  /** Every facet that bounds the block or a removal, whether or not wood begins there. */
  List<Facet> facets() {
    return facets;
  }

  boolean isWood(Vector place) {
    return block.holds(place) && removed.stream().noneMatch(prism -> prism.holds(place));
  }

  /** Whether no wood lies ahead of a place. */
  boolean isFree(Vector from, Vector way) {
    return wood(from, way).stream().noneMatch(w -> w[1] - Math.max(0, w[0]) > TOUCH);
  }

  /** The stretches of a ray that run through wood, in order. */
  List<double[]> wood(Vector from, Vector way) {
    List<double[]> whole = block.stretches(from, way);
    if (whole.isEmpty()) {
      return List.of();
    }
    double begin = whole.get(0)[0];
    double end = whole.get(0)[1];
    List<double[]> air = removed.stream().flatMap(p -> p.stretches(from, way).stream()).toList();
    TreeSet<Double> cuts = new TreeSet<>(List.of(begin, end));
    air.forEach(a -> cuts.addAll(List.of(a[0], a[1])));
    List<Double> sorted = List.copyOf(cuts.subSet(begin, true, end, true));
    List<double[]> wood = new ArrayList<>();
    for (int i = 0; i + 1 < sorted.size(); i++) {
      double from1 = sorted.get(i);
      double to = sorted.get(i + 1);
      double middle = (from1 + to) / 2;
      if (air.stream().noneMatch(a -> a[0] < middle && middle < a[1])) {
        double[] last = wood.isEmpty() ? new double[] {0, Double.NaN} : wood.get(wood.size() - 1);
        if (last[1] == from1) {
          last[1] = to;
        } else {
          wood.add(new double[] {from1, to});
        }
      }
    }
    return wood;
  }
}
