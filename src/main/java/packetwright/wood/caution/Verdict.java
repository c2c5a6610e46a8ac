package packetwright.wood.caution;

import java.util.List;

/**
 * What the rules say about a procedure.
 *
 * @param cautions by step and then most severe first, each rule once in a step
 * @param refused in the order of the operations
 */
public record Verdict(List<Caution> cautions, List<Refused> refused) {
  /** Keeps its own copies. */
  public Verdict {
    cautions = List.copyOf(cautions);
    refused = List.copyOf(refused);
  }
}
