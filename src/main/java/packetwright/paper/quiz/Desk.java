package packetwright.paper.quiz;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.QuizDefinition.QuestionDefinition;
import packetwright.definition.size.Evaluated;
import packetwright.paper.quiz.Quiz.Question;
import packetwright.text.measure.Quantity;
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

  /** Readings of rules in this form, with the graduation of each one's rule. */
  private final Map<Rational, Rational> read = new LinkedHashMap<>();

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

  /** Draws for something else about the questions from the next on. */
  Draws draws(String purpose) {
    return Draws.of(
        List.of(
            input.projectId(),
            input.term(),
            input.form(),
            Integer.toString(nextNumber()),
            purpose));
  }

  /** Whether these numbers have been asked in this form. */
  boolean isAsked(List<Rational> numbers) {
    return asked.contains(numbers);
  }

  void add(Question question, List<Rational> numbers) {
    asked.add(numbers);
    questions.add(question);
  }

  void markRead(Rational reading, Rational graduation) {
    read.put(reading, graduation);
  }

  /** Whether a reading is more than two marks from every other, so that no slip leads to it. */
  boolean isClear(Rational reading, Rational graduation) {
    return read.entrySet().stream()
        .noneMatch(other -> isNear(reading.minus(other.getKey()), graduation, other.getValue()));
  }

  private static boolean isNear(Rational apart, Rational one, Rational other) {
    Rational mark = one.compareTo(other) > 0 ? one : other;
    Rational marks = apart.dividedBy(mark);
    Rational two = Rational.of(2);
    return marks.compareTo(two) <= 0 && marks.compareTo(two.negated()) >= 0;
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
    Evaluated evaluated = evaluated(formula);
    return evaluated == null ? null : inUnit(evaluated.value());
  }

  /** What a formula comes to; none, with a finding, if no length. */
  @Nullable Evaluated evaluated(Located<String> formula) {
    return findings.take(input.sizes().evaluateLength(formula));
  }

  /** A length, counted in the rule's unit. */
  Rational inUnit(Quantity length) {
    return length.asLength().inches().dividedBy(unit().inBase());
  }

  /** A size's name in running text: {@code box width}. */
  static String spoken(String name) {
    return name.replace('_', ' ').replace('.', ' ').toLowerCase(Locale.ROOT);
  }
}
