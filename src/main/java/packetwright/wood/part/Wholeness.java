package packetwright.wood.part;

import java.util.List;
import packetwright.definition.project.PartDefinition;
import packetwright.text.source.Finding;
import packetwright.text.source.Span;
import packetwright.wood.part.Removal.Trough;

/** Whether its features leave a part in one piece of its stated size. */
final class Wholeness {
  private Wholeness() {}

  /** At most one finding, at a feature that spoils what the features before it left whole. */
  static List<Finding> check(PartDefinition part, List<Part.Feature> features, Solid block) {
    int whole = 0;
    int spoiled = features.size();
    if (damage(features, block).isEmpty()) {
      return List.of();
    }
    while (spoiled - whole > 1) {
      int middle = (whole + spoiled) / 2;
      if (damage(features.subList(0, middle), block).isEmpty()) {
        whole = middle;
      } else {
        spoiled = middle;
      }
    }
    String name = features.get(whole).name();
    String damage = damage(features.subList(0, spoiled), block);
    return List.of(
        Finding.error(
            "part-not-whole",
            placeOf(part, name),
            "`" + name + "` " + damage.formatted("`" + part.name().value() + "`"),
            "make it smaller, or leave it out"));
  }

  private static Span placeOf(PartDefinition part, String feature) {
    return part.features().stream()
        .filter(f -> f.name().value().equals(feature))
        .findFirst()
        .orElseThrow()
        .name()
        .at();
  }

  /** What the troughs of features do to a part; empty when it stays whole. */
  private static String damage(List<Part.Feature> features, Solid block) {
    List<Box> troughs =
        features.stream()
            .flatMap(feature -> feature.removals().stream())
            .filter(Trough.class::isInstance)
            .map(removal -> ((Trough) removal).box())
            .toList();
    Columns columns = new Columns(block, troughs);
    if (columns.isEmpty()) {
      return "leaves no wood of %s";
    }
    return !columns.isOnePiece()
        ? "cuts %s in two"
        : columns.isFullSize() ? "" : "takes a whole side of %s";
  }
}
