package packetwright.wood.caution;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.source.Finding;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.operation.Run;
import packetwright.wood.workpiece.Workpiece;

/**
 * Says why an operation is refused, and what to do instead.
 *
 * @param run the whole procedure, to look for an earlier step
 * @param rule to print lengths by
 */
record RefusalReport(Run run, Rule rule) {
  private static final Pattern NAME = Pattern.compile("\\{([a-z_.]+)\\}");

  Refused refused(HazardRule rule, HazardRule.Refusal refusal, RunValues values) {
    return new Refused(
        rule.name(),
        refusal.isWaivable(),
        refusal.control(),
        values.run(),
        finding(refusal, values));
  }

  private Finding finding(HazardRule.Refusal refusal, RunValues values) {
    OperationRun at = values.run();
    return Finding.error(
            refusal.code(),
            at.operation().place(),
            filled(refusal.message(), values),
            hint(refusal, values))
        .inStep(at.step().label());
  }

  /** A text with the amounts that it names in braces. */
  String filled(String template, RunValues values) {
    return NAME.matcher(template)
        .replaceAll(name -> Matcher.quoteReplacement(filling(name.group(1), values)));
  }

  private String filling(String name, RunValues values) {
    MachineKind tool = values.run().tool();
    return switch (name) {
      case "piece" -> words(values.piece().name());
      case "tool" -> tool == null ? "hand" : words(tool.word());
      default -> print(values.amount(name).asLength());
    };
  }

  private static String words(String name) {
    return name.replace('_', ' ');
  }

  private String print(Length length) {
    return rule.printExactly(length).toString();
  }

  private String hint(HazardRule.Refusal refusal, RunValues values) {
    Workpiece piece = values.piece();
    boolean isRipOfBlank =
        values.run().operation().verb().value() == Verb.RIP && piece.name().equals(piece.blank());
    // Ripped earlier, a blank would be too narrow for the parts that are cut from it in between.
    if (refusal.longer().isEmpty() || isRipOfBlank) {
      return refusal.hint();
    }
    Length least = values.amount(refusal.longer()).asLength();
    int step = values.run().step().number();
    OperationRun earlier = null;
    for (OperationRun other : run.operations()) {
      if (other.step().number() < step && longEnough(other, piece.blank(), least) != null) {
        earlier = other;
      }
    }
    Workpiece then = earlier == null ? null : longEnough(earlier, piece.blank(), least);
    if (earlier == null || then == null) {
      return refusal.hint();
    }
    return "move this operation to step "
        + earlier.step().mark()
        + ", where the piece is "
        + print(then.solid().length())
        + " long, or "
        + refusal.hint();
  }

  /** A piece of the same blank as it was before an operation, while it was long enough. */
  private static @Nullable Workpiece longEnough(OperationRun other, String blank, Length least) {
    return other.before().stream()
        .filter(p -> p.blank().equals(blank) && !p.solid().length().isLess(least))
        .findFirst()
        .orElse(null);
  }
}
