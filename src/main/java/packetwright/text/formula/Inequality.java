package packetwright.text.formula;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;

/**
 * A linear inequality: the factors times the variables, added up, stay below the limit. Systems of
 * them are solved exactly by the elimination of Fourier (1826) and Motzkin (1936): each pair of a
 * lower and an upper bound of a variable gives one inequality without it.
 *
 * @param factors one for each variable
 * @param limit never passed
 * @param isStrict whether it is never reached either
 */
public record Inequality(List<Rational> factors, Rational limit, boolean isStrict) {
  /** Largest system that is looked through; elimination can square its size at each variable. */
  private static final int MOST = 500;

  /** Keeps its own copy. */
  public Inequality {
    factors = List.copyOf(factors);
  }

  /** A strict one. */
  public Inequality(List<Rational> factors, Rational limit) {
    this(factors, limit, true);
  }

  /** Whether all can hold at once; a system that grows too large is taken to be possible. */
  public static boolean isPossible(List<Inequality> system) {
    List<Inequality> left = system;
    int variables = system.isEmpty() ? 0 : system.get(0).factors().size();
    for (int variable = 0; variable < variables && left.size() <= MOST; variable++) {
      left = without(variable, left);
    }
    return left.size() > MOST || left.stream().noneMatch(Inequality::isBroken);
  }

  /** Whether it is wrong whatever the variables are. */
  private boolean isBroken() {
    return factors.stream().allMatch(f -> f.signum() == 0)
        && (limit.signum() < 0 || (limit.signum() == 0 && isStrict));
  }

  /**
   * The open range that a variable can have where all hold; none where they contradict each other.
   *
   * @param system of strict ones; it must bound the variable from both sides
   */
  public static @Nullable Range range(List<Inequality> system, int variable) {
    List<Inequality> left = system;
    for (int other = 0; other < system.get(0).factors().size(); other++) {
      if (other != variable) {
        left = without(other, left);
      }
    }
    @Nullable Rational low = null;
    @Nullable Rational high = null;
    for (Inequality bound : left) {
      Rational factor = bound.factors().get(variable);
      if (factor.signum() == 0) {
        if (bound.limit().signum() <= 0) {
          return null;
        }
        continue;
      }
      Rational at = bound.limit().dividedBy(factor);
      if (factor.signum() > 0) {
        high = high == null || at.compareTo(high) < 0 ? at : high;
      } else {
        low = low == null || at.compareTo(low) > 0 ? at : low;
      }
    }
    if (low == null || high == null) {
      throw new IllegalArgumentException("variable " + variable + " has no bound");
    }
    return low.compareTo(high) < 0 ? new Range(new Length(low), new Length(high)) : null;
  }

  private static List<Inequality> without(int variable, List<Inequality> system) {
    Map<List<Rational>, Inequality> tightest = new LinkedHashMap<>();
    List<Inequality> above = new ArrayList<>();
    List<Inequality> below = new ArrayList<>();
    for (Inequality inequality : system) {
      int sign = inequality.factors().get(variable).signum();
      if (sign == 0) {
        keep(inequality, tightest);
      } else {
        (sign > 0 ? above : below).add(inequality);
      }
    }
    for (Inequality upper : above) {
      for (Inequality lower : below) {
        keep(
            upper.plus(
                lower, lower.factors().get(variable).negated(), upper.factors().get(variable)),
            tightest);
      }
    }
    return List.copyOf(tightest.values());
  }

  private Inequality plus(Inequality other, Rational own, Rational others) {
    List<Rational> sum = new ArrayList<>();
    for (int i = 0; i < factors.size(); i++) {
      sum.add(factors.get(i).times(own).plus(other.factors.get(i).times(others)));
    }
    return new Inequality(
        sum, limit.times(own).plus(other.limit.times(others)), isStrict || other.isStrict);
  }

  /** Of inequalities with the same left side only the tightest counts. */
  private static void keep(Inequality inequality, Map<List<Rational>, Inequality> tightest) {
    Inequality scaled = inequality.scaled();
    tightest.merge(scaled.factors(), scaled, Inequality::tighter);
  }

  private Inequality tighter(Inequality other) {
    int order = limit.compareTo(other.limit);
    return order < 0 || (order == 0 && isStrict) ? this : other;
  }

  /** With a first factor of 1 or -1, so that two with the same left side look alike. */
  private Inequality scaled() {
    for (Rational factor : factors) {
      if (factor.signum() != 0) {
        Rational size = factor.signum() < 0 ? factor.negated() : factor;
        return new Inequality(
            factors.stream().map(f -> f.dividedBy(size)).toList(), limit.dividedBy(size), isStrict);
      }
    }
    return this;
  }

  /**
   * An open range.
   *
   * @param low not reached
   * @param high not reached, above {@code low}
   */
  public record Range(Length low, Length high) {
    /** As seen the other way. */
    public Range turned() {
      return new Range(Length.ZERO.minus(high), Length.ZERO.minus(low));
    }
  }
}
