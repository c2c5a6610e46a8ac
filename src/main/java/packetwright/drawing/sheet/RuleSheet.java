package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.lettering.Face;
import packetwright.text.measure.Figure;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Words;

/** Rules and bars at true scale: an inch of them is exactly 72 points of the sheet. */
public final class RuleSheet {
  private static final double POINTS_PER_INCH = 72;
  private static final double LEFT = 12;
  private static final double RIGHT = 12;

  /** Metal beyond the last numbered line. */
  private static final double SPARE = 14;

  private static final double BODY = 50;
  private static final double NUMBER = 11;
  private static final double LETTER = 12;
  private static final double POINTER = 24;
  private static final double SPREAD = 20;

  private final Rule rule;
  private final Words words;
  private final List<Mark> marks = new ArrayList<>();

  private RuleSheet(Rule rule, Words words) {
    this.rule = rule;
    this.words = words;
  }

  /**
   * A rule with arrows to read.
   *
   * @param name of the sheet
   * @param rule its unit and finest graduation: 1/8, 1/16, 1/32 in, or 1, 1/2 mm
   * @param length how long it is graduated; whole inches, or whole centimetres of a metric rule
   * @param pointers the arrows, in any order
   */
  public static Sheet draw(
      String name, Rule rule, Length length, List<Pointer> pointers, Words words) {
    return new RuleSheet(rule, words).drawRule(name, length, pointers);
  }

  /**
   * Bars to measure with a rule of the student's own; each is exactly so long.
   *
   * @param name of the sheet
   * @param bars from top to bottom
   */
  public static Sheet bars(String name, List<Pointer> bars, Words words) {
    List<Mark> marks = new ArrayList<>();
    List<String> sentences = new ArrayList<>();
    double top = 4;
    double widest = 0;
    for (Pointer bar : bars) {
      double width = points(bar.at());
      double left = LEFT + 20;
      marks.add(Label.right(LEFT, top + 8, LETTER, Inscription.of(Face.BOLD, bar.label())));
      marks.add(new Fill(Outline.rectangle(left, top, left + width, top + 16), 0.8));
      // The outline's outer side is where a rule is read, so it lies inside the bar.
      double inset = Line.THIN / 2;
      marks.add(
          Stroke.of(
              Line.FINE,
              Outline.rectangle(
                  left + inset, top + inset, left + width - inset, top + 16 - inset)));
      sentences.add(words.plain("sheet.rule.bar", bar.label()));
      widest = Math.max(widest, left + width);
      top += 30;
    }
    return new Sheet(name, widest + RIGHT, top - 10, String.join(" ", sentences), marks);
  }

  private Sheet drawRule(String name, Length length, List<Pointer> pointers) {
    List<Pointer> sorted = pointers.stream().sorted((a, b) -> a.at().compareTo(b.at())).toList();
    double edge = sorted.isEmpty() ? 4 : POINTER + 16;
    double right = LEFT + points(length) + SPARE;
    List<String> sentences = new ArrayList<>();
    sentences.add(words.plain("sheet.rule", words.aloud(rule.printExactly(length)), graduation()));
    body(edge, right);
    graduate(length, edge);
    double letterX = 0;
    for (Pointer pointer : sorted) {
      double x = LEFT + points(pointer.at());
      // Letters of arrows that stand close move aside; the arrows do not.
      letterX = Math.max(x, letterX + SPREAD);
      point(pointer, x, edge, letterX);
      sentences.add(describe(pointer));
    }
    double width = Math.max(right, letterX) + RIGHT;
    return new Sheet(name, width, edge + BODY + 4, String.join(" ", sentences), marks);
  }

  private void body(double edge, double right) {
    double bottom = edge + BODY;
    double corner = 5;
    marks.add(
        Stroke.of(
            Line.FINE,
            Outline.polygon(
                LEFT,
                edge,
                right - corner,
                edge,
                right,
                edge + corner,
                right,
                bottom - corner,
                right - corner,
                bottom,
                LEFT,
                bottom)));
    marks.add(
        new Label(
            LEFT + 4,
            bottom - 4,
            Inscription.LEAST_SIZE,
            Inscription.of(Face.ITALIC, graduation())));
  }

  private void graduate(Length length, double edge) {
    Rational step = rule.graduation().times(rule.unit().inBase());
    long count = length.inches().dividedBy(step).floor().longValueExact();
    long perUnit = Rational.ONE.dividedBy(rule.graduation()).floor().longValueExact();
    for (long i = 0; i <= count; i++) {
      double x = LEFT + step.times(Rational.of(i)).times(Rational.of(72)).approximate();
      Tick tick = rule.unit() == Unit.INCH ? inchTick(i, perUnit) : metricTick(i, perUnit);
      if (i > 0) {
        marks.add(
            new Stroke(
                Outline.line(x, edge, x, edge + tick.height),
                new Painter.Pen(tick.width, List.of(), 0)));
      }
      if (tick.isNumbered && i > 0) {
        long number = i / perUnit;
        marks.add(
            Label.centred(
                x,
                edge + tick.height + 8,
                NUMBER,
                Inscription.of(Face.BOLD, Long.toString(number))));
      }
    }
  }

  /** The inch line is the longest, then the half, the quarter and so on. */
  private static Tick inchTick(long index, long perInch) {
    long inLowest = perInch;
    long rest = index;
    while (inLowest > 1 && rest % 2 == 0) {
      rest /= 2;
      inLowest /= 2;
    }
    if (inLowest == 1) {
      return new Tick(24, 0.9, true);
    }
    double height =
        switch ((int) inLowest) {
          case 2 -> 19;
          case 4 -> 15;
          case 8 -> 11;
          case 16 -> 7.5;
          default -> 4.5;
        };
    return new Tick(height, inLowest > 16 ? 0.4 : 0.6, false);
  }

  private static Tick metricTick(long index, long perMillimetre) {
    if (index % perMillimetre != 0) {
      return new Tick(4.5, 0.4, false);
    }
    long millimetre = index / perMillimetre;
    if (millimetre % 10 == 0) {
      return new Tick(22, 0.8, true);
    }
    return new Tick(millimetre % 5 == 0 ? 14 : 9, 0.5, false);
  }

  private void point(Pointer pointer, double x, double edge, double letterX) {
    double tail = edge - POINTER;
    marks.add(Stroke.of(Line.LEADER, Outline.polyline(letterX, tail, x, edge - 13, x, edge - 7)));
    marks.add(new Fill(Outline.polygon(x, edge, x - 1.6, edge - 9, x + 1.6, edge - 9), 0));
    marks.add(Label.centred(letterX, tail - 7, LETTER, Inscription.of(Face.BOLD, pointer.label())));
  }

  private String graduation() {
    return rule.unit() == Unit.INCH
        ? words.plain(
            "sheet.rule.graduation.inch", rule.graduation().denominator().longValueExact())
        : words.plain("sheet.rule.graduation.metric", number());
  }

  private String number() {
    Figure figure = rule.printExactly(new Length(rule.graduation().times(rule.unit().inBase())));
    return figure.number();
  }

  /** Counts graduations, so that reading them off remains the student's work. */
  private String describe(Pointer pointer) {
    Rational mark = rule.unit() == Unit.INCH ? Rational.ONE : Rational.of(10);
    Rational units = pointer.at().inches().dividedBy(rule.unit().inBase());
    Rational whole = Rational.of(units.dividedBy(mark).floor(), java.math.BigInteger.ONE);
    Rational steps = units.minus(whole.times(mark)).dividedBy(rule.graduation());
    String from = whole.times(mark).toString();
    return steps.isWhole()
        ? words.plain("sheet.rule.pointer", pointer.label(), steps.toString(), from)
        : words.plain(
            "sheet.rule.between",
            pointer.label(),
            steps.floor().toString(),
            steps.ceiling().toString(),
            from);
  }

  private static double points(Length length) {
    return length.inches().approximate() * POINTS_PER_INCH;
  }

  private record Tick(double height, double width, boolean isNumbered) {}

  /**
   * An arrow at a place on a rule, or a bar so long.
   *
   * @param label its letter
   * @param at from the rule's end
   */
  public record Pointer(String label, Length at) {}
}
