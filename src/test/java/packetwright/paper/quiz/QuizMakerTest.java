package packetwright.paper.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static packetwright.paper.quiz.TrialQuiz.WORDS;
import static packetwright.paper.quiz.TrialQuiz.codes;
import static packetwright.paper.quiz.TrialQuiz.definition;
import static packetwright.paper.quiz.TrialQuiz.inches;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
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

  @Test
  void anotherTermGivesOtherQuestions() {
    QuizInput a = TrialQuiz.input("A");
    QuizInput next =
        new QuizInput(
            a.projectId(), a.rule(), "2027 fall", "A", a.questions(), a.sizes(), a.words());
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
    assertThat(codes(definition("read_rule", 16, "", "rule=1/16", "from=1", "to=2")))
        .containsExactly("question-range");
    assertThat(codes(definition("read_rule", 15, "", "rule=1/16", "from=1", "to=2"))).isEmpty();
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
