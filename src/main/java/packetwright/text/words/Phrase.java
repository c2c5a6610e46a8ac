package packetwright.text.words;

import java.util.List;
import packetwright.text.measure.Figure;

/**
 * Printed text: words with figures among them, so that a fraction can be set as one and read aloud
 * rightly.
 *
 * @param pieces in reading order
 */
public record Phrase(List<Piece> pieces) {
  /** Keeps its own copy. */
  public Phrase {
    pieces = List.copyOf(pieces);
  }

  /** Words without figures. */
  public static Phrase of(String text) {
    return new Phrase(List.of(new Text(text)));
  }

  /** A figure alone. */
  public static Phrase of(Figure figure) {
    return new Phrase(List.of(new Measure(figure)));
  }

  /** A stretch of the text. */
  public sealed interface Piece {
    /** Calls the case that fits. */
    <R> R match(Cases<R> cases);
  }

  /** One method for each kind of piece. */
  public interface Cases<R> {
    /** Words. */
    R text(Text text);

    /** A figure. */
    R measure(Measure measure);

    /** Words that stand out. */
    R emphasis(Emphasis emphasis);
  }

  /**
   * Words.
   *
   * @param text plain
   */
  public record Text(String text) implements Piece {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.text(this);
    }
  }

  /**
   * A figure.
   *
   * @param figure as rounded
   */
  public record Measure(Figure figure) implements Piece {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.measure(this);
    }
  }

  /**
   * Words that stand out.
   *
   * @param strong bold rather than italic
   * @param phrase what stands out
   */
  public record Emphasis(boolean strong, Phrase phrase) implements Piece {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.emphasis(this);
    }
  }
}
