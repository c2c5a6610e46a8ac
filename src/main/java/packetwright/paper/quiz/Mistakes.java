package packetwright.paper.quiz;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.paper.quiz.Quiz.Mistake;
import packetwright.text.measure.Figure;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/**
 * Collects wrong answers. One that happens to be right, or that nobody could write (zero, negative,
 * off the drawn rule, finer than any rule), is dropped; two mistakes that lead to one answer are
 * one choice that shows either.
 */
final class Mistakes {
  private final Words words;
  private final Unit unit;
  private final Rational answer;
  private final @Nullable Rational most;
  private final Map<Rational, Mistake> byValue = new LinkedHashMap<>();

  /**
   * @param most the greatest value that can be read, or none
   */
  Mistakes(Words words, Unit unit, Rational answer, @Nullable Rational most) {
    this.words = words;
    this.unit = unit;
    this.answer = answer;
    this.most = most;
  }

  /** A wrong answer, written in lowest terms. */
  void add(Rational value, Phrase shows) {
    Figure written = value.signum() > 0 ? Numbers.printable(value, unit) : null;
    if (written != null) {
      add(value, written, shows);
    }
  }

  /** A wrong answer, written as the mistake leaves it, and in lowest terms besides. */
  void add(Rational value, Figure written, Phrase shows) {
    boolean tooLong = most != null && value.compareTo(most) > 0;
    if (value.signum() <= 0 || value.equals(answer) || tooLong) {
      return;
    }
    byValue.merge(
        value,
        new Mistake(written(written, Numbers.lowest(value, unit)), shows),
        (a, b) ->
            a.shows().equals(b.shows())
                ? a
                : new Mistake(a.answer(), words.say("quiz.mistake.either", a.shows(), b.shows())));
  }

  private Phrase written(Figure written, Figure lowest) {
    Phrase raw = Phrase.of(written);
    return written.equals(lowest) ? raw : words.say("quiz.equals", raw, lowest);
  }

  List<Mistake> list() {
    return List.copyOf(byValue.values());
  }
}
