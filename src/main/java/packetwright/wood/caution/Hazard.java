package packetwright.wood.caution;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.shop.MachineKind;
import packetwright.text.formula.Formula;
import packetwright.wood.caution.Caution.Signal;

/**
 * One hazard rule.
 *
 * @param name its phrases begin with {@code caution.} and this
 * @param at machines and hand tools that it is about; empty for any operation
 * @param when it is printed
 * @param signal severity
 * @param isOncePerMachine whether it is printed only at the first step of each machine that the
 *     student does, and the first that the instructor does
 * @param shows the amounts that its reason tells
 * @param source where it comes from
 * @param refusals what may not be printed, where the rule applies
 */
record Hazard(
    String name,
    Set<MachineKind> at,
    Formula when,
    Signal signal,
    boolean isOncePerMachine,
    List<String> shows,
    String source,
    List<Refusal> refusals) {
  Hazard {
    at = Set.copyOf(at);
    shows = List.copyOf(shows);
    refusals = List.copyOf(refusals);
  }

  /** Whether it is about a tool. */
  boolean concerns(@Nullable MachineKind tool) {
    return at.isEmpty() || (tool != null && at.contains(tool));
  }

  /**
   * An operation that may not be printed.
   *
   * @param code of the finding
   * @param when it is refused
   * @param message with amounts by name in braces
   * @param hint what to do where no earlier step helps
   * @param longer name of the least length that the piece must have, or empty
   * @param isWaivable whether an instructor may accept it
   */
  record Refusal(
      String code, Formula when, String message, String hint, String longer, boolean isWaivable) {}
}
