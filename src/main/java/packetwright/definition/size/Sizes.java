package packetwright.definition.size;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Project;
import packetwright.definition.shop.Shop;
import packetwright.text.formula.Derivation;
import packetwright.text.formula.Formula;
import packetwright.text.formula.Value;
import packetwright.text.formula.Values;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/**
 * Every named quantity of a project in a shop, under one substitution: givens, derived sizes, parts
 * ({@code side.length}, {@code side.count}), features ({@code side.lid_groove.depth}), machine
 * values ({@code table_saw.kerf}) and allowances ({@code shop.end_trim}).
 */
public final class Sizes {
  private final Map<String, Size> sizes;
  private final List<Entry> order;
  private final WorstCase worstCase;
  private final Unit unit;

  private Sizes(Map<String, Size> sizes, List<Entry> order, WorstCase worstCase, Unit unit) {
    this.sizes = sizes;
    this.order = order;
    this.worstCase = worstCase;
    this.unit = unit;
  }

  /**
   * Evaluates everything, in whatever order it is written, and checks the project's requirements.
   *
   * @param substitution what stands in place of the project's own givens
   */
  public static Checked<Sizes> of(Project project, Shop shop, Substitution substitution) {
    Findings findings = new Findings();
    Map<String, Entry> entries = Entries.of(project, shop, substitution, findings);
    AsDrawn drawn = new AsDrawn(entries, project.rule(), findings);
    Order.of(entries, findings).forEach(drawn::add);
    WorstCase worstCase = new WorstCase(drawn.inOrder(), drawn);
    Map<String, Size> named = byName(drawn.sizes(worstCase));
    Sizes sizes = new Sizes(named, drawn.inOrder(), worstCase, project.rule().unit());
    new Requirements(sizes, project.rule(), findings).check(project.requires(), entries);
    return findings.checked(sizes);
  }

  private static Map<String, Size> byName(List<Size> sizes) {
    Map<String, Size> named = new LinkedHashMap<>();
    sizes.forEach(size -> named.put(size.name(), size));
    return named;
  }

  /** These and more, for formulas to use: the rough sizes of blanks. */
  public Sizes with(List<Size> more) {
    Map<String, Size> all = new LinkedHashMap<>(sizes);
    all.putAll(byName(more));
    return new Sizes(all, order, worstCase, unit);
  }

  /** All of them, in the order of the files: givens, derived sizes, parts, the shop's. */
  public List<Size> all() {
    return List.copyOf(sizes.values());
  }

  /** The size of a name, or none. */
  public @Nullable Size find(String name) {
    return sizes.get(name);
  }

  /** The size of a name; a wrong one is a bug. */
  public Size get(String name) {
    Size size = find(name);
    if (size == null) {
      throw new IllegalArgumentException("no size " + name + " among " + sizes.keySet());
    }
    return size;
  }

  /** The value of a size that is a length; anything else is a bug. */
  public Length length(String name) {
    return get(name).value().asLength();
  }

  /** All sizes by name, for formulas that use other names besides. */
  public Values values() {
    return new Values() {
      @Override
      public @Nullable Value of(String name) {
        Size size = find(name);
        return size == null ? null : Value.of(size.value());
      }

      @Override
      public Collection<String> names() {
        return sizes.keySet();
      }
    };
  }

  /** What a formula over these sizes comes to; its bare numbers are in the project's unit. */
  public Checked<Evaluated> evaluate(Located<String> formula) {
    Findings findings = new Findings();
    Formula parsed = read(formula, findings);
    Quantity value = parsed == null ? null : findings.take(parsed.evaluate(values()));
    WorstCase.Range range =
        parsed == null || value == null
            ? null
            : findings.take(worstCase.of(parsed, value, values()));
    if (parsed == null || value == null || range == null) {
      return findings.checked(null);
    }
    Set<String> fitted = new LinkedHashSet<>();
    parsed.names().forEach(name -> fitted.addAll(get(name).fitted()));
    Derivation derivation = parsed.derivation(values());
    return findings.checked(
        new Evaluated(value, derivation, range.low(), range.high(), fitted, parsed.names()));
  }

  /** The same for a formula that must come to a length. */
  public Checked<Evaluated> evaluateLength(Located<String> formula) {
    Checked<Evaluated> evaluated = evaluate(formula);
    if (!evaluated.hasValue() || evaluated.value().value().dimension() == Dimension.LENGTH) {
      return evaluated;
    }
    String kind = evaluated.value().value().dimension().phrase();
    return Checked.failed(
        Finding.error(
            "not-a-length",
            formula.at(),
            "`" + formula.value() + "` is " + kind + ", and a length is wanted",
            "write a length, or a formula that gives one"));
  }

  /** None, and findings, when it cannot be read or needs a machine that the shop has not. */
  private @Nullable Formula read(Located<String> text, Findings findings) {
    Formula formula = findings.take(Formula.parse(text, unit));
    return formula == null || MissingMachines.report(formula.places(), sizes.keySet(), findings)
        ? null
        : formula;
  }

  /**
   * What a formula comes to when sizes turned out as measured on the piece: the right answers of a
   * fitting sheet.
   *
   * @param measured values by the names of measured sizes
   */
  public Checked<Quantity> evaluate(Located<String> formula, Map<String, Quantity> measured) {
    Findings findings = new Findings();
    Formula parsed = read(formula, findings);
    AsMeasured asMeasured = new AsMeasured(order, values());
    return parsed == null ? findings.checked(null) : asMeasured.evaluate(parsed, measured);
  }

  /** The givens that a formula depends on, directly or through other sizes. */
  List<String> givensBehind(Formula formula) {
    Set<String> seen = new LinkedHashSet<>();
    List<String> waiting = new ArrayList<>(formula.names());
    while (!waiting.isEmpty()) {
      String name = waiting.remove(0);
      Size size = find(name);
      if (size != null && seen.add(name)) {
        waiting.addAll(size.from());
      }
    }
    return seen.stream().filter(name -> get(name).kind() == Size.Kind.GIVEN).sorted().toList();
  }
}
