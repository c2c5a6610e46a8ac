package packetwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import packetwright.drawing.view.Isometric;
import packetwright.drawing.view.Isometric.Eye;
import packetwright.drawing.view.Pictorial;
import packetwright.drawing.view.Pictorial.Line;
import packetwright.drawing.view.Pictorial.Spot;
import packetwright.drawing.view.Placed;
import packetwright.drawing.view.Placed.Heading;
import packetwright.text.measure.Length;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Solid;

/**
 * Isometric drawing as drafting textbooks have it (from memory): both receding axes at 30 degrees,
 * the three axes drawn at full scale instead of sqrt(2/3) of it, and a circle in any of the three
 * planes as an ellipse of 35°16′, its axes sqrt(3/2) and sqrt(1/2) of the diameter.
 */
class IsometricConstantsTest {
  private static final Length SIDE = Length.ofInches(4);
  private static final Length HOLE = Length.ofInches(2);

  private static Pictorial cube(int axis) {
    Length half = Length.ofInches(2);
    Point middle = new Point(half, half, half).with(axis, Length.ZERO);
    return draw(
        new Solid(SIDE, SIDE, SIDE, List.of(new Bore(axis, middle, Length.ofInches(4), HOLE))));
  }

  private static Pictorial draw(Solid cube) {
    Point corner = new Point(Length.ZERO, Length.ZERO, Length.ZERO);
    return Isometric.draw(
        List.of(new Placed("A", cube, corner, Heading.of("+z"), Heading.of("+y"))),
        Eye.HIGH_X_HIGH_Y);
  }

  @Test
  void theAxesRunUprightAndAtThirtyDegreesAndAreOneScale() {
    for (Line line : draw(Solid.block(SIDE, SIDE, SIDE)).lines()) {
      for (int i = 1; i < line.spots().size(); i++) {
        Spot from = line.spots().get(i - 1);
        Spot to = line.spots().get(i);
        double length = Math.hypot(to.u() - from.u(), to.v() - from.v());
        if (length > 1) {
          double slope = Math.abs(StrictMath.atan2(to.v() - from.v(), to.u() - from.u()));
          double degrees = StrictMath.toDegrees(slope);
          assertThat(List.of(30.0, 90.0, 150.0))
              .anySatisfy(axis -> assertThat(degrees).isCloseTo(axis, within(1e-3)));
          assertThat(length).isCloseTo(4, within(1e-4));
        }
      }
    }
  }

  @Test
  void aCircleIsAnEllipseOfThePublishedAxes() {
    // The long axis lies square to the axis of the hole as drawn.
    Map<Integer, Double> longAxis = Map.of(0, 120.0, 1, 60.0, 2, 0.0);
    for (int axis = 0; axis < 3; axis++) {
      Line rim =
          cube(axis).lines().stream()
              .filter(line -> line.spots().size() > 30 && line.spots().get(0).equals(last(line)))
              .findFirst()
              .orElseThrow();
      double turn = StrictMath.toRadians(longAxis.get(axis));
      double cos = StrictMath.cos(turn);
      double sin = StrictMath.sin(turn);
      assertThat(extent(rim, cos, sin))
          .as("major, axis %s", axis)
          .isCloseTo(2 * StrictMath.sqrt(1.5), within(2e-3));
      assertThat(extent(rim, -sin, cos))
          .as("minor, axis %s", axis)
          .isCloseTo(2 * StrictMath.sqrt(0.5), within(2e-3));
    }
    double angle = StrictMath.toDegrees(StrictMath.asin(StrictMath.sqrt(0.5) / Math.sqrt(1.5)));
    assertThat(angle).isCloseTo(35 + 16 / 60.0, within(1.0 / 60));
  }

  private static Spot last(Line line) {
    return line.spots().get(line.spots().size() - 1);
  }

  private static double extent(Line line, double du, double dv) {
    double least = line.spots().stream().mapToDouble(s -> s.u() * du + s.v() * dv).min().orElse(0);
    double most = line.spots().stream().mapToDouble(s -> s.u() * du + s.v() * dv).max().orElse(0);
    return most - least;
  }
}
