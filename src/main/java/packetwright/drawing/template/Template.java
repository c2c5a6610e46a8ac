package packetwright.drawing.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.view.Projection;
import packetwright.text.measure.Rule;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;
import packetwright.wood.part.Part.Feature;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Cases;

/** Decides which parts need a template, and from where. */
public final class Template {
  private static final Set<FeatureKind> SHAPED =
      Set.of(FeatureKind.CURVE, FeatureKind.CORNER, FeatureKind.TAPER);

  /** The axis that it runs along; a trough runs along none. */
  private static final Cases<Integer> AXIS =
      new Cases<>() {
        @Override
        public Integer trough(Removal.Trough trough) {
          return -1;
        }

        @Override
        public Integer bore(Removal.Bore bore) {
          return bore.axis();
        }

        @Override
        public Integer slope(Removal.Slope slope) {
          return slope.axis();
        }

        @Override
        public Integer outline(Removal.Outline outline) {
          return outline.axis();
        }
      };

  private Template() {}

  /**
   * The pages of a part's templates, at full size: 7.1 in by 9.4 in, which Letter and A4 both hold.
   * One template for each side that shows a curve, a rounded corner, a taper or more than one hole;
   * none for other parts.
   */
  public static List<Sheet> of(Part part, Rule rule, Words words) {
    List<Sheet> sheets = new ArrayList<>();
    for (Projection projection : Projection.values()) {
      if (isWanted(part, projection.depth())) {
        sheets.addAll(new TileSheet(part, projection, rule, words).all());
      }
    }
    return sheets;
  }

  private static boolean isWanted(Part part, int axis) {
    boolean isShaped =
        part.features().stream()
            .filter(feature -> SHAPED.contains(feature.kind()))
            .anyMatch(feature -> along(feature, axis) > 0);
    long holes =
        part.features().stream()
            .filter(feature -> feature.kind() == FeatureKind.HOLE)
            .mapToLong(feature -> along(feature, axis))
            .sum();
    return isShaped || holes > 1;
  }

  private static long along(Feature feature, int axis) {
    return feature.removals().stream().filter(r -> r.match(AXIS) == axis).count();
  }
}
