package packetwright.wood.caution;

import org.jspecify.annotations.Nullable;
import packetwright.definition.shop.MachineKind;
import packetwright.text.source.Span;

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
 * @param why the sizes that made it fire, for the key
 * @param step number of the step
 * @param tool that the hazard comes from, or none
 * @param isOnce whether it holds for the machine as a whole, and is printed once
 * @param piece worked on
 * @param refuses whether the operation may not be printed
 * @param at the operation
 */
public record Caution(
    String rule,
    Hazard against,
    Signal signal,
    String hazard,
    String consequence,
    String avoid,
    String source,
    String why,
    int step,
    @Nullable MachineKind tool,
    boolean isOnce,
    String piece,
    boolean refuses,
    Span at) {
  /** The two as one statement of a step, with every reason; a refusal stands before the rest. */
  Caution and(Caution other) {
    Caution first = other.refuses && !refuses ? other : this;
    String reasons = why.contains(other.why) ? why : why + " " + other.why;
    return new Caution(
        first.rule,
        first.against,
        first.signal,
        first.hazard,
        first.consequence,
        first.avoid,
        first.source,
        reasons,
        first.step,
        first.tool,
        first.isOnce,
        first.piece,
        first.refuses,
        first.at);
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
