package packetwright.text.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.text.measure.Figure;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;

class WordsTest {
  private static final Words WORDS = Words.of("en");
  private static final Rule INCH = new Rule(Rational.of(1, 64), Unit.INCH);
  private static final Rule MILLIMETRE = new Rule(Rational.of(1, 10), Unit.MILLIMETRE);

  private static Figure inches(long numerator, long denominator) {
    return INCH.print(Length.ofInches(numerator, denominator));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          11 | 2  | 5 and 1 half inches
          1  | 4  | 1 fourth inch
          3  | 4  | 3 fourths of an inch
          9  | 32 | 9 thirty-seconds of an inch
          1  | 1  | 1 inch
          3  | 2  | 1 and 1 half inches
          0  | 1  | 0 inches
          12 | 1  | 12 inches
          -5 | 8  | minus 5 eighths of an inch
          -1 | 1  | minus 1 inch
          """)
  void readsInchesAloud(long numerator, long denominator, String aloud) {
    assertThat(WORDS.aloud(inches(numerator, denominator))).isEqualTo(aloud);
  }

  @Test
  void readsMillimetresAsDecimals() {
    assertThat(WORDS.aloud(MILLIMETRE.print(Length.ofInches(4)))).isEqualTo("101.6 millimetres");
  }

  @Test
  void readsADenominatorWithoutANameByItsNumber() {
    assertThat(WORDS.aloud(figure(0, 5, 127))).isEqualTo("5 over 127 of an inch");
    assertThat(WORDS.aloud(figure(1, 5, 127))).isEqualTo("1 and 5 over 127 inches");
  }

  private static Figure figure(long whole, long numerator, long denominator) {
    return new Figure(
        false,
        BigInteger.valueOf(whole),
        BigInteger.valueOf(numerator),
        BigInteger.valueOf(denominator),
        Unit.INCH,
        Figure.Grade.EXACT);
  }

  @Test
  void tellsWhenAFigureWasRounded() {
    Rule coarse = new Rule(Rational.of(1, 32), Unit.INCH);
    Figure full = coarse.print(Length.ofInches(4721, 1000));
    Figure scant = coarse.print(Length.ofInches(4717, 1000));
    assertThat(WORDS.aloud(full)).isEqualTo("4 and 23 thirty-seconds inches, full");
    assertThat(WORDS.aloud(scant)).isEqualTo("4 and 23 thirty-seconds inches, scant");
    assertThat(WORDS.plain(full)).isEqualTo("4 23/32 in full");
    assertThat(WORDS.plain(scant)).isEqualTo("4 23/32 in scant");
  }

  @Test
  void hasWordsForEveryUnit() {
    for (Unit unit : Unit.values()) {
      for (long halves : new long[] {1, 2, 3, 8}) {
        BigInteger whole = BigInteger.valueOf(halves / 2);
        BigInteger tenths = BigInteger.valueOf(halves % 2 * 5);
        Figure figure = new Figure(false, whole, tenths, BigInteger.TEN, unit, Figure.Grade.EXACT);
        assertThat(WORDS.aloud(figure)).as(unit.name()).isNotEmpty();
      }
    }
  }

  @Test
  void fillsInTextNumbersFiguresAndPhrases() {
    Phrase phrase =
        new Template("t", "{1} of {0}, {2} thick, {3}")
            .fill("A", 2, inches(1, 2), Phrase.of(inches(3, 4)));
    assertThat(phrase.pieces())
        .containsExactly(
            new Phrase.Text("2 of A, "),
            new Phrase.Measure(inches(1, 2)),
            new Phrase.Text(" thick, "),
            new Phrase.Measure(inches(3, 4)));
    assertThat(WORDS.plain(phrase)).isEqualTo("2 of A, 1/2 in thick, 3/4 in");
    assertThat(WORDS.aloud(phrase)).isEqualTo("2 of A, 1 half inch thick, 3 fourths of an inch");
  }

  @Test
  void starsOfThePhraseStandOutAndStarsOfArgumentsDoNot() {
    Phrase phrase = new Template("t", "Hold the **{0} *face* only** down").fill("*in*side");
    assertThat(phrase.pieces())
        .containsExactly(
            new Phrase.Text("Hold the "),
            new Phrase.Emphasis(
                true,
                new Phrase(
                    List.of(
                        new Phrase.Text("*in*side "),
                        new Phrase.Emphasis(false, Phrase.of("face")),
                        new Phrase.Text(" only")))),
            new Phrase.Text(" down"));
    assertThat(WORDS.plain(phrase)).isEqualTo("Hold the *in*side face only down");
  }

  @Test
  void listsWithAndBeforeTheLast() {
    List<Phrase> items = List.of(Phrase.of("A"), Phrase.of("B"), Phrase.of("C"));
    assertThat(WORDS.plain(WORDS.list(items))).isEqualTo("A, B and C");
    assertThat(WORDS.plain(WORDS.list(items.subList(0, 2)))).isEqualTo("A and B");
    assertThat(WORDS.plain(WORDS.list(items.subList(0, 1)))).isEqualTo("A");
    assertThat(WORDS.list(List.of()).pieces()).isEmpty();
  }

  @Test
  void countsOneAndSeveral() {
    assertThat(WORDS.plain(WORDS.counted("words.unit.inch", 1))).isEqualTo("1 inch");
    assertThat(WORDS.plain(WORDS.counted("words.unit.inch", 3))).isEqualTo("3 inches");
  }

  @Test
  void namesAMissingKey() {
    assertThatThrownBy(() -> WORDS.say("words.nowhere")).hasMessageContaining("words.nowhere");
  }

  @Test
  void namesThePhraseThatAsksForMoreThanItIsGiven() {
    assertThatThrownBy(() -> WORDS.say("words.minus")).hasMessageContaining("words.minus");
  }

  @Test
  void refusesToPrintWhatHasNoPrintedForm() {
    assertThatThrownBy(() -> WORDS.say("words.minus", 1.5)).hasMessageContaining("1.5");
  }

  @Test
  void knowsWhichLanguagesItHas() {
    assertThat(Words.has("en")).isTrue();
    assertThat(Words.has("xx")).isFalse();
    assertThat(Words.has("../en")).isFalse();
    assertThatThrownBy(() -> Words.of("xx")).hasMessageContaining("xx");
  }
}
