package packetwright.wood.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.source.Checked;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;
import packetwright.wood.workpiece.Workpiece;

/** Each verb on random small cases, point by point, against what it means in plain words. */
class VerbsByPointsTest {
  private static final int CASES = 6;

  /** On each axis; moved by a prime part of an inch so that none lies on a surface. */
  private static final int POINTS = 11;

  private static final Length MARGIN = Length.ofInches(3, 32);

  static Stream<TrialCut> cuts() {
    return TrialCuts.KINDS.stream()
        .flatMap(kind -> LongStream.range(0, CASES).mapToObj(seed -> TrialCuts.random(kind, seed)));
  }

  @ParameterizedTest
  @MethodSource("cuts")
  void takesAwayWhatItMeans(TrialCut cut) {
    Checked<Lesson> lesson = cut.workOut();
    assertThat(lesson.findings()).filteredOn(f -> f.isError()).isEmpty();
    List<Workpiece> made = lesson.value().run().made().getOrDefault("leg", List.of());
    assertThat(made).hasSize(2);
    for (Workpiece piece : made) {
      boolean isMirrored = piece.name().equals("leg 2");
      int gone = 0;
      for (Point place : lattice(piece.solid())) {
        boolean isGone = cut.isGone(place, isMirrored);
        assertThat(piece.solid().isWood(place))
            .as("wood of %s at %s", piece.name(), place)
            .isEqualTo(!isGone);
        gone += isGone ? 1 : 0;
      }
      assertThat(gone).as("points gone").isBetween(1, lattice(piece.solid()).size() - 1);
    }
  }

  /** Points of the whole block, and more of where anything is cut. */
  private static List<Point> lattice(Solid solid) {
    List<Point> places = new ArrayList<>(lattice(solid.block()));
    for (Removal removal : solid.removals()) {
      Box around = removal.around(solid.block());
      Box wider = around == null ? null : wider(around).common(solid.block());
      if (wider != null) {
        places.addAll(lattice(wider));
      }
    }
    return places;
  }

  private static Box wider(Box box) {
    Point low = box.low();
    Point high = box.high();
    for (int axis = 0; axis < 3; axis++) {
      low = low.with(axis, low.on(axis).minus(MARGIN));
      high = high.with(axis, high.on(axis).plus(MARGIN));
    }
    return new Box(low, high);
  }

  private static List<Point> lattice(Box box) {
    List<Point> places = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      for (int j = 0; j < POINTS; j++) {
        for (int k = 0; k < POINTS; k++) {
          places.add(new Point(on(box, 0, i), on(box, 1, j), on(box, 2, k)));
        }
      }
    }
    return places;
  }

  private static Length on(Box box, int axis, int index) {
    Length along = box.extent(axis).times(3L * index + 1).dividedBy(3L * POINTS);
    return box.low().on(axis).plus(along).plus(Length.ofInches(1, 6007));
  }
}
