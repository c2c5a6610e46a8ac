package packetwright.paper.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static packetwright.paper.quiz.TrialQuiz.WORDS;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter;
import packetwright.drawing.sheet.Sheet;
import packetwright.paper.quiz.Quiz.Question;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;

class RuleReadingTest {
  private static final Rule SIXTEENTHS = new Rule(Rational.of(1, 16), Unit.INCH);

  /** The arrow's tip and the zero end of the rule, found on the painted sheet. */
  private static final class Eye implements Painter {
    final List<Double> tips = new ArrayList<>();
    double zero = Double.MAX_VALUE;

    @Override
    public void stroke(Outline path, Pen pen) {
      for (Outline.Segment segment : path.segments()) {
        if (!segment.xy().isEmpty()) {
          zero = Math.min(zero, segment.xy().get(0));
        }
      }
    }

    @Override
    public void fill(Outline path, double grey) {
      tips.add(path.segments().get(0).xy().get(0));
    }

    @Override
    public void text(double x, double y, double angle, double size, Face face, String text) {}
  }

  private static double arrow(Question question) {
    Sheet sheet = Objects.requireNonNull(question.drawing());
    Eye eye = new Eye();
    sheet.paint(eye);
    assertThat(eye.tips).hasSize(1);
    return eye.tips.get(0) - eye.zero;
  }

  private static Question question(Rule rule, long to, Rational reading) {
    Desk desk = TrialQuiz.desk(rule);
    return new RuleReading(desk, rule, Rational.ZERO, Rational.of(to)).question(reading);
  }

  private static Map<String, String> mistakes(Question question) {
    return question.mistakes().stream()
        .collect(Collectors.toMap(m -> WORDS.plain(m.answer()), m -> WORDS.plain(m.shows())));
  }

  /** The answer is read off the drawing by eye, as it were, and written by other means. */
  @Property(tries = 80)
  void theArrowStandsAtTheAnswer(@ForAll @IntRange(min = 0) int form) {
    Quiz quiz = QuizMaker.make(TrialQuiz.input("form " + form)).value();
    for (Question question : quiz.questions()) {
      if (question.drawing() == null) {
        continue;
      }
      double points = arrow(question);
      long sixtyFourths = Math.round(points / 72 * 64);
      assertThat(points).isEqualTo(sixtyFourths / 64.0 * 72, Offset.offset(1e-9));
      assertThat(WORDS.plain(question.answer())).isEqualTo(Sixtyfourths.write(sixtyFourths));
    }
  }

  @Property
  void theAnswerIsInLowestTerms(@ForAll @IntRange(min = 1, max = 95) int marks) {
    if (marks % 16 == 0) {
      return;
    }
    Question question = question(SIXTEENTHS, 6, Rational.of(marks, 16));
    assertThat(WORDS.plain(question.answer())).isEqualTo(Sixtyfourths.write(marks * 4L));
    assertThat(question.working()).hasSize(marks % 2 == 0 ? 2 : 1);
  }

  /**
   * The same reading as in a teacher's example: 3 5/16, and what is made of it. Common practice.
   */
  @Test
  void namesWhatEachWrongReadingShows() {
    assertThat(mistakes(question(SIXTEENTHS, 6, Rational.of(53, 16))))
        .containsOnly(
            Map.entry("3 5/8 in", "took marks of 1/16 in for marks of 1/8 in"),
            Map.entry("3 3/8 in", "counted one mark too many (the line at the number counts as 0)"),
            Map.entry("3 1/4 in", "counted one mark too few"),
            Map.entry("3 11/16 in", "counted from the arrow to the next number"),
            Map.entry("4 5/16 in", "took the number after the arrow"));
  }

  @Test
  void dropsWhatWouldLieOffTheRuleOrBeRight() {
    assertThat(mistakes(question(SIXTEENTHS, 6, Rational.of(11, 2))))
        .as("5 1/2: backwards is right, doubled is the next number, 6 1/2 is off the rule")
        .containsOnlyKeys("5 9/16 in", "5 7/16 in");
    assertThat(mistakes(question(SIXTEENTHS, 6, Rational.of(1, 16))))
        .as("1/16: one too few is nothing")
        .containsOnlyKeys("1/8 in", "15/16 in", "1 1/16 in");
  }

  @Test
  void twoMistakesWithOneAnswerAreOneChoice() {
    assertThat(mistakes(question(SIXTEENTHS, 6, Rational.of(1, 16))))
        .containsEntry(
            "1/8 in",
            "took marks of 1/16 in for marks of 1/8 in; or counted one mark too many (the line"
                + " at the number counts as 0)");
  }

  @Test
  void showsTheWorking() {
    assertThat(question(SIXTEENTHS, 6, Rational.of(19, 8)).working())
        .extracting(WORDS::plain)
        .containsExactly(
            "The arrow stands 6 marks of 1/16 in past 2 in: 2 6/16 in.",
            "In lowest terms 2 6/16 in is 2 3/8 in.");
    assertThat(question(SIXTEENTHS, 6, Rational.of(33, 16)).working())
        .extracting(WORDS::plain)
        .containsExactly("The arrow stands 1 mark of 1/16 in past 2 in: 2 1/16 in.");
  }

  @Test
  void readsMetricRules() {
    Rule halves = TrialQuiz.metric();
    Question question = question(halves, 150, Rational.of(87, 2));
    assertThat(WORDS.plain(question.answer())).isEqualTo("43.5 mm");
    assertThat(arrow(question)).isEqualTo(43.5 / 25.4 * 72, Offset.offset(1e-9));
    assertThat(mistakes(question))
        .containsOnlyKeys("47 mm", "44 mm", "43 mm", "46.5 mm", "53.5 mm", "4.35 mm");
    Question whole = question(new Rule(Rational.ONE, Unit.MILLIMETRE), 150, Rational.of(43));
    assertThat(mistakes(whole)).containsOnlyKeys("44 mm", "42 mm", "47 mm", "53 mm", "4.3 mm");
  }

  @Test
  void drawsOneFormsRulesUnderDifferentNames() {
    Quiz quiz = QuizMaker.make(TrialQuiz.input("A")).value();
    assertThat(quiz.questions().stream().filter(q -> q.drawing() != null))
        .extracting(q -> Objects.requireNonNull(q.drawing()).name())
        .doesNotHaveDuplicates()
        .first()
        .isEqualTo("quiz-A-1");
  }
}
