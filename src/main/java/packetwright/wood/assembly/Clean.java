package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;

/**
 * Where on a line something may stand.
 *
 * @param runs with both their ends, least first
 */
record Clean(List<Run> runs) {
  Clean {
    runs = List.copyOf(runs);
  }

  /** All places from one to another; none when they are the wrong way round. */
  static Clean between(Length low, Length high) {
    return new Clean(low.isMore(high) ? List.of() : List.of(new Run(low, high)));
  }

  /** Without the places between two, which themselves stay. */
  Clean without(Length low, Length high) {
    List<Run> left = new ArrayList<>();
    for (Run run : runs) {
      if (!low.isLess(run.high()) || !high.isMore(run.low())) {
        left.add(run);
        continue;
      }
      if (!low.isLess(run.low())) {
        left.add(new Run(run.low(), low.min(run.high())));
      }
      if (!high.isMore(run.high())) {
        left.add(new Run(high, run.high()));
      }
    }
    return new Clean(left);
  }

  Clean below(Length most) {
    return isEmpty() ? this : without(most, last().max(most).plus(Length.ofInches(1)));
  }

  Clean above(Length least) {
    return isEmpty() ? this : without(first().min(least).minus(Length.ofInches(1)), least);
  }

  boolean isEmpty() {
    return runs.isEmpty();
  }

  Length first() {
    return runs.get(0).low();
  }

  Length last() {
    return runs.get(runs.size() - 1).high();
  }

  boolean has(Length place) {
    return runs.stream().anyMatch(r -> !place.isLess(r.low()) && !place.isMore(r.high()));
  }

  /** The place from one bound to another that is nearest to a wanted one, the lesser of two. */
  @Nullable Length nearest(Length wanted, Length low, Length high) {
    Length best = null;
    for (Run run : runs) {
      Length begin = run.low().max(low);
      Length end = run.high().min(high);
      if (!begin.isMore(end)) {
        Length here = wanted.max(begin).min(end);
        boolean isNearer =
            best == null || here.minus(wanted).magnitude().isLess(best.minus(wanted).magnitude());
        best = isNearer ? here : best;
      }
    }
    return best;
  }

  /**
   * One stretch.
   *
   * @param low its least place
   * @param high its greatest, not less
   */
  record Run(Length low, Length high) {}
}
