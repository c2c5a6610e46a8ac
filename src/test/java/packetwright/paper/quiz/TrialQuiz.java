package packetwright.paper.quiz;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import packetwright.definition.project.Project;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.project.ProjectReader;
import packetwright.definition.project.QuizDefinition.QuestionDefinition;
import packetwright.definition.shop.ShopReader;
import packetwright.definition.size.Sizes;
import packetwright.definition.size.Substitution;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.Span;
import packetwright.text.words.Words;

/** Quizzes on the sample project, and on the same with other questions. */
final class TrialQuiz {
  static final Words WORDS = Words.of("en");
  static final Project PROJECT =
      ProjectReader.read(ProjectFolder.sample("sliding-lid-box")).value();
  static final Sizes SIZES = sizes(Map.of());

  private TrialQuiz() {}

  static Sizes sizes(Map<String, Located<Quantity>> substitution) {
    return Sizes.of(PROJECT, ShopReader.builtIn(), Substitution.of(substitution)).value();
  }

  static Located<Quantity> inches(long numerator, long denominator) {
    return at(Quantity.of(Length.ofInches(numerator, denominator)));
  }

  static <T> Located<T> at(T value) {
    return new Located<>(value, new Span("quiz.yaml", 3, 5, 4));
  }

  /** The sample's own quiz. */
  static QuizInput input(String form) {
    return input(form, PROJECT.rule(), PROJECT.quiz().questions());
  }

  static QuizInput input(String form, Rule rule, List<QuestionDefinition> questions) {
    return new QuizInput(
        PROJECT.id(), rule, "2027 spring", form, questions, SIZES, PROJECT.givens(), WORDS);
  }

  /** A definition; each value is {@code key=text|text}. */
  static QuestionDefinition definition(String kind, int count, String about, String... values) {
    Map<String, List<Located<String>>> all = new LinkedHashMap<>();
    for (String value : values) {
      String[] parts = value.split("=", 2);
      all.put(parts[0], Arrays.stream(parts[1].split("\\|")).map(TrialQuiz::at).toList());
    }
    return new QuestionDefinition(at(kind), count, all, about);
  }

  static Quiz quiz(Rule rule, QuestionDefinition... questions) {
    return QuizMaker.make(input("A", rule, List.of(questions))).value();
  }

  static List<String> codes(QuestionDefinition... questions) {
    Checked<Quiz> made = QuizMaker.make(input("A", PROJECT.rule(), List.of(questions)));
    return made.findings().stream().map(Finding::code).toList();
  }

  static Rule metric() {
    return new Rule(Rational.of(1, 2), Unit.MILLIMETRE);
  }

  static Desk desk(Rule rule) {
    return new Desk(input("A", rule, List.of()), new packetwright.text.source.Findings());
  }

  /** An amount as asked, drawn the same. */
  static Amount amount(String name, int times, Rational value) {
    return new Amount(name, times, value, value, Moves.FREE, false);
  }
}
