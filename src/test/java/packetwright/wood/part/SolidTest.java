package packetwright.wood.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Trough;

class SolidTest {
  private static final int SIZE = 6;

  @Provide
  Arbitrary<Box> boxes() {
    Arbitrary<Integer> low = Arbitraries.integers().between(-2, SIZE - 1);
    Arbitrary<Integer> extent = Arbitraries.integers().between(1, 4);
    Arbitrary<List<Integer>> lows = low.list().ofSize(3);
    Arbitrary<List<Integer>> extents = extent.list().ofSize(3);
    return Combinators.combine(lows, extents)
        .as(
            (l, e) ->
                new Box(
                    point(l.get(0), l.get(1), l.get(2)),
                    point(l.get(0) + e.get(0), l.get(1) + e.get(1), l.get(2) + e.get(2))));
  }

  @Provide
  Arbitrary<List<Box>> cuts() {
    return boxes().list().ofMaxSize(5);
  }

  private static Point point(long x, long y, long z) {
    return new Point(Length.ofInches(x), Length.ofInches(y), Length.ofInches(z));
  }

  private static Solid solid(List<Box> cuts) {
    Length size = Length.ofInches(SIZE);
    return new Solid(size, size, size, cuts.stream().<Removal>map(Trough::new).toList());
  }

  /** Oracle: unit cubes, each looked at by itself. */
  private static List<Boolean> unitCubes(List<Box> cuts) {
    List<Boolean> cubes = new ArrayList<>();
    for (int x = 0; x < SIZE; x++) {
      for (int y = 0; y < SIZE; y++) {
        for (int z = 0; z < SIZE; z++) {
          Box cube = new Box(point(x, y, z), point(x + 1, y + 1, z + 1));
          cubes.add(cuts.stream().noneMatch(cut -> cut.overlaps(cube)));
        }
      }
    }
    return cubes;
  }

  @Property
  void isTheSameShapeJustWhenEveryUnitCubeAgrees(
      @ForAll("cuts") List<Box> a, @ForAll("cuts") List<Box> b) {
    assertThat(solid(a).isSameShape(solid(b))).isEqualTo(unitCubes(a).equals(unitCubes(b)));
  }

  @Property
  void orderAndRepetitionOfCutsDoNotMatter(@ForAll("cuts") List<Box> cuts) {
    List<Box> twice = new ArrayList<>(cuts);
    twice.addAll(cuts);
    Collections.reverse(twice);
    assertThat(solid(cuts).isSameShape(solid(twice))).isTrue();
  }

  @Property
  void woodIsTheBlockWithoutItsCuts(@ForAll("cuts") List<Box> cuts) {
    Length volume = Length.ZERO;
    for (Box box : solid(cuts).wood()) {
      volume =
          volume.plus(
              new Length(
                  box.extent(0)
                      .inches()
                      .times(box.extent(1).inches())
                      .times(box.extent(2).inches())));
    }
    long cubes = unitCubes(cuts).stream().filter(isWood -> isWood).count();
    assertThat(volume).isEqualTo(Length.ofInches(cubes));
  }

  @Property
  void sliceSeesTheSameWood(@ForAll("cuts") List<Box> cuts) {
    Length half = Length.ofInches(SIZE / 2);
    Solid right = solid(cuts).slice(0, half, Length.ofInches(SIZE));
    List<Boolean> all = unitCubes(cuts);
    List<Boolean> expected = all.subList(all.size() / 2, all.size());
    Length size = Length.ofInches(SIZE);
    List<Removal> moved =
        cuts.stream().<Removal>map(cut -> new Trough(cut).moved(0, half)).toList();
    assertThat(right.isSameShape(new Solid(half, size, size, moved))).isTrue();
    assertThat(right.wood().isEmpty()).isEqualTo(!expected.contains(true));
  }

  @Test
  void grooveRippedAwayLeavesNoTrace() {
    Solid board = Solid.block(inches(12), inches(3), inches(1));
    Removal groove =
        new Trough(
            new Box(
                new Point(Length.ZERO, Length.ofInches(5, 2), Length.ofInches(1, 2)),
                new Point(inches(12), Length.ofInches(11, 4), inches(1))));
    Solid ripped = board.minus(groove).slice(1, Length.ZERO, inches(2));
    assertThat(ripped.isSameShape(Solid.block(inches(12), inches(2), inches(1)))).isTrue();
  }

  @Test
  void tellsHolesOfAnotherSizeApart() {
    Solid board = Solid.block(inches(4), inches(4), inches(1));
    Point centre = new Point(inches(2), inches(2), Length.ZERO);
    Solid half = board.minus(new Bore(2, centre, inches(1), Length.ofInches(1, 2)));
    Solid more = board.minus(new Bore(2, centre, inches(1), Length.ofInches(33, 64)));
    assertThat(half.isSameShape(more)).isFalse();
    assertThat(half.isSameShape(board)).isFalse();
    assertThat(half.isSameShape(board.minus(new Bore(2, centre, inches(9), Length.ofInches(1, 2)))))
        .as("drilled farther, into the air")
        .isTrue();
  }

  private static Length inches(long inches) {
    return Length.ofInches(inches);
  }

  /** Wholly different cuts that take the same: slots from one edge, and the rest of the way. */
  private static Solid slotted(boolean isInHalves) {
    Solid solid = Solid.block(inches(30), inches(20), inches(2));
    for (int i = 0; i < 100; i++) {
      int axis = i % 2;
      Length low = Length.ofInches(i / 2 * 2 + 1, 8);
      Point from = point(0, 0, i % 3 == 0 ? 0 : 1).with(axis, low);
      Point to =
          new Point(inches(30), inches(20), i % 3 == 0 ? Length.ofInches(i + 1, 128) : inches(2))
              .with(axis, low.plus(Length.ofInches(1, 8)));
      Length middle = from.z().plus(to.z()).dividedBy(2);
      if (isInHalves) {
        solid = solid.minus(new Trough(new Box(from.with(2, middle), to)));
        solid = solid.minus(new Trough(new Box(from, to.with(2, middle))));
      } else {
        solid = solid.minus(new Trough(new Box(from, to)));
        solid = solid.minus(new Bore(2, from, inches(2), Length.ofInches(i + 1, 256)));
      }
    }
    return solid;
  }

  @Test
  @Timeout(5)
  void twoHundredCutsCompareQuickly() {
    Solid whole = slotted(false);
    Solid halves = slotted(true);
    assertThat(whole.removals()).hasSize(200);
    assertThat(halves.removals()).hasSize(200);
    assertThat(whole.isSameShape(halves)).as("holes of the one are not in the other").isFalse();
    Solid bare = new Solid(whole.length(), whole.width(), whole.thickness(), troughs(whole));
    assertThat(bare.isSameShape(halves)).isTrue();
    assertThat(whole.wood()).hasSizeLessThan(20_000);
  }

  private static List<Removal> troughs(Solid solid) {
    return solid.removals().stream().filter(Trough.class::isInstance).toList();
  }
}
