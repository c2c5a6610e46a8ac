package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Difference;
import packetwright.wood.part.Part;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Outline;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.workpiece.Workpiece;

/** In what a feature as made is off from the one drawn: its size, or else its place. */
final class Misfit {
  private static final String UNKNOWN = "not as drawn";

  private final Function<Length, String> print;
  private final Part.Feature feature;
  private final Box block;

  private Misfit(Function<Length, String> print, Part.Feature feature, Box block) {
    this.print = print;
    this.feature = feature;
    this.block = block;
  }

  /**
   * In words, to follow the feature's name: {@code 1/64 in too deep: 17/64 in and not 1/4 in}.
   *
   * @param feature that the difference is about, as drawn on that piece
   * @param maker the operation that made it
   */
  static String words(
      Function<Length, String> print,
      Part.Feature feature,
      Workpiece piece,
      Difference difference,
      int maker) {
    Box block = piece.solid().block();
    Removal drawn = difference.drawn();
    Box around = drawn == null ? null : drawn.around(block);
    Box made = drawn == null || around == null ? null : made(piece, drawn, difference, maker);
    return drawn == null || around == null || made == null
        ? UNKNOWN
        : new Misfit(print, feature, block).words(drawn, around, made);
  }

  /**
   * The box around all that an operation took where something is drawn, in however many passes; or
   * around what it took in its stead.
   */
  private static @Nullable Box made(
      Workpiece piece, Removal drawn, Difference difference, int maker) {
    Box block = piece.solid().block();
    Box wanted = drawn.around(block);
    List<Box> near = new ArrayList<>();
    List<Removal> removals = piece.solid().removals();
    for (int i = 0; i < removals.size(); i++) {
      Box box = removals.get(i).around(block);
      if (piece.history().removals().get(i) == maker
          && removals.get(i).getClass() == drawn.getClass()
          && box != null
          && wanted != null
          && box.overlaps(wanted)) {
        near.add(box);
      }
    }
    Box instead = difference.made() == null ? null : difference.made().around(block);
    return near.stream().reduce(Misfit::together).orElse(instead);
  }

  private static Box together(Box one, Box other) {
    Box both = one;
    for (int axis = 0; axis < 3; axis++) {
      both =
          new Box(
              both.low().with(axis, both.low().on(axis).min(other.low().on(axis))),
              both.high().with(axis, both.high().on(axis).max(other.high().on(axis))));
    }
    return both;
  }

  private String words(Removal drawn, Box wanted, Box made) {
    for (int axis = 2; axis >= 0; axis--) {
      Length over = made.extent(axis).minus(wanted.extent(axis));
      if (over.signum() != 0) {
        return measure(
            over, sizeWord(drawn, axis, over.signum() > 0), made.extent(axis), wanted.extent(axis));
      }
    }
    for (int axis = 2; axis >= 0; axis--) {
      if (!made.low().on(axis).equals(wanted.low().on(axis))) {
        return place(drawn, axis, wanted, made);
      }
    }
    return UNKNOWN;
  }

  private String measure(Length over, String word, Length made, Length wanted) {
    return "%s too %s: %s and not %s"
        .formatted(print.apply(over.magnitude()), word, print.apply(made), print.apply(wanted));
  }

  private String sizeWord(Removal drawn, int axis, boolean isMore) {
    boolean isSlanted = drawn instanceof Slope || drawn instanceof Outline;
    if (isSlanted || (drawn instanceof Bore bore && bore.axis() != axis)) {
      return isMore ? "large" : "small";
    }
    if (axis == feature.face().axis()) {
      return isMore ? "deep" : "shallow";
    }
    Side located = feature.from() == null ? Side.of(feature.where()) : feature.from();
    boolean isWidth = located == null ? axis == 0 : located.axis() == axis;
    return isWidth ? (isMore ? "wide" : "narrow") : (isMore ? "long" : "short");
  }

  /** Measured from where the feature is; of a hole to its centre, of others to the near side. */
  private String place(Removal drawn, int axis, Box wanted, Box made) {
    Side from = feature.from();
    Side side = from != null && from.axis() == axis ? from : lowSide(axis);
    Length half = drawn instanceof Bore ? wanted.extent(axis).dividedBy(2) : Length.ZERO;
    Length is = inset(made, side).plus(half);
    Length shouldBe = inset(wanted, side).plus(half);
    boolean isFar = is.isMore(shouldBe);
    return measure(
        is.minus(shouldBe),
        (isFar ? "far from the " : "near the ") + Listing.side(side),
        is,
        shouldBe);
  }

  private Length inset(Box box, Side side) {
    int axis = side.axis();
    return side.isFar() ? block.high().on(axis).minus(box.high().on(axis)) : box.low().on(axis);
  }

  private static Side lowSide(int axis) {
    return axis == 0 ? Side.LEFT : axis == 1 ? Side.BOTTOM : Side.OUTSIDE;
  }
}
