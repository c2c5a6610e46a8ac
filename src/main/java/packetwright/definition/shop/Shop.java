package packetwright.definition.shop;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.text.document.Node;
import packetwright.text.measure.Length;
import packetwright.text.measure.Unit;
import packetwright.text.source.Located;

/**
 * A shop as its instructor describes it.
 *
 * @param name as printed
 * @param unit INCH or MILLIMETRE, the unit of bare numbers in the profile
 * @param machines by kind
 * @param handTools kinds that need no switch
 * @param cutters what the dado set is stacked from, and the routers' bits
 * @param setupCheck machines whose set-up the instructor looks at before power goes on
 * @param allowances {@code end_trim}, {@code hold_reserve} and the like, by name; each is also a
 *     size, {@code shop.end_trim}
 * @param rules local rules, printed as they stand
 * @param cautions hazard rules of the shop's own, unread: {@code wood.caution} reads them
 */
public record Shop(
    String name,
    Unit unit,
    Map<MachineKind, Machine> machines,
    Set<MachineKind> handTools,
    CutterSet cutters,
    Set<MachineKind> setupCheck,
    Map<String, Located<Length>> allowances,
    List<String> rules,
    List<Node> cautions) {
  /** Keeps its own copies, in the order written. */
  public Shop {
    machines = Collections.unmodifiableMap(new LinkedHashMap<>(machines));
    handTools = Collections.unmodifiableSet(new LinkedHashSet<>(handTools));
    setupCheck = Collections.unmodifiableSet(new LinkedHashSet<>(setupCheck));
    allowances = Collections.unmodifiableMap(new LinkedHashMap<>(allowances));
    rules = List.copyOf(rules);
    cautions = List.copyOf(cautions);
  }

  /** A shop without hazard rules of its own. */
  public Shop(
      String name,
      Unit unit,
      Map<MachineKind, Machine> machines,
      Set<MachineKind> handTools,
      CutterSet cutters,
      Set<MachineKind> setupCheck,
      Map<String, Located<Length>> allowances,
      List<String> rules) {
    this(name, unit, machines, handTools, cutters, setupCheck, allowances, rules, List.of());
  }

  /**
   * What the dado set is stacked from, and the routers' bits.
   *
   * @param outside width of each of the two outside blades; zero when the shop has no set
   * @param chippers inner cutters, each used at most once
   * @param shims each used at most once
   * @param bits widths of the straight bits of each router, and of the plow plane's irons
   */
  public record CutterSet(
      Length outside,
      List<Length> chippers,
      List<Length> shims,
      Map<MachineKind, List<Length>> bits) {
    /** Keeps its own copies. */
    public CutterSet {
      chippers = List.copyOf(chippers);
      shims = List.copyOf(shims);
      bits = Map.copyOf(bits);
    }

    /** A dado set without any router bits. */
    public CutterSet(Length outside, List<Length> chippers, List<Length> shims) {
      this(outside, chippers, shims, Map.of());
    }

    /**
     * The bits of a router, or the irons of a plow plane; a router in the hand takes the table's
     * where it has none stated.
     */
    public List<Length> bitsOf(MachineKind tool) {
      List<Length> own = bits.get(tool);
      return own != null || tool == MachineKind.PLOW_PLANE
          ? Objects.requireNonNullElse(own, List.of())
          : bits.getOrDefault(MachineKind.ROUTER_TABLE, List.of());
    }
  }

  /** The machine of a kind, or none. */
  public @Nullable Machine machine(MachineKind kind) {
    return machines.get(kind);
  }

  /** Whether the shop has that machine or hand tool. */
  public boolean has(MachineKind kind) {
    return machines.containsKey(kind) || handTools.contains(kind);
  }

  /**
   * Width of wood that a tool turns to dust: a machine's own, a hand saw's is an allowance; zero
   * where the shop says none.
   */
  public Length kerf(MachineKind kind) {
    Machine machine = machine(kind);
    return kind == MachineKind.HAND_SAW
        ? allowance("hand_kerf")
        : machine == null ? Length.ZERO : machine.value("kerf", Length.ZERO);
  }

  /** The kerf of the saw that cuts boards to length here; zero where the shop says none. */
  public Length crosscutKerf() {
    Located<Length> kerf = standIns().get(StandIns.CROSSCUT_KERF);
    return kerf == null ? Length.ZERO : kerf.value();
  }

  /**
   * Sizes that stand for whatever does a kind of work here, by name; {@code shop.crosscut_kerf} in
   * formulas. A project that uses them need not name a machine that another shop lacks.
   */
  public Map<String, Located<Length>> standIns() {
    return StandIns.of(this);
  }

  /** An allowance by name; a name that the schema does not require falls back to zero. */
  public Length allowance(String name) {
    Located<Length> stated = allowances.get(name);
    return stated == null ? Length.ZERO : stated.value();
  }
}
