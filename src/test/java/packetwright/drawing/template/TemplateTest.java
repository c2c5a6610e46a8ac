package packetwright.drawing.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static packetwright.drawing.part.SampleParts.in;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.drawing.part.SampleParts;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.SheetReading;
import packetwright.drawing.sheet.SheetReading.Ink;
import packetwright.drawing.sheet.SheetReading.Straight;
import packetwright.drawing.view.Projection;
import packetwright.drawing.view.View.Place;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;
import packetwright.wood.part.Part.Feature;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;

class TemplateTest {
  private static final Rule INCH = new Rule(Rational.of(1, 32), Unit.INCH);
  private static final Words WORDS = Words.of("en");

  static Stream<Part> shaped() {
    return Stream.of(
        SampleParts.leg(), SampleParts.seat(), SampleParts.taperedRail(), SampleParts.nestFloor());
  }

  private static TileSheet tiles(Part part) {
    return new TileSheet(part, Projection.FRONT, INCH, WORDS);
  }

  @ParameterizedTest
  @MethodSource("shaped")
  void everyPageIsLegible(Part part) {
    List<Sheet> sheets = Template.of(part, INCH, WORDS);
    assertThat(sheets).isNotEmpty();
    sheets.forEach(sheet -> SheetReading.of(sheet).assertLegible(sheet));
  }

  /** Holes anywhere in the face of a board, some through, some on the lines between tiles. */
  private static Part drilled(Random random) {
    Solid block =
        Solid.block(in(32 + random.nextInt(400), 16), in(16 + random.nextInt(200), 16), in(3, 4));
    List<Removal> holes = new ArrayList<>();
    for (int n = 2 + random.nextInt(5); n > 0; n--) {
      Point centre =
          new Point(
              block.length().times(1 + random.nextInt(31)).dividedBy(32),
              block.width().times(8 + random.nextInt(16)).dividedBy(32),
              random.nextBoolean() ? in(0, 1) : in(1, 4));
      holes.add(new Removal.Bore(2, centre, in(1, 2), in(1 + random.nextInt(4), 8)));
    }
    Feature pattern =
        new Feature("holes", FeatureKind.HOLE, "blind", Side.INSIDE, Side.LEFT, Map.of(), holes);
    return SampleParts.part("board", "Q", 2, block, List.of(pattern));
  }

  @Property(tries = 40, seed = "31")
  void holePatternsAreLegibleAndEveryCentreIsOnSomeTile(@ForAll long seed) {
    Part part = drilled(new Random(seed));
    List<Sheet> sheets = Template.of(part, INCH, WORDS);
    TileSheet tiles = tiles(part);
    assertThat(sheets).hasSize(tiles.tiling().count());
    List<SheetReading> pages = sheets.stream().map(SheetReading::of).toList();
    for (int i = 0; i < pages.size(); i++) {
      pages.get(i).assertLegible(sheets.get(i));
    }
    for (FullSize.Centre centre : tiles.drawing().centres()) {
      double x = tiles.tiling().left() + centre.at().u();
      double y = tiles.tiling().top() + centre.at().v();
      int column = (int) Math.min(tiles.tiling().columns() - 1, x / Tiling.ACROSS);
      int row = (int) Math.min(tiles.tiling().rows() - 1, y / Tiling.DOWN);
      Place onPage =
          new Place(
              TileSheet.LEFT + x - column * Tiling.ACROSS, TileSheet.TOP + y - row * Tiling.DOWN);
      assertThat(pages.get(row * tiles.tiling().columns() + column).lines)
          .as("cross at %s", onPage)
          .anySatisfy(line -> isOn(line, onPage));
    }
  }

  @Test
  void aPlainPartNeedsNone() {
    assertThat(Template.of(SampleParts.bottom(), INCH, WORDS)).isEmpty();
    assertThat(Template.of(SampleParts.side(in(9, 1), in(7, 2)), INCH, WORDS)).isEmpty();
  }

  @Test
  void anInchIsSeventyTwoPoints() {
    Solid block = Solid.block(in(12, 1), in(4, 1), in(1, 2));
    FullSize level = new FullSize(block, Projection.FRONT, false);
    assertThat(level.width()).isEqualTo(12 * 72);
    assertThat(level.height()).isEqualTo(4 * 72);
    assertThat(level.at(1, 1)).isEqualTo(new Place(72, 3 * 72));
    FullSize turned = new FullSize(block, Projection.FRONT, true);
    // A quarter to the left: the right end is up, the bottom edge at the right.
    assertThat(turned.at(12, 0)).isEqualTo(new Place(4 * 72, 0));
    assertThat(turned.at(0, 4)).isEqualTo(new Place(0, 12 * 72));
  }

  @ParameterizedTest
  @MethodSource("shaped")
  void theBarIsAsLongAsItSays(Part part) {
    for (Sheet sheet : Template.of(part, INCH, WORDS)) {
      assertThat(SheetReading.of(sheet).lines)
          .anySatisfy(
              line -> {
                assertThat(line.y1()).isEqualTo(line.y2()).isGreaterThan(640);
                assertThat(line.x2() - line.x1()).isCloseTo(6 * 72, within(1e-9));
              });
    }
  }

  /** Where the crosses stand on the great sheet, by their letters. */
  private static Map<String, List<Place>> crosses(TileSheet tiles) {
    Map<String, List<Place>> crosses = new TreeMap<>();
    Tiling tiling = tiles.tiling();
    List<Sheet> sheets = tiles.all();
    for (int i = 0; i < sheets.size(); i++) {
      SheetReading reading = SheetReading.of(sheets.get(i));
      for (Ink ink : reading.inks) {
        if (ink.text().matches("[a-z]")) {
          Place nearest = nearestCorner(ink);
          assertThat(reading.lines).as("a cross at %s", nearest).anySatisfy(l -> isOn(l, nearest));
          crosses.computeIfAbsent(ink.text(), t -> new ArrayList<>());
          crosses.get(ink.text()).add(onGreatSheet(nearest, tiling, i));
        }
      }
    }
    return crosses;
  }

  private static Place onGreatSheet(Place page, Tiling tiling, int tile) {
    return new Place(
        page.u() - TileSheet.LEFT + tile % tiling.columns() * Tiling.ACROSS,
        page.v() - TileSheet.TOP + Math.floorDiv(tile, tiling.columns()) * Tiling.DOWN);
  }

  private static Place nearestCorner(Ink ink) {
    boolean isRight = ink.area().left() > TileSheet.LEFT + Tiling.ACROSS / 2;
    boolean isLow = ink.area().top() > TileSheet.TOP + Tiling.DOWN / 2;
    return new Place(
        TileSheet.LEFT + (isRight ? Tiling.ACROSS : 0), TileSheet.TOP + (isLow ? Tiling.DOWN : 0));
  }

  private static void isOn(Straight line, Place middle) {
    assertThat((line.x1() + line.x2()) / 2).isCloseTo(middle.u(), within(1e-9));
    assertThat((line.y1() + line.y2()) / 2).isCloseTo(middle.v(), within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("shaped")
  void crossesOfOneLetterMeet(Part part) {
    TileSheet tiles = tiles(part);
    Tiling tiling = tiles.tiling();
    Map<String, List<Place>> crosses = crosses(tiles);
    int corners = (tiling.columns() + 1) * (tiling.rows() + 1);
    assertThat(crosses).hasSize(tiling.count() == 1 ? 0 : corners);
    crosses.forEach((letter, places) -> assertThat(places.stream().distinct()).hasSize(1));
    long shown = crosses.values().stream().mapToLong(List::size).sum();
    assertThat(shown).isEqualTo(tiling.count() == 1 ? 0 : 4L * tiling.count());
  }

  @ParameterizedTest
  @MethodSource("shaped")
  void theTilesTogetherHoldEveryLine(Part part) {
    TileSheet tiles = tiles(part);
    Tiling tiling = tiles.tiling();
    List<SheetReading> pages = tiles.all().stream().map(SheetReading::of).toList();
    for (FullSize.Path path : tiles.drawing().paths()) {
      for (int i = 1; i < path.places().size(); i++) {
        for (double part1 = 0.02; part1 < 1; part1 += 0.04) {
          Place from = path.places().get(i - 1);
          Place to = path.places().get(i);
          double x = tiling.left() + from.u() + (to.u() - from.u()) * part1;
          double y = tiling.top() + from.v() + (to.v() - from.v()) * part1;
          int column = (int) Math.min(tiling.columns() - 1, x / Tiling.ACROSS);
          int row = (int) Math.min(tiling.rows() - 1, y / Tiling.DOWN);
          Place onPage =
              new Place(
                  TileSheet.LEFT + x - column * Tiling.ACROSS,
                  TileSheet.TOP + y - row * Tiling.DOWN);
          assertThat(pages.get(row * tiling.columns() + column).lines)
              .as("%s on tile %s, %s", onPage, column, row)
              .anyMatch(line -> away(line, onPage) < 1e-6);
        }
      }
    }
  }

  private static double away(Straight line, Place place) {
    double dx = line.x2() - line.x1();
    double dy = line.y2() - line.y1();
    double part =
        ((place.u() - line.x1()) * dx + (place.v() - line.y1()) * dy) / (dx * dx + dy * dy);
    double at = Math.max(0, Math.min(1, part));
    return Math.hypot(line.x1() + at * dx - place.u(), line.y1() + at * dy - place.v());
  }
}
