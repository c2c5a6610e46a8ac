package packetwright.wood.caution;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
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
import packetwright.text.document.Schema;
import packetwright.text.document.Yaml;
import packetwright.text.formula.Formula;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;

/** Reads our own rules; whatever is wrong with them is our bug. */
final class RuleFile {
  /** Our files, in the order in which rules are looked through. */
  static final List<String> FILES =
      List.of(
          "everywhere",
          "miter_saw",
          "table_saw",
          "dado_set",
          "jointer",
          "planer",
          "band_saw",
          "drill_press",
          "router_table",
          "handheld_router",
          "sanders",
          "nailer",
          "hand_tools",
          "glue_and_finish");

  /** Key that every limit and rule has. */
  private static final String SOURCE = "source";

  private RuleFile() {}

  /**
   * What the file holds.
   *
   * @param rules in the order written
   * @param limits by machine and name, {@code jointer.shortest}, in the order written
   */
  record Rules(List<HazardRule> rules, Map<String, Limit> limits) {}

  static Rules read() {
    List<HazardRule> rules = new ArrayList<>();
    Map<String, Limit> limits = new LinkedHashMap<>();
    for (String name : FILES) {
      Rules of = rules(file(name));
      rules.addAll(of.rules());
      limits.putAll(of.limits());
    }
    return new Rules(rules, limits);
  }

  /** One of our files, checked. */
  static Node.Mapping file(String name) {
    String file = "rules/" + name + ".yaml";
    try (InputStream in = RuleFile.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("no " + file);
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return (Node.Mapping) checked(good(Yaml.read(file, text)));
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  /** The file, without a key that nothing reads: a misspelt refusal would never refuse. */
  static Node checked(Node file) {
    List<Finding> wrong = Schema.named("cautions").check(file);
    if (!wrong.isEmpty()) {
      throw new IllegalStateException(wrong.toString());
    }
    return file;
  }

  private static Rules rules(Node.Mapping file) {
    Map<String, Limit> limits = new LinkedHashMap<>();
    for (Node.Entry entry : file.entries("limits")) {
      String name = entry.key().value();
      limits.put(name, limit(name, (Node.Mapping) entry.value()));
    }
    return new Rules(
        file.items("rules").stream().map(rule -> hazard((Node.Mapping) rule)).toList(), limits);
  }

  private static Limit limit(String name, Node.Mapping limit) {
    String[] parts = name.split("\\.", 2);
    return new Limit(
        parts[0],
        parts[1],
        good(QuantityReader.read(text(limit, "is"), Unit.INCH)).asLength(),
        text(limit, "stricter").value().equals("longer"),
        text(limit, SOURCE).value());
  }

  private static HazardRule hazard(Node.Mapping rule) {
    return new HazardRule(
        text(rule, "name").value(),
        Hazard.valueOf(text(rule, "against").value().toUpperCase(Locale.ROOT)),
        machines(rule.texts("at")),
        formula(rule),
        Caution.Signal.valueOf(text(rule, "signal").value().toUpperCase(Locale.ROOT)),
        rule.text("print", "step").equals("once"),
        rule.texts("instead_of").stream().map(Located::value).toList(),
        control(rule),
        rule.texts("shows").stream().map(Located::value).toList(),
        text(rule, SOURCE).value(),
        rule.items("refusals").stream().map(r -> refusal((Node.Mapping) r)).toList());
  }

  private static HazardRule.Refusal refusal(Node.Mapping refusal) {
    return new HazardRule.Refusal(
        text(refusal, "code").value(),
        formula(refusal),
        text(refusal, "message").value(),
        text(refusal, "hint").value(),
        refusal.text("longer", ""),
        control(refusal),
        text(refusal, "waivable").value().equals("true"));
  }

  private static @Nullable Control control(Node.Mapping from) {
    String word = from.text("control", "");
    return word.isEmpty() ? null : Control.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private static Set<MachineKind> machines(List<Located<String>> words) {
    Set<MachineKind> machines = new LinkedHashSet<>();
    for (Located<String> word : words) {
      MachineKind kind = MachineKind.of(word.value());
      if (kind == null) {
        throw new IllegalStateException(word.at() + ": no machine is called " + word.value());
      }
      machines.add(kind);
    }
    return machines;
  }

  private static Formula formula(Node.Mapping rule) {
    return good(Formula.parse(text(rule, "when"), Unit.INCH));
  }

  private static Located<String> text(Node.Mapping rule, String key) {
    Located<String> text = rule.text(key);
    if (text == null) {
      throw new IllegalStateException(rule.at() + ": no `" + key + "`");
    }
    return text;
  }

  private static <T> T good(Checked<T> checked) {
    if (!checked.isGood()) {
      throw new IllegalStateException(checked.findings().toString());
    }
    return checked.value();
  }
}
