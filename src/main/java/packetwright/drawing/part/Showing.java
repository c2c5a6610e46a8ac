package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.view.Projection;
import packetwright.drawing.view.Section;
import packetwright.drawing.view.View;
import packetwright.drawing.view.View.Sight;
import packetwright.drawing.view.Views;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Part.Feature;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Trough;
import packetwright.wood.part.Solid;

/**
 * In which views a part is shown. Whatever is taken out of it has one view in which it is seen
 * end-on, in its true shape: that of the axis along which it runs from side to side, or farther
 * than the other way. Beside the front view only those views are drawn in which something is so
 * seen. A view in which the outer side hides or alters that shape is a section instead.
 *
 * @param part as it is
 * @param solid as drawn, maybe shortened
 * @param fold what is left out
 * @param views those drawn
 * @param cuts which of them are sections
 */
record Showing(
    Part part, Solid solid, Fold fold, Map<Projection, View> views, Map<Projection, Cut> cuts) {
  /**
   * A section.
   *
   * @param letter at both ends of its plane
   * @param section what the plane cuts
   * @param low where on its axis the plane may stand as well, to show the same
   * @param high the same
   */
  record Cut(String letter, Section section, Length low, Length high) {}

  /** The fewest views that show all of a part. */
  static Showing of(Part part, Fold fold) {
    Solid solid = fold.shorten(part.solid());
    Map<Projection, View> all = Views.all(solid);
    Showing whole = new Showing(part, solid, fold, all, Map.of());
    Showing few = whole.only(needed(part));
    for (Showing showing : List.of(few.cut(), few)) {
      if (PartMeasures.of(showing, whole).isComplete()) {
        return showing;
      }
    }
    return whole;
  }

  /** Where a coordinate of the part comes to lie in a view. */
  Length onPaper(Projection projection, int axis, Length coordinate) {
    return projection.onPaper(solid, axis, axis == 0 ? fold.place(coordinate) : coordinate);
  }

  /** The same in inches, to floating point. */
  double onPaper(Projection projection, int axis, double coordinate) {
    return projection.onPaper(solid, axis, axis == 0 ? fold.place(coordinate) : coordinate);
  }

  boolean has(Projection projection) {
    return views.containsKey(projection);
  }

  View view(Projection projection) {
    return Objects.requireNonNull(views.get(projection));
  }

  private Showing only(Set<Projection> shown) {
    Map<Projection, View> few = new EnumMap<>(views);
    few.keySet().retainAll(shown);
    return new Showing(part, solid, fold, few, cuts);
  }

  private static Set<Projection> needed(Part part) {
    Set<Projection> needed = EnumSet.of(Projection.FRONT);
    for (Feature feature : part.features()) {
      for (Removal removal : feature.removals()) {
        if (removal instanceof Trough trough) {
          Box box = trough.around(part.solid().block());
          if (box != null) {
            needed.add(endOn(run(part.solid(), box)));
          }
        }
      }
      PartWords.noted(feature).forEach(removal -> needed.add(endOn(Note.axis(removal))));
    }
    return needed;
  }

  /** The view that looks along an axis. */
  static Projection endOn(int axis) {
    return switch (axis) {
      case 0 -> Projection.END;
      case 1 -> Projection.TOP;
      default -> Projection.FRONT;
    };
  }

  /** The axis along which a trough is seen in its true shape. */
  static int run(Solid solid, Box box) {
    for (int axis : new int[] {2, 0, 1}) {
      if (!box.extent(axis).isLess(solid.extent(axis))) {
        return axis;
      }
    }
    return box.extent(0).isLess(box.extent(1)) ? 1 : 0;
  }

  /** The same with sections where a plain view would not show what it is drawn for. */
  private Showing cut() {
    Map<Projection, View> shown = new EnumMap<>(views);
    Map<Projection, Cut> sections = new LinkedHashMap<>();
    for (int axis : new int[] {0, 1}) {
      Projection projection = endOn(axis);
      Stretch plane = views.containsKey(projection) ? plane(axis) : null;
      if (plane != null) {
        Length at = plane.low.plus(plane.high).dividedBy(2);
        String letter = sections.isEmpty() ? "A" : "B";
        sections.put(
            projection, new Cut(letter, Section.of(solid, axis, at), plane.low, plane.high));
        shown.put(projection, seen(Views.project(solid.slice(axis, Length.ZERO, at), projection)));
      }
    }
    return new Showing(part, solid, fold, shown, sections);
  }

  /** A section shows what is cut and what is seen behind it, nothing hidden. */
  private static View seen(View view) {
    return new View(
        view.width(),
        view.height(),
        view.edges().stream().filter(e -> e.sight() == Sight.VISIBLE).toList(),
        view.arcs().stream().filter(a -> a.sight() == Sight.VISIBLE).toList(),
        view.curves().stream().filter(c -> c.sight() == Sight.VISIBLE).toList(),
        view.holes());
  }

  /**
   * Where to cut across an axis: through all that runs along it and as little else as can be, in
   * the longest stretch; none where the outer side shows just that, or where no one plane does.
   */
  private @Nullable Stretch plane(int axis) {
    List<Box> along = new ArrayList<>();
    List<Box> others = new ArrayList<>();
    Set<Length> changes = new TreeSet<>(List.of(Length.ZERO, solid.extent(axis)));
    for (Removal removal : solid.removals()) {
      Box box = removal.around(solid.block());
      if (box != null) {
        boolean isAlong = removal instanceof Trough && run(solid, box) == axis;
        (isAlong ? along : others).add(box);
        changes.add(box.low().on(axis));
        changes.add(box.high().on(axis));
      }
    }
    Stretch best = null;
    Length from = Length.ZERO;
    for (Length to : changes) {
      if (from.isLess(to)) {
        Stretch stretch = new Stretch(axis, from, to, count(others, axis, from, to));
        boolean isThroughAll = count(along, axis, from, to) == along.size();
        best = isThroughAll && (best == null || stretch.isBetter(best)) ? stretch : best;
      }
      from = to;
    }
    return best == null || along.isEmpty() || isSeenOutside(best) ? null : best;
  }

  private static int count(List<Box> boxes, int axis, Length from, Length to) {
    return (int)
        boxes.stream()
            .filter(b -> !b.low().on(axis).isMore(from) && !b.high().on(axis).isLess(to))
            .count();
  }

  /** Whether the same troughs are open at the outer side as are cut. */
  private boolean isSeenOutside(Stretch plane) {
    for (Removal removal : solid.removals()) {
      Box box = removal instanceof Trough ? removal.around(solid.block()) : null;
      if (box != null) {
        boolean isOpen = box.high().on(plane.axis).equals(solid.extent(plane.axis));
        boolean isCut = count(List.of(box), plane.axis, plane.low, plane.high) == 1;
        if (isOpen != isCut) {
          return false;
        }
      }
    }
    return true;
  }

  private record Stretch(int axis, Length low, Length high, int others) {
    boolean isBetter(Stretch than) {
      return others < than.others
          || (others == than.others && than.high.minus(than.low).isLess(high.minus(low)));
    }
  }
}
