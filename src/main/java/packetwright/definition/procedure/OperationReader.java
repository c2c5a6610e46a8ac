package packetwright.definition.procedure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.text.document.Node;
import packetwright.text.document.Schema;
import packetwright.text.document.Yaml;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.text.source.Span;

/** Reads the operations of one fenced block, checked against the schema {@code operation}. */
final class OperationReader {
  private static final Schema SCHEMA = Schema.named("operation");

  /** Every key but the verbs. */
  static final List<String> KEYS =
      List.of(
          "piece", "of", "count", "to", "leave", "from", "sides", "at", "stop", "stacked", "with",
          "set", "makes", "using", "grits", "by");

  /** Trade words that name the same work as one of our verbs. */
  private static final Map<String, String> SAME_WORK =
      Map.ofEntries(
          Map.entry("groove", "cut"),
          Map.entry("dado", "cut"),
          Map.entry("rabbet", "cut"),
          Map.entry("notch", "cut"),
          Map.entry("bevel", "cut"),
          Map.entry("plane", "plane_to_thickness"),
          Map.entry("thickness", "plane_to_thickness"),
          Map.entry("joint", "joint_edge"),
          Map.entry("bore", "drill"),
          Map.entry("mark", "lay_out"),
          Map.entry("measure", "inspect"),
          Map.entry("check", "inspect"),
          Map.entry("trim", "cut_to_fit"),
          Map.entry("round", "ease"),
          Map.entry("route", "rout"),
          Map.entry("brad", "nail"),
          Map.entry("assemble", "dry_fit"),
          Map.entry("square", "square_end"),
          Map.entry("oil", "finish"));

  private final Findings findings;

  OperationReader(Findings findings) {
    this.findings = findings;
  }

  /**
   * The operations of a block; those without one known verb are left out.
   *
   * @param firstLine of the file, where the block's text begins
   * @param firstColumn of the file, where its lines begin
   */
  List<Operation> read(String file, String text, int firstLine, int firstColumn) {
    Checked<Node> read = Yaml.read(file, text, firstLine, firstColumn);
    Node node = findings.take(read);
    if (node == null) {
      return List.of();
    }
    Findings verbs = new Findings();
    List<Operation> operations = new ArrayList<>();
    for (Node item : node.asItems()) {
      Node.Mapping mapping = item.asMapping();
      Node.Entry verb = mapping == null ? null : verb(mapping, verbs);
      if (mapping != null && verb != null) {
        operations.add(operation(verb, mapping));
      }
    }
    Set<Span> said = new HashSet<>();
    verbs.list().forEach(f -> said.add(f.at()));
    findings.addAll(verbs.list());
    SCHEMA.check(node).stream().filter(f -> !said.contains(f.at())).forEach(findings::add);
    return operations;
  }

  private static Node.@Nullable Entry verb(Node.Mapping mapping, Findings findings) {
    List<Node.Entry> verbs =
        mapping.entries().stream().filter(e -> Verb.of(e.key().value()) != null).toList();
    Node.Entry on = mapping.entry("on");
    if (on != null) {
      findings.add(
          Finding.error(
              "unknown-key", on.key().at(), "`on` is not a key that is read here", "write `at`"));
    }
    if (verbs.isEmpty()) {
      findings.add(noVerb(mapping));
      return null;
    }
    if (verbs.size() > 1) {
      Located<String> second = verbs.get(1).key();
      findings.add(
          Finding.error(
              "two-verbs",
              second.at(),
              "`"
                  + second.value()
                  + "` is a second verb beside `"
                  + verbs.get(0).key().value()
                  + "`",
              "write it as an operation of its own, with a hyphen before it"));
    }
    return verbs.get(0);
  }

  private static Finding noVerb(Node.Mapping mapping) {
    for (Node.Entry entry : mapping.entries()) {
      Located<String> key = entry.key();
      if (!KEYS.contains(key.value()) && !key.value().equals("on")) {
        String same = SAME_WORK.get(key.value().toLowerCase(Locale.ROOT));
        String near = NearMiss.hint(key.value(), Verb.words());
        return Finding.error(
            "unknown-verb",
            key.at(),
            "`" + key.value() + "` is not a verb",
            same != null
                ? "write `" + same + "`"
                : near.isEmpty() ? "write one of " + String.join(", ", Verb.words()) : near);
      }
    }
    return Finding.error(
        "no-verb",
        mapping.at(),
        "this operation has no verb",
        "begin it with what is done, for instance `crosscut: side`");
  }

  private static Operation operation(Node.Entry verb, Node.Mapping mapping) {
    Verb known = Verb.of(verb.key().value());
    if (known == null) {
      throw new IllegalArgumentException("no verb " + verb.key().value());
    }
    Located<String> at = mapping.text("at");
    MachineKind kind = at == null ? null : MachineKind.of(at.value());
    Operation.By by =
        constants(Operation.By.values(), mapping.texts("by")).stream()
            .findFirst()
            .orElse(Operation.By.STUDENT);
    return new Operation(
        new Located<>(known, verb.key().at()),
        verb.value().asTexts(),
        mapping.text("piece"),
        mapping.text("of"),
        mapping.whole("count", 1),
        mapping.text("to"),
        mapping.text("leave"),
        sides(mapping.texts("from")),
        sides(mapping.texts("sides")),
        at == null || kind == null ? null : new Located<>(kind, at.at()),
        mapping.flag("stop"),
        mapping.whole("stacked", 1),
        new LinkedHashSet<>(constants(Operation.Control.values(), mapping.texts("with"))),
        settings(mapping),
        mapping.text("makes"),
        mapping.texts("using"),
        grits(mapping),
        by);
  }

  /** The schema has refused what is no whole number. */
  private static List<Integer> grits(Node.Mapping mapping) {
    return mapping.texts("grits").stream()
        .map(Located::value)
        .filter(text -> text.matches("[0-9]{1,4}"))
        .map(Integer::valueOf)
        .toList();
  }

  private static List<Side> sides(List<Located<String>> words) {
    return constants(Side.values(), words);
  }

  /** The constants that words name; the schema has refused a word that names none. */
  private static <E extends Enum<E>> List<E> constants(E[] constants, List<Located<String>> words) {
    return words.stream()
        .flatMap(
            word ->
                Arrays.stream(constants)
                    .filter(c -> c.name().toLowerCase(Locale.ROOT).equals(word.value())))
        .toList();
  }

  private static Map<String, Located<String>> settings(Node.Mapping mapping) {
    Map<String, Located<String>> settings = new LinkedHashMap<>();
    for (Node.Entry entry : mapping.entries("set")) {
      Located<String> formula = entry.value().asText();
      if (formula != null) {
        settings.put(entry.key().value(), formula);
      }
    }
    return settings;
  }
}
