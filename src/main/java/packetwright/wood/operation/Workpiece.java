package packetwright.wood.operation;

import java.util.Map;
import java.util.Set;
import packetwright.definition.project.Side;
import packetwright.wood.part.Solid;

/**
 * A blank, or what is left of it, at a moment of the procedure.
 *
 * @param name the blank's, or the part's with its number once it is cut free: {@code side 1}
 * @param blank the blank it came from
 * @param solid its shape now, in a frame of its own whose origin is its own left end
 * @param states what is known of each side
 */
public record Workpiece(String name, String blank, Solid solid, Map<Side, Set<State>> states) {
  /** Keeps its own copies. */
  public Workpiece {
    states = Map.copyOf(states);
  }

  /** What has been made of a side. */
  public enum State {
    FLAT,
    STRAIGHT,
    SQUARE,
    SANDED,
    EASED,
    GLUED,
    FINISHED
  }

  /** Whether a side is known to be so. */
  public boolean is(Side side, State state) {
    return states.getOrDefault(side, Set.of()).contains(state);
  }
}
