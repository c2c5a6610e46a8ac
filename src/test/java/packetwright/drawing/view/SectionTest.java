package packetwright.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import packetwright.drawing.view.View.Place;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;

class SectionTest {
  private static Length in(long numerator, long denominator) {
    return Length.ofInches(numerator, denominator);
  }

  private static Point point(Length x, Length y, Length z) {
    return new Point(x, y, z);
  }

  private static Removal random(Random random, Solid block) {
    int axis = random.nextInt(3);
    Length[] low = new Length[3];
    for (int i = 0; i < 3; i++) {
      low[i] = block.extent(i).times(random.nextInt(28)).dividedBy(32);
    }
    Length size = in(1 + random.nextInt(6), 8);
    return random.nextBoolean()
        ? new Removal.Bore(axis, point(low[0], low[1], low[2]), size, in(3, 4))
        : new Removal.Trough(
            new Box(
                point(low[0], low[1], low[2]),
                point(low[0].plus(size), low[1].plus(size), low[2].plus(size))));
  }

  /** By how often a way to the right leaves the rings. */
  private static boolean isInside(Section section, double u, double v) {
    boolean isInside = false;
    for (Section.Cut area : section.areas()) {
      for (List<Place> ring : area.rings()) {
        for (int i = 0; i < ring.size(); i++) {
          Place one = ring.get(i);
          Place next = ring.get((i + 1) % ring.size());
          if ((one.v() > v) != (next.v() > v)) {
            double part = (v - one.v()) / (next.v() - one.v());
            isInside ^= u < one.u() + part * (next.u() - one.u());
          }
        }
      }
    }
    return isInside;
  }

  /**
   * The solid itself answers exactly where wood is; places at a sixteenth and a bit avoid edges.
   */
  @Property(tries = 200, seed = "20270311")
  void isWhereTheSolidHasWood(@ForAll long seed) {
    Random random = new Random(seed);
    Solid solid = Solid.block(in(4, 1), in(3, 1), in(2, 1));
    for (int n = random.nextInt(5); n > 0; n--) {
      solid = solid.minus(random(random, solid));
    }
    int axis = random.nextInt(3);
    Length at = in(1 + 2 * random.nextInt(31), 1024).plus(solid.extent(axis).dividedBy(3));
    Section section = Section.of(solid, axis, at);
    int u = axis == 0 ? 1 : 0;
    int v = axis == 2 ? 1 : 2;
    for (int tries = 0; tries < 60; tries++) {
      Length across = solid.extent(u).times(1 + random.nextInt(997)).dividedBy(999);
      Length up = solid.extent(v).times(1 + random.nextInt(997)).dividedBy(999);
      Point place =
          point(Length.ZERO, Length.ZERO, Length.ZERO).with(axis, at).with(u, across).with(v, up);
      if (!isNearHole(solid, place)) {
        assertThat(isInside(section, across.inches().approximate(), up.inches().approximate()))
            .as("%s of %s", place, solid)
            .isEqualTo(solid.isWood(place));
      }
    }
  }

  /** Chords stand for circles: within a thousandth of an inch they may differ. */
  private static boolean isNearHole(Solid solid, Point place) {
    return solid.removals().stream()
        .filter(Removal.Bore.class::isInstance)
        .map(Removal.Bore.class::cast)
        .anyMatch(
            bore -> {
              double across = 0;
              for (int axis = 0; axis < 3; axis++) {
                double off = place.on(axis).minus(bore.centre().on(axis)).inches().approximate();
                across += axis == bore.axis() ? 0 : off * off;
              }
              double radius = bore.diameter().inches().approximate() / 2;
              return Math.abs(Math.sqrt(across) - radius) < 1e-3;
            });
  }

  @Test
  void aBlockWithAThroughHoleHasAHoleInItsArea() {
    Solid solid =
        Solid.block(in(4, 1), in(3, 1), in(1, 1))
            .minus(new Removal.Bore(2, point(in(2, 1), in(3, 2), Length.ZERO), in(1, 1), in(1, 2)));
    Section section = Section.of(solid, 2, in(1, 2));
    assertThat(section.areas()).hasSize(1);
    assertThat(section.areas().get(0).holes()).hasSize(1);
    assertThat(Section.of(solid, 0, in(2, 1)).areas()).hasSize(2);
    double widest =
        section.areas().get(0).outline().stream().mapToDouble(Place::u).max().orElseThrow();
    assertThat(widest).isCloseTo(4, within(1e-9));
  }
}
