package packetwright.drawing.view;

import packetwright.text.measure.Length;

/** Lengths out of floating point. */
final class Exact {
  /** In inches: far more than rounding, far less than any two sizes that differ. */
  private static final double NEAR = 1e-10;

  private Exact() {}

  /**
   * The fraction of an inch with the least denominator nearby, which is the size that was meant
   * where there is one: by the continued fraction of the value.
   */
  static Length of(double inches) {
    double rest = inches;
    long before = 0;
    long numerator = 1;
    long beforeUnder = 1;
    long denominator = 0;
    while (denominator == 0 || Math.abs(inches - (double) numerator / denominator) > NEAR) {
      long whole = (long) Math.floor(rest + NEAR);
      long next = whole * numerator + before;
      long nextUnder = whole * denominator + beforeUnder;
      before = numerator;
      beforeUnder = denominator;
      numerator = next;
      denominator = nextUnder;
      rest = 1 / (rest - whole);
    }
    return Length.ofInches(numerator, denominator);
  }
}
