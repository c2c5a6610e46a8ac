package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.drawing.view.Projection;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part.Feature;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;

/**
 * Which dimensions a part's drawing shows: the block's three, and for each feature where it is,
 * from its reference side, and how large, each once, beside the view that shows its true shape. No
 * dimension can be reckoned from others in the same view. Lines that are drawn on one line in one
 * view are one place.
 */
final class PartMeasures {
  private final Showing showing;
  private final Solid solid;
  private final Map<Projection, Places> drawn = new EnumMap<>(Projection.class);
  private final Map<Band, List<Measure>> bands = new EnumMap<>(Band.class);
  private final Map<Node, Node> known = new LinkedHashMap<>();
  private boolean isComplete = true;

  private PartMeasures(Showing showing) {
    this.showing = showing;
    this.solid = showing.part().solid();
    showing.views().forEach((projection, view) -> drawn.put(projection, Places.of(view)));
    for (Band band : Band.values()) {
      bands.put(band, new ArrayList<>());
    }
  }

  /** The dimensions of a part as it is shown. */
  static PartMeasures of(Showing showing) {
    return of(showing, showing);
  }

  /**
   * The same.
   *
   * @param whole with every view, which tells what there is to be shown
   */
  static PartMeasures of(Showing showing, Showing whole) {
    PartMeasures measures = new PartMeasures(showing);
    for (int axis = 0; axis < 3; axis++) {
      measures.join(new Node(axis, null, Length.ZERO), measures.end(axis));
    }
    showing.part().features().forEach(measures::add);
    measures.addMissing(whole);
    measures.addBlock();
    return measures;
  }

  /** By the band that they stand in. */
  Map<Band, List<Measure>> bands() {
    return bands;
  }

  /** Whether every place in the part is given. */
  boolean isComplete() {
    return isComplete;
  }

  /** Whether no view shows the thickness, so that it is said in words. */
  boolean isThicknessSaid() {
    return !showing.has(Projection.END) && !showing.has(Projection.TOP);
  }

  private void addBlock() {
    bands(Band.FRONT_BELOW).add(new Measure(0, Length.ZERO, solid.length()));
    Band width =
        List.of(Band.END_LEFT, Band.END_RIGHT, Band.FRONT_RIGHT, Band.FRONT_LEFT).stream()
            .filter(band -> !bands(band).isEmpty())
            .findFirst()
            .orElse(showing.has(Projection.END) ? Band.END_LEFT : Band.FRONT_LEFT);
    bands(width).add(new Measure(1, Length.ZERO, solid.width()));
    if (!isThicknessSaid()) {
      Band thickness =
          showing.has(Projection.END)
              ? Band.END_BELOW
              : bands(Band.TOP_LEFT).isEmpty() ? Band.TOP_RIGHT : Band.TOP_LEFT;
      bands(thickness).add(new Measure(2, Length.ZERO, solid.thickness()));
    }
  }

  private List<Measure> bands(Band band) {
    return Objects.requireNonNull(bands.get(band));
  }

  private void add(Feature feature) {
    List<Sized> sized = new ArrayList<>();
    for (Removal removal : feature.removals()) {
      for (Sized one : removal.match(new Sizes(feature))) {
        // The same depth at both ends is one setting: it is shown at the last place only.
        sized.removeIf(s -> s.measure.axis() == 2 && s.measure.equals(one.measure));
        sized.add(one);
      }
    }
    sized.forEach(this::place);
  }

  /** Puts a dimension where both its ends can be seen, or else are drawn. */
  private boolean place(Sized sized) {
    Measure measure = sized.measure;
    List<Band> suitable = new ArrayList<>(List.of(sized.band));
    Band.along(measure.axis()).stream().filter(b -> b != sized.band).forEach(suitable::add);
    suitable.removeIf(band -> !showing.has(band.projection()));
    Band band = suited(sized, suitable);
    if (band == null) {
      return false;
    }
    Node from = node(band.projection(), measure.axis(), measure.from());
    Node to = node(band.projection(), measure.axis(), measure.to());
    if (!root(from).equals(root(to))) {
      join(from, to);
      bands(band).add(measure);
    }
    return true;
  }

  private @Nullable Band suited(Sized sized, List<Band> suitable) {
    if (sized.isForced && suitable.contains(sized.band)) {
      return sized.band;
    }
    Measure measure = sized.measure;
    return suitable.stream()
        .filter(b -> isSeen(b, measure.from()) && isSeen(b, measure.to()))
        .findFirst()
        .or(
            () ->
                suitable.stream()
                    .filter(b -> isDrawn(b, measure.from()) && isDrawn(b, measure.to()))
                    .findFirst())
        .orElse(null);
  }

  private boolean isSeen(Band band, Length at) {
    return places(band).isSeen(band.isLevel(), showing.onPaper(band.projection(), band.axis(), at));
  }

  private boolean isDrawn(Band band, Length at) {
    return places(band)
        .isDrawn(band.isLevel(), showing.onPaper(band.projection(), band.axis(), at));
  }

  private Places places(Band band) {
    return Objects.requireNonNull(drawn.get(band.projection()));
  }

  /** Locates what is drawn and is not located yet: where features meet or swallow one another. */
  private void addMissing(Showing whole) {
    PartMeasures all = new PartMeasures(whole);
    for (Feature feature : showing.part().features()) {
      for (Removal removal : feature.removals()) {
        Box box = removal instanceof Removal.Trough ? removal.around(solid.block()) : null;
        for (int axis = 0; box != null && axis < 3; axis++) {
          for (Length at : List.of(box.low().on(axis), box.high().on(axis))) {
            if (!isKnown(axis, at) && all.isDrawnAnywhere(axis, at)) {
              isComplete &=
                  place(
                      new Sized(band(axis, of(feature, box)), fromSide(feature, axis, at), false));
            }
          }
        }
      }
    }
  }

  private boolean isDrawnAnywhere(int axis, Length at) {
    return Band.along(axis).stream()
        .anyMatch(band -> showing.has(band.projection()) && isDrawn(band, at));
  }

  private boolean isKnown(int axis, Length at) {
    return showing.views().keySet().stream()
        .anyMatch(p -> root(node(p, axis, at)).equals(root(end(axis))));
  }

  private Node node(Projection projection, int axis, Length at) {
    boolean isOuter = at.signum() == 0 || at.equals(solid.extent(axis));
    return new Node(axis, isOuter ? null : projection, at);
  }

  private Node end(int axis) {
    return new Node(axis, null, solid.extent(axis));
  }

  private Node root(Node node) {
    Node up = known.get(node);
    return up == null ? node : root(up);
  }

  private void join(Node one, Node other) {
    Node from = root(one);
    Node to = root(other);
    if (!from.equals(to)) {
      known.put(from, to);
    }
  }

  /**
   * From the side that a feature is located from, or the lesser one.
   *
   * @param at a place between the two sides
   */
  private Measure fromSide(Feature feature, int axis, Length at) {
    Side from = feature.from();
    boolean isFromFar = from != null && from.axis() == axis && from.isFar();
    return isFromFar
        ? new Measure(axis, at, solid.extent(axis))
        : new Measure(axis, Length.ZERO, at);
  }

  private Measure inward(Side from, Length by) {
    List<Length> span = solid.measuredFrom(from, Length.ZERO, by);
    return new Measure(from.axis(), span.get(0), span.get(1));
  }

  private Place of(Feature feature, Box box) {
    return new Place(feature, Showing.run(solid, box), isLeft(box.low().x().plus(box.high().x())));
  }

  private boolean isLeft(Length twiceMiddle) {
    return twiceMiddle.isLess(solid.length());
  }

  /** Where a dimension of a feature belongs, before it is known whether it can be seen there. */
  private Band band(int axis, Place place) {
    boolean isBehind = place.feature.face() == Side.OUTSIDE;
    boolean isInFront = place.run == 2 || !showing.has(Projection.END);
    boolean isAtEnd = place.run == 0 || !showing.has(Projection.TOP);
    return switch (axis) {
      case 0 -> isBehind || place.feature.face() == Side.TOP ? Band.TOP_ABOVE : Band.FRONT_BELOW;
      case 1 ->
          isInFront
              ? (place.isLeft ? Band.FRONT_LEFT : Band.FRONT_RIGHT)
              : isBehind ? Band.END_RIGHT : Band.END_LEFT;
      default -> isAtEnd ? Band.END_BELOW : place.isLeft ? Band.TOP_LEFT : Band.TOP_RIGHT;
    };
  }

  /** The dimensions of one feature. */
  private final class Sizes implements Removal.Cases<List<Sized>> {
    private final Feature feature;

    Sizes(Feature feature) {
      this.feature = feature;
    }

    @Override
    public List<Sized> trough(Removal.Trough trough) {
      Box box = trough.around(solid.block());
      List<Sized> sized = new ArrayList<>();
      for (int axis = 0; box != null && axis < 3; axis++) {
        for (Measure measure : along(axis, box.low().on(axis), box.high().on(axis))) {
          sized.add(new Sized(band(axis, of(feature, box)), measure, false));
        }
      }
      return sized;
    }

    /** Nothing for the whole extent, a size from an outer side, or a size and a place. */
    private List<Measure> along(int axis, Length low, Length high) {
      boolean isLow = low.signum() == 0;
      boolean isHigh = high.equals(solid.extent(axis));
      if (isLow && isHigh) {
        return List.of();
      }
      Measure size = new Measure(axis, low, high);
      if (isLow || isHigh) {
        return List.of(size);
      }
      Side from = feature.from();
      boolean isFromFar = from != null && from.axis() == axis && from.isFar();
      return List.of(size, fromSide(feature, axis, isFromFar ? high : low));
    }

    @Override
    public List<Sized> bore(Removal.Bore bore) {
      List<Sized> sized = new ArrayList<>();
      boolean isLeft = isLeft(bore.centre().x().times(2));
      for (int axis = 0; axis < 3; axis++) {
        if (axis != bore.axis()) {
          Band band =
              switch (bore.axis()) {
                case 2 ->
                    axis == 0 ? Band.FRONT_BELOW : isLeft ? Band.FRONT_LEFT : Band.FRONT_RIGHT;
                case 1 -> axis == 0 ? Band.TOP_ABOVE : isLeft ? Band.TOP_LEFT : Band.TOP_RIGHT;
                default -> axis == 1 ? Band.END_LEFT : Band.END_BELOW;
              };
          sized.add(new Sized(band, fromSide(feature, axis, bore.centre().on(axis)), true));
        }
      }
      return sized;
    }

    /** How much shorter a miter, bevel or taper leaves the side where it takes most. */
    @Override
    public List<Sized> slope(Removal.Slope slope) {
      Side at = Side.of(feature.where());
      Side full = feature.from();
      Length by = feature.sizes().get("by");
      if (at == null || full == null || by == null) {
        return List.of();
      }
      Band band =
          switch (full.opposite()) {
            case BOTTOM -> Band.FRONT_BELOW;
            case TOP -> Band.FRONT_ABOVE;
            case LEFT -> Band.FRONT_LEFT;
            case RIGHT -> Band.FRONT_RIGHT;
            case INSIDE -> at.axis() == 0 ? Band.TOP_ABOVE : Band.END_LEFT;
            case OUTSIDE -> at.axis() == 0 ? Band.TOP_ABOVE : Band.END_RIGHT;
          };
      return List.of(new Sized(band, inward(at, by), true));
    }

    /** Where the chord of a curve begins, how long it is, and how deep the curve goes. */
    @Override
    public List<Sized> outline(Removal.Outline outline) {
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
            case TOP -> Band.FRONT_ABOVE;
            case LEFT -> Band.FRONT_LEFT;
            default -> Band.FRONT_RIGHT;
          };
      List<Sized> sized = new ArrayList<>();
      for (Measure measure : along(along, reach.low().on(along), reach.high().on(along))) {
        sized.add(new Sized(chord, measure, true));
      }
      Band depth = along == 1 ? Band.FRONT_BELOW : Band.FRONT_LEFT;
      sized.add(new Sized(depth, inward(edge, rise), true));
      return sized;
    }
  }

  /**
   * A dimension and where it belongs.
   *
   * @param isForced whether it belongs there though no line ends where it is measured to
   */
  private record Sized(Band band, Measure measure, boolean isForced) {}

  private record Place(Feature feature, int run, boolean isLeft) {}

  /**
   * A place on an axis as one view shows it; the outer sides are the same in all.
   *
   * @param projection none for an outer side
   */
  private record Node(int axis, @Nullable Projection projection, Length at) {}
}
