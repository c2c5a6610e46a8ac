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
