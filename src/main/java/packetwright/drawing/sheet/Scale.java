package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import packetwright.text.measure.Length;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/**
 * A preferred scale: drawn size over true size is {@code enlarged} over {@code reduced}, one of
 * them being 1.
 *
 * @param enlarged 1 but for what is drawn larger than it is
 * @param reduced 1 for full size
 */
public record Scale(int enlarged, int reduced) {
  private static final List<Integer> INCH = List.of(1, 2, 4, 8, 16, 32, 64);
  private static final List<Integer> METRIC = List.of(1, 2, 5, 10, 20, 50, 100);

  /** From full size down, the largest first. */
  public static List<Scale> reducing(Unit unit) {
    return (unit == Unit.INCH ? INCH : METRIC).stream().map(by -> new Scale(1, by)).toList();
  }

  /** For what is too small to see at its own size, the largest first. */
  public static List<Scale> enlarging(Unit unit) {
    List<Scale> scales = new ArrayList<>(List.of(new Scale(unit == Unit.INCH ? 4 : 5, 1)));
    scales.add(new Scale(2, 1));
    scales.addAll(reducing(unit));
    return List.copyOf(scales);
  }

  /** Points on paper for an inch of wood. */
  public double pointsPerInch() {
    return 72.0 * enlarged / reduced;
  }

  /** The same for a length. */
  public double points(Length length) {
    return length.inches().approximate() * pointsPerInch();
  }

  /** As it is printed under a figure or in a title strip. */
  public Phrase phrase(Unit unit, Words words) {
    if (unit != Unit.INCH) {
      return enlarged > 1
          ? words.say("setup.scale.ratio", (long) enlarged)
          : words.say("sheet.scale.ratio", (long) reduced);
    }
    return enlarged > 1
        ? words.say("setup.scale.times", (long) enlarged)
        : reduced == 1
            ? words.say("sheet.scale.full")
            : words.say("sheet.scale.inch", (long) reduced);
  }
}
