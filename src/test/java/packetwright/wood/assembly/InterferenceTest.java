package packetwright.wood.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Shapes;
import packetwright.wood.part.Solid;

/** Overlaps, gaps and slides against sampling: places of a raster that lies off every face. */
class InterferenceTest {
  private static final double STEP = 0.125;
  private static final double END = 7;

  @Property(tries = 25, seed = "11")
  void findsAnOverlapWhereAndOnlyWhereAPlaceIsInBoth(@ForAll long seed) {
    Random random = new Random(seed);
    Placed one = TestPieces.randomPiece("one", random);
    Placed other = TestPieces.randomPiece("other", random);
    Box shared = FitCheck.shared(one, other);
    boolean isSampled = isShared(one, other, new double[] {0, 0, 0}, new double[] {END, END, END});
    if (isSampled) {
      assertThat(shared).isNotNull();
    }
    if (shared != null) {
      assertThat(isShared(one, other, values(shared, true), values(shared, false))).isTrue();
    }
  }

  /** In 40 steps each way, of the places in both blocks. */
  private static boolean isShared(Placed one, Placed other, double[] low, double[] high) {
    double[] step = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      step[axis] = (high[axis] - low[axis]) / 40;
    }
    for (double x = low[0] + step[0] / 3; x < high[0]; x += step[0]) {
      for (double y = low[1] + step[1] / 5; y < high[1]; y += step[1]) {
        for (double z = low[2] + step[2] / 7; z < high[2]; z += step[2]) {
          if (TestPieces.isWood(one, x, y, z) && TestPieces.isWood(other, x, y, z)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static double[] values(Box box, boolean isLow) {
    double[] values = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      values[axis] = TestPieces.value(isLow ? box.low().on(axis) : box.high().on(axis));
    }
    return values;
  }

  @Property(tries = 25, seed = "12")
  void isInTheWayWhereAndOnlyWhereAPlaceLiesBeyondAnother(
      @ForAll long seed, @ForAll boolean isPositive) {
    Random random = new Random(seed);
    Placed slider = TestPieces.randomPiece("slider", random);
    Placed other = TestPieces.randomPiece("other", random);
    int axis = random.nextInt(3);
    boolean isBlocked = FitCheck.isInTheWay(other, slider, new Direction(axis, isPositive));
    assertThat(isBlocked).isEqualTo(farthest(slider, other, axis, isPositive) > 0);
  }

  @Property(tries = 25, seed = "13")
  void gapIsTheWayThatAPieceCanMoveBeforeItTouches(@ForAll long seed) {
    Random random = new Random(seed);
    Placed one = TestPieces.randomPiece("one", random);
    Placed other = TestPieces.randomPiece("other", random);
    int axis = random.nextInt(3);
    if (FitCheck.shared(one, other) != null) {
      return;
    }
    Length gap = one.gapTo(other, axis);
    double toward = nearest(one, other, axis);
    if (gap == null) {
      assertThat(toward).isInfinite();
    } else {
      // Two places of the raster lie up to a step or, on a slope of 1 : 8, some steps farther
      // apart than the faces.
      assertThat(toward)
          .isGreaterThan(TestPieces.value(gap))
          .isLessThan(TestPieces.value(gap) + 8 * STEP);
    }
  }

  /** How far some place of the other lies beyond a place of the slider at most. */
  private static double farthest(Placed slider, Placed other, int axis, boolean isPositive) {
    double farthest = Double.NEGATIVE_INFINITY;
    for (double u = STEP / 3; u < END; u += STEP) {
      for (double v = STEP / 5; v < END; v += STEP) {
        double[] own = places(slider, axis, u, v);
        double[] others = places(other, axis, u, v);
        if (own.length > 0 && others.length > 0) {
          farthest =
              Math.max(
                  farthest,
                  isPositive
                      ? others[others.length - 1] - own[0]
                      : own[own.length - 1] - others[0]);
        }
      }
    }
    return farthest;
  }

  /** How near a place of one lies to a place of the other on one line. */
  private static double nearest(Placed one, Placed other, int axis) {
    double nearest = Double.POSITIVE_INFINITY;
    for (double u = STEP / 3; u < END; u += STEP) {
      for (double v = STEP / 5; v < END; v += STEP) {
        double[] own = places(one, axis, u, v);
        double[] others = places(other, axis, u, v);
        for (double a : own) {
          for (double b : others) {
            nearest = Math.min(nearest, Math.abs(a - b));
          }
        }
      }
    }
    return nearest;
  }

  /** The places of wood on a line, least first. */
  private static double[] places(Placed piece, int axis, double u, double v) {
    Box block = piece.block();
    double[] none = new double[0];
    for (int across = 0; across < 3; across++) {
      double at = across == (axis + 1) % 3 ? u : v;
      if (across != axis
          && (at < TestPieces.value(block.low().on(across))
              || at > TestPieces.value(block.high().on(across)))) {
        return none;
      }
    }
    return DoubleStream.iterate(STEP / 7, along -> along < END, along -> along + STEP)
        .filter(along -> TestPieces.isWood(piece, place(axis, along, u, v)))
        .toArray();
  }

  private static double[] place(int axis, double along, double u, double v) {
    double[] place = new double[3];
    place[axis] = along;
    place[(axis + 1) % 3] = u;
    place[(axis + 2) % 3] = v;
    return place;
  }

  // ---- by hand

  @Test
  void twoMitersThatMeetDoNotOverlapAndTouch() {
    Solid first = TestPieces.block(4, 2, 1);
    first = first.minus(Shapes.slant(first, Side.RIGHT, Side.BOTTOM, TestPieces.in(2)));
    Solid second = TestPieces.block(4, 2, 1);
    second = second.minus(Shapes.slant(second, Side.LEFT, Side.TOP, TestPieces.in(2)));
    Placed one = TestPieces.placed("one", first, TestPieces.at(0, 0, 0), "+z +y");
    Placed other = TestPieces.placed("other", second, TestPieces.at(2, 0, 0), "+z +y");
    assertThat(FitCheck.shared(one, other)).isNull();
    assertThat(one.touches(other)).isTrue();
    Placed nearer =
        TestPieces.placed("other", second, TestPieces.at(2, 0, 0).with(0, in(63, 32)), "+z +y");
    assertThat(FitCheck.shared(one, nearer)).isNotNull();
    Placed farther =
        TestPieces.placed("other", second, TestPieces.at(2, 0, 0).with(0, in(65, 32)), "+z +y");
    assertThat(one.gapTo(farther, 0)).isEqualTo(in(1, 32));
    assertThat(one.gapTo(farther, 1)).isEqualTo(in(1, 32));
    assertThat(one.gapTo(farther, 2)).isNull();
  }

  @Test
  void aPegSharesNoWoodWithTheBoardOnlyWhenItsHoleHoldsAllOfIt() {
    Solid board = TestPieces.block(4, 4, 1).minus(hole(in(3, 2)));
    Placed drilled = TestPieces.placed("board", board, TestPieces.at(0, 0, 0), "+z +y");
    Placed peg =
        TestPieces.placed("peg", TestPieces.block(1, 1, 3), TestPieces.at(0, 0, -1), "+z +y");
    Placed inHole =
        TestPieces.placed(
            "peg",
            TestPieces.block(1, 1, 3),
            TestPieces.at(0, 0, -1).with(0, in(3, 2)).with(1, in(3, 2)),
            "+z +y");
    assertThat(FitCheck.shared(drilled, peg)).isNotNull();
    assertThat(FitCheck.shared(drilled, inHole)).isNull();
    // The peg's diagonal is the square root of 2, more than 1 13/32.
    Placed tooSmall =
        TestPieces.placed(
            "board",
            TestPieces.block(4, 4, 1).minus(hole(in(45, 32))),
            TestPieces.at(0, 0, 0),
            "+z +y");
    assertThat(FitCheck.shared(tooSmall, inHole)).isNotNull();
  }

  @Test
  void aCurveInAnEdgeLeavesRoomForWhatLiesWithinIt() {
    Solid board = TestPieces.block(8, 3, 1);
    Solid curved = board.minus(Shapes.curve(board, Side.BOTTOM, in(1, 1), in(6, 1), in(2, 1)));
    Placed leg = TestPieces.placed("leg", curved, TestPieces.at(0, 0, 0), "+z +y");
    Placed low =
        TestPieces.placed("rail", TestPieces.block(2, 1, 1), TestPieces.at(3, 0, 0), "+z +y");
    Placed high =
        TestPieces.placed("rail", TestPieces.block(2, 2, 1), TestPieces.at(3, 0, 0), "+z +y");
    assertThat(FitCheck.shared(leg, low)).isNull();
    assertThat(FitCheck.shared(leg, high)).isNotNull();
  }

  private static Bore hole(Length diameter) {
    return new Bore(2, TestPieces.at(2, 2, 0), TestPieces.in(1), diameter);
  }

  private static Length in(long numerator, long denominator) {
    return TestPieces.in(numerator, denominator);
  }
}
