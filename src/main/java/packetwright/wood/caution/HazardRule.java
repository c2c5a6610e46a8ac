package packetwright.wood.caution;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.shop.MachineKind;
import packetwright.text.formula.Formula;
import packetwright.wood.caution.Caution.Signal;

/**
 * One hazard rule.
 *
 * @param name its phrases begin with {@code caution.} and this
 * @param against kind of hazard
 * @param at machines and hand tools that it is about; empty for any operation
 * @param when it is printed
 * @param signal severity
 * @param isOnce whether it is printed once for each machine, and not at each step
 * @param insteadOf names of rules that are not printed at a step where this one is
 * @param control what answers it, or none
 * @param shows the amounts that its reason tells
 * @param source where it comes from
 * @param refusals what may not be printed, where the rule applies
 * @param words of a shop's own rule; ours have theirs in the phrase file
 */
record HazardRule(
    String name,
    Hazard against,
    Set<MachineKind> at,
    Formula when,
    Signal signal,
    boolean isOnce,
    List<String> insteadOf,
    @Nullable Control control,
    List<String> shows,
    String source,
    List<Refusal> refusals,
    @Nullable OwnWords words) {
  HazardRule {
    at = Set.copyOf(at);
    insteadOf = List.copyOf(insteadOf);
    shows = List.copyOf(shows);
    refusals = List.copyOf(refusals);
  }

  /** Whether it is about a tool. */
  boolean concerns(@Nullable MachineKind tool) {
    return at.isEmpty() || (tool != null && at.contains(tool));
  }

  /** Whether the other is not printed where this one is. */
  boolean replaces(HazardRule other) {
    return insteadOf.contains(other.name()) && !other.name().equals(name);
  }

  /**
   * What a shop prints of its own rule.
   *
   * @param hazard what can hurt
   * @param consequence what it does
   * @param avoid how not to be hurt
   * @param why here, with amounts by name in braces
   */
  record OwnWords(String hazard, String consequence, String avoid, String why) {}

  /**
   * An operation that may not be printed.
   *
   * @param code of the finding
   * @param when it is refused
   * @param message with amounts by name in braces
   * @param hint what to do where no way out is found
   * @param control that would answer it, or none
   * @param isWaivable whether an instructor may accept it
   */
  record Refusal(
      String code,
      Formula when,
      String message,
      String hint,
      @Nullable Control control,
      boolean isWaivable) {}
}
