package packetwright.wood.caution;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.source.Finding;
import packetwright.wood.operation.OperationRun;

/**
 * Says why an operation is refused, and what its rule proposes instead.
 *
 * @param rule to print lengths by
 */
record RefusalReport(Rule rule) {
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
            refusal.hint())
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
}
