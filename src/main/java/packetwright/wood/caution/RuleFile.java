package packetwright.wood.caution;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import packetwright.text.document.Node;
import packetwright.text.document.Schema;
import packetwright.text.document.Yaml;
import packetwright.text.measure.Unit;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;

/** Our own rules; whatever is wrong with them is our bug. */
final class RuleFile {
  /** The shape of a file of rules. */
  static final Schema SCHEMA = Schema.named("cautions");

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

  private RuleFile() {}

  /**
   * What the files hold.
   *
   * @param rules in the order written
   * @param limits by machine and name, {@code jointer.shortest}, in the order written
   */
  record Rules(List<HazardRule> rules, Map<String, Limit> limits) {
    Rules {
      rules = List.copyOf(rules);
    }

    /** With more rules after these. */
    Rules and(List<HazardRule> more) {
      List<HazardRule> all = new ArrayList<>(rules);
      all.addAll(more);
      return new Rules(all, limits);
    }
  }

  static Rules read() {
    Findings findings = new Findings();
    RuleReader reader = new RuleReader(Unit.INCH, findings);
    List<HazardRule> rules = new ArrayList<>();
    Map<String, Limit> limits = new LinkedHashMap<>();
    for (String name : FILES) {
      Node.Mapping file = file(name);
      limits.putAll(reader.limits(file));
      for (Node rule : file.items("rules")) {
        HazardRule read = reader.rule((Node.Mapping) rule);
        rules.add(Objects.requireNonNull(read, () -> findings.list().toString()));
      }
    }
    refuse(findings.list());
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
      return (Node.Mapping) checked(Yaml.read(file, text).value());
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  /** The file, without a key that nothing reads: a misspelt refusal would never refuse. */
  static Node checked(Node file) {
    refuse(SCHEMA.check(file));
    return file;
  }

  private static void refuse(List<Finding> wrong) {
    if (!wrong.isEmpty()) {
      throw new IllegalStateException(wrong.toString());
    }
  }
}
