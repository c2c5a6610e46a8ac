package packetwright.wood.setup;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import packetwright.definition.shop.Shop.CutterSet;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;

/**
 * How a cut of a given width is made with the cutters that the shop has: with one stack, or in
 * several passes with the fence moved between them.
 *
 * @param width of the cutter
 * @param stack what it is put together from, blades first
 * @param offsets of each pass from the first, the first being zero
 */
public record CutterPlan(Length width, List<Length> stack, List<Length> offsets) {
  /** Choices are tried one by one, so their number is bounded; no real set has more. */
  private static final int MOST_BETWEEN = 12;

  private static final int MOST_PASSES = 50;

  /** Keeps its own copies. */
  public CutterPlan {
    stack = List.copyOf(stack);
    offsets = List.copyOf(offsets);
  }

  /**
   * Plans a width. Where no stack makes it, a narrower cutter is moved over: in as few passes as
   * can be, by an amount that is easy to set. Inner passes stand on a graduation unless that would
   * leave a ridge.
   *
   * @param graduation of the project's rule, as a length
   * @return none when even the narrowest cutter is wider, or so narrow that it takes too many
   *     passes
   */
  public static @Nullable CutterPlan of(Length width, CutterSet set, Length graduation) {
    List<List<Length>> cutters = cutters(set);
    List<Length> exact =
        cutters.stream()
            .filter(c -> total(c).equals(width))
            .min(Comparator.comparing(List::size))
            .orElse(null);
    if (exact != null) {
      return new CutterPlan(width, exact, List.of(Length.ZERO));
    }
    List<Length> best =
        cutters.stream()
            .filter(c -> total(c).isLess(width))
            .min(
                Comparator.<List<Length>, BigInteger>comparing(c -> passes(width, total(c)))
                    .thenComparing(c -> width.minus(total(c)).inches().denominator())
                    .thenComparing(CutterPlan::total, Comparator.reverseOrder())
                    .thenComparing(List::size))
            .orElse(null);
    return best == null ? null : inPasses(width, best, graduation);
  }

  /**
   * Plans a width with one of a router's bits: the bit of that width, or else the widest narrower
   * one, moved away from the fence.
   *
   * @return none when no bit is so narrow
   */
  public static @Nullable CutterPlan ofBits(Length width, List<Length> bits, Length graduation) {
    Length widest =
        bits.stream().filter(b -> !b.isMore(width)).max(Comparator.naturalOrder()).orElse(null);
    return widest == null ? null : inPasses(width, List.of(widest), graduation);
  }

  /** A cutter that is already set up, moved over as often as the width needs. */
  public static @Nullable CutterPlan inPasses(Length width, List<Length> stack, Length graduation) {
    Length cutter = total(stack);
    if (width.isMore(cutter.times(MOST_PASSES))) {
      return null;
    }
    int passes = passes(width, cutter).intValueExact();
    List<Length> offsets = new ArrayList<>(List.of(Length.ZERO));
    Length last = width.minus(cutter);
    for (int i = 1; i < passes - 1; i++) {
      // Between these, neither this pass nor those still to come leave a ridge.
      Length least = last.minus(cutter.times(passes - 1L - i));
      Length most = offsets.get(i - 1).plus(cutter);
      Length even = last.times(i).dividedBy(passes - 1L);
      Length onRule = new Length(even.inches().roundedTo(graduation.inches()));
      boolean leavesNoRidge = !onRule.isLess(least) && !onRule.isMore(most);
      offsets.add(leavesNoRidge ? onRule : even.max(least).min(most));
    }
    if (passes > 1) {
      offsets.add(last);
    }
    return new CutterPlan(cutter, stack, offsets);
  }

  private static BigInteger passes(Length width, Length cutter) {
    return width.dividedBy(cutter).ceiling();
  }

  public static Length total(List<Length> stack) {
    return stack.stream().reduce(Length.ZERO, Length::plus);
  }

  /** One outside blade alone, and both with every choice of chippers and shims between them. */
  private static List<List<Length>> cutters(CutterSet set) {
    List<List<Length>> all = new ArrayList<>();
    if (set.outside().inches().equals(Rational.ZERO)) {
      return all;
    }
    all.add(List.of(set.outside()));
    List<Length> between =
        Stream.concat(set.chippers().stream(), set.shims().stream()).limit(MOST_BETWEEN).toList();
    for (int choice = 0; choice < 1 << between.size(); choice++) {
      List<Length> stack = new ArrayList<>(List.of(set.outside(), set.outside()));
      for (int i = 0; i < between.size(); i++) {
        if ((choice >> i & 1) == 1) {
          stack.add(between.get(i));
        }
      }
      all.add(stack);
    }
    return all;
  }
}
