package packetwright.wood.part;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.wood.part.Part.Feature;

/** What a feature's words and sizes become in a mirror image, left and right exchanged. */
final class Mirror {
  private Mirror() {}

  static Side side(Side side) {
    return side.axis() == 0 ? side.opposite() : side;
  }

  /** The sides that it names exchanged; {@code both ends} and {@code along} stay. */
  static String where(Feature feature) {
    Side named = Side.of(feature.where());
    return named == null ? feature.where() : side(named).word();
  }

  /** What is measured from the left end is measured anew; the other sizes stay. */
  static Map<String, Length> sizes(Feature feature, Length length) {
    Map<String, Length> sizes = new LinkedHashMap<>(feature.sizes());
    if (feature.kind() == FeatureKind.HOLE && isOnAxis(feature.from(), 1)) {
      sizes.computeIfPresent("across", (key, across) -> length.minus(across));
    }
    if (feature.kind() == FeatureKind.CURVE && isOnAxis(Side.of(feature.where()), 1)) {
      Length chord = sizes.getOrDefault("length", Length.ZERO);
      sizes.computeIfPresent("at", (key, start) -> length.minus(start).minus(chord));
    }
    return sizes;
  }

  private static boolean isOnAxis(@Nullable Side side, int axis) {
    return side != null && side.axis() == axis;
  }
}
