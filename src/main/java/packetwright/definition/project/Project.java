package packetwright.definition.project;

import java.util.Collections;
import java.util.LinkedHashMap;
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
 * @param choices givens that are chosen from tables
 * @param sizes derived sizes
 * @param requires conditions that every substitution must keep
 * @param parts finished pieces
 * @param blanks rough pieces
 * @param materials what blanks are bought as
 * @param supplies glue, brads, finish
 * @param assembly where parts sit
 * @param options named switches; what they leave out is in none of the lists
 * @param objectives what the student learns
 * @param rubric rows to assess by
 * @param quiz what is asked; empty without a quiz file
 * @param accepted refusals that the instructor answers for
 */
public record Project(
    String id,
    String title,
    String course,
    Rule rule,
    List<Given> givens,
    List<Choice> choices,
    List<DerivedSize> sizes,
    List<Requirement> requires,
    List<PartDefinition> parts,
    List<BlankDefinition> blanks,
    List<Material> materials,
    List<Supply> supplies,
    AssemblyDefinition assembly,
    Options options,
    List<String> objectives,
    List<RubricRow> rubric,
    QuizDefinition quiz,
    List<Accepted> accepted) {

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
   * @param boards how many it is glued up from, edge to edge; 1 when it is one board
   * @param cut parts in the order laid out, one entry for each piece
   * @param sections length formulas by part, where a later step needs a longer section
   */
  public record BlankDefinition(
      Located<String> name,
      Located<String> material,
      Bought bought,
      int boards,
      List<Located<String>> cut,
      Map<String, Located<String>> sections) {
    /** Keeps its own copies. */
    public BlankDefinition {
      cut = List.copyOf(cut);
      sections = Collections.unmodifiableMap(new LinkedHashMap<>(sections));
    }

    /** The same with other sections. */
    public BlankDefinition with(Map<String, Located<String>> others) {
      return new BlankDefinition(name, material, bought, boards, cut, others);
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
   * @param boards the thickness of each board at hand; empty when all are as thick as sold
   * @param widths as sold; empty for sheets and where any width may come
   * @param lengths as sold; empty for sheets and where any length may come
   * @param sheet width and length of a sheet, or empty
   * @param sold what the price is for
   * @param price of one, or none
   */
  public record Material(
      Located<String> name,
      Located<Quantity> thickness,
      List<Located<Quantity>> boards,
      List<Located<Quantity>> widths,
      List<Located<Quantity>> lengths,
      List<Located<Quantity>> sheet,
      Sold sold,
      @Nullable Located<Quantity> price) {
    /** Keeps its own copies. */
    public Material {
      boards = List.copyOf(boards);
      widths = List.copyOf(widths);
      lengths = List.copyOf(lengths);
      sheet = List.copyOf(sheet);
    }
  }

  /** What a price is for. */
  public enum Sold {
    BOARD_FOOT,
    FOOT,
    PIECE,
    SHEET
  }

  /**
   * Something used up.
   *
   * @param name as operations use it
   * @param length of a fastener, or none
   * @param diameter of a fastener's shank, or none where it is the usual one
   * @param spacing the most that two fasteners stand apart, or none where it is the usual one
   * @param edge the least that a fastener stands from an edge, or none where it is the usual one
   * @param pack how much is sold at once, or none
   * @param price of a pack, or none
   * @param use by each student, or none where operations tell
   * @param grits of abrasives, coarse first; empty for everything else
   */
  public record Supply(
      Located<String> name,
      @Nullable Located<Quantity> length,
      @Nullable Located<Quantity> diameter,
      @Nullable Located<Quantity> spacing,
      @Nullable Located<Quantity> edge,
      @Nullable Located<Quantity> pack,
      @Nullable Located<Quantity> price,
      @Nullable Located<Quantity> use,
      List<Integer> grits) {
    /** Keeps its own copy. */
    public Supply {
      grits = List.copyOf(grits);
    }
  }

  /**
   * One row of the rubric.
   *
   * @param row what is looked at
   * @param limit formula of the size allowed, or none
   */
  public record RubricRow(String row, @Nullable Located<String> limit) {}

  /**
   * An operation that a caution rule refuses and the instructor allows for a reason.
   *
   * @param refusal code of the finding
   * @param step id of the step, the slug of its heading
   * @param because the reason, in the instructor's own words
   */
  public record Accepted(Located<String> refusal, Located<String> step, Located<String> because) {}

  /** The same with other blanks. */
  public Project with(List<BlankDefinition> others) {
    return new Project(
        id,
        title,
        course,
        rule,
        givens,
        choices,
        sizes,
        requires,
        parts,
        others,
        materials,
        supplies,
        assembly,
        options,
        objectives,
        rubric,
        quiz,
        accepted);
  }

  /** Keeps its own copies. */
  public Project {
    givens = List.copyOf(givens);
    choices = List.copyOf(choices);
    sizes = List.copyOf(sizes);
    requires = List.copyOf(requires);
    parts = List.copyOf(parts);
    blanks = List.copyOf(blanks);
    materials = List.copyOf(materials);
    supplies = List.copyOf(supplies);
    objectives = List.copyOf(objectives);
    rubric = List.copyOf(rubric);
    accepted = List.copyOf(accepted);
  }
}
