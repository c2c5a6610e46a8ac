package packetwright.paper.quiz;

import java.math.BigInteger;
import java.util.List;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/**
 * Wrong answers that come from handling the parts of a unit wrongly, fractions and decimals alike.
 * Common practice, no source.
 *
 * @param words to print in
 * @param unit of the rule
 * @param mistakes where they are collected
 */
record FractionSlips(Words words, Unit unit, Mistakes mistakes) {
  private static final BigInteger TEN = BigInteger.TEN;

  void ofDifference(Rational from, Rational take) {
    BigInteger parts = Numbers.common(unit, List.of(from, take));
    BigInteger top = Numbers.top(from, parts);
    BigInteger less = Numbers.top(take, parts);
    Rational wholes = Numbers.whole(from).minus(Numbers.whole(take));
    if (top.compareTo(less) < 0) {
      BigInteger reversed = less.subtract(top);
      mistakes.add(wholes.plus(over(reversed, parts)), says("quiz.mistake.smaller_from_larger"));
      if (!unit.isDecimal()) {
        Rational borrowedTen = over(TEN.subtract(reversed), parts);
        if (borrowedTen.signum() >= 0) {
          mistakes.add(
              wholes.minus(Rational.ONE).plus(borrowedTen),
              words.say("quiz.mistake.borrowed_ten", parts.toString()));
        }
      }
      mistakes.add(
          wholes.plus(over(parts.subtract(reversed), parts)),
          says("quiz.mistake.whole_not_lowered"));
    }
    if (unit.isDecimal()) {
      mistakes.add(
          atTheRight(from, parts).minus(atTheRight(take, parts)), says("quiz.mistake.points"));
    } else {
      unscaled(wholes, List.of(from, take), parts, -1);
    }
  }

  void ofSum(List<Rational> items) {
    BigInteger parts = Numbers.common(unit, items);
    Rational wholes = Fractions.total(items.stream().map(Numbers::whole).toList());
    Rational rests = Fractions.total(items.stream().map(Numbers::rest).toList());
    if (rests.compareTo(Rational.ONE) >= 0) {
      mistakes.add(wholes.plus(Numbers.rest(rests)), says("quiz.mistake.not_carried"));
    }
    if (unit.isDecimal()) {
      mistakes.add(
          Fractions.total(items.stream().map(i -> atTheRight(i, parts)).toList()),
          says("quiz.mistake.points"));
    } else {
      bottomsAdded(wholes, items);
      unscaled(wholes, items, parts, 1);
    }
  }

  /** Tops added and bottoms added. */
  private void bottomsAdded(Rational wholes, List<Rational> items) {
    List<Rational> rests = items.stream().map(Numbers::rest).filter(r -> r.signum() > 0).toList();
    if (rests.size() < 2) {
      return;
    }
    BigInteger tops = rests.stream().map(Rational::numerator).reduce(BigInteger::add).orElseThrow();
    BigInteger bottoms =
        rests.stream().map(Rational::denominator).reduce(BigInteger::add).orElseThrow();
    mistakes.add(
        wholes.plus(over(tops, bottoms)),
        Numbers.figure(wholes.floor(), tops, bottoms, unit),
        says("quiz.mistake.bottoms_added"));
  }

  /** The common denominator written under tops that were left as they were. */
  private void unscaled(Rational wholes, List<Rational> items, BigInteger parts, int sign) {
    BigInteger tops = Numbers.rest(items.get(0)).numerator();
    for (Rational item : items.subList(1, items.size())) {
      BigInteger top = Numbers.rest(item).numerator();
      tops = sign > 0 ? tops.add(top) : tops.subtract(top);
    }
    if (items.stream().anyMatch(item -> needsScaling(item, parts))) {
      mistakes.add(wholes.plus(over(tops, parts)), says("quiz.mistake.tops_unscaled"));
    }
  }

  private static boolean needsScaling(Rational item, BigInteger parts) {
    return !item.isWhole() && !item.denominator().equals(parts);
  }

  /** Decimals written one under the other from the right: 2.5 and 1.25 as 2.05 and 1.25. */
  private Rational atTheRight(Rational item, BigInteger parts) {
    BigInteger digits = Numbers.top(item, Numbers.bottom(unit, item));
    return Numbers.whole(item).plus(over(digits, parts));
  }

  private static Rational over(BigInteger top, BigInteger bottom) {
    return Rational.of(top, bottom);
  }

  private Phrase says(String key) {
    return words.say(key);
  }
}
