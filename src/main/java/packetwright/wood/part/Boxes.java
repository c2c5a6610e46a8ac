package packetwright.wood.part;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** A box without what other boxes take from it, as boxes that do not overlap. */
final class Boxes {
  private static final Comparator<Box> IN_ORDER =
      Comparator.comparing((Box box) -> box.low().x())
          .thenComparing(box -> box.low().y())
          .thenComparing(box -> box.low().z());

  private Boxes() {}

  /** A part of the whole, and the first of the taken boxes that it has not been held against. */
  private record Rest(Box box, int next) {}

  /** All that is left, in the order of x, then y, then z. */
  static List<Box> left(Box whole, List<Box> taken) {
    List<Box> left = new ArrayList<>();
    firstLeft(whole, taken, left::add);
    left.sort(IN_ORDER);
    return left;
  }

  /** The first box that is left and not allowed to be, or none. */
  static @Nullable Box firstLeft(Box whole, List<Box> taken, Predicate<Box> isAllowed) {
    List<Box> near = taken.stream().filter(box -> box.overlaps(whole)).toList();
    Deque<Rest> open = new ArrayDeque<>(List.of(new Rest(whole, 0)));
    while (!open.isEmpty()) {
      Rest rest = open.pop();
      int next = rest.next();
      while (next < near.size() && !near.get(next).overlaps(rest.box())) {
        next++;
      }
      if (next == near.size()) {
        if (!isAllowed.test(rest.box())) {
          return rest.box();
        }
      } else {
        for (Box piece : split(rest.box(), near.get(next))) {
          open.push(new Rest(piece, next + 1));
        }
      }
    }
    return null;
  }

  /** A box without another that it overlaps: at most two pieces on each axis. */
  private static List<Box> split(Box box, Box taken) {
    List<Box> pieces = new ArrayList<>();
    Box rest = box;
    for (int axis = 0; axis < 3; axis++) {
      if (rest.low().on(axis).isLess(taken.low().on(axis))) {
        pieces.add(new Box(rest.low(), rest.high().with(axis, taken.low().on(axis))));
        rest = new Box(rest.low().with(axis, taken.low().on(axis)), rest.high());
      }
      if (taken.high().on(axis).isLess(rest.high().on(axis))) {
        pieces.add(new Box(rest.low().with(axis, taken.high().on(axis)), rest.high()));
        rest = new Box(rest.low(), rest.high().with(axis, taken.high().on(axis)));
      }
    }
    return pieces;
  }
}
