package packetwright.definition.shop;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;

/**
 * Between what each value of a machine lies in any classroom: a number in the wrong unit, 3 for 3
 * mm, is 25 times too large or too small. Wide on purpose: common practice, no source.
 *
 * @param unit of bare numbers in the profile
 */
record MachineValues(Unit unit) {
  private static final Map<String, Range> RANGES =
      Map.ofEntries(
          Map.entry("kerf", range(1, 64, 1)),
          Map.entry("held_shortest", range(1, 1, 120)),
          Map.entry("clamped_shortest", range(1, 1, 120)),
          Map.entry("rip_shortest", range(1, 1, 120)),
          Map.entry("gauge_shortest", range(1, 1, 120)),
          Map.entry("shortest", range(1, 1, 120)),
          Map.entry("rip_narrowest", range(1, 4, 24)),
          Map.entry("narrowest", range(1, 8, 24)),
          Map.entry("thinnest", range(1, 32, 12)),
          Map.entry("face_thinnest", range(1, 32, 12)),
          Map.entry("widest", range(2, 1, 120)),
          Map.entry("thickest", range(1, 2, 60)),
          Map.entry("longest", range(6, 1, 600)),
          Map.entry("depth_per_pass", range(1, 1000, 12)),
          Map.entry("deepest", range(1, 16, 24)),
          Map.entry("hand_distance", range(1, 1, 36)),
          Map.entry("hand_width", range(2, 1, 8)),
          Map.entry("push_stick_at", range(3, 1, 36)),
          Map.entry("push_block_at", range(1, 1, 36)),
          Map.entry("blade_above", range(1, 16, 1)),
          Map.entry("offcut_shortest", range(1, 2, 24)),
          Map.entry("strip_narrowest", range(1, 16, 6)),
          Map.entry("overhang", range(6, 1, 120)),
          Map.entry("stack_widest", range(1, 4, 2)),
          Map.entry("radius", range(1, 16, 48)),
          Map.entry("throat", range(2, 1, 72)));

  /** All lengths from one to another, in inches, both included. */
  private record Range(Length low, Length high) {
    boolean holds(Length value) {
      return !value.isLess(low) && !value.isMore(high);
    }
  }

  private static Range range(long numerator, long denominator, long high) {
    return new Range(Length.ofInches(numerator, denominator), Length.ofInches(high));
  }

  /** What is wrong with a value, or nothing; a value of zero states none. */
  @Nullable Finding check(String name, Located<Length> value) {
    Range range = RANGES.get(name);
    if (range == null || value.value().signum() == 0 || range.holds(value.value())) {
      return null;
    }
    return Finding.error(
        "value-out-of-range",
        value.at(),
        "`%s` is %s, and lies between %s and %s in any classroom"
            .formatted(name, print(value.value()), print(range.low()), print(range.high())),
        hint(range, value.value()));
  }

  /** The same number in the other unit, where that would be possible. */
  private String hint(Range range, Length value) {
    boolean isInch = unit == Unit.INCH;
    Unit other = isInch ? Unit.MILLIMETRE : Unit.INCH;
    Rational number = value.inches().dividedBy(unit.inBase());
    Length meant = new Length(number.times(other.inBase()));
    return range.holds(meant)
        ? "write `" + new Rule(Rational.ONE, other).printExactly(meant) + "` if you mean that"
        : "look at the machine's manual, and write the unit beside the number";
  }

  private String print(Length length) {
    return new Rule(Rational.ONE, unit).printExactly(length).toString();
  }
}
