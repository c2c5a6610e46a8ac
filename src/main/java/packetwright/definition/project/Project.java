package packetwright.definition.project;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rule;
import packetwright.text.source.Located;

/**
 * A project as its author wrote it; formulas are still text.
 *
 * @param id fixed for the project's life
 * @param title as printed
 * @param course as printed
 * @param rule unit and finest graduation
 * @param givens in the order written, as are all the lists
 * @param sizes derived sizes
 * @param requires conditions that every substitution must keep
 * @param parts finished pieces
 * @param blanks rough pieces
 * @param materials what blanks are bought as
 * @param supplies glue, brads, finish
 * @param assembly where parts sit
 * @param options named switches, with what each does
 * @param objectives what the student learns
 * @param rubric rows to assess by
 */
public record Project(
    String id,
    String title,
    String course,
    Rule rule,
    List<Given> givens,
    List<DerivedSize> sizes,
    List<Requirement> requires,
    List<PartDefinition> parts,
    List<BlankDefinition> blanks,
    List<Material> materials,
    List<Supply> supplies,
    AssemblyDefinition assembly,
    Map<String, String> options,
    List<String> objectives,
    List<RubricRow> rubric) {

  /**
   * A named input that may be substituted.
   *
   * @param name as formulas use it
   * @param value unless substituted
   * @param from least value allowed, or none
   * @param to greatest value allowed, or none
   * @param tolerance plus or minus, or none
   * @param about one sentence
   */
  public record Given(
      Located<String> name,
      Located<Quantity> value,
      @Nullable Located<Quantity> from,
      @Nullable Located<Quantity> to,
      @Nullable Located<Quantity> tolerance,
      String about) {}

  /**
   * A size reckoned from others.
   *
   * @param name as formulas use it
   * @param formula how it is reckoned
   * @param tolerance its own, beyond what its inputs bring; or none
   * @param measured whether students measure it on their own piece
   */
  public record DerivedSize(
      Located<String> name,
      Located<String> formula,
      @Nullable Located<Quantity> tolerance,
      boolean measured) {}

  /**
   * A condition.
   *
   * @param that formula that must hold
   * @param or what goes wrong when it does not
   */
  public record Requirement(Located<String> that, String or) {}

  /**
   * How a blank's stock is bought and what comes out of it.
   *
   * @param name as operations use it
   * @param material a name among the materials
   * @param bought state of its surfaces
   * @param cut parts in the order laid out, one entry for each piece
   * @param sections length formulas by part, where a later step needs a longer section
   */
  public record BlankDefinition(
      Located<String> name,
      Located<String> material,
      Bought bought,
      List<Located<String>> cut,
      Map<String, Located<String>> sections) {
    /** Keeps its own copies. */
    public BlankDefinition {
      cut = List.copyOf(cut);
      sections = Map.copyOf(sections);
    }
  }

  /** The surfaces of stock as it comes into the shop. */
  public enum Bought {
    ROUGH,
    SURFACED_2,
    SURFACED_4,
    SHEET
  }

  /**
   * Stock as sold.
   *
   * @param name as blanks use it
   * @param thickness as sold
   */
  public record Material(Located<String> name, Located<Quantity> thickness) {}

  /**
   * Something used up.
   *
   * @param name as operations use it
   * @param length of a fastener, or none
   */
  public record Supply(Located<String> name, @Nullable Located<Quantity> length) {}

  /**
   * One row of the rubric.
   *
   * @param row what is looked at
   * @param limit formula of the size allowed, or none
   */
  public record RubricRow(String row, @Nullable Located<String> limit) {}

  /** Keeps its own copies. */
  public Project {
    givens = List.copyOf(givens);
    sizes = List.copyOf(sizes);
    requires = List.copyOf(requires);
    parts = List.copyOf(parts);
    blanks = List.copyOf(blanks);
    materials = List.copyOf(materials);
    supplies = List.copyOf(supplies);
    options = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(options));
    objectives = List.copyOf(objectives);
    rubric = List.copyOf(rubric);
  }
}
