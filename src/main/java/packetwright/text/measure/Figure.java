package packetwright.text.measure;

import java.math.BigInteger;

/**
 * A quantity as it is printed: already rounded, split so that a fraction can be set as one.
 *
 * @param negative whether a minus sign stands before it
 * @param whole the whole units
 * @param numerator of what is left, less than the denominator; 0 when nothing is left
 * @param denominator 1 or more; a power of ten where the unit is decimal
 * @param unit which unit it counts
 * @param grade whether the true value is a little more or less
 */
public record Figure(
    boolean negative,
    BigInteger whole,
    BigInteger numerator,
    BigInteger denominator,
    Unit unit,
    Grade grade) {

  /** How the printed value lies to the true one. */
  public enum Grade {
    EXACT,
    /** The true value is a little more than printed. */
    FULL,
    /** The true value is a little less than printed. */
    SCANT
  }

  /** Whether a fraction bar is needed. */
  public boolean hasFraction() {
    return numerator.signum() != 0 && !unit.isDecimal();
  }

  /** The number alone, plain: {@code 4 23/32}, {@code 101.6}; without unit and grade. */
  public String number() {
    String sign = negative ? "-" : "";
    boolean places = unit.isDecimal() && !denominator.equals(BigInteger.ONE);
    if (numerator.signum() == 0 && !places) {
      return sign + whole;
    }
    if (places) {
      String padded = denominator.add(numerator).toString().substring(1);
      return sign + whole + "." + padded;
    }
    String fraction = numerator + "/" + denominator;
    return sign + (whole.signum() == 0 ? fraction : whole + " " + fraction);
  }

  /** The same with its grade: {@code 1/32 in scant}. */
  public String graded() {
    return switch (grade) {
      case EXACT -> toString();
      case FULL -> this + " full";
      case SCANT -> this + " scant";
    };
  }

  /** The number with its unit: {@code 4 23/32 in}, {@code 22.5°}. */
  @Override
  public String toString() {
    boolean close = unit == Unit.ONE || unit == Unit.MONEY || unit == Unit.DEGREE;
    return number() + (close || unit == Unit.PER_CENT ? "" : " ") + unit.symbol();
  }
}
