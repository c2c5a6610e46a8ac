package packetwright.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import packetwright.drawing.part.PartSheet;
import packetwright.drawing.part.SampleParts;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.SheetReading;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;
import packetwright.wood.part.Solid;

/**
 * ISO 5455 and the scales of the inch and foot; {@code published/SOURCE.md} has the places. An inch
 * drawing is full size or a half, quarter, eighth, sixteenth and so on.
 */
class DrawingScalesTest {
  private static final Pattern REDUCTION = Pattern.compile("1 ?[:/] ?(\\d+)(?: size)?");

  private static Set<Integer> published(String systems) throws IOException {
    Set<Integer> reductions = new TreeSet<>(List.of(1));
    try (InputStream in =
        DrawingScalesTest.class.getResourceAsStream("/published/drawing-scales.csv")) {
      assertThat(in).isNotNull();
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      for (String row : text.lines().toList()) {
        List<String> cells = List.of(row.split(",", -1));
        if (cells.get(0).startsWith(systems)) {
          String ratio = cells.get(2);
          reductions.add(Integer.parseInt(ratio.substring(ratio.indexOf(':') + 1)));
        }
      }
    }
    return reductions;
  }

  private static int reduction(Sheet sheet) {
    for (SheetReading.Ink ink : SheetReading.of(sheet).inks) {
      Matcher matcher = REDUCTION.matcher(ink.text());
      if (matcher.matches()) {
        return Integer.parseInt(matcher.group(1));
      }
      if (ink.text().equals("Full size")) {
        return 1;
      }
    }
    throw new IllegalStateException("no scale on " + sheet.name());
  }

  private static Set<Integer> drawn(Rule rule) {
    Set<Integer> drawn = new TreeSet<>();
    for (long length = 2; length <= 320; length = length * 3 / 2) {
      Solid block =
          Solid.block(
              Length.ofInches(length), Length.ofInches(length, 2), Length.ofInches(length, 16));
      Part part = SampleParts.part("piece", "Q", 1, block, List.of());
      drawn.add(reduction(PartSheet.draw(part, Phrase.of("pine"), rule, Words.of("en"))));
    }
    return drawn;
  }

  @Test
  void metricDrawingsAreAtScalesOfTheStandard() throws IOException {
    Set<Integer> drawn = drawn(new Rule(Rational.of(1, 2), Unit.MILLIMETRE));
    assertThat(published("ISO 5455 reduction")).containsAll(drawn);
    assertThat(drawn).contains(1, 2, 5, 10, 20);
  }

  @Test
  void inchDrawingsAreAtScalesOfTheInchAndFoot() throws IOException {
    Set<Integer> drawn = drawn(new Rule(Rational.of(1, 32), Unit.INCH));
    assertThat(published("US inch-foot")).containsAll(drawn);
    assertThat(drawn).contains(1, 2, 4, 8);
  }
}
