package packetwright.wood.workpiece;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;

/**
 * A blank, or what is left of it, at a moment of the procedure.
 *
 * @param name the blank's, or the part's with its number once it is cut free: {@code side 1}
 * @param blank the blank it came from
 * @param solid its shape now, in a frame of its own whose origin is its own left end
 * @param states what is known of each side
 * @param history which operation made what
 */
public record Workpiece(
    String name, String blank, Solid solid, Map<Side, Set<State>> states, History history) {
  /** Keeps its own copies. */
  public Workpiece {
    states = Map.copyOf(states);
  }

  /** A piece of which nothing is known but its shape and its sides. */
  public Workpiece(String name, String blank, Solid solid, Map<Side, Set<State>> states) {
    this(name, blank, solid, states, History.NONE);
  }

  /** What has been made of a side. */
  public enum State {
    FLAT,
    STRAIGHT,
    SQUARE,
    SANDED,
    EASED,
    FINISHED
  }

  /**
   * Which operation made what; operations are numbered from 0 through the whole procedure.
   *
   * @param extents the operation that last set length, width and thickness; -1 as bought
   * @param removals the operation that made each of the solid's removals
   * @param over how much longer than drawn it was left on purpose
   * @param wide how much wider than drawn it was left on purpose
   * @param isLaidOut whether its lines have been drawn
   * @param aims features that have been cut in it, {@code side.lid_groove}
   */
  public record History(
      List<Integer> extents,
      List<Integer> removals,
      Length over,
      Length wide,
      boolean isLaidOut,
      Set<String> aims) {
    /** As bought. */
    public static final History NONE =
        new History(List.of(-1, -1, -1), List.of(), Length.ZERO, Length.ZERO, false, Set.of());

    /** Keeps its own copies. */
    public History {
      extents = List.copyOf(extents);
      removals = List.copyOf(removals);
      aims = Set.copyOf(aims);
    }

    public History withExtent(int axis, int operation) {
      List<Integer> changed = new ArrayList<>(extents);
      changed.set(axis, operation);
      return new History(changed, removals, over, wide, isLaidOut, aims);
    }

    public History withOver(Length length) {
      return new History(extents, removals, length, wide, isLaidOut, aims);
    }

    public History withWide(Length width) {
      return new History(extents, removals, over, width, isLaidOut, aims);
    }

    /** With the operation that made one more of the solid's removals. */
    public History withRemoval(int operation) {
      List<Integer> madeBy = new ArrayList<>(removals);
      madeBy.add(operation);
      return new History(extents, madeBy, over, wide, isLaidOut, aims);
    }

    public History laidOut(boolean drawn) {
      return new History(extents, removals, over, wide, drawn, aims);
    }

    public History aimedAt(Set<String> features) {
      Set<String> more = new HashSet<>(aims);
      more.addAll(features);
      return new History(extents, removals, over, wide, isLaidOut, more);
    }
  }

  /** Whether a side is known to be so. */
  public boolean is(Side side, State state) {
    return states.getOrDefault(side, Set.of()).contains(state);
  }

  /** The same piece under another name. */
  public Workpiece named(String other) {
    return new Workpiece(other, blank, solid, states, history);
  }

  public Workpiece withHistory(History changed) {
    return new Workpiece(name, blank, solid, states, changed);
  }

  /** With one more thing known of a side. */
  public Workpiece with(Side side, State state) {
    Map<Side, Set<State>> more = new EnumMap<>(Side.class);
    more.putAll(states);
    Set<State> ofSide = EnumSet.of(state);
    ofSide.addAll(states.getOrDefault(side, Set.of()));
    more.put(side, Set.copyOf(ofSide));
    return new Workpiece(name, blank, solid, more, history);
  }

  /** A side that a blade has just made: what was known of it is gone. */
  public Workpiece fresh(Side side, State... known) {
    Map<Side, Set<State>> more = new EnumMap<>(Side.class);
    more.putAll(states);
    more.put(side, Set.of(known));
    return new Workpiece(name, blank, solid, more, history);
  }

  /** With wood taken out by an operation; a hole leaves the eased edges as they were. */
  public Workpiece minus(Removal removal, int operation) {
    return new Workpiece(
        name,
        blank,
        solid.minus(removal),
        removal instanceof Removal.Bore ? states : sharp(),
        history.withRemoval(operation));
  }

  /** A side of which one thing is known no longer. */
  public Workpiece not(Side side, State state) {
    Set<State> fewer = new HashSet<>(states.getOrDefault(side, Set.of()));
    fewer.remove(state);
    return fresh(side, fewer.toArray(State[]::new));
  }

  /** What is known of each side when a cut has made new edges. */
  private Map<Side, Set<State>> sharp() {
    Map<Side, Set<State>> fewer = new EnumMap<>(Side.class);
    states.forEach(
        (side, known) -> {
          Set<State> left = new HashSet<>(known);
          left.remove(State.EASED);
          fewer.put(side, Set.copyOf(left));
        });
    return fewer;
  }

  /**
   * What an operation leaves between two coordinates on an axis. A slice off a face takes the lines
   * with it.
   */
  public Workpiece slice(int axis, Length from, Length to, int operation) {
    History sliced = history.withExtent(axis, operation);
    return new Workpiece(
        name,
        blank,
        solid.slice(axis, from, to),
        sharp(),
        axis == 2 ? sliced.laidOut(false) : sliced);
  }
}
