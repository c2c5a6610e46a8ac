package packetwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Dimension;
import packetwright.drawing.sheet.DimensionBand;
import packetwright.drawing.sheet.Hatching;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter;

/**
 * Line types and what goes with them, as textbooks print them after ASME Y14.2 and Y14.5 and ISO
 * 128; {@code published/SOURCE.md} has the places.
 *
 * <p>What differs, and why: hidden lines and centre lines have shorter dashes than published (from
 * memory there), since many of our views are half an inch high; the extension line goes on for 1/16
 * in and not 1/8 in beyond its dimension line, so that it clears the numbers of the next row, 6 mm
 * on.
 */
class LineConventionsTest {
  private static final double INCH = 72;
  private static final double MILLIMETRE = 72 / 25.4;

  private static final Map<String, Line> LINES =
      Map.of(
          "visible", Line.VISIBLE,
          "hidden", Line.HIDDEN,
          "center", Line.CENTRE,
          "dimension", Line.DIMENSION,
          "extension", Line.EXTENSION,
          "leader", Line.LEADER,
          "cutting plane", Line.CUTTING,
          "section lining", Line.HATCH,
          "long break", Line.BREAK);

  @ParameterizedTest
  @CsvFileSource(resources = "/published/line-conventions.csv", numLinesToSkip = 1)
  void everyLineHasItsWeightAndItsPattern(String name, String weight, String pattern) {
    Line line = LINES.get(name);
    if (line == null) {
      assertThat(name).as("a line that we do not draw").isIn("short break", "phantom");
      return;
    }
    double width = line.pen().width();
    assertThat(width > (Line.THIN + Line.THICK) / 2).isEqualTo(weight.equals("thick"));
    List<Double> dash = line.pen().dash();
    switch (pattern) {
      case "dashes" -> assertThat(dash.get(0)).isGreaterThan(2 * dash.get(1));
      case "long-short-long" -> {
        assertThat(dash).hasSize(4);
        assertThat(dash.get(0)).isGreaterThan(4 * dash.get(2));
      }
      // Only the ends of the plane are drawn, each of them one dash.
      default -> assertThat(dash).isEmpty();
    }
  }

  @Test
  void thickLinesAreTwiceAsWideAsThinOnes() {
    assertThat(Line.THICK).isCloseTo(2 * Line.THIN, within(1e-9));
  }

  @Test
  void centreLinesRunAQuarterInchPastTheOutline() {
    assertThat(Line.CENTRE_PAST).isGreaterThanOrEqualTo(INCH / 4);
  }

  @Test
  void sectionLiningIsASixteenthToAnEighthApart() {
    assertThat(Hatching.APART).isBetween(INCH / 16, INCH / 8);
  }

  private static final class Strokes implements Painter {
    final List<double[]> lines = new ArrayList<>();
    final List<Area> heads = new ArrayList<>();

    @Override
    public void stroke(Outline path, Pen pen) {
      List<Double> from = path.segments().get(0).xy();
      List<Double> to = path.segments().get(1).xy();
      lines.add(new double[] {from.get(0), from.get(1), to.get(0), to.get(1)});
    }

    @Override
    public void fill(Outline path, double grey) {
      List<Double> xs = new ArrayList<>();
      List<Double> ys = new ArrayList<>();
      path.segments().stream()
          .filter(s -> !s.xy().isEmpty())
          .forEach(
              s -> {
                xs.add(s.xy().get(0));
                ys.add(s.xy().get(1));
              });
      heads.add(
          new Area(
              xs.stream().min(Double::compare).orElseThrow(),
              ys.stream().min(Double::compare).orElseThrow(),
              xs.stream().max(Double::compare).orElseThrow(),
              ys.stream().max(Double::compare).orElseThrow()));
    }

    @Override
    public void text(double x, double y, double angle, double size, Face face, String text) {
      assertThat(angle).isZero();
    }
  }

  private static List<Mark> threeRows() {
    Inscription text = Inscription.of(Face.REGULAR, "12");
    List<DimensionBand.Wish> wishes = new ArrayList<>();
    for (int to : new int[] {100, 200, 300}) {
      wishes.add(new DimensionBand.Wish(0, to, 0, 0, true, text));
    }
    return DimensionBand.arrange(true, wishes).marks(0, 0, 1, 0);
  }

  @Test
  void theFirstDimensionStands10MillimetresOffAndTheNext6() {
    List<Double> rows = threeRows().stream().map(m -> ((Dimension) m).line()).sorted().toList();
    assertThat(rows.get(0)).isCloseTo(10 * MILLIMETRE, within(2 * MILLIMETRE));
    assertThat(rows.get(0)).isGreaterThanOrEqualTo(10 * MILLIMETRE - 1e-9);
    assertThat(rows.get(1) - rows.get(0)).isGreaterThanOrEqualTo(6 * MILLIMETRE - 1e-9);
    assertThat(rows.get(2) - rows.get(1)).isGreaterThanOrEqualTo(6 * MILLIMETRE - 1e-9);
  }

  @Test
  void arrowheadsAreThreeTimesAsLongAsWide() {
    Strokes strokes = new Strokes();
    threeRows().get(0).paint(strokes);
    assertThat(strokes.heads).hasSize(2);
    for (Area head : strokes.heads) {
      assertThat(head.width()).isCloseTo(3 * head.height(), within(1e-9));
    }
  }

  @Test
  void extensionLinesBeginASixteenthOffTheOutlineAndGoOnBeyondTheArrow() {
    Strokes strokes = new Strokes();
    Dimension dimension = (Dimension) threeRows().get(0);
    dimension.paint(strokes);
    List<double[]> upright = strokes.lines.stream().filter(l -> l[0] == l[2]).toList();
    assertThat(upright).hasSize(2);
    for (double[] line : upright) {
      assertThat(line[1]).isCloseTo(INCH / 16, within(INCH / 64));
      assertThat(line[3] - dimension.line()).isCloseTo(INCH / 16, within(INCH / 64));
    }
  }
}
