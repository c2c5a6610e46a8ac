package packetwright.definition.size;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import packetwright.text.formula.Formula;
import packetwright.text.formula.Interval;
import packetwright.text.formula.Value;
import packetwright.text.formula.Values;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;

/**
 * How far a size may stray when every tolerance it depends on goes to one end or the other.
 *
 * <p>Each tolerance is one independent variable, however often it is used, so that {@code t - t /
 * 2} strays by half of what {@code t} does. A formula is worked out as drawn and at every corner,
 * where each tolerance is at one of its ends. That is exact where the size rises or falls steadily
 * with each tolerance: for sums, and for products and quotients of what strays apart. Where it may
 * peak between ({@link Formula#mayPeakWithin}), and for all that is reckoned from such a size, the
 * bounds of the formula over the ranges of its names are taken in: never too narrow, and perhaps
 * too wide. Beyond {@value #MOST_VARIABLES} variables, what each does alone is added up: exact for
 * sums. A divisor that may be zero is a finding.
 */
final class WorstCase {
  /** 256 corners; more would cost time that no beginner's project is worth. */
  private static final int MOST_VARIABLES = 8;

  /** The least and the greatest that a size may come to. */
  record Range(Quantity low, Quantity high) {}

  private final List<Entry> order;
  private final Values asDrawn;

  /** For each size, the names of the tolerances that move it; empty sets are left out. */
  private final Map<String, Set<String>> variables = new LinkedHashMap<>();

  /** Sizes whose extremes may lie between the corners. */
  private final Set<String> peaked = new LinkedHashSet<>();

  /** What was found of each size that strays. */
  private final Map<String, Checked<Range>> ranges = new LinkedHashMap<>();

  /** Corners that were worked out before, by their variables. */
  private final Map<Set<String>, List<Map<String, Quantity>>> known = new LinkedHashMap<>();

  /** Takes the sizes in an order in which each stands after those it needs, and their values. */
  WorstCase(List<Entry> order, Values asDrawn) {
    this.order = order;
    this.asDrawn = asDrawn;
    for (Entry entry : order) {
      Set<String> moved = new LinkedHashSet<>();
      entry.needs().forEach(need -> moved.addAll(variables(need.value())));
      if (entry.tolerance() != null) {
        moved.add(entry.name().value());
      }
      if (!moved.isEmpty()) {
        variables.put(entry.name().value(), moved);
        Formula formula = entry.formula();
        if (formula != null && mayPeak(formula)) {
          peaked.add(entry.name().value());
        }
      }
    }
    for (Entry entry : order) {
      if (variables.containsKey(entry.name().value())) {
        ranges.put(entry.name().value(), range(entry));
      }
    }
  }

  /** The range of a named size, with its own tolerance. */
  Checked<Range> of(Entry entry, Quantity value) {
    Checked<Range> range = ranges.get(entry.name().value());
    return range == null ? Checked.of(new Range(value, value)) : range;
  }

  private Checked<Range> range(Entry entry) {
    String name = entry.name().value();
    Quantity value = ((Value.Amount) Objects.requireNonNull(asDrawn.of(name))).quantity();
    Checked<Range> corners =
        range(
            variables(name),
            value,
            corner -> {
              Quantity there = corner.get(name);
              return there == null ? at(entry, corner) : Checked.of(there);
            });
    Formula formula = entry.formula();
    Quantity tolerance = entry.tolerance();
    Rational own = tolerance == null ? Rational.ZERO : tolerance.value();
    return formula == null ? corners : bounded(corners, formula, asDrawn, own);
  }

  /** The range of a formula; what does not move has its value as drawn. */
  Checked<Range> of(Formula formula, Quantity value, Values unmoved) {
    Set<String> moved = new LinkedHashSet<>();
    formula.names().forEach(name -> moved.addAll(variables(name)));
    Checked<Range> corners =
        range(moved, value, corner -> formula.evaluate(values(corner, unmoved)));
    return moved.isEmpty() ? corners : bounded(corners, formula, unmoved, Rational.ZERO);
  }

  private boolean mayPeak(Formula formula) {
    return formula.mayPeakWithin(this::variables) || !Collections.disjoint(formula.names(), peaked);
  }

  /** The corners' range, with the formula's bounds taken in where corners may miss the extremes. */
  private Checked<Range> bounded(
      Checked<Range> corners, Formula formula, Values unmoved, Rational own) {
    if (!corners.isGood()) {
      return corners;
    }
    Checked<Interval> bounds = formula.bounds(unmoved, this::interval);
    if (!bounds.isGood()) {
      return new Checked<>(null, bounds.findings().stream().map(WorstCase::atTheWorst).toList());
    }
    Range range = corners.value();
    if (!mayPeak(formula)) {
      return corners;
    }
    Interval all =
        new Interval(range.low().value(), range.high().value()).with(bounds.value().widened(own));
    Dimension dimension = range.low().dimension();
    return Checked.of(new Range(all.lowIn(dimension), all.highIn(dimension)));
  }

  /** Where a size lies; none when it does not stray, or when how far is not known. */
  private @Nullable Interval interval(String name) {
    Checked<Range> range = ranges.get(name);
    return range == null || !range.isGood()
        ? null
        : new Interval(range.value().low().value(), range.value().high().value());
  }

  private Set<String> variables(String name) {
    return variables.getOrDefault(name, Set.of());
  }

  private Checked<Range> range(
      Set<String> moved,
      Quantity value,
      Function<Map<String, Quantity>, Checked<Quantity>> reckon) {
    Findings findings = new Findings();
    if (moved.size() <= MOST_VARIABLES) {
      return findings.checked(extremes(corners(moved), value, reckon, findings));
    }
    Rational low = value.value();
    Rational high = low;
    for (String one : moved) {
      Range alone = extremes(corners(Set.of(one)), value, reckon, findings);
      low = low.plus(alone.low().value()).minus(value.value());
      high = high.plus(alone.high().value()).minus(value.value());
    }
    return findings.checked(
        new Range(new Quantity(low, value.dimension()), new Quantity(high, value.dimension())));
  }

  private static Range extremes(
      List<Map<String, Quantity>> corners,
      Quantity value,
      Function<Map<String, Quantity>, Checked<Quantity>> reckon,
      Findings findings) {
    List<Rational> reached = new ArrayList<>(List.of(value.value()));
    for (Map<String, Quantity> corner : corners) {
      Checked<Quantity> there = reckon.apply(corner);
      if (there.hasValue()) {
        reached.add(there.value().value());
      } else if (!findings.hasErrors()) {
        there.findings().stream().map(WorstCase::atTheWorst).forEach(findings::add);
      }
    }
    return new Range(
        new Quantity(Collections.min(reached), value.dimension()),
        new Quantity(Collections.max(reached), value.dimension()));
  }

  private static Finding atTheWorst(Finding finding) {
    return finding.saying(finding.message() + ", at the worst case of the tolerances");
  }

  private List<Map<String, Quantity>> corners(Set<String> moved) {
    List<Map<String, Quantity>> corners = known.get(moved);
    if (corners == null) {
      corners = new ArrayList<>();
      for (int signs = 0; signs < 1 << moved.size(); signs++) {
        corners.add(corner(List.copyOf(moved), signs));
      }
      known.put(moved, corners);
    }
    return corners;
  }

  /** The values of all that moves; bit i of the signs tells which way the i-th variable goes. */
  private Map<String, Quantity> corner(List<String> moved, int signs) {
    Map<String, Quantity> corner = new LinkedHashMap<>();
    for (Entry entry : order) {
      String name = entry.name().value();
      if (Collections.disjoint(variables(name), moved)) {
        continue;
      }
      Checked<Quantity> value = at(entry, corner);
      Quantity tolerance = entry.tolerance();
      int variable = moved.indexOf(name);
      if (value.hasValue() && tolerance != null && variable >= 0) {
        boolean more = (signs >> variable & 1) == 1;
        Rational off = more ? tolerance.value() : tolerance.value().negated();
        corner.put(name, new Quantity(value.value().value().plus(off), value.value().dimension()));
      } else if (value.hasValue()) {
        corner.put(name, value.value());
      }
    }
    return corner;
  }

  private Checked<Quantity> at(Entry entry, Map<String, Quantity> corner) {
    Formula formula = entry.formula();
    Quantity fixed = entry.fixed();
    if (fixed != null) {
      return Checked.of(fixed);
    }
    return Objects.requireNonNull(formula).evaluate(values(corner, asDrawn));
  }

  private static Values values(Map<String, Quantity> corner, Values unmoved) {
    return name -> {
      Quantity moved = corner.get(name);
      return moved == null ? unmoved.of(name) : Value.of(moved);
    };
  }
}
