package packetwright.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.lettering.Lettering;
import packetwright.text.measure.Figure;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/**
 * One line of text in which fractions are stacked over a level bar.
 *
 * @param pieces from left to right
 */
public record Inscription(List<Piece> pieces) {
  /** Signs that reach below the baseline. */
  private static final String TAILED = "gjpqyQ,;()[]/ç";

  /** The least size that we letter in, in points. */
  public static final double LEAST_SIZE = 8;

  private static final double BAR_GAP = 1.5;
  private static final double BAR_OVERHANG = 0.6;
  private static final double AFTER_WHOLE = 0.14;

  /** Keeps its own copy. */
  public Inscription {
    pieces = List.copyOf(pieces);
  }

  /** A stretch of text, or a stacked fraction. */
  public sealed interface Piece {}

  /**
   * A stretch of text in one typeface.
   *
   * @param face typeface
   * @param text plain
   */
  public record Run(Face face, String text) implements Piece {}

  /**
   * A stacked fraction.
   *
   * @param face typeface
   * @param numerator above the bar
   * @param denominator below it
   */
  public record Stack(Face face, String numerator, String denominator) implements Piece {}

  /** Words; what the typeface lacks is set in the symbol face. */
  public static Inscription of(Face face, String text) {
    return new Inscription(runs(face, text));
  }

  /** The number of a figure, without its unit. */
  public static Inscription of(Face face, Figure figure) {
    return new Inscription(number(face, figure));
  }

  /** The number of a figure, and whether it is a little more or less. */
  public static Inscription graded(Figure figure, Words words) {
    Inscription number = of(Face.REGULAR, figure);
    return switch (figure.grade()) {
      case EXACT -> number;
      case FULL -> number.then(of(Face.REGULAR, words.plain("sheet.full")));
      case SCANT -> number.then(of(Face.REGULAR, words.plain("sheet.scant")));
    };
  }

  /** A phrase; its figures carry their unit. */
  public static Inscription of(Face face, Phrase phrase) {
    List<Piece> pieces = new ArrayList<>();
    for (Phrase.Piece piece : phrase.pieces()) {
      pieces.addAll(
          piece.match(
              new Phrase.Cases<List<Piece>>() {
                @Override
                public List<Piece> text(Phrase.Text text) {
                  return runs(face, text.text());
                }

                @Override
                public List<Piece> measure(Phrase.Measure measure) {
                  List<Piece> number = new ArrayList<>(number(face, measure.figure()));
                  String symbol = measure.figure().unit().symbol();
                  if (!symbol.isEmpty()) {
                    number.addAll(runs(face, " " + symbol));
                  }
                  return number;
                }

                @Override
                public List<Piece> emphasis(Phrase.Emphasis emphasis) {
                  Face strong = emphasis.strong() ? Face.BOLD : Face.ITALIC;
                  return Inscription.of(strong, emphasis.phrase()).pieces();
                }
              }));
    }
    return new Inscription(pieces);
  }

  /** This one and another after it. */
  public Inscription then(Inscription other) {
    List<Piece> all = new ArrayList<>(pieces);
    all.addAll(other.pieces);
    return new Inscription(all);
  }

  /** In points. */
  public double width(double size) {
    double width = 0;
    for (Piece piece : pieces) {
      width += width(piece, size);
    }
    return width;
  }

  /** How far ink reaches above the baseline, in points. */
  public double above(double size) {
    double cap = Lettering.capHeight(Face.REGULAR, size);
    return hasStack() ? cap / 2 + reach(size) : cap;
  }

  /** How far ink reaches below the baseline, in points. */
  public double below(double size) {
    double cap = Lettering.capHeight(Face.REGULAR, size);
    double tails = hasTails() ? size * 0.22 : 0;
    return hasStack() ? Math.max(tails, reach(size) - cap / 2) : tails;
  }

  /** Paints it from a left end and a baseline. */
  void paint(Painter painter, double x, double baseline, double size) {
    double at = x;
    for (Piece piece : pieces) {
      if (piece instanceof Run run) {
        painter.text(at, baseline, 0, size, run.face(), run.text());
      } else if (piece instanceof Stack stack) {
        paint(painter, stack, at, baseline, size);
      }
      at += width(piece, size);
    }
  }

  private static void paint(Painter painter, Stack stack, double x, double baseline, double size) {
    double small = fractionSize(size);
    double middle = baseline - Lettering.capHeight(stack.face(), size) / 2;
    double left = x + AFTER_WHOLE * size;
    double bar = bar(stack, size);
    double over = Lettering.width(stack.face(), small, stack.numerator());
    double under = Lettering.width(stack.face(), small, stack.denominator());
    double cap = Lettering.capHeight(stack.face(), small);
    painter.text(
        left + (bar - over) / 2, middle - BAR_GAP, 0, small, stack.face(), stack.numerator());
    painter.stroke(Outline.line(left, middle, left + bar, middle), Line.FINE.pen());
    painter.text(
        left + (bar - under) / 2,
        middle + BAR_GAP + cap,
        0,
        small,
        stack.face(),
        stack.denominator());
  }

  private static double width(Piece piece, double size) {
    if (piece instanceof Run run) {
      return Lettering.width(run.face(), size, run.text());
    }
    return bar((Stack) piece, size) + 2 * AFTER_WHOLE * size;
  }

  private static double bar(Stack stack, double size) {
    double small = fractionSize(size);
    return 2 * BAR_OVERHANG
        + Math.max(
            Lettering.width(stack.face(), small, stack.numerator()),
            Lettering.width(stack.face(), small, stack.denominator()));
  }

  private static double reach(double size) {
    return BAR_GAP + Lettering.capHeight(Face.REGULAR, fractionSize(size));
  }

  private static double fractionSize(double size) {
    return Math.max(LEAST_SIZE, size * 0.8);
  }

  private boolean hasStack() {
    return pieces.stream().anyMatch(Stack.class::isInstance);
  }

  private boolean hasTails() {
    return pieces.stream()
        .anyMatch(
            p -> p instanceof Run r && r.text().chars().anyMatch(c -> TAILED.indexOf(c) >= 0));
  }

  private static List<Piece> number(Face face, Figure figure) {
    if (!figure.hasFraction()) {
      return runs(face, figure.number());
    }
    List<Piece> pieces = new ArrayList<>();
    String sign = figure.negative() ? "−" : "";
    if (figure.whole().signum() != 0) {
      pieces.add(new Run(face, sign + figure.whole()));
    } else if (figure.negative()) {
      pieces.add(new Run(face, sign));
    }
    pieces.add(new Stack(face, figure.numerator().toString(), figure.denominator().toString()));
    return pieces;
  }

  private static List<Piece> runs(Face face, String text) {
    List<Piece> runs = new ArrayList<>();
    StringBuilder run = new StringBuilder();
    Face current = face;
    for (int codePoint : text.codePoints().toArray()) {
      Face needed = Lettering.covers(face, codePoint) ? face : Face.SYMBOL;
      if (needed != current && run.length() > 0) {
        runs.add(new Run(current, run.toString()));
        run.setLength(0);
      }
      current = needed;
      run.appendCodePoint(codePoint);
    }
    if (run.length() > 0) {
      runs.add(new Run(current, run.toString()));
    }
    return runs;
  }
}
