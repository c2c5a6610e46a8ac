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
 * @param isPair whether the pieces with even numbers are mirror images of the one drawn
 * @param blank the blank it is cut from
 * @param solid exact shape, as drawn: that of the first piece
 * @param features in the order written
 * @param at where it is defined
 */
public record Part(
    String name,
    String letter,
    int count,
    boolean isPair,
    String blank,
    Solid solid,
    List<Feature> features,
    Span at) {
  /** Keeps its own copy. */
  public Part {
    features = List.copyOf(features);
  }

  /** A part whose pieces are all alike. */
  public Part(
      String name,
      String letter,
      int count,
      String blank,
      Solid solid,
      List<Feature> features,
      Span at) {
    this(name, letter, count, false, blank, solid, features, at);
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

  /**
   * Whether a piece is the mirror image of the one drawn: its left and right are exchanged, its
   * inside face and bottom edge are not.
   */
  public boolean isMirrored(String piece) {
    int space = piece.indexOf(' ');
    return isPair && space >= 0 && Integer.parseInt(piece.substring(space + 1)) % 2 == 0;
  }

  /** The shape of one of its pieces. */
  public Solid solidOf(String piece) {
    return isMirrored(piece) ? solid.mirrored() : solid;
  }

  /** The features of one of its pieces, in the order written. */
  public List<Feature> featuresOf(String piece) {
    return isMirrored(piece)
        ? features.stream().map(feature -> feature.mirrored(solid.length())).toList()
        : features;
  }

  /** A feature of one of its pieces by name, or none. */
  public @Nullable Feature featureOf(String piece, String featureName) {
    Feature feature = feature(featureName);
    return feature != null && isMirrored(piece) ? feature.mirrored(solid.length()) : feature;
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

    /** The same with what it takes. */
    Feature taking(List<Removal> taken) {
      return new Feature(name, kind, where, face, from, sizes, taken);
    }

    /** The same in the mirror image of a part so long: left and right are exchanged. */
    Feature mirrored(Length length) {
      return new Feature(
          name,
          kind,
          Mirror.where(this),
          face,
          from == null ? null : Mirror.side(from),
          Mirror.sizes(this, length),
          removals.stream().map(removal -> removal.mirrored(length)).toList());
    }
  }
}
