package packetwright.paper.quiz;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import packetwright.text.measure.Figure;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/**
 * Lines of working with mixed numbers over one common denominator.
 *
 * @param words to print in
 * @param unit of the rule; lines of fractions leave it out
 */
record Fractions(Words words, Unit unit) {
  /** Adds step by step: common denominator, sum, carry, lowest terms. */
  List<Phrase> sum(List<Rational> items) {
    List<Phrase> lines = new ArrayList<>();
    BigInteger parts = Numbers.common(unit, items);
    commonDenominator(items, parts).forEach(lines::add);
    Rational total = total(items);
    BigInteger tops =
        items.stream().map(i -> Numbers.top(i, parts)).reduce(BigInteger.ZERO, BigInteger::add);
    BigInteger wholes = items.stream().map(Rational::floor).reduce(BigInteger::add).orElseThrow();
    Phrase added = joined("quiz.plus", items, parts);
    if (unit.isDecimal() || tops.compareTo(parts) < 0) {
      lines.add(equal(added, figure(total, parts)));
    } else {
      Figure uncarried = Numbers.figure(wholes, tops, parts, Numbers.plain(unit));
      lines.add(equal(added, Phrase.of(uncarried)));
      lines.add(words.say("quiz.carry", fraction(tops, parts), uncarried, figure(total, parts)));
    }
    lowest(total, parts).forEach(lines::add);
    return lines;
  }

  /** Subtracts step by step: common denominator, borrow, difference, lowest terms. */
  List<Phrase> difference(Rational from, Rational take) {
    List<Phrase> lines = new ArrayList<>();
    BigInteger parts = Numbers.common(unit, List.of(from, take));
    commonDenominator(List.of(from, take), parts).forEach(lines::add);
    Phrase minuend = figure(from, parts);
    BigInteger top = Numbers.top(from, parts);
    BigInteger less = Numbers.top(take, parts);
    if (!unit.isDecimal() && top.compareTo(less) < 0) {
      Figure borrowed =
          Numbers.figure(
              from.floor().subtract(BigInteger.ONE), top.add(parts), parts, Numbers.plain(unit));
      lines.add(
          words.say(
              "quiz.borrow",
              top.signum() == 0 ? Phrase.of("0") : fraction(top, parts),
              fraction(less, parts),
              fraction(parts, parts),
              minuend,
              borrowed));
      minuend = Phrase.of(borrowed);
    }
    Rational difference = from.minus(take);
    lines.add(
        equal(words.say("quiz.minus", minuend, figure(take, parts)), figure(difference, parts)));
    lowest(difference, parts).forEach(lines::add);
    return lines;
  }

  static Rational total(List<Rational> items) {
    return items.stream().reduce(Rational.ZERO, Rational::plus);
  }

  private List<Phrase> commonDenominator(List<Rational> items, BigInteger parts) {
    if (unit.isDecimal()) {
      return List.of();
    }
    return items.stream()
        .filter(i -> !i.isWhole() && !i.denominator().equals(parts))
        .distinct()
        .map(i -> equal(figure(i, i.denominator()), figure(i, parts)))
        .toList();
  }

  private List<Phrase> lowest(Rational value, BigInteger parts) {
    Figure raw = Numbers.in(value, parts, unit);
    Figure lowest = Numbers.lowest(value, unit);
    return raw.equals(lowest) || unit.isDecimal()
        ? List.of()
        : List.of(words.say("quiz.lowest", raw, lowest));
  }

  private Phrase joined(String sign, List<Rational> items, BigInteger parts) {
    Phrase all = figure(items.get(0), parts);
    for (Rational item : items.subList(1, items.size())) {
      all = words.say(sign, all, figure(item, parts));
    }
    return all;
  }

  private Phrase equal(Phrase left, Phrase right) {
    return words.say("quiz.equals", left, right);
  }

  private Phrase figure(Rational value, BigInteger parts) {
    return Phrase.of(
        unit.isDecimal()
            ? Numbers.lowest(value, unit)
            : Numbers.in(value, parts, Numbers.plain(unit)));
  }

  private Phrase fraction(BigInteger top, BigInteger bottom) {
    return Phrase.of(Numbers.figure(BigInteger.ZERO, top, bottom, Numbers.plain(unit)));
  }
}
