package packetwright.paper.packet;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import packetwright.definition.size.Size;
import packetwright.paper.packet.AnswerKey.FittingRow;
import packetwright.paper.packet.AnswerKey.FittingTable;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/** The right answers of the fitting sheet, over all that a student may measure. */
final class FittingAnswers {
  /** With fewer rows the rule is too coarse a step, and half of it is taken. */
  private static final int FEW = 5;

  private static final int MOST = 40;

  private final Lesson lesson;
  private final Naming naming;
  private final Fitting fitting;

  FittingAnswers(Lesson lesson, Naming naming) {
    this.lesson = lesson;
    this.naming = naming;
    this.fitting = new Fitting(lesson, naming);
  }

  /** A table for each measured size that a part is cut to. */
  List<FittingTable> tables() {
    List<FittingTable> tables = new ArrayList<>();
    for (Size size : fitting.measured()) {
      List<Fitting.Cut> cuts =
          fitting.cuts().stream().filter(c -> c.size().fitted().contains(size.name())).toList();
      if (!cuts.isEmpty()) {
        tables.add(
            new FittingTable(
                fitting.measuredName(size),
                cuts.stream()
                    .map(
                        c ->
                            naming
                                .words()
                                .say(
                                    "packet.fitting.part", c.part().letter(), fitting.dimension(c)))
                    .toList(),
                rows(size, cuts)));
      }
    }
    return tables;
  }

  private List<FittingRow> rows(Size size, List<Fitting.Cut> cuts) {
    List<FittingRow> rows = new ArrayList<>();
    for (Length measured : readings(size)) {
      Quantity one = Quantity.of(measured.dividedBy(fitting.together(size)));
      rows.add(
          new FittingRow(
              naming.exactly(Quantity.of(measured)),
              cuts.stream().map(c -> naming.exactly(answer(c, size, one))).toList()));
    }
    return rows;
  }

  private Quantity answer(Fitting.Cut cut, Size size, Quantity one) {
    Located<String> formula = new Located<>(cut.size().name(), new Span("project.yaml", 1, 1, 1));
    return lesson.sizes().evaluate(formula, Map.of(size.name(), one)).value();
  }

  /** On graduations, from the least that can be measured to the most. */
  private List<Length> readings(Size size) {
    int count = fitting.together(size);
    Rational low = size.low().asLength().times(count).inches();
    Rational high = size.high().asLength().times(count).inches();
    Rational step = naming.rule().graduation().times(naming.rule().unit().inBase());
    List<Length> readings = readings(low, high, step);
    return readings.size() < FEW ? readings(low, high, step.dividedBy(Rational.of(2))) : readings;
  }

  private static List<Length> readings(Rational low, Rational high, Rational step) {
    List<Length> readings = new ArrayList<>();
    BigInteger last = high.dividedBy(step).floor();
    for (BigInteger i = low.dividedBy(step).ceiling();
        i.compareTo(last) <= 0 && readings.size() < MOST;
        i = i.add(BigInteger.ONE)) {
      readings.add(new Length(Rational.of(i, BigInteger.ONE).times(step)));
    }
    return readings;
  }
}
