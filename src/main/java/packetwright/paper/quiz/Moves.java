package packetwright.paper.quiz;

import java.math.BigInteger;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Project.Given;
import packetwright.definition.size.Evaluated;
import packetwright.text.formula.Interval;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.source.Located;

/**
 * How far an amount may be moved from the drawn one, in graduations.
 *
 * @param less downwards, 0 or more
 * @param more upwards, 0 or more
 */
record Moves(long less, long more) {
  /** So far at most. */
  private static final long FARTHEST = 8;

  /** So far beyond its worst case goes a size that states no range. */
  private static final long BEYOND = 4;

  /** So far at most, where nothing else bounds it. */
  static final Moves FREE = new Moves(FARTHEST, FARTHEST);

  /**
   * Within the stated range of a given, and near the worst case of anything else; never down to
   * half.
   */
  static Moves of(String name, Evaluated one, int times, Rational drawn, Desk desk) {
    Rational graduation = desk.input().rule().graduation();
    long half = graduations(drawn, graduation, 2 * FARTHEST) / 2;
    Interval range = range(name, one, desk);
    Rational count = Rational.of(times);
    Rational low = drawn.minus(range.low().times(count));
    Rational high = range.high().times(count).minus(drawn);
    return new Moves(
        graduations(low, graduation, Math.min(FARTHEST, half)),
        graduations(high, graduation, Math.min(FARTHEST, Math.max(2, half))));
  }

  /** Whole graduations, 0 or more and so many at most. */
  private static long graduations(Rational length, Rational graduation, long most) {
    BigInteger count = length.dividedBy(graduation).floor();
    return count.max(BigInteger.ZERO).min(BigInteger.valueOf(most)).longValueExact();
  }

  /** Counted in the rule's unit. */
  private static Interval range(String name, Evaluated one, Desk desk) {
    Rational graduation = desk.input().rule().graduation();
    Rational value = desk.inUnit(one.value());
    for (Given given : desk.input().givens()) {
      if (given.name().value().equals(name)) {
        Interval free = Interval.of(value).widened(graduation.times(Rational.of(FARTHEST)));
        return new Interval(
            bound(given.from(), free.low(), desk), bound(given.to(), free.high(), desk));
      }
    }
    return new Interval(desk.inUnit(one.low()), desk.inUnit(one.high()))
        .widened(graduation.times(Rational.of(BEYOND)));
  }

  private static Rational bound(@Nullable Located<Quantity> stated, Rational otherwise, Desk desk) {
    return stated == null ? otherwise : desk.inUnit(stated.value());
  }
}
