package packetwright.wood.caution;

import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.text.formula.Value;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.setup.Setting;

/**
 * What the names that begin with {@code work.} stand for: the cut, as it looks from the machine.
 *
 * @param run the operation
 * @param handWidth width of a hand at that machine
 */
record WorkValues(OperationRun run, Length handWidth) {
  /** The value of a name; lengths are zero and truths false where nothing is cut. */
  @Nullable Value of(String name) {
    Work work = run.work();
    return switch (name) {
      case "fence" -> Value.of(work == null ? Length.ZERO : work.fence());
      case "depth" -> Value.of(work == null ? Length.ZERO : work.depth());
      case "held" -> Value.of(work == null ? Length.ZERO : work.held());
      case "freed" -> Value.of(work == null ? Length.ZERO : work.freed());
      case "hand" -> Value.of(work == null ? Length.ZERO : hand(work));
      case "radius" -> Value.of(radius());
      case "cuts" -> Value.of(work != null);
      case "through" -> Value.of(work != null && work.isThrough());
      case "along" -> Value.of(isFed(Feed.ALONG));
      case "across" -> Value.of(isFed(Feed.ACROSS));
      case "freehand" -> Value.of(isFed(Feed.FREEHAND));
      case "clamped" -> Value.of(isFed(Feed.CLAMPED));
      case "ripped" -> Value.of(work != null && isRipped(work));
      case "end_grain" -> Value.of(run.operation().sides().stream().anyMatch(s -> s.axis() == 0));
      default -> null;
    };
  }

  private boolean isFed(Feed feed) {
    Work work = run.work();
    return work != null && work.feed() == feed;
  }

  /** Between the cutter and a hand that hugs the fence, or that holds the far end. */
  private Length hand(Work work) {
    Length room = work.fence().signum() > 0 ? work.fence() : work.held();
    return room.minus(handWidth).max(Length.ZERO);
  }

  /** Parted along the fence, the blade upright and parallel to it. */
  private boolean isRipped(Work work) {
    return work.isThrough() && work.feed() == Feed.ALONG && !isSet("tilt") && !isSet("angle");
  }

  /** Of the curve that a saw follows: as set, or as its length and rise make it. */
  private Length radius() {
    if (run.operation().verb().value() != Verb.SAW_CURVE) {
      return Length.ZERO;
    }
    Length rise = length("rise");
    if (rise.signum() == 0) {
      return length("radius");
    }
    Rational half = length("length").dividedBy(2).inches();
    Rational high = rise.inches();
    return new Length(
        half.times(half).plus(high.times(high)).dividedBy(high.times(Rational.of(2))));
  }

  private Length length(String setting) {
    return run.settings().stream()
        .filter(s -> s.name().equals(setting))
        .map(s -> s.value().asLength())
        .findFirst()
        .orElse(Length.ZERO);
  }

  private boolean isSet(String setting) {
    return run.settings().stream().map(Setting::name).anyMatch(setting::equals);
  }
}
