package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.shop.MachineKind;
import packetwright.text.document.Node;
import packetwright.text.formula.Formula;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Unit;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.wood.caution.HazardRule.Refusal;

/** Reads limits and rules, ours or a shop's, from nodes that the schema has passed. */
final class RuleReader {
  private final Unit unit;
  private final Findings findings;

  /**
   * A reader for one file.
   *
   * @param unit of bare numbers
   * @param findings where to put formulas and amounts that cannot be read
   */
  RuleReader(Unit unit, Findings findings) {
    this.unit = unit;
    this.findings = findings;
  }

  /** The limits of a file by machine and name, in the order written. */
  Map<String, Limit> limits(Node.Mapping file) {
    Map<String, Limit> limits = new LinkedHashMap<>();
    for (Node.Entry entry : file.entries("limits")) {
      String name = entry.key().value();
      Limit limit = limit(name, (Node.Mapping) entry.value());
      if (limit != null) {
        limits.put(name, limit);
      }
    }
    return limits;
  }

  private @Nullable Limit limit(String name, Node.Mapping limit) {
    String[] parts = name.split("\\.", 2);
    Length is = length(limit, "is");
    List<ComparedLimit.Published> published = new ArrayList<>();
    for (Node item : limit.items("published")) {
      Node.Mapping by = (Node.Mapping) item;
      Length value = length(by, "is");
      if (value != null) {
        published.add(new ComparedLimit.Published(value, text(by, "by")));
      }
    }
    boolean isLonger = text(limit, "stricter").equals("longer");
    return is == null
        ? null
        : new Limit(parts[0], parts[1], is, isLonger, text(limit, "source"), published);
  }

  private @Nullable Length length(Node.Mapping from, String key) {
    Quantity read = findings.take(QuantityReader.read(located(from, key), unit));
    return read == null ? null : read.asLength();
  }

  /** One rule, or none where a formula of it cannot be read. */
  @Nullable HazardRule rule(Node.Mapping rule) {
    Formula when = formula(rule);
    List<Refusal> refusals = new ArrayList<>();
    for (Node item : rule.items("refusals")) {
      Refusal refusal = refusal((Node.Mapping) item);
      if (refusal != null) {
        refusals.add(refusal);
      }
    }
    if (when == null || refusals.size() < rule.items("refusals").size()) {
      return null;
    }
    return new HazardRule(
        text(rule, "name"),
        Hazard.valueOf(text(rule, "against").toUpperCase(Locale.ROOT)),
        machines(rule.texts("at")),
        when,
        Caution.Signal.valueOf(text(rule, "signal").toUpperCase(Locale.ROOT)),
        rule.text("print", "step").equals("once"),
        rule.texts("instead_of").stream().map(Located::value).toList(),
        control(rule),
        rule.texts("shows").stream().map(Located::value).toList(),
        text(rule, "source"),
        refusals,
        words(rule.mapping("words")));
  }

  private @Nullable Refusal refusal(Node.Mapping refusal) {
    Formula when = formula(refusal);
    return when == null
        ? null
        : new Refusal(
            text(refusal, "code"),
            when,
            text(refusal, "message"),
            text(refusal, "hint"),
            control(refusal),
            text(refusal, "waivable").equals("true"));
  }

  private static HazardRule.@Nullable OwnWords words(Node.@Nullable Mapping words) {
    return words == null
        ? null
        : new HazardRule.OwnWords(
            text(words, "hazard"),
            text(words, "consequence"),
            text(words, "avoid"),
            text(words, "why"));
  }

  private static @Nullable Control control(Node.Mapping from) {
    String word = from.text("control", "");
    return word.isEmpty() ? null : Control.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private static Set<MachineKind> machines(List<Located<String>> words) {
    Set<MachineKind> machines = new LinkedHashSet<>();
    for (Located<String> word : words) {
      machines.add(MachineKind.valueOf(word.value().toUpperCase(Locale.ROOT)));
    }
    return machines;
  }

  private @Nullable Formula formula(Node.Mapping rule) {
    return findings.take(Formula.parse(located(rule, "when"), unit));
  }

  private static String text(Node.Mapping from, String key) {
    return located(from, key).value();
  }

  private static Located<String> located(Node.Mapping from, String key) {
    Located<String> text = from.text(key);
    if (text == null) {
      throw new IllegalStateException(from.at() + ": no `" + key + "`");
    }
    return text;
  }
}
