package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import packetwright.drawing.sheet.Scale;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;

/**
 * What a drawing leaves out of a long part between break lines: stretches in which nothing begins,
 * ends or changes along the part.
 *
 * @param gaps in order; none meets another
 */
record Fold(List<Gap> gaps) {
  /** Nothing is left out. */
  static final Fold NONE = new Fold(List.of());

  /** What is worth leaving out, in points on paper. */
  private static final double LONG = 110;

  /** What is left of such a stretch, in points. */
  private static final long LEFT = 72;

  /** Keeps its own copy. */
  Fold {
    gaps = List.copyOf(gaps);
  }

  /** A stretch of the length that is not drawn. */
  record Gap(Length from, Length to) {
    Length size() {
      return to.minus(from);
    }
  }

  /** The middle of each long even stretch left out, as a scale calls for. */
  static Fold of(Solid solid, Scale scale) {
    List<Gap> gaps = new ArrayList<>();
    for (Gap even : even(solid)) {
      if (even.size().inches().approximate() * scale.pointsPerInch() > LONG) {
        Length kept = Length.ofInches(LEFT * scale.reduced(), 2 * 72);
        gaps.add(new Gap(even.from.plus(kept), even.to.minus(kept)));
      }
    }
    return new Fold(gaps);
  }

  /** The stretches of a solid along which its cross section does not change. */
  static List<Gap> even(Solid solid) {
    List<Gap> changes = new ArrayList<>();
    for (Removal removal : solid.removals()) {
      Box box = removal.around(solid.block());
      if (box != null) {
        Length low = box.low().x();
        Length high = box.high().x();
        if (isEven(removal)) {
          changes.add(new Gap(low, low));
          changes.add(new Gap(high, high));
        } else {
          changes.add(new Gap(low, high));
        }
      }
    }
    changes.add(new Gap(solid.length(), solid.length()));
    changes.sort(Comparator.comparing(Gap::from));
    List<Gap> even = new ArrayList<>();
    Length reached = Length.ZERO;
    for (Gap change : changes) {
      if (reached.isLess(change.from)) {
        even.add(new Gap(reached, change.from));
      }
      reached = reached.max(change.to);
    }
    return even;
  }

  /** Whether what is taken is the same all along the part, from its one end to its other. */
  private static boolean isEven(Removal removal) {
    return removal.match(
        new Removal.Cases<Boolean>() {
          @Override
          public Boolean trough(Removal.Trough trough) {
            return true;
          }

          @Override
          public Boolean bore(Removal.Bore bore) {
            return bore.axis() == 0;
          }

          @Override
          public Boolean slope(Removal.Slope slope) {
            return slope.axis() == 0;
          }

          @Override
          public Boolean outline(Removal.Outline outline) {
            return outline.axis() == 0;
          }
        });
  }

  /** Where a place along the part comes to lie. */
  Length place(Length x) {
    Length place = x;
    for (Gap gap : gaps) {
      if (x.isMore(gap.from)) {
        place = place.minus(x.min(gap.to).minus(gap.from));
      }
    }
    return place;
  }

  /** The same in inches, to floating point. */
  double place(double x) {
    double place = x;
    for (Gap gap : gaps) {
      double from = gap.from.inches().approximate();
      if (x > from) {
        place -= Math.min(x, gap.to.inches().approximate()) - from;
      }
    }
    return place;
  }

  /** Where something is left out, as drawn. */
  List<Length> seams() {
    return gaps.stream().map(gap -> place(gap.from)).toList();
  }

  /** The solid as drawn. */
  Solid shorten(Solid solid) {
    if (gaps.isEmpty()) {
      return solid;
    }
    List<Removal> removals = new ArrayList<>();
    for (Removal removal : solid.removals()) {
      Box box = removal.around(solid.block());
      if (box != null) {
        removals.add(removal.match(new Shorter(box)));
      }
    }
    return new Solid(place(solid.length()), solid.width(), solid.thickness(), removals);
  }

  private final class Shorter implements Removal.Cases<Removal> {
    private final Box box;

    Shorter(Box box) {
      this.box = box;
    }

    @Override
    public Removal trough(Removal.Trough trough) {
      return new Removal.Trough(new Box(placed(box.low()), placed(box.high())));
    }

    private Point placed(Point point) {
      return point.with(0, place(point.x()));
    }

    @Override
    public Removal bore(Removal.Bore bore) {
      if (bore.axis() != 0) {
        return moved(bore);
      }
      Length depth = box.extent(0).minus(place(box.high().x()).minus(place(box.low().x())));
      return new Removal.Bore(
          0,
          bore.centre().with(0, place(box.low().x())),
          bore.depth().minus(depth),
          bore.diameter());
    }

    @Override
    public Removal slope(Removal.Slope slope) {
      return moved(slope);
    }

    @Override
    public Removal outline(Removal.Outline outline) {
      return moved(outline);
    }

    private Removal moved(Removal removal) {
      return removal.moved(0, box.low().x().minus(place(box.low().x())));
    }
  }
}
