package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import packetwright.definition.shop.MachineKind;
import packetwright.wood.operation.OperationRun;

/**
 * A hazard statement at a step.
 *
 * @param rule name of the rule that fired
 * @param against kind of hazard
 * @param signal severity
 * @param hazard what can hurt
 * @param consequence what it does
 * @param avoid how not to be hurt
 * @param source where the rule comes from
 * @param isLocal whether the shop added the rule
 * @param isGeneral whether the rule is about no tool in particular
 * @param isOnce whether it holds for the machine as a whole, and is printed once
 * @param refuses whether the operation may not be printed
 * @param fired where it fired: one or more operations of one step, or of the whole procedure for
 *     what is printed once
 */
public record Caution(
    String rule,
    Hazard against,
    Signal signal,
    String hazard,
    String consequence,
    String avoid,
    String source,
    boolean isLocal,
    boolean isGeneral,
    boolean isOnce,
    boolean refuses,
    List<Firing> fired) {
  /** Keeps its own copy. */
  public Caution {
    fired = List.copyOf(fired);
  }

  /**
   * Where a rule fired.
   *
   * @param run the operation
   * @param why the sizes that made it fire
   * @param look what the instructor looks at there before power goes on; empty for nothing
   * @param replacedBy name of the rule that is printed there in its place; empty for none
   */
  public record Firing(OperationRun run, String why, String look, String replacedBy) {
    /** Whether another rule is printed there in its place. */
    public boolean isReplaced() {
      return !replacedBy.isEmpty();
    }
  }

  /** The two as one caution of a step; that a step refuses it holds for the whole step. */
  Caution and(Caution other) {
    List<Firing> both = new ArrayList<>(fired);
    both.addAll(other.fired);
    return new Caution(
        rule,
        against,
        signal,
        hazard,
        consequence,
        avoid,
        source,
        isLocal,
        isGeneral,
        isOnce,
        refuses || other.refuses,
        both);
  }

  /** Number of the step, the first of several. */
  public int step() {
    return fired.get(0).run().step().number();
  }

  /** What the hazard comes from, or none. */
  public @Nullable MachineKind tool() {
    return fired.get(0).run().tool();
  }

  /** The sizes that made it fire, each reason once. */
  public String why() {
    return fired.stream().map(Firing::why).distinct().collect(Collectors.joining(" "));
  }

  /** Whether every place of it has another rule printed in its place. */
  public boolean isReplaced() {
    return fired.stream().allMatch(Firing::isReplaced);
  }

  /** Signal words, most severe first, by their ANSI Z535.4 meanings. */
  public enum Signal {
    /** Death or serious injury will follow. */
    DANGER,
    /** Death or serious injury could follow. */
    WARNING,
    /** Minor or moderate injury could follow. */
    CAUTION,
    /** Not about injury. */
    NOTICE
  }
}
