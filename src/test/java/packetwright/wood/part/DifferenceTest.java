package packetwright.wood.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import packetwright.text.measure.Length;

/** Solids of all four removals, told apart or not, against the places that they hold. */
class DifferenceTest {
  @Property(tries = 200, seed = "1")
  void neverCallsDifferentSolidsTheSame(@ForAll long seed) {
    Random random = new Random(seed);
    List<Taken> one = Taken.several(random, 6);
    List<Taken> other = changed(one, random);
    boolean isSame = Taken.solid(one).isSameShape(Taken.solid(other));
    assertThat(isSame && !Taken.wood(one).equals(Taken.wood(other)))
        .as("%s and %s", one, other)
        .isFalse();
  }

  /** One removal left out, moved, added or put in place of another. */
  private static List<Taken> changed(List<Taken> all, Random random) {
    List<Taken> changed = new ArrayList<>(all);
    int at = all.isEmpty() ? 0 : random.nextInt(all.size());
    int way = all.isEmpty() ? 0 : random.nextInt(4);
    switch (way) {
      case 0 -> changed.add(Taken.any(random));
      case 1 -> changed.remove(at);
      case 2 -> changed.set(at, Taken.any(random));
      default ->
          changed.set(at, all.get(at).shifted(random.nextInt(3), random.nextBoolean() ? 1 : -1));
    }
    Collections.shuffle(changed, random);
    return changed;
  }

  @Property(tries = 200, seed = "1")
  void orderRepetitionAndWhatTakesNothingDoNotMatter(@ForAll long seed) {
    Random random = new Random(seed);
    List<Taken> all = Taken.several(random, 6);
    List<Taken> more = new ArrayList<>(all);
    for (Taken taken : all) {
      more.addAll(Redundant.within(taken, random));
    }
    Collections.shuffle(more, random);
    assertThat(Taken.wood(more)).as("they are the same").isEqualTo(Taken.wood(all));
    assertThat(Difference.between(Taken.solid(more), Taken.solid(all))).isNull();
    assertThat(Difference.between(Taken.solid(all), Taken.solid(more))).isNull();
  }

  @Property(tries = 100, seed = "1")
  void aSliceHoldsTheSamePlaces(@ForAll long seed) {
    Random random = new Random(seed);
    List<Taken> all = Taken.several(random, 6);
    Solid solid = Taken.solid(all);
    int axis = random.nextInt(3);
    int from = random.nextInt(5);
    Solid slice = solid.slice(axis, Taken.length(from), solid.extent(axis));
    for (long[] place : Taken.places()) {
      Point point = Taken.point(place);
      Length along = point.on(axis).minus(Taken.length(from));
      assertThat(slice.isWood(point.with(axis, along)))
          .isEqualTo(along.signum() >= 0 && Taken.isWood(all, place));
    }
  }

  @Property(tries = 100, seed = "1")
  void theMirrorImageHoldsTheMirroredPlaces(@ForAll long seed) {
    List<Taken> all = Taken.several(new Random(seed), 6);
    Solid solid = Taken.solid(all);
    Solid mirrored = solid.mirrored();
    for (long[] place : Taken.places()) {
      Point point = Taken.point(place);
      assertThat(mirrored.isWood(point.with(0, solid.length().minus(point.x()))))
          .isEqualTo(Taken.isWood(all, place));
    }
    assertThat(mirrored.mirrored()).isEqualTo(solid);
  }
}
