package packetwright.paper.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static packetwright.paper.quiz.TrialQuiz.WORDS;
import static packetwright.paper.quiz.TrialQuiz.amount;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import packetwright.paper.quiz.Quiz.Question;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;

class ReckoningTest {
  private static final Rule THIRTY_SECONDS = new Rule(Rational.of(1, 32), Unit.INCH);

  private static Question subtract(Rule rule, Amount... amounts) {
    return new Subtraction().question(List.of(amounts), "end length", TrialQuiz.desk(rule));
  }

  private static Question add(Rule rule, Amount... amounts) {
    return new Addition().question(List.of(amounts), "", TrialQuiz.desk(rule));
  }

  private static Map<String, String> mistakes(Question question) {
    return question.mistakes().stream()
        .collect(Collectors.toMap(m -> WORDS.plain(m.answer()), m -> WORDS.plain(m.shows())));
  }

  private static List<String> working(Question question) {
    return question.working().stream().map(WORDS::plain).toList();
  }

  private static final Question TWO_TONGUES =
      subtract(
          THIRTY_SECONDS,
          amount("box width", 1, Rational.of(11, 2)),
          new Amount("tongue", 2, Rational.of(3, 4), Rational.of(11, 16), Moves.FREE, true));

  /** A teacher's example, worked by hand: 5 1/2 less two tongues of 11/16. Common practice. */
  @Test
  void twoTonguesUnderABoxWidth() {
    assertThat(WORDS.plain(TWO_TONGUES.prompt()))
        .isEqualTo(
            "A classmate measures: box width 5 1/2 in; tongue, 2 measured together, 11/16 in."
                + " What is the end length?");
    assertThat(WORDS.plain(TWO_TONGUES.answer())).isEqualTo("4 13/16 in");
    assertThat(working(TWO_TONGUES))
        .containsExactly(
            "5 1/2 = 5 8/16",
            "8/16 is less than 11/16. Borrow 1 as 16/16: 5 8/16 = 4 24/16.",
            "4 24/16 − 11/16 = 4 13/16");
  }

  /** The same teacher's table of wrong answers. Common practice, no source. */
  @Test
  void theWrongAnswersOfTheTwoTongues() {
    assertThat(mistakes(TWO_TONGUES))
        .containsOnly(
            Map.entry("4 1/8 in", "took the tongue twice, although both were measured together"),
            Map.entry("5 5/32 in", "took the tongue only once"),
            Map.entry("4 3/4 in", "used the drawn size of the tongue, not the measured one"),
            Map.entry("6 3/16 in", "added instead of subtracting"),
            Map.entry("5 3/16 in", "took the smaller part from the larger, whichever stood first"),
            Map.entry("4 7/16 in", "borrowed 10 parts, not 16"),
            Map.entry("5 13/16 in", "borrowed, but did not lower the whole number"),
            Map.entry("4 3/8 in", "changed the bottoms and left the tops"));
  }

  /** 3/8 + 1/16, from the same notes: 4/24 with bottoms added, 4/16 with tops unscaled. */
  @Test
  void theWrongAnswersOfASum() {
    Question question =
        add(
            THIRTY_SECONDS,
            amount("panel", 1, Rational.of(3, 8)),
            amount("play", 1, Rational.of(1, 16)));
    assertThat(WORDS.plain(question.answer())).isEqualTo("7/16 in");
    assertThat(working(question)).containsExactly("3/8 = 6/16", "6/16 + 1/16 = 7/16");
    assertThat(mistakes(question))
        .containsOnly(
            Map.entry("4/24 in = 1/6 in", "added tops and bottoms"),
            Map.entry("1/4 in", "changed the bottoms and left the tops"),
            Map.entry("5/16 in", "subtracted instead of adding"));
  }

  @Test
  void carriesAndLowers() {
    Question question =
        add(
            THIRTY_SECONDS,
            amount("a", 1, Rational.of(29, 16)),
            amount("b", 1, Rational.of(7, 16)));
    assertThat(working(question))
        .containsExactly(
            "1 13/16 + 7/16 = 1 20/16",
            "Carry the whole out of 20/16: 1 20/16 = 2 4/16.",
            "In lowest terms 2 4/16 in is 2 1/4 in.");
    assertThat(mistakes(question)).containsEntry("1 1/4 in", "did not carry the whole");
  }

  @Test
  void severalAmountsAreAddedFirst() {
    Question question =
        subtract(
            THIRTY_SECONDS,
            amount("board width", 1, Rational.of(7, 2)),
            amount("groove inset", 1, Rational.of(1, 4)),
            amount("groove width", 1, Rational.of(9, 32)),
            amount("front clearance", 1, Rational.of(1, 32)));
    assertThat(WORDS.plain(question.answer())).isEqualTo("2 15/16 in");
    assertThat(working(question))
        .containsExactly(
            "1/4 = 8/32",
            "8/32 + 9/32 + 1/32 = 18/32",
            "In lowest terms 18/32 in is 9/16 in.",
            "3 1/2 = 3 8/16",
            "8/16 is less than 9/16. Borrow 1 as 16/16: 3 8/16 = 2 24/16.",
            "2 24/16 − 9/16 = 2 15/16");
    assertThat(mistakes(question))
        .containsEntry("3 7/32 in", "left out the groove width")
        .containsEntry("4 1/16 in", "added instead of subtracting");
  }

  @Test
  void metricAmountsAreDecimals() {
    Question question =
        subtract(
            TrialQuiz.metric(),
            amount("width", 1, Rational.of(140)),
            amount("tongues", 1, Rational.of(35, 2)));
    assertThat(WORDS.plain(question.answer())).isEqualTo("122.5 mm");
    assertThat(working(question)).containsExactly("140 mm − 17.5 mm = 122.5 mm");
    assertThat(mistakes(question)).containsOnlyKeys("157.5 mm", "123.5 mm");
    Question points =
        add(
            new Rule(Rational.of(1, 4), Unit.MILLIMETRE),
            amount("a", 1, Rational.of(5, 2)),
            amount("b", 1, Rational.of(5, 4)));
    assertThat(WORDS.plain(points.answer())).isEqualTo("3.75 mm");
    assertThat(mistakes(points)).containsEntry("3.3 mm", "did not line up the decimal points");
  }

  /** The amounts are read off the printed question and reckoned in whole 64ths. */
  @Property(tries = 80)
  void theAnswerIsRight(@ForAll @IntRange(min = 0) int form) {
    Quiz quiz = QuizMaker.make(TrialQuiz.input("form " + form)).value();
    List<Question> questions = quiz.questions();
    for (int i = 6; i < 10; i++) {
      String prompt = WORDS.plain(questions.get(i).prompt());
      List<Long> amounts = Sixtyfourths.readAll(prompt);
      long rest = amounts.subList(1, amounts.size()).stream().mapToLong(a -> a).sum();
      long answer =
          prompt.contains("groove width?") ? amounts.get(0) + rest : amounts.get(0) - rest;
      assertThat(amounts).as(prompt).hasSize(i < 9 ? 2 : 4);
      assertThat(WORDS.plain(questions.get(i).answer())).isEqualTo(Sixtyfourths.write(answer));
      String last = working(questions.get(i)).get(working(questions.get(i)).size() - 1);
      assertThat(last).contains(Sixtyfourths.write(answer).replace(" in", ""));
    }
  }
}
