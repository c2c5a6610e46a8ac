package packetwright.wood.part;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.text.source.Span;

/**
 * One finished piece, as designed.
 *
 * @param name as formulas use it
 * @param letter on drawings
 * @param count how many of it
 * @param blank the blank it is cut from
 * @param solid exact shape
 * @param features in the order written
 * @param at where it is defined
 */
public record Part(
    String name,
    String letter,
    int count,
    String blank,
    Solid solid,
    List<Feature> features,
    Span at) {
  /** Keeps its own copy. */
  public Part {
    features = List.copyOf(features);
  }

  /**
   * The name of one of its pieces, numbered from 1: {@code side 2}; a part made once has no number.
   */
  public String pieceName(int number) {
    return count == 1 ? name : name + " " + number;
  }

  /** The part that a piece's name belongs to: {@code side} of {@code side 2}. */
  public static String nameOf(String piece) {
    int space = piece.indexOf(' ');
    return space < 0 ? piece : piece.substring(0, space);
  }

  /** The letter on one of its pieces: {@code A2}; a part made once has no number. */
  public String pieceLetter(String piece) {
    int space = piece.indexOf(' ');
    return space < 0 ? letter : letter + piece.substring(space + 1);
  }

  /** A feature by name, or none. */
  public @Nullable Feature feature(String featureName) {
    return features.stream().filter(f -> f.name().equals(featureName)).findFirst().orElse(null);
  }

  /**
   * Something cut into a part.
   *
   * @param name without the part's name
   * @param kind which shape
   * @param where what its definition says: {@code along}, {@code both ends}, {@code middle}
   * @param face it is cut into
   * @param from the edge or end that it is located from, or none
   * @param sizes {@code at}, {@code width}, {@code depth}, {@code length}, {@code diameter}
   * @param removals as drawn, one for each place
   */
  public record Feature(
      String name,
      FeatureKind kind,
      String where,
      Side face,
      @Nullable Side from,
      Map<String, Length> sizes,
      List<Removal> removals) {
    /** Keeps its own copies. */
    public Feature {
      sizes = Map.copyOf(sizes);
      removals = List.copyOf(removals);
    }
  }
}
