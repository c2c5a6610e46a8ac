package packetwright.drawing.part;

import static org.assertj.core.api.Assertions.assertThat;
import static packetwright.drawing.part.SampleParts.in;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.drawing.sheet.Sheet;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Part.Feature;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Trough;
import packetwright.wood.part.Shapes;
import packetwright.wood.part.Solid;

/** A part can be made from its sheet alone. */
class PartMeasuresTest {
  private static final Rule INCH = new Rule(Rational.of(1, 32), Unit.INCH);
  private static final Words WORDS = Words.of("en");

  private static void assertIsReadAgain(Part part) {
    Sheet sheet = PartSheet.draw(part, Phrase.of("poplar"), INCH, WORDS);
    Solid again = SheetReader.read(part, sheet);
    assertThat(again.isSameShape(part.solid())).as("%s from its sheet: %s", part, again).isTrue();
  }

  @Test
  void eachSampleIsReadAgainFromItsSheet() {
    SampleParts.all().forEach(PartMeasuresTest::assertIsReadAgain);
    SampleParts.shaped().forEach(PartMeasuresTest::assertIsReadAgain);
  }

  /**
   * Else what is read again would not come from the sheet. Two features in two views may be equally
   * deep: each has its dimension then, and the reader, who sees only places, needs one of them.
   */
  @Test
  void aSheetThatLacksAnyDimensionGivesAnotherPart() {
    List<Part> parts = new ArrayList<>(SampleParts.all());
    parts.addAll(SampleParts.shaped());
    for (Part part : parts) {
      Map<Band, List<Measure>> bands = PartMeasures.of(Showing.of(part, Fold.NONE)).bands();
      List<Measure> all = bands.values().stream().flatMap(List::stream).toList();
      for (Measure measure : all) {
        if (Collections.frequency(all, measure) == 1) {
          assertThat(SheetReader.read(part, without(measure, bands)).isSameShape(part.solid()))
              .as("%s without %s", part.name(), measure)
              .isFalse();
        }
      }
    }
  }

  private static Map<Band, List<Measure>> without(Measure measure, Map<Band, List<Measure>> bands) {
    Map<Band, List<Measure>> fewer = new EnumMap<>(Band.class);
    bands.forEach(
        (band, list) -> fewer.put(band, list.stream().filter(m -> !m.equals(measure)).toList()));
    return fewer;
  }

  /** Lengths in eighths, so that halves of them are printed exactly. */
  private static Length eighths(Random random, int least, int most) {
    return in(least + random.nextInt(most - least + 1), 8);
  }

  private static Part random(Random random) {
    Solid block =
        Solid.block(eighths(random, 32, 320), eighths(random, 16, 64), eighths(random, 4, 12));
    List<Feature> features = new ArrayList<>();
    for (int n = random.nextInt(5); n > 0; n--) {
      features.add(random.nextInt(4) == 0 ? hole(random, block, n) : trough(random, block, n));
    }
    if (random.nextInt(2) == 0) {
      features.add(shape(random, block));
    }
    return SampleParts.part("piece", "Q", 2, block, features);
  }

  private static Feature hole(Random random, Solid block, int n) {
    Side face = random.nextBoolean() ? Side.INSIDE : Side.OUTSIDE;
    boolean isThrough = random.nextBoolean();
    Length depth = isThrough ? block.thickness() : block.thickness().dividedBy(2).max(in(1, 8));
    Length diameter = eighths(random, 1, 4);
    Length begin = face == Side.INSIDE ? block.thickness().minus(depth) : Length.ZERO;
    Length x = in(4 + random.nextInt(eighthsOf(block.length()) - 8), 8);
    Length y = in(4 + random.nextInt(eighthsOf(block.width()) - 8), 8);
    Map<String, Length> sizes = new LinkedHashMap<>();
    sizes.put("diameter", diameter);
    sizes.put("depth", depth);
    return new Feature(
        "hole_" + n,
        FeatureKind.HOLE,
        isThrough ? "through" : "blind",
        face,
        random.nextBoolean() ? Side.RIGHT : Side.BOTTOM,
        sizes,
        List.of(new Bore(2, new Point(x, y, begin), depth, diameter)));
  }

  private static int eighthsOf(Length length) {
    return (int) Math.round(length.inches().approximate() * 8);
  }

  /** Along, across, stopped at one end, in the middle, or through the thickness at a corner. */
  private static Feature trough(Random random, Solid block, int n) {
    Side face = random.nextBoolean() ? Side.INSIDE : Side.OUTSIDE;
    int kind = random.nextInt(6);
    int length = eighthsOf(block.length());
    int width = eighthsOf(block.width());
    boolean isAlong = kind == 0 || kind == 2;
    int x = isAlong ? 0 : random.nextInt(length - 2);
    int y = kind == 1 || kind == 3 ? 0 : random.nextInt(width - 2);
    int endX = kind == 0 ? length : Math.min(length, x + 1 + random.nextInt(length / 2));
    int endY = kind == 1 ? width : Math.min(width, y + 1 + random.nextInt(width / 2));
    Length depth =
        kind == 5 ? block.thickness() : in(1 + random.nextInt(eighthsOf(block.thickness()) - 1), 8);
    boolean isInside = face == Side.INSIDE;
    Length low = isInside ? block.thickness().minus(depth) : Length.ZERO;
    Length high = isInside ? block.thickness() : depth;
    Side from = List.of(Side.TOP, Side.BOTTOM, Side.LEFT, Side.RIGHT).get(random.nextInt(4));
    return new Feature(
        "cut_" + n,
        FeatureKind.GROOVE,
        "along",
        face,
        from,
        Map.of("depth", depth),
        List.of(
            new Trough(
                new Box(
                    new Point(in(x, 8), in(y, 8), low),
                    new Point(in(endX, 8), in(endY, 8), high)))));
  }

  private static Feature shape(Random random, Solid block) {
    Side end = random.nextBoolean() ? Side.RIGHT : Side.LEFT;
    Side edge = random.nextBoolean() ? Side.TOP : Side.BOTTOM;
    Length by = eighths(random, 2, 7);
    Length small = in(1 + random.nextInt(6), 32);
    return switch (random.nextInt(9)) {
      case 0 -> SampleParts.slant(FeatureKind.MITER, block, end, edge, by);
      case 1 -> SampleParts.slant(FeatureKind.TAPER, block, edge, end, by);
      case 2 -> SampleParts.slant(FeatureKind.BEVEL, block, edge, Side.OUTSIDE, small);
      case 3 -> SampleParts.slant(FeatureKind.BEVEL, block, end, Side.INSIDE, small);
      case 4 ->
          edges(
              FeatureKind.CHAMFER,
              "size",
              small,
              end.word(),
              List.of(Shapes.chamfer(block, end, Side.INSIDE, small)));
      case 5 ->
          edges(
              FeatureKind.ROUNDOVER,
              "radius",
              small,
              edge.word(),
              List.of(Shapes.rounded(block, edge, Side.INSIDE, small)));
      case 6 ->
          edges(
              FeatureKind.ROUNDOVER,
              "radius",
              small,
              "around",
              List.of(
                  Shapes.rounded(block, Side.LEFT, Side.INSIDE, small),
                  Shapes.rounded(block, Side.RIGHT, Side.INSIDE, small),
                  Shapes.rounded(block, Side.BOTTOM, Side.INSIDE, small),
                  Shapes.rounded(block, Side.TOP, Side.INSIDE, small)));
      case 7 ->
          edges(
              FeatureKind.CORNER,
              "radius",
              by,
              end.word(),
              List.of(
                  Shapes.rounded(block, end, Side.TOP, by),
                  Shapes.rounded(block, end, Side.BOTTOM, by)));
      default -> arch(block, end, in(1 + random.nextInt(6), 8));
    };
  }

  private static Feature arch(Solid block, Side end, Length rise) {
    Length chord = in(3, 2);
    Length start = block.width().minus(chord).dividedBy(2);
    return SampleParts.shaped(
        "arch",
        FeatureKind.CURVE,
        end.word(),
        null,
        Map.of("length", chord, "rise", rise),
        Shapes.curve(block, end, start, chord, rise));
  }

  private static Feature edges(
      FeatureKind kind, String key, Length size, String where, List<Removal> removals) {
    return new Feature("edges", kind, where, Side.INSIDE, null, Map.of(key, size), removals);
  }

  @Property(tries = 300, seed = "20270402")
  void eachRandomPartIsReadAgainFromItsSheet(@ForAll long seed) {
    assertIsReadAgain(random(new Random(seed)));
  }
}
