package packetwright.paper.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import packetwright.text.measure.Figure;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

class MarkupTest {
  private static final Rule RULE = new Rule(Rational.of(1, 32), Unit.INCH);
  private static final Markup MARKUP = new Markup(Words.of("en"));

  private static String figure(long numerator, long denominator) {
    return MARKUP.phrase(Phrase.of(RULE.print(Length.ofInches(numerator, denominator))));
  }

  private static String visible(String markup) {
    return markup.replaceAll("<[^>]*>", "");
  }

  @Test
  void setsAFractionWithRaisedAndLoweredDigits() {
    assertThat(figure(9, 2))
        .contains("<span class=\"up\">1</span>", "<span class=\"down\">2</span>")
        .contains("title=\"4 and 1 half inches\"");
    assertThat(visible(figure(9, 2))).isEqualTo("4 1\u20442 in");
    assertThat(visible(figure(9, 32))).isEqualTo("9\u204432 in");
    assertThat(visible(figure(9, 1))).isEqualTo("9 in");
  }

  @Test
  void setsAMinusSignBeforeANegativeFigure() {
    assertThat(visible(figure(-9, 2))).isEqualTo("\u22124 1\u20442 in");
    assertThat(visible(figure(-3, 1))).isEqualTo("\u22123 in");
  }

  @Test
  void saysWhenAFigureWasRounded() {
    Figure rounded = RULE.print(Length.ofInches(1, 3));
    assertThat(rounded.grade()).isNotEqualTo(Figure.Grade.EXACT);
    assertThat(visible(MARKUP.phrase(Phrase.of(rounded)))).matches("11\u204432 in (full|scant)");
  }

  @Test
  void keepsPunctuationWithItsFigure() {
    Phrase phrase =
        new Phrase(
            List.of(
                new Phrase.Text("Cut "),
                new Phrase.Measure(RULE.print(Length.ofInches(3))),
                new Phrase.Text(", then stop.")));
    assertThat(visible(MARKUP.phrase(phrase))).isEqualTo("Cut 3 in, then stop.");
    assertThat(MARKUP.phrase(phrase)).contains("<span>,</span></span><span> then stop.</span>");
  }

  @Test
  void escapesWordsWhereverTheyStand() {
    assertThat(MARKUP.phrase(Phrase.of("<b> & \"x\""))).isEqualTo("&lt;b&gt; &amp; &quot;x&quot;");
    Phrase strong = new Phrase(List.of(new Phrase.Emphasis(true, Phrase.of("a<b"))));
    assertThat(MARKUP.phrase(strong)).isEqualTo("<strong>a&lt;b</strong>");
  }
}
