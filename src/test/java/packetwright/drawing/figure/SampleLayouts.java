package packetwright.drawing.figure;

import static packetwright.drawing.part.SampleParts.in;

import java.util.List;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
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
}
