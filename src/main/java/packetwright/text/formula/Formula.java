package packetwright.text.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/**
 * An expression over named values: {@code + - * /}, comparisons, {@code and or not}, parentheses,
 * {@code min max round_up round_down round_to if}, names with dots, and numbers as {@code 1 3/4},
 * {@code 2.5} or {@code 140 mm}.
 *
 * <p>A number without a unit takes the kind of its neighbours: beside a length in a sum, a
 * comparison or a choice it is a length in the formula's unit, beside a number, and in products and
 * quotients, it is a number. A formula of nothing but such numbers is a length; {@code 4 count} is
 * a number anywhere.
 */
public final class Formula {
  private final Located<String> text;
  private final Unit bareUnit;
  private final Expression root;
  private final List<Located<String>> places;

  private Formula(Located<String> text, Unit bareUnit, Expression root) {
    this.text = text;
    this.bareUnit = bareUnit;
    this.root = root;
    this.places =
        names(root).stream()
            .map(n -> new Located<>(n.name(), text.at().part(n.start(), n.end() - n.start())))
            .toList();
  }

  /** Reads a formula; the unit, an inch or a millimetre, is that of bare numbers. */
  public static Checked<Formula> parse(Located<String> text, Unit bareUnit) {
    return Parser.parse(text).map(root -> new Formula(text, bareUnit, root));
  }

  /** Words that mean something in every formula, and so name no size. */
  public static List<String> words() {
    List<String> words = new ArrayList<>(packetwright.text.formula.Function.words());
    words.addAll(List.of("and", "or", "not"));
    return words;
  }

  /** As written. */
  public Located<String> text() {
    return text;
  }

  /** The names it uses, in the order they first stand in it. */
  public Set<String> names() {
    Set<String> names = new LinkedHashSet<>();
    places().forEach(name -> names.add(name.value()));
    return names;
  }

  /** Each name wherever it stands, from left to right. */
  public List<Located<String>> places() {
    return places;
  }

  /** The amount it comes to, unit-checked. */
  public Checked<Quantity> evaluate(Values values) {
    Findings findings = new Findings();
    Report report = new Report(text, findings);
    Reckoning reckoning = reckoning(report, values);
    return findings.checked(reckoning.amount(root, root.match(reckoning).asLength(bareUnit)));
  }

  /**
   * Bounds of the amount when names may lie anywhere in their ranges: never too narrow, but too
   * wide where a name is used more than once. A divisor that may be zero is a finding.
   *
   * @param values as drawn
   * @param ranges of the names that stray, in base units; none for the others
   */
  public Checked<Interval> bounds(Values values, Function<String, @Nullable Interval> ranges) {
    Findings findings = new Findings();
    // What is wrong with the drawn values has been said by evaluate.
    Reckoning reckoning = reckoning(new Report(text, new Findings()), values).unneeded();
    Bounds bounds = new Bounds(new Report(text, findings), bareUnit, reckoning, ranges);
    return findings.checked(bounds.whole(root));
  }

  /**
   * Whether the corners of its names' ranges may miss the extremes: where it chooses, rounds or
   * takes the least or greatest, or multiplies or divides by each other what strays together.
   *
   * @param causes of each name's straying
   */
  public boolean mayPeakWithin(Function<String, Set<String>> causes) {
    return root.match(new Nodes()).anyMatch(node -> mayPeak(node, causes));
  }

  private static boolean mayPeak(Expression node, Function<String, Set<String>> causes) {
    return node instanceof Expression.Call
        || (node instanceof Expression.Infix infix
            && infix.operator().multiplies()
            && !Collections.disjoint(causes(infix.left(), causes), causes(infix.right(), causes)));
  }

  private static Set<String> causes(Expression side, Function<String, Set<String>> causes) {
    Set<String> all = new LinkedHashSet<>();
    names(side).forEach(name -> all.addAll(causes.apply(name.name())));
    return all;
  }

  private static List<Expression.Name> names(Expression expression) {
    return expression
        .match(new Nodes())
        .flatMap(node -> node instanceof Expression.Name name ? Stream.of(name) : Stream.empty())
        .toList();
  }

  /** Whether the condition that it states is so. */
  public Checked<Boolean> holds(Values values) {
    Findings findings = new Findings();
    return findings.checked(reckoning(new Report(text, findings), values).truth(root));
  }

  /**
   * The ways in which the condition that it states can hold; none when it never does. What is not
   * linear, and more ways than can be told apart, are taken to be possible.
   *
   * @param values of the kinds that names have, and the values of those that are not open
   * @param isOpen whether a name may be anything
   */
  public List<Alternative> alternatives(Values values, Predicate<String> isOpen) {
    Report report = new Report(text, new Findings());
    Reckoning reckoning = reckoning(report, values).unneeded();
    return root.match(new Alternatives(report, bareUnit, reckoning, isOpen, true));
  }

  /** The formula, and the same with numbers for names. */
  public Derivation derivation(Values values) {
    return derivation(values, false);
  }

  /** The same, with each side of a comparison as the one value that it comes to. */
  public Derivation outcome(Values values) {
    return derivation(values, true);
  }

  private Derivation derivation(Values values, boolean outcome) {
    Reckoning reckoning = reckoning(new Report(text, new Findings()), values);
    return new Derivation(
        text.value(), root.match(new Working(reckoning, bareUnit, true, outcome)));
  }

  private Reckoning reckoning(Report report, Values values) {
    return new Reckoning(report, bareUnit, values);
  }

  @Override
  public String toString() {
    return text.value();
  }
}
