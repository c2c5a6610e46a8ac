package packetwright.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import packetwright.drawing.view.Isometric.Eye;
import packetwright.drawing.view.Pictorial.Line;
import packetwright.drawing.view.Pictorial.Region;
import packetwright.drawing.view.Pictorial.Spot;
import packetwright.drawing.view.Placed.Heading;
import packetwright.text.measure.Length;
import packetwright.wood.part.Point;
import packetwright.wood.part.Solid;

class IsometricTest {
  private static Placed cube(long size, long x, long y, long z) {
    Length side = Length.ofInches(size);
    return new Placed(
        "A",
        Solid.block(side, side, side),
        new Point(Length.ofInches(x), Length.ofInches(y), Length.ofInches(z)),
        Heading.of("+y"),
        Heading.of("+z"));
  }

  private static double drawn(List<Line> lines) {
    double length = 0;
    for (Line line : lines) {
      for (int i = 1; i < line.spots().size(); i++) {
        Spot one = line.spots().get(i - 1);
        Spot other = line.spots().get(i);
        length += Math.hypot(one.u() - other.u(), one.v() - other.v());
      }
    }
    return length;
  }

  @ParameterizedTest
  @EnumSource(Eye.class)
  void aCubeShowsThreeFacesAndNineOfItsTwelveEdgesAtTrueLength(Eye eye) {
    Pictorial picture = Isometric.draw(List.of(cube(2, 0, 0, 0)), eye);
    assertThat(picture.regions()).hasSize(3);
    assertThat(drawn(picture.lines())).isCloseTo(9 * 2, within(1e-3));
    assertThat(drawn(picture.lines().stream().filter(Line::isOutline).toList()))
        .isCloseTo(6 * 2, within(1e-3));
  }

  @Test
  void aPieceBehindAnotherIsNotDrawn() {
    List<Placed> both = List.of(cube(4, 0, 0, 0), cube(1, 5, 5, 0));
    Pictorial alone = Isometric.draw(List.of(cube(4, 0, 0, 0)), Eye.LOW_X_LOW_Y);
    assertThat(Isometric.draw(both, Eye.LOW_X_LOW_Y)).isEqualTo(alone);
    assertThat(Isometric.draw(both, Eye.HIGH_X_HIGH_Y).regions())
        .extracting(Region::piece)
        .contains(1);
  }

  @Test
  void aLineRunsFromAMovedPieceToWhereItTouchesAndIsSeenOnlyInTheAir() {
    Placed base = cube(2, 0, 0, 0);
    Placed lifted =
        new Placed(
            "B",
            base.solid(),
            new Point(Length.ZERO, Length.ZERO, Length.ofInches(2)),
            base.inside(),
            base.top(),
            new Point(Length.ZERO, Length.ZERO, Length.ofInches(5)));
    List<Pictorial.Move> moves = Isometric.draw(List.of(base, lifted), Eye.HIGH_X_HIGH_Y).moves();
    // From the middle of its lower side, 7 up, to that of the upper side of the other, 2 up; both
    // stand an inch in from two sides, and the lower front edge hides an inch of it.
    assertThat(moves).hasSize(1);
    assertThat(moves.get(0).from().u()).isCloseTo(0, within(1e-4));
    assertThat(moves.get(0).from().v()).isCloseTo(7 - 2, within(1e-4));
    assertThat(moves.get(0).to().v()).isCloseTo(2 - 1, within(1e-4));
    assertThat(Isometric.draw(List.of(base, cube(1, 2, 0, 0)), Eye.HIGH_X_HIGH_Y).moves())
        .isEmpty();
  }

  /** Three inches up in four across: sines and cosines are 3/5 and 4/5. */
  @Test
  void aTiltedPieceTurnsAboutItsCorner() {
    Placed upright = cube(2, 0, 0, 0);
    Placed tilted =
        new Placed(
            "A",
            upright.solid(),
            upright.corner(),
            upright.inside(),
            upright.top(),
            upright.shift(),
            new Placed.Tilt(Heading.of("+x"), Length.ofInches(3), Length.ofInches(4)));
    Pictorial picture = Isometric.draw(List.of(tilted), Eye.LOW_X_LOW_Y);
    // The farthest corner, x = 2, y = 8/5 - 6/5, z = 6/5 + 8/5, stands highest on paper.
    assertThat(picture.lines().stream().flatMap(l -> l.spots().stream()).mapToDouble(Spot::v).max())
        .hasValueCloseTo(2.8 + (2 + 0.4) / 2, within(1e-4));
    assertThat(picture.regions()).hasSize(3);
  }
}
