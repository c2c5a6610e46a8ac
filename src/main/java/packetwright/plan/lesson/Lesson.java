package packetwright.plan.lesson;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.project.Project;
import packetwright.definition.shop.Shop;
import packetwright.definition.size.Sizes;
import packetwright.definition.size.Substitution;
import packetwright.wood.assembly.Assembly;
import packetwright.wood.blank.Blank;
import packetwright.wood.caution.Caution;
import packetwright.wood.caution.Refused;
import packetwright.wood.operation.Run;
import packetwright.wood.part.Part;

/**
 * One project under one substitution, shop and set of options, fully worked out.
 *
 * @param project as written
 * @param choices what this term's instructor chose
 * @param procedure in the variant for the shop and the options
 * @param sizes with the blanks' rough sizes
 * @param parts as drawn
 * @param assembly where they sit
 * @param blanks as reckoned
 * @param run the procedure as simulated: every part comes out as drawn
 * @param cautions by step
 * @param accepted refusals that the instructor answers for, in the order of the operations
 */
public record Lesson(
    Project project,
    Choices choices,
    Procedure procedure,
    Sizes sizes,
    List<Part> parts,
    Assembly assembly,
    List<Blank> blanks,
    Run run,
    List<Caution> cautions,
    List<Accepted> accepted) {
  /** Keeps its own copies. */
  public Lesson {
    parts = List.copyOf(parts);
    blanks = List.copyOf(blanks);
    cautions = List.copyOf(cautions);
    accepted = List.copyOf(accepted);
  }

  /** The shop that it is worked out for. */
  public Shop shop() {
    return choices.shop();
  }

  /**
   * A refusal that is accepted with a reason.
   *
   * @param refused what the rule says of which operation
   * @param because the instructor's reason, as written
   */
  public record Accepted(Refused refused, String because) {}

  /**
   * What an instructor chooses for a term.
   *
   * @param shop its machines and allowances
   * @param substitution what stands in place of the project's own givens
   * @param written the same as they were typed
   * @param options switched on
   * @param term label of this run; may be empty
   */
  public record Choices(
      Shop shop,
      Substitution substitution,
      Map<String, String> written,
      Set<String> options,
      String term) {
    /** Keeps its own copies, in order. */
    public Choices {
      written = Collections.unmodifiableMap(new LinkedHashMap<>(written));
      options = Collections.unmodifiableSet(new TreeSet<>(options));
    }
  }
}
