package packetwright.wood.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Trough;

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

  private static final Solid BOARD =
      Solid.block(Length.ofInches(12), Length.ofInches(4), Length.ofInches(1));

  private static Difference difference(Removal made, Removal drawn) {
    Difference difference = Difference.between(BOARD.minus(made), BOARD.minus(drawn));
    if (difference == null) {
      throw new AssertionError(made + " is called the same as " + drawn);
    }
    return difference;
  }

  /** Each of the four removals a little too large: found, with what it should have been. */
  @ParameterizedTest
  @MethodSource("pairs")
  void setsWhatWasMadeBesideWhatWasDrawn(Removal more, Removal less) {
    Difference gone = difference(more, less);
    assertThat(gone.made()).isEqualTo(more);
    assertThat(gone.drawn()).isEqualTo(less);
    Difference left = difference(less, more);
    // One outline within another is told to be another, and not to be the lesser.
    if (!(more instanceof Removal.Outline)) {
      assertThat(gone.kind()).isEqualTo(Difference.Kind.WOOD_GONE);
      assertThat(left.kind()).isEqualTo(Difference.Kind.WOOD_LEFT);
    }
    assertThat(left.made()).isEqualTo(less);
    assertThat(left.drawn()).isEqualTo(more);
  }

  static List<Arguments> pairs() {
    Length one = Length.ofInches(1);
    Length hair = one.plus(Length.ofInches(1, 64));
    Point middle = new Point(Length.ofInches(6), Length.ofInches(2), Length.ZERO);
    return List.of(
        Arguments.of(
            Shapes.slant(BOARD, Side.LEFT, Side.BOTTOM, hair),
            Shapes.slant(BOARD, Side.LEFT, Side.BOTTOM, one)),
        Arguments.of(
            Shapes.chamfer(BOARD, Side.TOP, Side.INSIDE, hair.dividedBy(2)),
            Shapes.chamfer(BOARD, Side.TOP, Side.INSIDE, one.dividedBy(2))),
        Arguments.of(
            Shapes.rounded(BOARD, Side.LEFT, Side.TOP, hair),
            Shapes.rounded(BOARD, Side.LEFT, Side.TOP, one)),
        Arguments.of(
            Shapes.curve(BOARD, Side.TOP, one, Length.ofInches(4), hair),
            Shapes.curve(BOARD, Side.TOP, one, Length.ofInches(4), one)),
        Arguments.of(new Bore(2, middle, one, hair), new Bore(2, middle, one, one)));
  }

  @Test
  void aMissingSlantIsDrawnAndNotMade() {
    Removal miter = Shapes.slant(BOARD, Side.RIGHT, Side.TOP, Length.ofInches(1));
    Difference difference = Difference.between(BOARD, BOARD.minus(miter));
    assertThat(difference).isNotNull();
    assertThat(difference.drawn()).isEqualTo(miter);
    assertThat(difference.made()).isNull();
  }

  @Test
  void woodGoneBehindASlantIsNoDifference() {
    Removal miter = Shapes.slant(BOARD, Side.RIGHT, Side.TOP, Length.ofInches(2));
    Removal step =
        new Trough(
            new Box(
                new Point(Length.ofInches(23, 2), Length.ZERO, Length.ZERO),
                new Point(Length.ofInches(12), Length.ofInches(1), Length.ofInches(1))));
    assertThat(BOARD.minus(miter).minus(step).isSameShape(BOARD.minus(miter))).isTrue();
    assertThat(BOARD.minus(step).isSameShape(BOARD)).isFalse();
  }
}
