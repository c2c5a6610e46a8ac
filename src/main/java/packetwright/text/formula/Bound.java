package packetwright.text.formula;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import packetwright.text.measure.Rational;

/**
 * A linear sum of named amounts that is less than nothing, or nothing at most.
 *
 * @param sum what is added up
 * @param isStrict whether it may not be nothing
 */
public record Bound(Linear sum, boolean isStrict) {
  /** That a name stands for nothing or more. */
  public static Bound atLeastZero(String name) {
    return new Bound(Linear.of(name).times(Rational.of(-1)), false);
  }

  /** That a name stands for more than nothing. */
  public static Bound aboveZero(String name) {
    return new Bound(Linear.of(name).times(Rational.of(-1)), true);
  }

  /** That a name stands for nothing or less. */
  public static Bound atMostZero(String name) {
    return new Bound(Linear.of(name), false);
  }

  /** The same with factors for the variables in their order. */
  Inequality over(List<String> variables) {
    return new Inequality(
        variables.stream().map(v -> sum.factors().getOrDefault(v, Rational.ZERO)).toList(),
        sum.constant().negated(),
        isStrict);
  }

  /**
   * Amounts by name, each times a factor, and a constant.
   *
   * @param factors none is zero
   * @param constant in base units
   */
  public record Linear(Map<String, Rational> factors, Rational constant) {
    /** Keeps its own copy, sorted. */
    public Linear {
      Map<String, Rational> own = new TreeMap<>(factors);
      own.values().removeIf(f -> f.signum() == 0);
      factors = Collections.unmodifiableMap(own);
    }

    static Linear of(Rational constant) {
      return new Linear(Map.of(), constant);
    }

    static Linear of(String name) {
      return new Linear(Map.of(name, Rational.ONE), Rational.ZERO);
    }

    boolean isConstant() {
      return factors.isEmpty();
    }

    Linear plus(Linear other) {
      Map<String, Rational> sum = new TreeMap<>(factors);
      other.factors.forEach((name, factor) -> sum.merge(name, factor, Rational::plus));
      return new Linear(sum, constant.plus(other.constant));
    }

    Linear times(Rational factor) {
      Map<String, Rational> product = new TreeMap<>();
      factors.forEach((name, own) -> product.put(name, own.times(factor)));
      return new Linear(product, constant.times(factor));
    }
  }
}
