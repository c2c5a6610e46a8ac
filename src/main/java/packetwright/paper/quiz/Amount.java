package packetwright.paper.quiz;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.size.Evaluated;
import packetwright.definition.size.Size;
import packetwright.text.measure.Rational;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.words.Phrase;

/**
 * One amount of a sum or a difference, counted in the rule's unit.
 *
 * @param name in running text
 * @param times how many of it are measured together
 * @param drawn all of them as drawn, on the project's rule
 * @param value all of them as asked
 * @param moves how far it may be moved for a question
 * @param isMeasured whether students measure it on their own piece
 */
record Amount(
    String name, int times, Rational drawn, Rational value, Moves moves, boolean isMeasured) {
  Amount {
    if (value.signum() <= 0) {
      throw new IllegalArgumentException(name + " of " + value);
    }
  }

  /** The amounts of some formulas as drawn; none, with a finding, if one is wrong. */
  static @Nullable List<Amount> read(
      List<Located<String>> formulas, boolean likeTogether, Desk desk) {
    List<Amount> amounts = new ArrayList<>();
    for (Located<String> formula : formulas) {
      int times = likeTogether ? count(formula, formulas) : 1;
      if (likeTogether && isAmong(formula, amounts)) {
        continue;
      }
      Amount amount = read(formula, times, desk);
      if (amount == null) {
        return null;
      }
      amounts.add(amount);
    }
    return amounts;
  }

  private static int count(Located<String> formula, List<Located<String>> formulas) {
    return (int) formulas.stream().filter(f -> f.value().equals(formula.value())).count();
  }

  private static boolean isAmong(Located<String> formula, List<Amount> amounts) {
    return amounts.stream().anyMatch(a -> a.name().equals(Desk.spoken(formula.value())));
  }

  private static @Nullable Amount read(Located<String> formula, int times, Desk desk) {
    Evaluated one = desk.evaluated(formula);
    if (one == null) {
      return null;
    }
    Rational all =
        desk.inUnit(one.value())
            .times(Rational.of(times))
            .roundedTo(desk.input().rule().graduation());
    if (all.signum() <= 0) {
      desk.report(
          Finding.error(
              "question-range",
              formula.at(),
              "`" + formula.value() + "` is too little to show on this project's rule",
              "name a size above zero"));
      return null;
    }
    Size size = desk.input().sizes().find(formula.value());
    boolean isMeasured = size != null && size.isMeasured();
    Moves moves = Moves.of(formula.value(), one, times, all, desk);
    return new Amount(Desk.spoken(formula.value()), times, all, all, moves, isMeasured);
  }

  /** How many values near the drawn one there are to choose from. */
  long choices() {
    return moves.less() + moves.more() + 1;
  }

  /** The value of a choice. */
  Amount chosen(long choice, Rational graduation) {
    Rational moved = graduation.times(Rational.of(choice - moves.less()));
    return new Amount(name, times, drawn, drawn.plus(moved), moves, isMeasured);
  }

  /** As a question states it. */
  Phrase given(Desk desk) {
    var figure = Numbers.lowest(value, desk.unit());
    return times == 1
        ? desk.words().say("quiz.given", name, figure)
        : desk.words().say("quiz.given.together", times, name, figure);
  }
}
