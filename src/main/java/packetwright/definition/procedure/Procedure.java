package packetwright.definition.procedure;

import java.util.List;

/**
 * The procedure in the variant that one shop and set of options give.
 *
 * @param introduction before the first step
 * @param steps in the order done; those of preparation stand among them
 */
public record Procedure(List<Block> introduction, List<Step> steps) {
  /** Keeps its own copies. */
  public Procedure {
    introduction = List.copyOf(introduction);
    steps = List.copyOf(steps);
  }
}
