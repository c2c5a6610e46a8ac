package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.drawing.view.Projection;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Part.Feature;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;

/**
 * Which dimensions a part's drawing shows: the block's three, and for each feature where it is,
 * from its reference side, and how large, each once, beside the view that shows its true shape.
 */
final class PartMeasures {
  private final Solid solid;
  private final Map<Band, List<Measure>> bands = new EnumMap<>(Band.class);
  private final Set<Measure> holes = new HashSet<>();

  private PartMeasures(Part part) {
    this.solid = part.solid();
    for (Band band : Band.values()) {
      bands.put(band, new ArrayList<>());
    }
  }

  /** The dimensions of a part by the band that they stand in; none twice in one band. */
  static Map<Band, List<Measure>> of(Part part) {
    PartMeasures measures = new PartMeasures(part);
    for (Feature feature : part.features()) {
      measures.add(feature);
    }
    measures.addBlock();
    return measures.bands;
  }

  private void addBlock() {
    boolean isRight = has(Band.END_RIGHT) && !has(Band.END_LEFT);
    add(Band.FRONT_BELOW, new Measure(0, Length.ZERO, solid.length()));
    add(isRight ? Band.END_RIGHT : Band.END_LEFT, new Measure(1, Length.ZERO, solid.width()));
    add(Band.END_BELOW, new Measure(2, Length.ZERO, solid.thickness()));
  }

  private boolean has(Band band) {
    return !bands.getOrDefault(band, List.of()).isEmpty();
  }

  private void add(Feature feature) {
    List<Sized> sized = new ArrayList<>();
    for (Removal removal : feature.removals()) {
      List<Sized> found =
          removal.match(
              new Removal.Cases<List<Sized>>() {
                @Override
                public List<Sized> trough(Removal.Trough trough) {
                  return of(feature, trough.box());
                }

                @Override
                public List<Sized> bore(Removal.Bore bore) {
                  return of(feature, bore);
                }

                @Override
                public List<Sized> slope(Removal.Slope slope) {
                  return slant(feature);
                }

                @Override
                public List<Sized> outline(Removal.Outline outline) {
                  return curve(feature, outline);
                }
              });
      for (Sized one : found) {
        // The same depth at both ends is one setting: it is shown at the last place only.
        sized.removeIf(s -> s.measure.axis() == 2 && s.measure.equals(one.measure));
        sized.add(one);
      }
    }
    sized.forEach(s -> add(s.band, s.measure));
  }

  private void add(Band band, Measure measure) {
    if (!bands.getOrDefault(band, List.of()).contains(measure)) {
      bands.computeIfAbsent(band, b -> new ArrayList<>()).add(measure);
    }
  }

  private List<Sized> of(Feature feature, Box box) {
    int run = -1;
    Length[] low = new Length[3];
    Length[] high = new Length[3];
    for (int axis = 0; axis < 3; axis++) {
      low[axis] = box.low().on(axis).max(Length.ZERO);
      high[axis] = box.high().on(axis).min(solid.extent(axis));
      if (!low[axis].isLess(high[axis])) {
        return List.of();
      }
      boolean isFull = low[axis].signum() == 0 && high[axis].equals(solid.extent(axis));
      run = isFull && run < 0 ? axis : run;
    }
    List<Sized> sized = new ArrayList<>();
    Place place = new Place(feature, run, isLeft(low[0].plus(high[0])));
    for (int axis = 0; axis < 3; axis++) {
      for (Measure measure : along(axis, low[axis], high[axis], feature.from())) {
        sized.add(new Sized(band(axis, place), measure));
      }
    }
    return sized;
  }

  /** Nothing for the whole extent, a size from an outer side, or a place and a size. */
  private List<Measure> along(int axis, Length low, Length high, @Nullable Side from) {
    Length extent = solid.extent(axis);
    boolean isLow = low.signum() == 0;
    boolean isHigh = high.equals(extent);
    if (isLow && isHigh) {
      return List.of();
    }
    Measure size = new Measure(axis, low, high);
    if (isLow || isHigh) {
      return List.of(size);
    }
    boolean isFromFar = from != null && from.axis() == axis && from.isFar();
    Measure place =
        isFromFar ? new Measure(axis, high, extent) : new Measure(axis, Length.ZERO, low);
    return List.of(place, size);
  }

  private List<Sized> of(Feature feature, Removal.Bore bore) {
    List<Sized> sized = new ArrayList<>();
    Length twice = bore.centre().x().times(2);
    Place place = new Place(feature, bore.axis(), isLeft(twice));
    for (int axis = 0; axis < 3; axis++) {
      if (axis != bore.axis()) {
        Length centre = bore.centre().on(axis);
        Side from = feature.from();
        boolean isFromFar = from != null && from.axis() == axis && from.isFar();
        Measure measure =
            isFromFar
                ? new Measure(axis, centre, solid.extent(axis))
                : new Measure(axis, Length.ZERO, centre);
        // Holes in a row are each located once.
        if (holes.add(measure)) {
          sized.add(new Sized(band(axis, place), measure));
        }
      }
    }
    return sized;
  }

  /** How much shorter a miter, bevel or taper leaves the side where it takes most. */
  private List<Sized> slant(Feature feature) {
    Side at = Side.of(feature.where());
    Side full = feature.from();
    Length by = feature.sizes().get("by");
    if (at == null || full == null || by == null) {
      return List.of();
    }
    Band band =
        switch (full.opposite()) {
          case BOTTOM -> Band.FRONT_BELOW;
          case TOP -> Band.TOP_ABOVE;
          case LEFT -> Band.FRONT_LEFT;
          case RIGHT -> Band.END_LEFT;
          case INSIDE -> at.axis() == 0 ? Band.TOP_ABOVE : Band.END_LEFT;
          case OUTSIDE -> at.axis() == 0 ? Band.TOP_ABOVE : Band.END_RIGHT;
        };
    return List.of(new Sized(band, inward(at, by)));
  }

  private Measure inward(Side from, Length by) {
    List<Length> span = solid.measuredFrom(from, Length.ZERO, by);
    return new Measure(from.axis(), span.get(0), span.get(1));
  }

  /** Where the chord of a curve begins, how long it is, and how deep the curve goes. */
  private List<Sized> curve(Feature feature, Removal.Outline outline) {
    Side edge = Side.of(feature.where());
    Length rise = feature.sizes().get("rise");
    Box reach = outline.reach(solid.block());
    if (edge == null || rise == null || reach == null) {
      return List.of();
    }
    int along = 1 - edge.axis();
    Band chord =
        switch (edge) {
          case BOTTOM -> Band.FRONT_BELOW;
          case TOP -> Band.TOP_ABOVE;
          case LEFT -> Band.FRONT_LEFT;
          default -> Band.END_LEFT;
        };
    List<Sized> sized = new ArrayList<>();
    for (Measure measure : along(along, reach.low().on(along), reach.high().on(along), null)) {
      sized.add(new Sized(chord, measure));
    }
    Band depth = along == 1 ? Band.FRONT_BELOW : Band.FRONT_LEFT;
    sized.add(new Sized(depth, inward(edge, rise)));
    return sized;
  }

  private boolean isLeft(Length twiceMiddle) {
    return twiceMiddle.isLess(solid.length());
  }

  private static Band band(int axis, Place place) {
    boolean isBehind = place.feature.face() == Side.OUTSIDE;
    return switch (axis) {
      case 0 -> isBehind || place.feature.face() == Side.TOP ? Band.TOP_ABOVE : Band.FRONT_BELOW;
      case 1 ->
          place.run == 2 && place.isLeft
              ? Band.FRONT_LEFT
              : isBehind ? Band.END_RIGHT : Band.END_LEFT;
      default -> place.run == 0 ? Band.END_BELOW : place.isLeft ? Band.TOP_LEFT : Band.TOP_RIGHT;
    };
  }

  /** A side of a view along which dimensions stand. */
  enum Band {
    FRONT_BELOW(Projection.FRONT, true, 1),
    FRONT_LEFT(Projection.FRONT, false, -1),
    TOP_ABOVE(Projection.TOP, true, -1),
    TOP_LEFT(Projection.TOP, false, -1),
    TOP_RIGHT(Projection.TOP, false, 1),
    END_LEFT(Projection.END, false, -1),
    END_RIGHT(Projection.END, false, 1),
    END_BELOW(Projection.END, true, 1);

    private final Projection projection;
    private final boolean level;
    private final int outward;

    Band(Projection projection, boolean level, int outward) {
      this.projection = projection;
      this.level = level;
      this.outward = outward;
    }

    Projection projection() {
      return projection;
    }

    /** Whether its dimension lines run across the sheet. */
    boolean isLevel() {
      return level;
    }

    /** 1 below or right of the view, -1 above or left. */
    int outward() {
      return outward;
    }

    static List<Band> of(Projection projection) {
      return Arrays.stream(values()).filter(b -> b.projection == projection).toList();
    }
  }

  /**
   * A distance between two places on one axis of the part.
   *
   * @param axis 0, 1 or 2
   * @param from the lesser
   * @param to the greater
   */
  record Measure(int axis, Length from, Length to) {
    Length value() {
      return to.minus(from);
    }
  }

  private record Sized(Band band, Measure measure) {}

  private record Place(Feature feature, int run, boolean isLeft) {}
}
