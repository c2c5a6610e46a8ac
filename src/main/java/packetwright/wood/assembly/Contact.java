package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;

/**
 * A flat surface that two pieces have in common, and through which a fastener may go from one into
 * the other.
 *
 * @param driven the piece that it goes through
 * @param into the piece that it holds in
 * @param way where it points
 * @param low the surface's corner with the least coordinates
 * @param high the corner with the greatest, as far along the way as {@code low}
 * @param area in square inches
 */
record Contact(Placed driven, Placed into, Direction way, Point low, Point high, Rational area) {
  /** Of two pieces, either way: the largest first, then the one that is quicker through. */
  static List<Contact> between(Placed first, Placed second) {
    List<Contact> contacts = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      for (boolean isPositive : new boolean[] {true, false}) {
        contacts.addAll(along(new Direction(axis, isPositive), first, second));
      }
    }
    contacts.sort(Comparator.comparing(Contact::area).reversed().thenComparing(Contact::through));
    return contacts;
  }

  /** Surfaces of the first behind which, that way, the second lies. */
  private static List<Contact> along(Direction way, Placed first, Placed second) {
    Map<Length, Contact> byPlace = new LinkedHashMap<>();
    int axis = way.axis();
    for (Box one : first.wood()) {
      for (Box other : second.wood()) {
        Length at = way.isPositive() ? one.high().on(axis) : one.low().on(axis);
        Length behind = way.isPositive() ? other.low().on(axis) : other.high().on(axis);
        Contact contact = at.equals(behind) ? of(way, first, second, List.of(one, other)) : null;
        if (contact != null) {
          byPlace.merge(at, contact, Contact::plus);
        }
      }
    }
    List<Contact> both = new ArrayList<>();
    for (Contact contact : byPlace.values()) {
      both.add(contact);
      Direction back = new Direction(axis, !way.isPositive());
      both.add(new Contact(second, first, back, contact.low(), contact.high(), contact.area()));
    }
    return both;
  }

  private static @org.jspecify.annotations.Nullable Contact of(
      Direction way, Placed driven, Placed into, List<Box> boxes) {
    Box one = boxes.get(0);
    Box other = boxes.get(1);
    Length at = way.isPositive() ? one.high().on(way.axis()) : one.low().on(way.axis());
    Point low = one.low().with(way.axis(), at);
    Point high = one.high().with(way.axis(), at);
    Rational area = Rational.ONE;
    for (int axis = 0; axis < 3; axis++) {
      if (axis != way.axis()) {
        low = low.with(axis, low.on(axis).max(other.low().on(axis)));
        high = high.with(axis, high.on(axis).min(other.high().on(axis)));
        if (!low.on(axis).isLess(high.on(axis))) {
          return null;
        }
        area = area.times(high.on(axis).minus(low.on(axis)).inches());
      }
    }
    return new Contact(driven, into, way, low, high, area);
  }

  private Contact plus(Contact other) {
    Point least = low;
    Point most = high;
    for (int axis = 0; axis < 3; axis++) {
      least = least.with(axis, least.on(axis).min(other.low.on(axis)));
      most = most.with(axis, most.on(axis).max(other.high.on(axis)));
    }
    return new Contact(driven, into, way, least, most, area.plus(other.area));
  }

  /** How thick the piece is that a fastener goes through here. */
  Length through() {
    return place().minus(entry()).magnitude();
  }

  /** How much of the other piece lies behind the surface. */
  Length behind() {
    Box block = into.block();
    Length end = way.isPositive() ? block.high().on(way.axis()) : block.low().on(way.axis());
    return end.minus(place()).magnitude();
  }

  /** Where the surface lies along the way. */
  Length place() {
    return low.on(way.axis());
  }

  /** Where along the way a fastener's head is. */
  Length entry() {
    Box block = driven.block();
    return way.isPositive() ? block.low().on(way.axis()) : block.high().on(way.axis());
  }

  /** Where along the way the point of a fastener of that length is. */
  Length tip(Length length) {
    return way.isPositive() ? entry().plus(length) : entry().minus(length);
  }

  /** The axis along which the surface is longest; of two the lesser. */
  int along() {
    int one = way.axis() == 0 ? 1 : 0;
    int other = 3 - way.axis() - one;
    Length first = high.on(one).minus(low.on(one));
    return first.isLess(high.on(other).minus(low.on(other))) ? other : one;
  }

  /** The axis across {@link #along} and the way. */
  int across() {
    return 3 - way.axis() - along();
  }

  /** Where the surface's middle line lies across it. */
  Length middle() {
    return low.on(across()).plus(high.on(across())).dividedBy(2);
  }
}
