package packetwright.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static packetwright.drawing.part.SampleParts.in;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.drawing.figure.SampleLayouts;
import packetwright.drawing.sheet.RuleSheet.Pointer;
import packetwright.drawing.sheet.SheetReading.Straight;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Words;

class RuleSheetTest {
  private static final Words WORDS = Words.of("en");
  private static final double ZERO = 12;

  private static Rule inch(int parts) {
    return new Rule(Rational.of(1, parts), Unit.INCH);
  }

  /** Upright strokes that start at the rule's upper edge. */
  private static List<Straight> ticks(Sheet sheet, double edge) {
    return SheetReading.of(sheet).lines.stream()
        .filter(l -> l.x1() == l.x2() && l.y1() == edge && l.y2() < edge + 30)
        .sorted(Comparator.comparingDouble(Straight::x1))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(ints = {8, 16, 32})
  void everyGraduationIsWhereItBelongs(int parts) {
    Sheet sheet = RuleSheet.draw("r", inch(parts), in(6, 1), List.of(), WORDS);
    List<Straight> ticks = ticks(sheet, 4);
    assertThat(ticks).hasSize(6 * parts);
    for (int i = 1; i <= 6 * parts; i++) {
      assertThat(ticks.get(i - 1).x1()).isCloseTo(ZERO + 72.0 * i / parts, within(1e-9));
    }
  }

  @Test
  void tallerTicksAreCoarserGraduations() {
    List<Straight> ticks = ticks(RuleSheet.draw("r", inch(32), in(1, 1), List.of(), WORDS), 4);
    List<Double> heights =
        IntStream.of(32, 16, 8, 4, 2, 1)
            .mapToObj(i -> ticks.get(i - 1).y2() - ticks.get(i - 1).y1())
            .toList();
    assertThat(heights).isSortedAccordingTo(Comparator.reverseOrder()).doesNotHaveDuplicates();
  }

  @Test
  void aMillimetreIs72Over25Point4Points() {
    Rule millimetre = new Rule(Rational.ONE, Unit.MILLIMETRE);
    Sheet sheet = RuleSheet.draw("r", millimetre, SampleLayouts.millimetres(150), List.of(), WORDS);
    List<Straight> ticks = ticks(sheet, 4);
    assertThat(ticks).hasSize(150);
    assertThat(ticks.get(149).x1() - ticks.get(49).x1()).isCloseTo(7200 / 25.4, within(1e-9));
  }

  @Property
  void arrowsPointExactlyAndNothingOverlaps(
      @ForAll @IntRange(min = 1, max = 190) int one,
      @ForAll @IntRange(min = 1, max = 190) int two,
      @ForAll @IntRange(min = 1, max = 190) int three) {
    List<Pointer> pointers =
        IntStream.of(one, two, three)
            .distinct()
            .mapToObj(i -> new Pointer("A" + i % 10, in(i, 32)))
            .toList();
    Sheet sheet = RuleSheet.draw("r", inch(32), in(6, 1), pointers, WORDS);
    SheetReading reading = SheetReading.of(sheet);
    reading.assertLegible(sheet);
    for (Pointer pointer : pointers) {
      double x = ZERO + pointer.at().inches().approximate() * 72;
      assertThat(reading.lines)
          .anyMatch(l -> l.x1() == x && l.x2() == x && l.pen().equals(Line.LEADER.pen()));
    }
  }

  @Test
  void inWordsItCountsGraduationsRatherThanGivingTheReading() {
    assertThat(
            RuleSheet.draw("r", inch(16), in(6, 1), List.of(new Pointer("A", in(43, 16))), WORDS)
                .alternative())
        .isEqualTo(
            "A rule of 6 inches, graduated to 1/16 in."
                + " Arrow A: 11 graduations after the line marked 2.");
  }

  @Test
  void barsAreExactlyAsLongAsTheyShouldBe() {
    Sheet sheet = RuleSheet.bars("b", List.of(new Pointer("A", in(37, 16))), WORDS);
    List<Straight> level =
        SheetReading.of(sheet).lines.stream().filter(l -> l.y1() == l.y2()).toList();
    assertThat(level)
        .isNotEmpty()
        .allMatch(
            l -> Math.abs(Math.abs(l.x2() - l.x1()) + l.pen().width() - 37 * 72 / 16.0) < 1e-9);
  }
}
