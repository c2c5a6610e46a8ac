package packetwright.wood.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.Span;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal.Trough;
import packetwright.wood.part.Shapes;
import packetwright.wood.part.Solid;

class FastenerPlacingTest {
  private static final Span NOWHERE = Span.startOf("test");
  private static final Rule RULE = new Rule(Rational.of(1, 32), Unit.INCH);
  private static final Length EDGE = in(3, 8);

  /** A shelf 12 in long lies, as the top of a T, on the edge of an upright 12 in long. */
  private static final Solid SHELF = TestPieces.block(12, 4, 1);

  private static final Solid UPRIGHT = TestPieces.block(12, 6, 1);

  private static Length in(long numerator, long denominator) {
    return TestPieces.in(numerator, denominator);
  }

  private static Fastener nail(Length length, Length spacing) {
    return new Fastener("nails", Fastener.Kind.NAIL, length, in(1, 16), spacing, EDGE);
  }

  private static Checked<List<Fastening>> placed(Solid shelf, Solid upright, Fastener fastener) {
    Placed top = TestPieces.placed("shelf", shelf, TestPieces.at(0, 0, 6), "+z +y");
    Placed under =
        TestPieces.placed("upright", upright, TestPieces.at(0, 0, 0).with(1, in(3, 2)), "-y +z");
    Joint joint =
        new Joint(
            located("on"), "butt", List.of(located("shelf"), located("upright")), null, false);
    return new FastenerPlacing(new Assembly(List.of(top, under)), fastener, RULE, NOWHERE)
        .place(joint, List.of());
  }

  private static Located<String> located(String text) {
    return new Located<>(text, NOWHERE);
  }

  private static List<Length> places(Solid shelf, Solid upright, Length spacing) {
    Checked<List<Fastening>> placed = placed(shelf, upright, nail(in(3, 1), spacing));
    assertThat(placed.findings()).isEmpty();
    return placed.value().get(0).line().places();
  }

  private static String code(Solid shelf, Solid upright, Length length) {
    List<Finding> findings = placed(shelf, upright, nail(length, in(3, 1))).findings();
    assertThat(findings).hasSize(1);
    return findings.get(0).code();
  }

  private static Trough trough(long from, long to, long low, long high) {
    return new Trough(new Box(TestPieces.at(from, low, -1), TestPieces.at(to, high, 2)));
  }

  @Test
  void firstAndLastStandAtTheEdgeDistanceAndTheOthersWithinTheSpacing() {
    assertThat(places(SHELF, UPRIGHT, in(4, 1)))
        .containsExactly(in(3, 8), in(33, 8), in(63, 8), in(93, 8));
    Fastening fastening = placed(SHELF, UPRIGHT, nail(in(3, 1), in(4, 1))).value().get(0);
    assertThat(fastening.driven()).isEqualTo("shelf");
    assertThat(fastening.into()).isEqualTo("upright");
    assertThat(fastening.line().from()).isEqualTo(Side.LEFT);
    assertThat(fastening.line().beside()).isEqualTo(Side.BOTTOM);
    assertThat(fastening.line().inset()).isEqualTo(in(2, 1));
    assertThat(fastening.count()).isEqualTo(4);
  }

  @Test
  void aPlaceInAGrooveGivesWayToTheNearestCleanOne() {
    // A slot through the upright from 4 to 5 in: 3/8 before it is 3 5/8.
    assertThat(places(SHELF, UPRIGHT.minus(trough(4, 5, 3, 7)), in(4, 1)))
        .containsExactly(in(3, 8), in(29, 8), in(63, 8), in(93, 8));
  }

  @Test
  void aPlaceWithNoneCleanInItsSpanIsLeftOut() {
    assertThat(places(SHELF, UPRIGHT.minus(trough(2, 6, 3, 7)), in(4, 1)))
        .containsExactly(in(3, 8), in(63, 8), in(93, 8));
  }

  @Test
  void oneStandsInTheMiddleWhereTwoWouldStandTooClose() {
    assertThat(
            places(SHELF, UPRIGHT.minus(trough(0, 5, 3, 7)).minus(trough(6, 12, 3, 7)), in(3, 1)))
        .containsExactly(in(11, 2));
  }

  @Test
  void keepsOffSlopes() {
    // The upright's right end is slanted: at the top edge it is 4 in shorter.
    Solid slanted = UPRIGHT.minus(Shapes.slant(UPRIGHT, Side.RIGHT, Side.BOTTOM, in(4, 1)));
    List<Length> places = places(SHELF, slanted, in(4, 1));
    // In the frame of the shelf the slope stands at 8 in, at the shelf's underside.
    assertThat(places.get(places.size() - 1)).isEqualTo(in(61, 8));
  }

  @Test
  void saysWhatIsTooShortOrComesOut() {
    assertThat(code(SHELF, UPRIGHT, in(2, 1))).isEqualTo("fastener-too-short");
    assertThat(placed(SHELF, UPRIGHT, nail(in(5, 2), in(3, 1))).findings()).isEmpty();
    assertThat(code(SHELF, UPRIGHT, in(7, 1))).isEqualTo("fastener-comes-out");
    assertThat(placed(SHELF, UPRIGHT, nail(in(55, 8), in(3, 1))).findings()).isEmpty();
  }

  @Test
  void saysWhereThereIsNoRoom() {
    Solid slotted = UPRIGHT;
    for (int x = 0; x < 12; x++) {
      slotted =
          slotted.minus(
              new Trough(
                  new Box(
                      new Point(in(2 * x + 1, 2), in(3, 1), in(-1, 1)),
                      new Point(in(x + 1, 1), in(7, 1), in(2, 1)))));
    }
    assertThat(code(SHELF, slotted, in(3, 1))).isEqualTo("fastener-without-room");
  }

  @Test
  void laterFastenersMissEarlierOnes() {
    Checked<List<Fastening>> first = placed(SHELF, UPRIGHT, nail(in(3, 1), in(4, 1)));
    Placed top = TestPieces.placed("shelf", SHELF, TestPieces.at(0, 0, 6), "+z +y");
    Placed under =
        TestPieces.placed("upright", UPRIGHT, TestPieces.at(0, 0, 0).with(1, in(3, 2)), "-y +z");
    Joint joint =
        new Joint(
            located("on"), "butt", List.of(located("shelf"), located("upright")), null, false);
    List<Fastening> second =
        new FastenerPlacing(
                new Assembly(List.of(top, under)), nail(in(3, 1), in(4, 1)), RULE, NOWHERE)
            .place(joint, first.value().get(0).prisms())
            .value();
    for (Box later : second.get(0).prisms()) {
      assertThat(first.value().get(0).prisms()).noneMatch(later::overlaps);
    }
  }

  @Provide
  Arbitrary<Long> seeds() {
    return Arbitraries.longs();
  }

  @Property(tries = 120, seed = "14")
  void everyFastenerRunsInWoodAndKeepsItsDistance(@ForAll("seeds") long seed) {
    Random random = new Random(seed);
    Solid shelf = cutUp(SHELF, random);
    Solid upright = cutUp(UPRIGHT, random);
    Placed top = TestPieces.placed("shelf", shelf, TestPieces.at(0, 0, 6), "+z +y");
    Placed under =
        TestPieces.placed("upright", upright, TestPieces.at(0, 0, 0).with(1, in(3, 2)), "-y +z");
    List<Fastening> placed =
        placed(shelf, upright, nail(in(3, 1), in(1 + random.nextInt(5), 1))).valueOrNull();
    if (placed == null) {
      return;
    }
    for (Fastening fastening : placed) {
      for (Box prism : fastening.prisms()) {
        assertThat(places(prism))
            .as("seed %s, %s", seed, prism)
            .allMatch(p -> TestPieces.isWood(top, p) || TestPieces.isWood(under, p));
      }
    }
  }

  /** Through the prism, and along the joint by the edge distance to both sides of it. */
  private static List<double[]> places(Box prism) {
    List<double[]> places = new ArrayList<>();
    double middle = (TestPieces.value(prism.low().x()) + TestPieces.value(prism.high().x())) / 2;
    double low = TestPieces.value(prism.low().z());
    double high = TestPieces.value(prism.high().z());
    for (int i = -6; i <= 6; i++) {
      double x = middle + i * 0.99 * 0.375 / 6;
      for (double y :
          new double[] {prismY(prism, 0.03), prismY(prism, 0.51), prismY(prism, 0.97)}) {
        for (int k = 0; k < 40; k++) {
          places.add(new double[] {x, y, low + (high - low) * (k + 0.37) / 40});
        }
      }
    }
    return places;
  }

  private static double prismY(Box prism, double part) {
    double low = TestPieces.value(prism.low().y());
    return low + (TestPieces.value(prism.high().y()) - low) * part;
  }

  private static Solid cutUp(Solid solid, Random random) {
    Solid cut = solid;
    int count = random.nextInt(4);
    for (int i = 0; i < count; i++) {
      Point low =
          new Point(
              in(random.nextInt(46), 4), in(random.nextInt(24), 4), in(random.nextInt(5) - 1, 4));
      Point high =
          new Point(
              low.x().plus(in(1 + random.nextInt(6), 4)),
              low.y().plus(in(1 + random.nextInt(6), 4)),
              low.z().plus(in(1 + random.nextInt(4), 4)));
      cut = cut.minus(new Trough(new Box(low, high)));
    }
    if (random.nextInt(3) == 0) {
      Side full = List.of(Side.BOTTOM, Side.TOP, Side.OUTSIDE).get(random.nextInt(3));
      cut = cut.minus(Shapes.slant(cut, Side.RIGHT, full, in(1 + random.nextInt(12), 4)));
    }
    return cut;
  }
}
