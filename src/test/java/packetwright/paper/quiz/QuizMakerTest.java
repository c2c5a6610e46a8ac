package packetwright.paper.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static packetwright.paper.quiz.TrialQuiz.PROJECT;
import static packetwright.paper.quiz.TrialQuiz.WORDS;
import static packetwright.paper.quiz.TrialQuiz.codes;
import static packetwright.paper.quiz.TrialQuiz.definition;
import static packetwright.paper.quiz.TrialQuiz.inches;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import packetwright.definition.project.QuizDefinition.QuestionDefinition;
import packetwright.paper.quiz.Quiz.Mistake;
import packetwright.paper.quiz.Quiz.Question;
import packetwright.text.source.Checked;

class QuizMakerTest {
  private static final QuestionDefinition READ =
      definition("read_rule", 4, "", "rule=1/16", "from=0", "to=6");

  private static List<String> prompts(Quiz quiz) {
    return quiz.questions().stream().map(q -> WORDS.plain(q.prompt())).toList();
  }

  private static List<String> answers(Quiz quiz) {
    return quiz.questions().stream().map(q -> WORDS.plain(q.answer())).toList();
  }

  @Test
  void theSampleQuizIsMadeWithoutFindings() {
    Checked<Quiz> made = QuizMaker.make(TrialQuiz.input("A"));
    assertThat(made.findings()).isEmpty();
    assertThat(made.value().questions()).hasSize(10);
    assertThat(made.value().questions().stream().filter(q -> q.drawing() != null)).hasSize(6);
    assertThat(made.value().questions())
        .allSatisfy(q -> assertThat(q.mistakes()).hasSizeGreaterThanOrEqualTo(2))
        .allSatisfy(q -> assertThat(q.working()).isNotEmpty());
  }

  @Property(tries = 60)
  void theSameInputGivesTheSameFormAndTheAnswerIsNoMistake(@ForAll @IntRange(min = 0) int n) {
    Quiz quiz = QuizMaker.make(TrialQuiz.input("form " + n)).value();
    Quiz again = QuizMaker.make(TrialQuiz.input("form " + n)).value();
    assertThat(prompts(quiz)).isEqualTo(prompts(again));
    assertThat(answers(quiz)).isEqualTo(answers(again));
    for (Question question : quiz.questions()) {
      List<String> wrong =
          question.mistakes().stream().map(Mistake::answer).map(WORDS::plain).toList();
      assertThat(wrong).doesNotContain(WORDS.plain(question.answer())).doesNotHaveDuplicates();
      assertThat(wrong).noneMatch(w -> w.startsWith("-") || w.startsWith("0 "));
    }
  }

  @Property(tries = 60)
  void noFormAsksTheSameTwice(@ForAll @IntRange(min = 0) int n) {
    Quiz quiz = QuizMaker.make(TrialQuiz.input("form " + n)).value();
    List<String> readings = answers(quiz).subList(0, 6);
    assertThat(readings).doesNotHaveDuplicates();
    assertThat(prompts(quiz)).doesNotHaveDuplicates();
  }

  @Test
  void formsOfOneClassAllDiffer() {
    Set<List<String>> seen = new HashSet<>();
    for (int student = 0; student < 120; student++) {
      seen.add(answers(QuizMaker.make(TrialQuiz.input("Student " + student)).value()));
    }
    assertThat(seen).hasSize(120);
  }

  private static final String HUGE = "999999999999 * 999999999999";

  @Test
  void valuesBeyondAllMeasureAreFindings() {
    assertThat(codes(definition("read_rule", 1, "", "rule=1/16", "from=" + HUGE, "to=6")))
        .containsExactly("question-range");
    assertThat(codes(definition("read_rule", 1, "", "rule=1/16", "from=0", "to=0 - " + HUGE)))
        .containsExactly("question-range");
    assertThat(codes(definition("read_rule", 1, "", "rule=1/16", "from=-1", "to=6")))
        .containsExactly("question-range");
    assertThat(codes(definition("read_rule", 1, "", "rule=1/16", "from=0", "to=" + HUGE)))
        .containsExactly("rule-too-long");
    assertThat(codes(definition("subtract", 1, "", "from=" + HUGE, "take=board_width"))).isEmpty();
  }

  @Test
  void theRuleAsDrawnFitsThePage() {
    assertThat(codes(definition("read_rule", 1, "", "rule=1/16", "from=0", "to=6"))).isEmpty();
    assertThat(codes(definition("read_rule", 1, "", "rule=1/16", "from=0", "to=6 1/2")))
        .as("drawn to 7")
        .containsExactly("rule-too-long");
    assertThat(metricCodes("160")).isEmpty();
    assertThat(metricCodes("165")).as("drawn to 170").containsExactly("rule-too-long");
  }

  private static List<String> metricCodes(String to) {
    QuestionDefinition read =
        definition("read_rule", 1, "", "rule=1 mm", "from=0", "to=" + to + " mm");
    return QuizMaker.make(TrialQuiz.input("A", TrialQuiz.metric(), List.of(read)))
        .findings()
        .stream()
        .map(f -> f.code())
        .toList();
  }

  /** Four on six inches: one each in the quarters of the rule, and none a slip from another. */
  @Property(tries = 60)
  void spreadsTheReadingsOfAFormOverTheRule(@ForAll @IntRange(min = 0) int n) {
    Quiz quiz = QuizMaker.make(TrialQuiz.input("form " + n)).value();
    List<Double> readings =
        answers(quiz).subList(0, 6).stream().map(QuizMakerTest::inInches).toList();
    assertThat(readings.subList(0, 4)).extracting(r -> (int) (r / 1.5)).contains(0, 1, 2, 3);
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < i; j++) {
        double mark = j < 4 ? 1 / 16.0 : 1 / 32.0;
        assertThat(Math.abs(readings.get(i) - readings.get(j))).isGreaterThan(2 * mark);
      }
    }
  }

  private static double inInches(String printed) {
    double sum = 0;
    for (String word : printed.replace(" in", "").split(" ", -1)) {
      String[] parts = word.split("/", -1);
      sum += Double.parseDouble(parts[0]) / (parts.length > 1 ? Double.parseDouble(parts[1]) : 1);
    }
    return sum;
  }

  /** The sample lets the panel be 3/16 to 5/16 in, and front_clearance at most 1/16 in. */
  @Property(tries = 60)
  void keepsGivensWithinTheirRanges(@ForAll @IntRange(min = 0) int n) {
    List<QuestionDefinition> asked =
        List.of(
            definition("add", 2, "", "of=panel_thickness|front_clearance"),
            definition("subtract", 2, "", "from=board_width", "take=front_clearance"));
    Quiz quiz = QuizMaker.make(TrialQuiz.input("form " + n, PROJECT.rule(), asked)).value();
    for (String prompt : prompts(quiz)) {
      for (var given : PROJECT.givens()) {
        String name = given.name().value().replace('_', ' ') + " ";
        int at = prompt.indexOf(name);
        if (at < 0) {
          continue;
        }
        String value = prompt.substring(at + name.length()).split(" in", -1)[0];
        double stated = inInches(value);
        assertThat(stated)
            .as(prompt)
            .isBetween(
                Objects.requireNonNull(given.from()).value().value().approximate(),
                Objects.requireNonNull(given.to()).value().value().approximate());
      }
    }
  }

  @Test
  void anotherTermGivesOtherQuestions() {
    QuizInput a = TrialQuiz.input("A");
    QuizInput next =
        new QuizInput(
            a.projectId(),
            a.rule(),
            "2027 fall",
            "A",
            a.questions(),
            a.sizes(),
            a.givens(),
            a.words());
    assertThat(answers(QuizMaker.make(next).value()))
        .isNotEqualTo(answers(QuizMaker.make(a).value()));
  }

  @Test
  void aSubstitutionChangesTheNumbers() {
    QuizInput a = TrialQuiz.input("A");
    QuizInput wide =
        new QuizInput(
            a.projectId(),
            a.rule(),
            a.term(),
            "A",
            a.questions(),
            TrialQuiz.sizes(Map.of("board_width", inches(11, 2))),
            a.givens(),
            a.words());
    List<String> before = prompts(QuizMaker.make(a).value());
    List<String> after = prompts(QuizMaker.make(wide).value());
    assertThat(after.subList(0, 9)).isEqualTo(before.subList(0, 9));
    assertThat(after.get(9)).isNotEqualTo(before.get(9));
  }

  @Test
  void namesWhatIsMissingAndWhatIsNotNeeded() {
    assertThat(codes(definition("read_rule", 1, "", "rule=1/16", "from=0")))
        .containsExactly("missing-question-value");
    assertThat(codes(definition("subtract", 1, "", "from=board_width", "tak=tongue")))
        .containsExactly("unknown-question-value", "missing-question-value");
    assertThat(codes(definition("add", 1, "", "of=tongue")))
        .containsExactly("missing-question-value");
  }

  @Test
  void refusesUnknownSizesAndWhatIsNoLength() {
    assertThat(codes(definition("subtract", 1, "", "from=board_with", "take=tongue")))
        .containsExactly("unknown-name");
    assertThat(codes(definition("add", 1, "grove_width", "of=panel_thickness|play")))
        .containsExactly("unknown-name");
    assertThat(codes(definition("add", 1, "", "of=board_width * box_length|play")))
        .containsExactly("not-a-length");
  }

  @Test
  void refusesRangesWithTooFewReadings() {
    assertThat(codes(definition("read_rule", 1, "", "rule=1/16", "from=3", "to=2")))
        .containsExactly("question-range");
    assertThat(codes(definition("read_rule", 6, "", "rule=1/16", "from=1", "to=2")))
        .containsExactly("question-range");
    assertThat(codes(definition("read_rule", 3, "", "rule=1/16", "from=1", "to=2"))).isEmpty();
    assertThat(codes(READ, definition("read_rule", 48, "", "rule=1/16", "from=0", "to=3")))
        .containsExactly("question-range");
  }

  @Test
  void refusesRulesThatNobodyHas() {
    assertThat(codes(definition("read_rule", 1, "", "rule=1/10", "from=0", "to=6")))
        .containsExactly("wrong-graduation");
    assertThat(codes(definition("read_rule", 1, "", "rule=lots", "from=0", "to=6")))
        .containsExactly("wrong-graduation");
    assertThat(codes(definition("read_rule", 1, "", "rule=1/16", "from=0", "to=9")))
        .containsExactly("rule-too-long");
  }

  @Test
  void refusesDifferencesBelowZeroAndEndlessOnes() {
    assertThat(codes(definition("subtract", 1, "", "from=tongue", "take=box_length")))
        .containsExactly("question-range");
    assertThat(
            codes(
                definition(
                    "subtract",
                    1,
                    "",
                    "from=box_length",
                    "take=play|play|play|play|play|play|play|play")))
        .containsExactly("question-amounts");
    assertThat(codes(definition("add", 50, "", "of=play|play"))).containsExactly("question-range");
  }

  @Test
  void warnsWhenTheAnswerIsNotTheSizeItIsSaidToBe() {
    assertThat(codes(definition("subtract", 1, "end_length", "from=box_width", "take=tongue")))
        .containsExactly("question-about");
  }
}
