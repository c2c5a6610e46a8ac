package packetwright.definition.shop;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.text.document.Node;
import packetwright.text.document.Schema;
import packetwright.text.document.Yaml;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityFields;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/** Reads a shop profile, checked against the schema {@code shop}. */
public final class ShopReader {
  /** The profile that serves where none is given, by name. */
  public static final String BUILT_IN = "built-in";

  /** The profile of a shop without a powered machine, by name. */
  public static final String HAND_TOOLS = "hand-tools";

  private static final String SUFFIX = "-shop.yaml";

  private static final Schema SCHEMA = Schema.named("shop");

  private static final List<MachineKind> BITTED =
      List.of(MachineKind.ROUTER_TABLE, MachineKind.HANDHELD_ROUTER, MachineKind.PLOW_PLANE);

  private final Findings findings = new Findings();
  private final Node.Mapping root;
  private final Unit unit;
  private final QuantityFields fields;

  private ShopReader(Node.Mapping root) {
    this.root = root;
    this.unit = root.text("units", "inch").equals("mm") ? Unit.MILLIMETRE : Unit.INCH;
    this.fields = new QuantityFields(unit, findings);
  }

  /**
   * The shop that a text describes. With errors beside it, it holds only what could be read: enough
   * to choose the procedure's variant by.
   *
   * @param file name for the places of findings
   */
  public static Checked<Shop> read(String file, String text) {
    Findings findings = new Findings();
    Node node = findings.take(Yaml.read(file, text));
    if (node == null) {
      return findings.checked(null);
    }
    findings.addAll(SCHEMA.check(node));
    if (!(node instanceof Node.Mapping root)) {
      return findings.checked(null);
    }
    Shop shop = findings.take(new ShopReader(root).shop());
    return new Checked<>(shop, findings.list());
  }

  /** The profile that serves where none is given. */
  public static Shop builtIn() {
    return read(BUILT_IN + SUFFIX, profile(BUILT_IN)).value();
  }

  /** Names of the profiles that come with the program, sorted. */
  public static List<String> profiles() {
    return List.of(BUILT_IN, HAND_TOOLS);
  }

  /** The text of a profile that comes with the program; a name not among them is a bug. */
  public static String profile(String name) {
    String file = name + SUFFIX;
    try (InputStream in = ShopReader.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("not packed: " + file);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  private Checked<Shop> shop() {
    checkUnkept();
    Map<MachineKind, Machine> machines = machines();
    Node.Entry dadoSet = root.mapping("machines") == null ? null : entry("machines", "dado_set");
    if (dadoSet != null && !machines.containsKey(MachineKind.TABLE_SAW)) {
      findings.add(
          Finding.error(
              "dado-set-alone",
              dadoSet.key().at(),
              "`dado_set` is here without the `table_saw` that it is mounted in",
              "add the `table_saw`, or delete the `dado_set`"));
    }
    Set<MachineKind> handTools = kinds("hand_tools");
    Node.Entry list = root.entry("machines");
    if (list != null
        && list.value().asMapping() != null
        && machines.isEmpty()
        && handTools.isEmpty()) {
      findings.add(
          Finding.error(
              "empty-shop",
              list.key().at(),
              "the shop has neither a machine nor a hand tool",
              "add a machine here, or a tool under `hand_tools`"));
      return new Checked<>(null, findings.list()); // every step would be reported as impossible
    }
    Shop shop =
        new Shop(
            root.text("shop", ""),
            unit,
            machines,
            handTools,
            cutters(),
            kinds("setup_check"),
            lengths(root.mapping("allowances"), Set.of()),
            root.texts("rules").stream().map(Located::value).toList(),
            root.items("cautions"));
    return new Checked<>(shop, findings.list());
  }

  private Node.@Nullable Entry entry(String mapping, String key) {
    Node.Mapping found = root.mapping(mapping);
    return found == null ? null : found.entry(key);
  }

  private Map<MachineKind, Machine> machines() {
    Map<MachineKind, Machine> machines = new LinkedHashMap<>();
    for (Node.Entry entry : root.entries("machines")) {
      MachineKind kind = MachineKind.of(entry.key().value());
      Node.Mapping values = entry.value().asMapping();
      if (kind != null && values != null) {
        Map<String, Located<Length>> lengths = lengths(values, Set.of("count"));
        lengths.forEach(this::checkRange);
        machines.put(kind, new Machine(kind, values.whole("count", 1), lengths));
      }
    }
    return machines;
  }

  private void checkRange(String name, Located<Length> value) {
    Finding finding = new MachineValues(unit).check(name, value);
    if (finding != null) {
      findings.add(finding);
    }
  }

  private Map<String, Located<Length>> lengths(Node.@Nullable Mapping from, Set<String> others) {
    Map<String, Located<Length>> lengths = new LinkedHashMap<>();
    if (from != null) {
      for (String key : from.keys()) {
        Located<Quantity> read = others.contains(key) ? null : fields.extent(from, key);
        if (read != null) {
          lengths.put(key, new Located<>(read.value().asLength(), read.at()));
        }
      }
    }
    return lengths;
  }

  private Set<MachineKind> kinds(String key) {
    Set<MachineKind> kinds = new LinkedHashSet<>();
    for (Located<String> word : root.texts(key)) {
      MachineKind kind = MachineKind.of(word.value());
      if (kind != null) {
        kinds.add(kind);
      }
    }
    return kinds;
  }

  private Shop.CutterSet cutters() {
    Node.Mapping cutters = root.mapping("cutters");
    Map<MachineKind, List<Length>> bits = new LinkedHashMap<>();
    for (MachineKind tool : BITTED) {
      Node.Mapping own = cutters == null ? null : cutters.mapping(tool.word());
      if (own != null) {
        bits.put(tool, lengths(own, "bits"));
      }
    }
    Node.Mapping set = cutters == null ? null : cutters.mapping("dado_set");
    if (set == null) {
      return new Shop.CutterSet(Length.ZERO, List.of(), List.of(), bits);
    }
    Located<Quantity> outside = fields.extent(set, "outside");
    return new Shop.CutterSet(
        outside == null ? Length.ZERO : outside.value().asLength(),
        lengths(set, "chippers"),
        lengths(set, "shims"),
        bits);
  }

  private List<Length> lengths(Node.Mapping from, String key) {
    List<Length> lengths = new ArrayList<>();
    fields.extents(from, key).forEach(q -> lengths.add(q.value().asLength()));
    return lengths;
  }

  /** What stands in a profile for later reckoning is checked, so that it is right when needed. */
  private void checkUnkept() {
    fields.amount(root, "period", Unit.MINUTE);
    fields.amount(root, "temperature", Unit.FAHRENHEIT);
    fields.amount(root, "humidity", Unit.ONE);
    fields.amount(root, "tax", Unit.ONE);
  }
}
