package packetwright.paper.quiz;

import java.util.List;
import java.util.Set;
import packetwright.definition.project.QuizDefinition.QuestionDefinition;
import packetwright.paper.quiz.Quiz.Question;
import packetwright.text.measure.Rational;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/** What some amounts come to together. */
final class Addition implements Reckoning.Form {
  private static final Set<String> KEYS = Set.of("of");

  static void ask(QuestionDefinition definition, Desk desk) {
    boolean known = desk.hasOnly(definition, KEYS);
    List<Located<String>> of = desk.values(definition, "of");
    if (of.size() == 1) {
      desk.report(
          Finding.error(
              "missing-question-value",
              of.get(0).at(),
              "`of` names one size, and adding takes two",
              "name two or more in a list: `of: [" + of.get(0).value() + ", ...]`"));
    } else if (known && !of.isEmpty()) {
      Reckoning.ask(definition, of, desk, new Addition());
    }
  }

  @Override
  public boolean takesLikeTogether() {
    return false;
  }

  @Override
  public Rational answer(List<Amount> amounts) {
    return Fractions.total(amounts.stream().map(Amount::value).toList());
  }

  @Override
  public Question question(List<Amount> amounts, String about, Desk desk) {
    Phrase given = Reckoning.given(amounts, desk);
    Words words = desk.words();
    List<Rational> items = amounts.stream().map(Amount::value).toList();
    return new Question(
        about.isEmpty() ? words.say("quiz.add.all", given) : words.say("quiz.find", given, about),
        null,
        Phrase.of(Numbers.lowest(answer(amounts), desk.unit())),
        new Fractions(words, desk.unit()).sum(items),
        mistakes(amounts, items, desk).list());
  }

  private Mistakes mistakes(List<Amount> amounts, List<Rational> items, Desk desk) {
    Words words = desk.words();
    Rational answer = answer(amounts);
    Mistakes mistakes = new Mistakes(words, desk.unit(), answer, null);
    new FractionSlips(words, desk.unit(), mistakes).ofSum(items);
    if (items.size() == 2) {
      Rational difference = items.get(0).minus(items.get(1));
      mistakes.add(
          difference.signum() < 0 ? difference.negated() : difference,
          words.say("quiz.mistake.subtracted"));
    } else {
      amounts.forEach(
          a -> mistakes.add(answer.minus(a.value()), words.say("quiz.mistake.left_out", a.name())));
    }
    return mistakes;
  }
}
