package packetwright.drawing.figure;

import static packetwright.drawing.part.SampleParts.in;

import java.util.List;
import packetwright.drawing.part.SampleParts;
import packetwright.drawing.view.Placed;
import packetwright.drawing.view.Placed.Heading;
import packetwright.text.measure.Length;
import packetwright.wood.part.Part;
import packetwright.wood.part.Point;

/** The sliding-lid box put together. */
public final class SampleBox {
  private static final Length NONE = Length.ZERO;

  private SampleBox() {}

  private static Placed place(Part part, Point corner, String inside, String top, Point shift) {
    return new Placed(
        part.letter(), part.solid(), corner, Heading.of(inside), Heading.of(top), shift);
  }

  /** The box with its lid slid so far along x. */
  public static List<Placed> placed(Length lid) {
    return placed(List.of(NONE, NONE, NONE, NONE), new Point(lid, NONE, NONE));
  }

  /** Every piece away from the next. */
  public static List<Placed> exploded() {
    return placed(
        List.of(in(-3, 1), in(3, 1), in(3, 1), in(-3, 1)), new Point(NONE, NONE, in(4, 1)));
  }

  /** A stool: a rounded seat over two arched legs and a tapered rail, a nest floor beside it. */
  public static List<Placed> stool() {
    return List.of(
        place(
            SampleParts.leg(),
            new Point(in(2, 1), in(1, 2), NONE),
            "+x",
            "+y",
            new Point(NONE, NONE, NONE)),
        place(
            SampleParts.leg(),
            new Point(in(13, 1), in(1, 2), NONE),
            "-x",
            "-y",
            new Point(NONE, NONE, NONE)),
        place(
            SampleParts.seat(),
            new Point(NONE, NONE, in(10, 1)),
            "+z",
            "+y",
            new Point(NONE, NONE, in(4, 1))),
        place(
            SampleParts.taperedRail(),
            new Point(in(2, 1), in(-6, 1), NONE),
            "-y",
            "+z",
            new Point(NONE, NONE, NONE)),
        place(
            SampleParts.nestFloor(),
            new Point(in(16, 1), in(-6, 1), NONE),
            "+z",
            "+y",
            new Point(NONE, NONE, NONE)),
        place(
            SampleParts.nestSide(),
            new Point(in(20, 1), in(3, 1), NONE),
            "-x",
            "+y",
            new Point(NONE, NONE, NONE)));
  }

  private static List<Placed> placed(List<Length> away, Point lid) {
    Part side = SampleParts.side(in(9, 1), in(7, 2));
    Part back = SampleParts.backEnd(in(7, 2));
    Part front = SampleParts.frontEnd(in(47, 16));
    Length play = in(9, 32);
    return List.of(
        place(side, new Point(NONE, NONE, NONE), "+y", "+z", new Point(NONE, away.get(0), NONE)),
        place(
            side, new Point(NONE, in(9, 2), NONE), "-y", "+z", new Point(NONE, away.get(1), NONE)),
        place(
            back,
            new Point(in(17, 2), in(1, 4), NONE),
            "-x",
            "+z",
            new Point(away.get(2), NONE, NONE)),
        place(
            front, new Point(NONE, in(1, 4), NONE), "+x", "+z", new Point(away.get(3), NONE, NONE)),
        place(
            SampleParts.bottom(),
            new Point(in(9, 32), play, in(1, 4)),
            "+z",
            "+y",
            new Point(NONE, NONE, NONE)),
        place(SampleParts.lid(), new Point(NONE, play, in(95, 32)), "-z", "+y", lid));
  }
}
