package packetwright.paper.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter;
import packetwright.drawing.sheet.Sheet;
import packetwright.text.measure.Unit;

class TrueScaleTest {
  /** Where upright strokes stand, in points. */
  private static List<Double> uprights(Sheet sheet) {
    List<Double> found = new ArrayList<>();
    sheet.paint(
        new Painter() {
          @Override
          public void stroke(Outline path, Pen pen) {
            double from = path.segments().get(0).xy().get(0);
            double to = path.segments().get(1).xy().get(0);
            if (from == to) {
              found.add(from);
            }
          }

          @Override
          public void fill(Outline path, double grey) {}

          @Override
          public void text(double x, double y, double angle, double size, Face face, String text) {}
        });
    return found;
  }

  @Test
  void theBarIsSixInchesLong() {
    assertThat(uprights(TrueScale.bar(Unit.INCH, SampleLesson.WORDS))).containsExactly(0.0, 432.0);
  }

  @Test
  void theMetricBarIs150MillimetresLong() {
    List<Double> ends = uprights(TrueScale.bar(Unit.MILLIMETRE, SampleLesson.WORDS));
    assertThat(ends).hasSize(2);
    assertThat(ends.get(1) - ends.get(0)).isCloseTo(150 * 72 / 25.4, within(1e-9));
  }

  @Test
  void theStripHasAMarkAtEverySixteenth() {
    List<Double> marks = uprights(TrueScale.strip(Unit.INCH, SampleLesson.WORDS));
    assertThat(marks).hasSize(7 * 16 + 1);
    for (int i = 0; i < marks.size(); i++) {
      assertThat(marks.get(i)).isEqualTo(i * 4.5);
    }
  }
}
