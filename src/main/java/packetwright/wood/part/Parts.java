package packetwright.wood.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import packetwright.definition.project.PartDefinition;
import packetwright.definition.project.PartDefinition.FeatureDefinition;
import packetwright.definition.project.Project;
import packetwright.definition.size.Sizes;
import packetwright.text.measure.Length;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;

/** Makes the designed parts out of their definitions and the sizes. */
public final class Parts {
  private Parts() {}

  /** Every part, in the order defined; a feature that does not lie in its part is a finding. */
  public static Checked<List<Part>> of(Project project, Sizes sizes) {
    Findings findings = new Findings();
    List<Part> parts = new ArrayList<>();
    for (PartDefinition definition : project.parts()) {
      Part part = findings.take(part(definition, sizes));
      if (part != null) {
        parts.add(part);
      }
    }
    return findings.checked(parts);
  }

  private static Checked<Part> part(PartDefinition definition, Sizes sizes) {
    Findings findings = new Findings();
    String name = definition.name().value();
    List<Length> extents =
        List.of(
            sizes.length(name + ".length"),
            sizes.length(name + ".width"),
            sizes.length(name + ".thickness"));
    Solid solid = Solid.block(extents.get(0), extents.get(1), extents.get(2));
    List<Part.Feature> features = new ArrayList<>();
    for (FeatureDefinition feature : definition.features()) {
      Part.Feature made = findings.take(feature(feature, name, solid, sizes));
      if (made != null) {
        features.add(made);
      }
    }
    for (Part.Feature feature : features) {
      for (Removal removal : feature.removals()) {
        solid = solid.minus(removal);
      }
    }
    return findings.checked(
        new Part(
            name,
            definition.letter(),
            definition.count(),
            definition.isPair(),
            definition.blank().value(),
            solid,
            features,
            definition.name().at()));
  }

  private static Checked<Part.Feature> feature(
      FeatureDefinition definition, String part, Solid block, Sizes sizes) {
    Map<String, Length> lengths = new LinkedHashMap<>();
    for (String key : definition.sizes().keySet().stream().sorted().toList()) {
      lengths.put(key, sizes.length(part + "." + definition.name().value() + "." + key));
    }
    Part.Feature bare =
        new Part.Feature(
            definition.name().value(),
            definition.kind(),
            definition.where().value(),
            definition.face(),
            definition.from(),
            lengths,
            List.of());
    Checked<List<Removal>> removals = FeatureShape.removals(bare, block, definition.where().at());
    if (!removals.isGood()) {
      return new Checked<>(null, removals.findings());
    }
    for (Removal removal : removals.value()) {
      if (!liesIn(removal, block)) {
        return Checked.failed(
            Finding.error(
                "feature-outside-part",
                definition.name().at(),
                "`" + definition.name().value() + "` reaches out of its part, `" + part + "`",
                "make it smaller, or change `at`"));
      }
    }
    return Checked.of(
        new Part.Feature(
            bare.name(),
            bare.kind(),
            bare.where(),
            bare.face(),
            bare.from(),
            lengths,
            removals.value()));
  }

  private static boolean liesIn(Removal removal, Solid block) {
    Box reach = removal.reach(block.block());
    return reach != null && block.block().contains(reach);
  }
}
