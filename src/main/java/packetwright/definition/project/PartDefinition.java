package packetwright.definition.project;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.text.source.Located;

/**
 * A finished piece as its author wrote it.
 *
 * @param name as formulas and operations use it
 * @param letter on drawings
 * @param count how many of it
 * @param isPair whether every second piece is the mirror image of the one drawn
 * @param blank which blank it is cut from
 * @param length formula, along the grain
 * @param width formula
 * @param thickness formula
 * @param features in the order written
 */
public record PartDefinition(
    Located<String> name,
    String letter,
    int count,
    boolean isPair,
    Located<String> blank,
    Located<String> length,
    Located<String> width,
    Located<String> thickness,
    List<FeatureDefinition> features) {
  /** Keeps its own copy. */
  public PartDefinition {
    features = List.copyOf(features);
  }

  /**
   * Something cut into a part.
   *
   * @param name as operations use it, after the part's name and a dot
   * @param kind which shape
   * @param where what the kind's key says: {@code along}, {@code both ends}, {@code middle}
   * @param face the face it is cut into
   * @param from the edge or end that it is located from, or none
   * @param sizes formulas by key: {@code at}, {@code width}, {@code depth}, {@code length}, {@code
   *     diameter}
   */
  public record FeatureDefinition(
      Located<String> name,
      FeatureKind kind,
      Located<String> where,
      Side face,
      @Nullable Side from,
      Map<String, Located<String>> sizes) {
    /** Keeps its own copy. */
    public FeatureDefinition {
      sizes = Collections.unmodifiableMap(new LinkedHashMap<>(sizes));
    }
  }

  /** Shapes that can be cut into a part. */
  public enum FeatureKind {
    RABBET,
    DADO,
    GROOVE,
    NOTCH,
    HOLE,
    /** An end cut at a slant across the face. */
    MITER,
    /** An edge or end cut at a slant through the thickness. */
    BEVEL,
    /** An edge cut at a slant along the length. */
    TAPER,
    CHAMFER,
    ROUNDOVER,
    /** Rounded corners of the face. */
    CORNER,
    /** An arc cut into an edge or end. */
    CURVE;

    /** As written in files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
