package packetwright.paper.quiz;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.QuizDefinition.QuestionDefinition;
import packetwright.definition.size.Evaluated;
import packetwright.paper.quiz.Quiz.Question;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.text.words.Words;

/** Where one form is put together: its questions so far, and what they have asked already. */
final class Desk {
  private final QuizInput input;
  private final Findings findings;
  private final List<Question> questions = new ArrayList<>();
  private final Set<List<Rational>> asked = new HashSet<>();

  Desk(QuizInput input, Findings findings) {
    this.input = input;
    this.findings = findings;
  }

  QuizInput input() {
    return input;
  }

  Words words() {
    return input.words();
  }

  Unit unit() {
    return input.rule().unit();
  }

  List<Question> questions() {
    return questions;
  }

  /** Number of the question that comes next. */
  int nextNumber() {
    return questions.size() + 1;
  }

  /** Draws for the question that comes next. */
  Draws draws() {
    return Draws.of(
        List.of(input.projectId(), input.term(), input.form(), Integer.toString(nextNumber())));
  }

  /** Whether these numbers have been asked in this form. */
  boolean isAsked(List<Rational> numbers) {
    return asked.contains(numbers);
  }

  void add(Question question, List<Rational> numbers) {
    asked.add(numbers);
    questions.add(question);
  }

  void report(Finding finding) {
    findings.add(finding);
  }

  /** The values of a key, which must be there. */
  List<Located<String>> values(QuestionDefinition question, String key) {
    List<Located<String>> values = question.values().getOrDefault(key, List.of());
    if (values.isEmpty()) {
      String kind = question.kind().value();
      report(
          Finding.error(
              "missing-question-value",
              question.kind().at(),
              "`" + kind + "` needs `" + key + "`",
              "add `" + key + ":` to this question"));
    }
    return values;
  }

  /** Whether every key is one of a kind's own; a finding for each that is not. */
  boolean hasOnly(QuestionDefinition question, Set<String> keys) {
    boolean good = true;
    for (var entry : question.values().entrySet()) {
      if (!keys.contains(entry.getKey())) {
        String message =
            "`" + question.kind().value() + "` has no use for `" + entry.getKey() + "`";
        String hint = NearMiss.hint(entry.getKey(), keys);
        Located<?> at = entry.getValue().isEmpty() ? question.kind() : entry.getValue().get(0);
        report(
            Finding.error(
                "unknown-question-value", at.at(), message, hint.isEmpty() ? "delete it" : hint));
        good = false;
      }
    }
    return good;
  }

  /** What a formula comes to, counted in the rule's unit; none, with a finding, if no length. */
  @Nullable Rational length(Located<String> formula) {
    Evaluated evaluated = findings.take(input.sizes().evaluateLength(formula));
    return evaluated == null ? null : evaluated.length().inches().dividedBy(unit().inBase());
  }

  /** A size's name in running text: {@code box width}. */
  static String spoken(String name) {
    return name.replace('_', ' ').replace('.', ' ').toLowerCase(Locale.ROOT);
  }
}
