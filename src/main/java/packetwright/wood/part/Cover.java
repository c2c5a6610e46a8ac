package packetwright.wood.part;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Outline;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.part.Removal.Trough;

/**
 * What all the removals of a solid take together, to hold other removals against.
 *
 * <p>A removal is called taken only where that is certain: it is one of these, or its box falls
 * into boxes of which the troughs take each, or else one slanted or round removal, or several
 * slopes along one axis. So a removal that is taken may rarely be called missed: where round
 * removals, or slopes along different axes, take it only together; where one outline lies within
 * another; and where two outlines differ in nothing but what lies in the air. A missed one is never
 * called taken.
 */
final class Cover {
  private final Box block;
  private final Set<Removal> all;
  private final List<Box> troughs;
  private final List<Bore> bores;
  private final List<Slope> slopes;
  private final List<Outline> outlines;

  private Cover(Box block, List<Removal> removals) {
    this.block = block;
    all = new HashSet<>(removals);
    troughs = of(Trough.class, removals).map(Trough::box).toList();
    bores = of(Bore.class, removals).toList();
    slopes = of(Slope.class, removals).toList();
    outlines = of(Outline.class, removals).toList();
  }

  /** The removals of a solid, those left out that take nothing from its block. */
  static Cover of(Solid solid) {
    Box block = solid.block();
    return new Cover(
        block,
        solid.removals().stream()
            .filter(removal -> removal.around(block) != null)
            .map(removal -> clipped(removal, block))
            .distinct()
            .toList());
  }

  private static <T> Stream<T> of(Class<T> kind, List<Removal> removals) {
    return removals.stream().filter(kind::isInstance).map(kind::cast);
  }

  /** As much of a trough or hole as lies between the sides of the block. */
  private static Removal clipped(Removal removal, Box block) {
    Box around = removal.around(block);
    if (around == null) {
      return removal;
    }
    if (removal instanceof Trough) {
      return new Trough(around);
    }
    return removal instanceof Bore bore
        ? new Bore(
            bore.axis(),
            bore.centre().with(bore.axis(), around.low().on(bore.axis())),
            around.extent(bore.axis()),
            bore.diameter())
        : removal;
  }

  /** What the troughs take. */
  List<Box> troughs() {
    return troughs;
  }

  /** Whether a removal is one of these. */
  boolean has(Removal removal) {
    return all.contains(clipped(removal, block));
  }

  /** A box in which a removal takes what these may leave; none when they take all of it. */
  @Nullable Box missed(Removal removal) {
    Box around = removal.around(block);
    return around == null || has(removal)
        ? null
        : Boxes.firstLeft(around, troughs, box -> isTaken(box, clipped(removal, block)));
  }

  /** Whether slanted and round removals take as much of a box as a removal does. */
  private boolean isTaken(Box box, Removal removal) {
    return !Touch.reaches(removal, box)
        || slopes.stream().mapToInt(Slope::axis).distinct().anyMatch(a -> isSloped(box, removal, a))
        || bores.stream().anyMatch(bore -> Touch.takesAll(bore, box, removal))
        || outlines.stream().anyMatch(outline -> Touch.takesAll(outline, box))
        || slopes.stream().anyMatch(slope -> Touch.takesAll(slope, removal));
  }

  /** Whether slopes along an axis leave nothing of what a removal takes of a box. */
  private boolean isSloped(Box box, Removal removal, int axis) {
    Area left = Area.of(box, axis);
    if (removal instanceof Slope own && own.axis() == axis) {
      left = left.takenBy(own);
    }
    for (Slope slope : slopes) {
      if (slope.axis() == axis) {
        left = left.leftBy(slope);
      }
    }
    return left.isEmpty();
  }
}
