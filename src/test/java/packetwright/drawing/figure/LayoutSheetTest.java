package packetwright.drawing.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static packetwright.drawing.part.SampleParts.in;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import packetwright.drawing.part.SampleParts;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.SheetReading;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;
import packetwright.wood.workpiece.Layout;
import packetwright.wood.workpiece.Layout.Section;

class LayoutSheetTest {
  private static final Rule INCH = new Rule(Rational.of(1, 32), Unit.INCH);
  private static final Words WORDS = Words.of("en");

  @Test
  void nothingOverlapsOnTheSampleBlank() {
    Sheet sheet = LayoutSheet.draw(SampleLayouts.wall(), INCH, WORDS);
    SheetReading.of(sheet).assertLegible(sheet);
  }

  @Property(tries = 60)
  void nothingOverlapsOnRandomBlanks(@ForAll long seed) {
    Random random = new Random(seed);
    Length kerf = in(1, 8);
    Length at = Length.ZERO;
    List<Section> sections = new ArrayList<>();
    for (int n = 1 + random.nextInt(6); n > 0; n--) {
      Length end = at.plus(in(32 + random.nextInt(200), 16));
      sections.add(new Section("piece_" + n, "A" + n, at, end, kerf, random.nextBoolean()));
      at = end.plus(kerf);
    }
    Length end = at.plus(in(1 + random.nextInt(100), 16));
    sections.add(new Section("", "", at, end, Length.ZERO, false));
    Sheet sheet =
        LayoutSheet.draw(
            new Layout("board", end, in(16 + random.nextInt(100), 16), sections), INCH, WORDS);
    SheetReading.of(sheet).assertLegible(sheet);
  }

  @Test
  void nothingOverlapsWhereTwoBlanksShareAKeyAndTheirPartsAreDashed() {
    Sheet sheet = SampleLayouts.together(INCH, WORDS);
    SheetReading reading = SheetReading.of(sheet);
    reading.assertLegible(sheet);
    assertThat(reading.inks.stream().map(SheetReading.Ink::text))
        .contains("wall blank", "lid blank", "grain", "bottom edge")
        .containsOnlyOnce("cut line");
  }

  @Property(tries = 60, seed = "32")
  void nothingOverlapsWhereRandomPartsAreDashed(@ForAll long seed) {
    Random random = new Random(seed);
    Length width = in(16 + random.nextInt(100), 16);
    Length kerf = in(1, 8);
    Length at = Length.ZERO;
    List<Section> sections = new ArrayList<>();
    List<Part> parts = new ArrayList<>();
    for (int n = 1 + random.nextInt(5); n > 0; n--) {
      Length piece = in(32 + random.nextInt(200), 16);
      parts.add(SampleParts.side(piece, width.max(in(2, 1))));
      sections.add(
          new Section("side " + n, "A" + n, at, at.plus(piece), kerf, random.nextBoolean()));
      at = at.plus(piece).plus(kerf);
    }
    Layout board = new Layout("board", at, width, sections);
    Sheet sheet = LayoutSheet.drawAll(List.of(board, SampleLayouts.lid()), parts, INCH, WORDS);
    SheetReading.of(sheet).assertLegible(sheet);
  }

  @Test
  void anInchIsOneLengthOnEveryBlankOfASheet() {
    SheetReading reading = SheetReading.of(SampleLayouts.together(INCH, WORDS));
    double scale = (7.1 * 72 - 24) / 35;
    for (double length : new double[] {35, 12}) {
      assertThat(reading.lines)
          .anySatisfy(
              line -> {
                assertThat(line.y1()).isEqualTo(line.y2());
                assertThat(line.x2() - line.x1()).isCloseTo(length * scale, within(1e-9));
              });
    }
  }

  @Test
  void aKerfTooThinToSeeIsDrawnWiderAndTheKeySaysSo() {
    Layout wide = SampleLayouts.wall();
    Layout narrow =
        new Layout(
            "rail",
            in(6, 1),
            in(2, 1),
            List.of(
                new Section("rail", "F", in(0, 1), in(4, 1), in(1, 8), false),
                new Section("", "", in(33, 8), in(6, 1), Length.ZERO, false)));
    assertThat(key(LayoutSheet.draw(wide, INCH, WORDS))).contains("drawn wider");
    assertThat(key(LayoutSheet.draw(narrow, INCH, WORDS))).doesNotContain("drawn wider");
  }

  private static String key(Sheet sheet) {
    return String.join(
        "", SheetReading.of(sheet).inks.stream().map(SheetReading.Ink::text).toList());
  }

  @Test
  void tellsEverySectionAndTheKerf() {
    assertThat(LayoutSheet.draw(SampleLayouts.wall(), INCH, WORDS).alternative())
        .contains("A2, side 2: from 9 and 1 eighth inches to 18 and 1 eighth inches.")
        .contains("B, back end: from 18 and 1 fourth inches, cut to fit later")
        .contains("Waste from 27 and 1 half inches to 35 inches.")
        .endsWith("Saw kerf 1 eighth inch, on the waste side of each cut line.");
  }
}
