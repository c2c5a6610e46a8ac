package packetwright.drawing.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import packetwright.drawing.setup.SampleRuns;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.SheetReading;
import packetwright.drawing.sheet.SheetReading.Ink;
import packetwright.plan.lesson.Lesson;
import packetwright.text.words.Words;

/** Who cannot see a drawing is told the numbers that stand on it. */
class TextAlternativeTest {
  private static final Words WORDS = Words.of("en");

  /** What a sheet shows and does not say, and why that is enough; an entry too many fails. */
  private static final Map<String, String> EXCEPTIONS =
      Map.of(
          "part-front: 1 fourth", "the entrance lies in the middle of a width that is said",
          "part-lid: 23 thirty-seconds", "half of what the notch, said to be in the middle, leaves",
          "template-back-front-1: 1 fourth", "a hole's diameter, said with the part's drawing",
          "template-back-front-3: 1 fourth", "a hole's diameter, said with the part's drawing",
          "template-floor-front-1: 1 fourth", "a hole's diameter, said with the part's drawing");

  /** The stacked fractions of a sheet, read aloud: {@code 15 sixteenths}. */
  private static List<String> fractions(Sheet sheet) {
    List<String> fractions = new ArrayList<>();
    List<Ink> digits =
        SheetReading.of(sheet).inks.stream().filter(i -> i.text().matches("[0-9]+")).toList();
    for (Ink over : digits) {
      for (Ink under : digits) {
        double gap = under.area().top() - over.area().bottom();
        if (Math.abs(gap - 3) < 0.01 && Math.abs(middle(under) - middle(over)) < 0.01) {
          String name = "words.denominator." + under.text();
          fractions.add(
              over.text()
                  + " "
                  + WORDS.plain(name + (over.text().equals("1") ? ".one" : ".other")));
        }
      }
    }
    return fractions;
  }

  private static double middle(Ink ink) {
    return (ink.area().left() + ink.area().right()) / 2;
  }

  @Test
  void eachFractionOnADrawingIsSaid() {
    List<String> missing = new ArrayList<>();
    int said = 0;
    for (Map.Entry<String, Lesson> entry : SampleRuns.inOwnShops().entrySet()) {
      for (Sheet sheet : new Drawings(entry.getValue(), WORDS).all()) {
        for (String fraction : fractions(sheet)) {
          Pattern spoken = Pattern.compile("(?<![0-9])" + fraction + "\\b");
          if (spoken.matcher(sheet.alternative()).find()) {
            said++;
          } else {
            missing.add(sheet.name() + ": " + fraction);
          }
        }
      }
    }
    assertThat(said).isGreaterThan(100);
    assertThat(missing.stream().distinct())
        .containsExactlyInAnyOrderElementsOf(EXCEPTIONS.keySet());
  }
}
