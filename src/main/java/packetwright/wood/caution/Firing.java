package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.text.formula.Alternative;
import packetwright.text.formula.Bound;
import packetwright.text.formula.Formula;
import packetwright.text.measure.Rational;
import packetwright.wood.operation.ToolCheck;

/**
 * Whether conditions can hold together at all. They are taken apart into the ways in which they can
 * hold; each way is tried against what is true of every operation. Where nothing is known they can:
 * a rule that is said never to fire never does.
 *
 * @param limits of machines
 */
record Firing(MachineLimits limits) {
  private static final List<String> FEEDS =
      List.of("work.along", "work.across", "work.clamped", "work.freehand");

  /** What is zero where nothing is cut. */
  private static final List<String> OF_CUT =
      List.of("work.fence", "work.depth", "work.held", "work.freed");

  /** What a piece never has none of. */
  private static final String PIECE = "piece.";

  /** The tools at which all of some conditions can hold at once, of those that a rule is about. */
  Set<MachineKind> at(HazardRule rule, Formula... conditions) {
    Set<MachineKind> can = new LinkedHashSet<>();
    for (MachineKind tool : rule.at().isEmpty() ? List.of(MachineKind.values()) : tools(rule)) {
      if (verbs(tool).anyMatch(verb -> canHold(tool, verb, conditions))) {
        can.add(tool);
      }
    }
    return can;
  }

  /** Whether all of some conditions can hold at once in work without a tool. */
  boolean withoutTool(HazardRule rule, Formula... conditions) {
    return rule.at().isEmpty()
        && Arrays.stream(Verb.values()).anyMatch(verb -> canHold(null, verb, conditions));
  }

  private static List<MachineKind> tools(HazardRule rule) {
    return Arrays.stream(MachineKind.values()).filter(rule.at()::contains).toList();
  }

  private static Stream<Verb> verbs(MachineKind tool) {
    return Arrays.stream(Verb.values()).filter(verb -> ToolCheck.isDone(verb, tool));
  }

  private boolean canHold(@Nullable MachineKind tool, Verb verb, Formula... conditions) {
    TypicalValues values = new TypicalValues(tool, verb, limits, Rational.ONE);
    List<Alternative> ways = List.of(Alternative.ANY);
    for (Formula condition : conditions) {
      ways = both(ways, condition.alternatives(values, TypicalValues::isOpen));
    }
    return ways.stream().anyMatch(Firing::isPossible);
  }

  private static List<Alternative> both(List<Alternative> ways, List<Alternative> more) {
    List<Alternative> both = new ArrayList<>();
    for (Alternative way : ways) {
      for (Alternative other : more) {
        Alternative together = way.and(other);
        if (together != null) {
          both.add(together);
        }
      }
    }
    return both;
  }

  private static boolean isPossible(Alternative way) {
    Map<String, Boolean> truths = way.truths();
    List<String> fed = FEEDS.stream().filter(f -> truths.getOrDefault(f, false)).toList();
    boolean isUncut = !truths.getOrDefault("work.cuts", true);
    boolean unfed = FEEDS.stream().noneMatch(f -> truths.getOrDefault(f, true));
    boolean isCut =
        truths.getOrDefault("work.cuts", false)
            || truths.getOrDefault("work.through", false)
            || truths.getOrDefault("work.ripped", false);
    if (fed.size() > 1 || (isUncut && !fed.isEmpty()) || (isCut && (isUncut || unfed))) {
      return false;
    }
    List<Bound> natural = new ArrayList<>();
    way.bounds().stream()
        .flatMap(b -> b.sum().factors().keySet().stream())
        .distinct()
        .filter(name -> Vocabulary.kind(name) == Vocabulary.Kind.EXTENT)
        .forEach(
            name -> {
              natural.add(name.startsWith(PIECE) ? Bound.aboveZero(name) : Bound.atLeastZero(name));
              if (OF_CUT.contains(name) && (isUncut || unfed)) {
                natural.add(Bound.atMostZero(name));
              }
            });
    Alternative all = way.and(new Alternative(Map.of(), natural));
    return all != null && all.hasAmounts();
  }
}
