package packetwright.text.words;

import java.util.function.Function;
import packetwright.text.measure.Figure;

/** Turns a phrase into text, each figure in the way asked for. */
final class Reading implements Phrase.Cases<String> {
  private final Function<Figure, String> figures;

  private Reading(Function<Figure, String> figures) {
    this.figures = figures;
  }

  static String of(Phrase phrase, Function<Figure, String> figures) {
    return new Reading(figures).all(phrase);
  }

  private String all(Phrase phrase) {
    StringBuilder text = new StringBuilder();
    phrase.pieces().forEach(piece -> text.append(piece.match(this)));
    return text.toString();
  }

  @Override
  public String text(Phrase.Text text) {
    return text.text();
  }

  @Override
  public String measure(Phrase.Measure measure) {
    return figures.apply(measure.figure());
  }

  @Override
  public String emphasis(Phrase.Emphasis emphasis) {
    return all(emphasis.phrase());
  }
}
