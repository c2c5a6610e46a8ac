package packetwright.paper.quiz;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import packetwright.definition.project.QuizDefinition.QuestionDefinition;
import packetwright.paper.quiz.Quiz.Question;
import packetwright.text.measure.Rational;
import packetwright.text.source.Located;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/** What is left of the first amount when the others are taken away. */
final class Subtraction implements Reckoning.Form {
  private static final Set<String> KEYS = Set.of("from", "take");

  static void ask(QuestionDefinition definition, Desk desk) {
    boolean known = desk.hasOnly(definition, KEYS);
    List<Located<String>> from = desk.values(definition, "from");
    List<Located<String>> take = desk.values(definition, "take");
    if (known && !from.isEmpty() && !take.isEmpty()) {
      List<Located<String>> all = new ArrayList<>(from.subList(0, 1));
      all.addAll(take);
      Reckoning.ask(definition, all, desk, new Subtraction());
    }
  }

  @Override
  public boolean takesLikeTogether() {
    return true;
  }

  @Override
  public Rational answer(List<Amount> amounts) {
    return amounts.get(0).value().minus(taken(amounts));
  }

  private static Rational taken(List<Amount> amounts) {
    return Fractions.total(amounts.subList(1, amounts.size()).stream().map(Amount::value).toList());
  }

  @Override
  public Question question(List<Amount> amounts, String about, Desk desk) {
    Phrase given = Reckoning.given(amounts, desk);
    Words words = desk.words();
    return new Question(
        about.isEmpty()
            ? words.say("quiz.subtract.left", given)
            : words.say("quiz.find", given, about),
        null,
        Phrase.of(Numbers.lowest(answer(amounts), desk.unit())),
        working(amounts, desk),
        mistakes(amounts, desk).list());
  }

  private static List<Phrase> working(List<Amount> amounts, Desk desk) {
    Fractions fractions = new Fractions(desk.words(), desk.unit());
    List<Phrase> lines = new ArrayList<>();
    List<Rational> taken = amounts.subList(1, amounts.size()).stream().map(Amount::value).toList();
    if (taken.size() > 1) {
      lines.addAll(fractions.sum(taken));
    }
    lines.addAll(fractions.difference(amounts.get(0).value(), Fractions.total(taken)));
    return lines;
  }

  /** What was measured together was multiplied once more. */
  private static Phrase again(Amount take, Words words) {
    return take.times() == 2
        ? words.say("quiz.mistake.twice", take.name())
        : words.say("quiz.mistake.times", take.name(), take.times());
  }

  private Mistakes mistakes(List<Amount> amounts, Desk desk) {
    Words words = desk.words();
    Rational from = amounts.get(0).value();
    Rational taken = taken(amounts);
    Rational answer = answer(amounts);
    Mistakes mistakes = new Mistakes(words, desk.unit(), answer, null);
    List<Amount> takes = amounts.subList(1, amounts.size());
    for (Amount take : takes) {
      if (take.times() > 1) {
        Rational one = take.value().dividedBy(Rational.of(take.times()));
        Rational again = take.value().times(Rational.of(take.times() - 1L));
        mistakes.add(answer.minus(again), again(take, words));
        mistakes.add(
            answer.plus(take.value()).minus(one), words.say("quiz.mistake.once", take.name()));
      }
      if (takes.size() > 1) {
        mistakes.add(answer.plus(take.value()), words.say("quiz.mistake.left_out", take.name()));
      }
      if (take.isMeasured()) {
        mistakes.add(
            answer.plus(take.value()).minus(take.drawn()),
            words.say("quiz.mistake.drawn", take.name()));
      }
    }
    mistakes.add(from.plus(taken), words.say("quiz.mistake.added"));
    new FractionSlips(words, desk.unit(), mistakes).ofDifference(from, taken);
    return mistakes;
  }
}
