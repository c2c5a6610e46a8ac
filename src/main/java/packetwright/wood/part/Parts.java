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
import packetwright.text.measure.Rule;
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
      Part part = findings.take(part(definition, sizes, project.rule()));
      if (part != null) {
        parts.add(part);
      }
    }
    return findings.checked(parts);
  }

  private static Checked<Part> part(PartDefinition definition, Sizes sizes, Rule rule) {
    Findings findings = new Findings();
    String name = definition.name().value();
    List<Length> extents =
        List.of(
            sizes.length(name + ".length"),
            sizes.length(name + ".width"),
            sizes.length(name + ".thickness"));
    Solid block = Solid.block(extents.get(0), extents.get(1), extents.get(2));
    List<Part.Feature> features = new ArrayList<>();
    for (FeatureDefinition feature : definition.features()) {
      Part.Feature made =
          findings.take(feature(name, feature, sized(feature, name, sizes), block, rule));
      if (made != null) {
        features.add(made);
      }
    }
    if (!findings.hasErrors()) {
      findings.addAll(Wholeness.check(definition, features, block));
    }
    Solid solid = block.minus(features.stream().flatMap(f -> f.removals().stream()).toList());
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
      String part, FeatureDefinition definition, Part.Feature bare, Solid block, Rule rule) {
    Checked<List<Removal>> removals =
        FeatureShape.removals(bare, block, definition.where().at(), rule);
    if (!removals.isGood()) {
      return new Checked<>(null, removals.findings());
    }
    return removals.value().stream().allMatch(removal -> liesIn(removal, block))
        ? Checked.of(bare.taking(removals.value()))
        : Checked.failed(
            Finding.error(
                "feature-outside-part",
                definition.name().at(),
                "`" + bare.name() + "` reaches out of its part, `" + part + "`",
                "make it smaller, or change `at`"));
  }

  private static boolean liesIn(Removal removal, Solid block) {
    Box reach = removal.reach(block.block());
    return reach != null && block.block().contains(reach);
  }

  /** A feature with its sizes, but without what it takes. */
  private static Part.Feature sized(FeatureDefinition definition, String part, Sizes sizes) {
    Map<String, Length> lengths = new LinkedHashMap<>();
    for (String key : definition.sizes().keySet().stream().sorted().toList()) {
      lengths.put(key, sizes.length(part + "." + definition.name().value() + "." + key));
    }
    return new Part.Feature(
        definition.name().value(),
        definition.kind(),
        definition.where().value(),
        definition.face(),
        definition.from(),
        lengths,
        List.of());
  }
}
