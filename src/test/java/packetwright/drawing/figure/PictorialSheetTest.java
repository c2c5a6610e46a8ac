package packetwright.drawing.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static packetwright.drawing.part.SampleParts.in;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import packetwright.drawing.figure.PictorialSheet.Frame;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.SheetReading;
import packetwright.drawing.view.Isometric.Eye;
import packetwright.drawing.view.Placed;
import packetwright.drawing.view.Placed.Heading;
import packetwright.text.measure.Length;
import packetwright.wood.part.Point;
import packetwright.wood.part.Solid;

class PictorialSheetTest {
  private static Sheet apart(List<Placed> pieces) {
    return PictorialSheet.draw(
        "apart", pieces, Eye.LOW_X_LOW_Y, new Frame(360, 270, true), "Taken apart");
  }

  @Test
  void everyPartHasItsLetterOnce() {
    Sheet sheet = apart(SampleBox.exploded());
    SheetReading reading = SheetReading.of(sheet);
    reading.assertLegible(sheet);
    assertThat(reading.inks.stream().map(SheetReading.Ink::text))
        .containsExactlyInAnyOrder("A", "B", "C", "D", "E");
  }

  @Test
  void linesHaveTwoWeights() {
    for (List<Placed> pieces : List.of(SampleBox.exploded(), SampleBox.stool())) {
      assertThat(
              SheetReading.of(apart(pieces)).lines.stream()
                  .map(line -> line.pen().width())
                  .filter(width -> width > 0)
                  .collect(Collectors.toSet()))
          .containsExactlyInAnyOrder(Line.THICK, Line.THIN);
    }
  }

  @Test
  void onlyAnExplodedViewHasLinesToPlaces() {
    Sheet slid =
        PictorialSheet.draw(
            "cover",
            SampleBox.placed(in(-9, 2)),
            Eye.LOW_X_LOW_Y,
            new Frame(400, 320, false),
            "The lid half out");
    assertThat(dashed(slid)).isZero();
    assertThat(dashed(apart(SampleBox.exploded()))).isPositive();
  }

  private static long dashed(Sheet sheet) {
    return SheetReading.of(sheet).lines.stream()
        .filter(line -> line.pen().equals(Line.EXPLOSION.pen()))
        .count();
  }

  @Property(tries = 40, seed = "33")
  void lettersStandClearOfEachOtherAndTheLines(@ForAll long seed) {
    Random random = new Random(seed);
    List<Placed> pieces = new ArrayList<>();
    for (int n = 1 + random.nextInt(7); n > 0; n--) {
      Solid solid =
          Solid.block(
              in(1 + random.nextInt(160), 16),
              in(1 + random.nextInt(100), 16),
              in(1 + random.nextInt(30), 16));
      // One beside the other along x, so that none lies in another.
      Point corner = new Point(in(12L * n, 1), in(random.nextInt(4), 1), in(random.nextInt(3), 1));
      Point shift = new Point(Length.ZERO, Length.ZERO, in(random.nextInt(3) * 2L, 1));
      pieces.add(
          new Placed(
              String.valueOf((char) ('A' + n)),
              solid,
              corner,
              Heading.of("+z"),
              Heading.of("+y"),
              shift));
    }
    Sheet sheet = apart(pieces);
    SheetReading.of(sheet).assertLegible(sheet);
  }
}
