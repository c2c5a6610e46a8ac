package packetwright.wood.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import packetwright.text.measure.Length;

/** Removals of every kind against their definitions, place by place. */
class RemovalTest {
  @Property(tries = 100, seed = "1")
  void takesWhatItsDefinitionSays(@ForAll long seed) {
    Taken taken = Taken.any(new Random(seed));
    Solid solid = Taken.solid(List.of(taken));
    for (long[] place : Taken.places()) {
      assertThat(solid.isWood(Taken.point(place)))
          .as("%s at %s", taken.removal(), Taken.point(place))
          .isEqualTo(Taken.isWood(List.of(taken), place));
    }
  }

  @Property(tries = 100, seed = "1")
  void boxAroundHoldsAllThatItTakes(@ForAll long seed) {
    Taken taken = Taken.any(new Random(seed));
    Box around = taken.removal().around(Taken.solid(List.of()).block());
    for (long[] place : Taken.places()) {
      if (taken.definition().takes(place)) {
        Point point = Taken.point(place);
        assertThat(around).as("%s at %s", taken.removal(), point).isNotNull();
        assertThat(around.contains(new Box(point, plus(point)))).isTrue();
      }
    }
  }

  /** A hair beyond a place, on every axis. */
  private static Point plus(Point point) {
    Length hair = Taken.fine(1);
    return new Point(point.x().plus(hair), point.y().plus(hair), point.z().plus(hair));
  }

  @Property(tries = 100, seed = "1")
  void movesWithItsOrigin(@ForAll long seed) {
    Random random = new Random(seed);
    Taken taken = Taken.any(random);
    int axis = random.nextInt(3);
    Taken shifted = taken.shifted(axis, random.nextInt(9) - 4);
    Solid solid = Taken.solid(List.of(shifted));
    for (long[] place : Taken.places()) {
      assertThat(solid.isWood(Taken.point(place))).isEqualTo(Taken.isWood(List.of(shifted), place));
    }
  }

  @Property(tries = 100, seed = "1")
  void mirroredTwiceIsTheSame(@ForAll long seed) {
    Removal removal = Taken.any(new Random(seed)).removal();
    Length length = Taken.solid(List.of()).length();
    assertThat(removal.mirrored(length).mirrored(length)).isEqualTo(removal);
  }
}
