package packetwright.drawing.sheet;

import java.util.List;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/**
 * A preferred scale: drawn size over true size is 1 over {@code reduction}.
 *
 * @param reduction 1 for full size
 */
record PartScale(int reduction) {
  private static final List<Integer> INCH = List.of(1, 2, 4, 8, 16, 32, 64);
  private static final List<Integer> METRIC = List.of(1, 2, 5, 10, 20, 50, 100);

  /** Those of a unit's drawings, the largest first. */
  static List<PartScale> preferred(Unit unit) {
    return (unit == Unit.INCH ? INCH : METRIC).stream().map(PartScale::new).toList();
  }

  /** Points on paper for an inch of wood. */
  double pointsPerInch() {
    return 72.0 / reduction;
  }

  /** As the title strip prints it. */
  Phrase phrase(Unit unit, Words words) {
    if (unit != Unit.INCH) {
      return words.say("sheet.scale.ratio", (long) reduction);
    }
    return reduction == 1
        ? words.say("sheet.scale.full")
        : words.say("sheet.scale.inch", (long) reduction);
  }
}
