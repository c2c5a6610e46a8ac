package packetwright.drawing.figure;

import static packetwright.drawing.part.SampleParts.in;

import java.util.List;
import packetwright.drawing.part.SampleParts;
import packetwright.drawing.sheet.Sheet;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.words.Words;
import packetwright.wood.workpiece.Layout;
import packetwright.wood.workpiece.Layout.Section;

/** The wall blank of the sliding-lid box as it is laid out. */
public final class SampleLayouts {
  private SampleLayouts() {}

  /** So many millimetres, exactly. */
  public static Length millimetres(long count) {
    return new Length(Rational.of(count * 10, 254));
  }

  /** Four walls and the waste after them. */
  public static Layout wall() {
    Length kerf = in(1, 8);
    return new Layout(
        "wall",
        in(35, 1),
        in(7, 2),
        List.of(
            new Section("side 1", "A1", in(0, 1), in(9, 1), kerf, false),
            new Section("side 2", "A2", in(73, 8), in(145, 8), kerf, false),
            new Section("back_end", "B", in(73, 4), in(91, 4), kerf, true),
            new Section("front_end", "C", in(183, 8), in(219, 8), kerf, true),
            new Section("", "", in(55, 2), in(35, 1), Length.ZERO, false)));
  }

  /** The lid and the bottom out of one panel. */
  public static Layout lid() {
    return new Layout(
        "lid",
        in(12, 1),
        in(71, 16),
        List.of(
            new Section("lid", "E", in(0, 1), in(35, 4), in(1, 8), false),
            new Section("", "", in(71, 8), in(12, 1), Length.ZERO, false)));
  }

  /** Both on one sheet, with what is cut into the parts later. */
  public static Sheet together(Rule rule, Words words) {
    return LayoutSheet.drawAll(
            List.of(wall(), lid()),
            List.of(
                SampleParts.side(in(9, 1), in(7, 2)),
                SampleParts.backEnd(in(7, 2)),
                SampleParts.frontEnd(in(7, 2)),
                SampleParts.lid()),
            rule,
            words)
        .named("layout-together");
  }
}
