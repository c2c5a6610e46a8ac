package packetwright.definition.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The procedure in the variant that one shop and set of options give.
 *
 * @param introduction before the first step
 * @param steps in the order done; those of preparation stand among them
 * @param options names of the options that headings ask for, whether they are on or not
 */
public record Procedure(List<Block> introduction, List<Step> steps, Set<String> options) {
  /** Keeps its own copies. */
  public Procedure {
    introduction = List.copyOf(introduction);
    steps = List.copyOf(steps);
    options = Set.copyOf(options);
  }

  /** The same procedure with other steps. */
  public Procedure with(List<Step> others) {
    return new Procedure(introduction, others, options);
  }

  /**
   * The same with other steps, numbered and marked anew.
   *
   * @param variant that this was read in
   */
  public Procedure with(List<Step> others, Variant variant) {
    List<Step> numbered = new ArrayList<>();
    others.forEach(step -> numbered.add(step.numbered(numbered.size() + 1)));
    return new Procedure(introduction, Preparation.marked(numbered, variant.blanks()), options);
  }
}
