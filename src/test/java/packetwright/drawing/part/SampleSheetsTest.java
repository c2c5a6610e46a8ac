package packetwright.drawing.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.SheetReading;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;

/** The parts of every sample, over its range. */
class SampleSheetsTest {
  private static final Words WORDS = Words.of("en");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sliding-lid-box",
        "sliding-lid-box; +plain_lid; board_width=3-1/8",
        "sliding-lid-box; board_width=4",
        "sliding-lid-box; board_width=5-1/2; box_width=6",
        "sliding-lid-box; board_width=7-1/4",
        "sliding-lid-box; box_length=14; box_width=7",
        "nest-box",
        "nest-box; +predator_guard; species=chickadee; board_thickness=5/8",
        "nest-box; species=great crested flycatcher; floor_inset=1/8",
        "nest-box; species=hairy woodpecker; hang=1-1/2; roof_front=2",
        "step-stool",
        "step-stool; seat_length=20; leg_inset=2",
        "step-stool; leg_width=8-1/2; foot=2",
        "step-stool; +round_corners; corner_radius=1-1/2; edge_radius=3/8",
      })
  void eachSheetIsLegibleAndThePartIsReadAgainFromIt(String settings) {
    List<String> words = List.of(settings.split("; "));
    Set<String> options =
        words.stream()
            .filter(s -> s.startsWith("+"))
            .map(s -> s.substring(1))
            .collect(Collectors.toSet());
    List<String> values = words.stream().skip(1).filter(s -> !s.startsWith("+")).toList();
    List<Part> parts =
        Lessons.workOut(ProjectFolder.sample(words.get(0)), new Request("", values, options, ""))
            .value()
            .parts();
    Rule rule = new Rule(Rational.of(1, 32), Unit.INCH);
    for (Arrangement arrangement : Arrangement.values()) {
      PartSheet.Style style = new PartSheet.Style(rule, WORDS, arrangement);
      List<Sheet> sheets = PartSheet.drawAll(parts, part -> Phrase.of("poplar"), style);
      assertThat(sheets).hasSameSizeAs(parts);
      for (int i = 0; i < parts.size(); i++) {
        SheetReading.of(sheets.get(i)).assertLegible(sheets.get(i));
        assertThat(SheetReader.read(parts.get(i), sheets.get(i)).isSameShape(parts.get(i).solid()))
            .as("%s from its sheet", parts.get(i))
            .isTrue();
      }
    }
  }
}
