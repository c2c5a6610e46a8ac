package packetwright.paper.quiz;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.QuizDefinition.QuestionDefinition;
import packetwright.drawing.sheet.RuleSheet;
import packetwright.drawing.sheet.Sheet;
import packetwright.paper.quiz.Quiz.Question;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Figure;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.words.Phrase;

/**
 * Reading an arrow on a rule at true scale. All amounts count the rule's unit.
 *
 * @param desk where the form is put together
 * @param rule that is drawn
 * @param from least reading
 * @param to greatest reading, and how long the rule is drawn
 */
record RuleReading(Desk desk, Rule rule, Rational from, Rational to) {
  private static final Set<String> KEYS = Set.of("rule", "from", "to");

  /** A rule must fit across a page between its margins. */
  private static final Rational MOST_INCHES = Rational.of(13, 2);

  private static final int FINEST = 64;

  static void ask(QuestionDefinition definition, Desk desk) {
    boolean known = desk.hasOnly(definition, KEYS);
    List<Located<String>> rules = desk.values(definition, "rule");
    List<Located<String>> froms = desk.values(definition, "from");
    List<Located<String>> tos = desk.values(definition, "to");
    if (!known || rules.isEmpty() || froms.isEmpty() || tos.isEmpty()) {
      return;
    }
    Rule rule = rule(rules.get(0), desk);
    Rational from = desk.length(froms.get(0));
    Rational to = desk.length(tos.get(0));
    if (rule != null
        && from != null
        && to != null
        && fits(froms.get(0), from, tos.get(0), to, desk)) {
      new RuleReading(desk, rule, from, to).ask(definition.count(), tos.get(0));
    }
  }

  private static @Nullable Rule rule(Located<String> text, Desk desk) {
    Checked<Quantity> read = QuantityReader.read(text, desk.unit());
    if (read.hasValue() && read.value().dimension() == Dimension.LENGTH) {
      Rational graduation = read.value().value().dividedBy(desk.unit().inBase());
      Rational marks = numbered(desk.unit()).dividedBy(graduation);
      if (graduation.signum() > 0 && isDivision(marks, desk.unit())) {
        return new Rule(graduation, desk.unit());
      }
    }
    desk.report(
        Finding.error(
            "wrong-graduation",
            text.at(),
            "no rule is divided into `" + text.value() + "`",
            desk.unit() == Unit.INCH ? "write 1/8, 1/16, 1/32 or 1/64" : "write 1 or 0.5"));
    return null;
  }

  /** An inch is halved again and again; ten millimetres are 10 or 20 marks. */
  private static boolean isDivision(Rational marks, Unit unit) {
    if (!marks.isWhole() || marks.compareTo(Rational.of(FINEST)) > 0) {
      return false;
    }
    int count = marks.numerator().intValueExact();
    return unit == Unit.INCH
        ? count >= 2 && Integer.bitCount(count) == 1
        : count == 10 || count == 20;
  }

  /** Whether the readings are on a rule, and the rule, drawn to its last number, on the page. */
  private static boolean fits(
      Located<String> fromAt, Rational from, Located<String> toAt, Rational to, Desk desk) {
    if (from.signum() < 0 || from.compareTo(to) >= 0) {
      desk.report(
          Finding.error(
              "question-range",
              fromAt.at(),
              "no rule reads from `" + fromAt.value() + "` to `" + toAt.value() + "`",
              "write 0 or more, and less than `to`"));
      return false;
    }
    boolean fits = drawn(to, desk.unit()).times(desk.unit().inBase()).compareTo(MOST_INCHES) <= 0;
    if (!fits) {
      desk.report(
          Finding.error(
              "rule-too-long",
              toAt.at(),
              "a rule up to `" + toAt.value() + "` does not fit across the page at true scale",
              desk.unit() == Unit.INCH ? "write 6 or less" : "write 160 or less"));
    }
    return fits;
  }

  /** How long the rule is drawn that reads so far: up to a number. */
  private static Rational drawn(Rational to, Unit unit) {
    Rational mark = numbered(unit);
    return Rational.of(to.dividedBy(mark).ceiling(), BigInteger.ONE).times(mark);
  }

  /** How far the numbers on a rule are apart: an inch, or ten millimetres. */
  private static Rational numbered(Unit unit) {
    return unit == Unit.INCH ? Rational.ONE : Rational.of(10);
  }

  private void ask(int count, Located<String> at) {
    for (int section : desk.draws("sections").shuffled(count)) {
      Rational reading = reading(section, count);
      if (reading == null) {
        desk.report(
            Finding.error(
                "question-range",
                at.at(),
                "there are not " + count + " readings three marks apart in this range of the rule",
                "ask for fewer, or widen the range"));
        return;
      }
      desk.add(question(reading), List.of(reading));
      desk.markRead(reading, rule.graduation());
    }
  }

  /** One by lot from a section of the range, or from all of it where the section has none. */
  private @Nullable Rational reading(int section, int count) {
    Rational width = to.minus(from).dividedBy(Rational.of(count));
    Rational start = from.plus(width.times(Rational.of(section)));
    Rational end = start.plus(width);
    List<Rational> free = free(start, end).stream().filter(r -> r.compareTo(end) < 0).toList();
    if (free.isEmpty()) {
      free = free(from, to);
    }
    return free.isEmpty() ? null : free.get((int) desk.draws().below(free.size()));
  }

  /** Readings between the numbers that are clear of those in this form. */
  private List<Rational> free(Rational least, Rational most) {
    Rational step = rule.graduation();
    long first = least.dividedBy(step).ceiling().longValueExact();
    long last = most.dividedBy(step).floor().longValueExact();
    return LongStream.rangeClosed(Math.max(1, first), last)
        .mapToObj(i -> step.times(Rational.of(i)))
        .filter(r -> !r.dividedBy(numbered(rule.unit())).isWhole())
        .filter(r -> desk.isClear(r, step))
        .toList();
  }

  /** The question whose answer is that reading. */
  Question question(Rational reading) {
    int number = desk.nextNumber();
    return new Question(
        desk.words()
            .say(
                rule.unit() == Unit.INCH ? "quiz.read.prompt.inch" : "quiz.read.prompt.metric",
                number),
        drawing(reading, number),
        Phrase.of(Numbers.lowest(reading, rule.unit())),
        working(reading),
        mistakes(reading).list());
  }

  private Sheet drawing(Rational reading, int number) {
    String form = desk.input().form().replaceAll("[^A-Za-z0-9]+", "-");
    return RuleSheet.draw(
        "quiz-" + form + "-" + number,
        rule,
        length(drawn(to, rule.unit())),
        List.of(new RuleSheet.Pointer(Integer.toString(number), length(reading))),
        desk.words());
  }

  private Length length(Rational value) {
    return new Length(value.times(rule.unit().inBase()));
  }

  /** The number at or before the arrow. */
  private Rational number(Rational reading) {
    Rational mark = numbered(rule.unit());
    return Numbers.whole(reading.dividedBy(mark)).times(mark);
  }

  private List<Phrase> working(Rational reading) {
    Rational number = number(reading);
    long marks = reading.minus(number).dividedBy(rule.graduation()).numerator().longValueExact();
    Figure graduation = Numbers.lowest(rule.graduation(), rule.unit());
    Figure raw =
        rule.unit().isDecimal()
            ? Numbers.lowest(reading, rule.unit())
            : Numbers.in(reading, rule.graduation().denominator(), rule.unit());
    List<Phrase> lines = new ArrayList<>();
    lines.add(
        desk.words()
            .counted(
                "quiz.read.marks", marks, graduation, Numbers.lowest(number, rule.unit()), raw));
    Figure lowest = Numbers.lowest(reading, rule.unit());
    if (!lowest.equals(raw)) {
      lines.add(desk.words().say("quiz.lowest", raw, lowest));
    }
    return lines;
  }

  private Mistakes mistakes(Rational reading) {
    Unit unit = rule.unit();
    Rational step = rule.graduation();
    Rational mark = numbered(unit);
    Rational past = reading.minus(number(reading));
    Mistakes mistakes = new Mistakes(desk.words(), unit, reading, to);
    Rational doubled = past.plus(past);
    boolean hasCoarser = unit == Unit.INCH || step.compareTo(Rational.ONE) < 0;
    if (hasCoarser && doubled.compareTo(mark) < 0) {
      mistakes.add(
          number(reading).plus(doubled),
          desk.words()
              .say(
                  "quiz.mistake.coarser",
                  Numbers.lowest(step, unit),
                  Numbers.lowest(step.plus(step), unit)));
    }
    mistakes.add(reading.plus(step), desk.words().say("quiz.mistake.one_more"));
    mistakes.add(reading.minus(step), desk.words().say("quiz.mistake.one_less"));
    mistakes.add(
        number(reading).plus(mark).minus(past), desk.words().say("quiz.mistake.backwards"));
    mistakes.add(reading.plus(mark), desk.words().say("quiz.mistake.next_number"));
    if (unit.isDecimal()) {
      mistakes.add(
          reading.dividedBy(Rational.of(10)), desk.words().say("quiz.mistake.centimetres"));
    }
    return mistakes;
  }
}
