package packetwright.paper.quiz;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.QuizDefinition.QuestionDefinition;
import packetwright.definition.size.Size;
import packetwright.paper.quiz.Quiz.Question;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.text.words.Phrase;

/** Asks for sums or differences of sizes near the project's own. */
final class Reckoning {
  /** Most choices looked through for one that was not asked yet. */
  private static final long MOST_TRIES = 4096;

  private static final int MOST_AMOUNTS = 8;

  private final QuestionDefinition definition;
  private final Desk desk;
  private final Located<String> at;
  private final Form form;

  private Reckoning(QuestionDefinition definition, Desk desk, Located<String> at, Form form) {
    this.definition = definition;
    this.desk = desk;
    this.at = at;
    this.form = form;
  }

  /** A sum or a difference. */
  interface Form {
    /** Whether what is named twice is measured in one go. */
    boolean takesLikeTogether();

    /** What it comes to. */
    Rational answer(List<Amount> amounts);

    /** The question about these amounts. */
    Question question(List<Amount> amounts, String about, Desk desk);
  }

  /** Asks the questions of a definition over these formulas. */
  static void ask(
      QuestionDefinition definition, List<Located<String>> formulas, Desk desk, Form form) {
    if (formulas.size() > MOST_AMOUNTS) {
      desk.report(
          Finding.error(
              "question-amounts",
              formulas.get(MOST_AMOUNTS).at(),
              "a question has at most " + MOST_AMOUNTS + " amounts, this has " + formulas.size(),
              "delete some"));
      return;
    }
    List<Amount> amounts = Amount.read(formulas, form.takesLikeTogether(), desk);
    if (amounts == null) {
      return;
    }
    Reckoning reckoning = new Reckoning(definition, desk, formulas.get(0), form);
    if (reckoning.aboutIsKnown()) {
      reckoning.compareWithAbout(amounts);
      reckoning.ask(amounts);
    }
  }

  private boolean aboutIsKnown() {
    String about = definition.about();
    boolean known = about.isEmpty() || desk.input().sizes().find(about) != null;
    if (!known) {
      desk.report(
          Finding.error(
              "unknown-name",
              definition.kind().at(),
              "nothing is called `" + about + "`",
              NearMiss.hint(about, desk.input().sizes().all().stream().map(Size::name).toList())));
    }
    return known;
  }

  /** The answer should be the size that the question says it is. */
  private void compareWithAbout(List<Amount> amounts) {
    Size about = desk.input().sizes().find(definition.about());
    if (about == null || about.value().dimension() != Dimension.LENGTH) {
      return;
    }
    Length drawn = about.value().asLength();
    Rational asked = form.answer(amounts);
    Rational rounded =
        drawn.inches().dividedBy(desk.unit().inBase()).roundedTo(desk.input().rule().graduation());
    if (!rounded.equals(asked)) {
      var rule = desk.input().rule();
      Length found = new Length(asked.times(desk.unit().inBase()));
      desk.report(
          Finding.warning(
              "question-about",
              at.at(),
              "as drawn this comes to "
                  + rule.print(found)
                  + ", and `"
                  + about.name()
                  + "` is "
                  + rule.print(drawn),
              "name under `about` the size that this comes to"));
    }
  }

  private void ask(List<Amount> drawn) {
    for (int i = 0; i < definition.count(); i++) {
      List<Amount> amounts = choose(drawn);
      if (amounts == null) {
        desk.report(
            Finding.error(
                "question-range",
                at.at(),
                "there are not " + definition.count() + " different questions near these sizes",
                "ask for fewer, or name larger sizes"));
        return;
      }
      Question question = form.question(amounts, Desk.spoken(definition.about()), desk);
      desk.add(question, numbers(amounts));
    }
  }

  private static List<Rational> numbers(List<Amount> amounts) {
    return amounts.stream().map(Amount::value).toList();
  }

  /** By lot, and from there on the first that is new and has an answer above zero. */
  private @Nullable List<Amount> choose(List<Amount> drawn) {
    Rational graduation = desk.input().rule().graduation();
    long all = 1;
    for (Amount amount : drawn) {
      all = Math.multiplyExact(all, amount.choices());
    }
    long start = desk.draws().below(all);
    for (long i = 0; i < Math.min(all, MOST_TRIES); i++) {
      List<Amount> amounts = chosen(drawn, (start + i) % all, graduation);
      if (form.answer(amounts).signum() > 0 && !desk.isAsked(numbers(amounts))) {
        return amounts;
      }
    }
    return null;
  }

  private static List<Amount> chosen(List<Amount> drawn, long choice, Rational graduation) {
    List<Amount> amounts = new ArrayList<>();
    long rest = choice;
    for (Amount amount : drawn) {
      long choices = amount.choices();
      amounts.add(amount.chosen(rest % choices, graduation));
      rest /= choices;
    }
    return amounts;
  }

  /** What is given, one after the other. */
  static Phrase given(List<Amount> amounts, Desk desk) {
    Phrase all = amounts.get(0).given(desk);
    for (Amount amount : amounts.subList(1, amounts.size())) {
      all = desk.words().say("quiz.given.more", all, amount.given(desk));
    }
    return all;
  }
}
