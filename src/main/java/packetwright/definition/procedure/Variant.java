package packetwright.definition.procedure;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.definition.project.PartDefinition;
import packetwright.definition.project.Project;
import packetwright.definition.shop.Shop;
import packetwright.text.source.Located;

/**
 * What chooses among a procedure's variants.
 *
 * @param shop whose machines decide between passages headed {@code With}
 * @param known names of all the project's options, or none where the project could not be read
 * @param chosen options that are on
 * @param blanks the blanks that each part, joint and blank stands for, by name
 */
public record Variant(
    Shop shop, @Nullable Set<String> known, Set<String> chosen, Map<String, Set<String>> blanks) {
  /** Keeps its own copies. */
  public Variant {
    known = known == null ? null : Set.copyOf(known);
    chosen = Set.copyOf(chosen);
    blanks = Map.copyOf(blanks);
  }

  /** Of a project whose parts are not known. */
  public Variant(Shop shop, @Nullable Set<String> known, Set<String> chosen) {
    this(shop, known, chosen, Map.of());
  }

  /** Of a project, or of none that could be read. */
  public static Variant of(Shop shop, @Nullable Project project, Set<String> chosen) {
    return project == null
        ? new Variant(shop, null, chosen)
        : new Variant(shop, project.options().names(), chosen, blanks(project));
  }

  private static Map<String, Set<String>> blanks(Project project) {
    Map<String, Set<String>> blanks = new HashMap<>();
    for (PartDefinition part : project.parts()) {
      blanks.put(part.name().value(), Set.of(part.blank().value()));
    }
    for (Joint joint : project.assembly().joints()) {
      Set<String> joined = new HashSet<>();
      for (Located<String> piece : joint.pieces()) {
        joined.addAll(blanks.getOrDefault(piece.value().replaceFirst(" .*", ""), Set.of()));
      }
      blanks.put(joint.name().value(), joined);
    }
    return blanks;
  }
}
