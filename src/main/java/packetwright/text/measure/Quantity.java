package packetwright.text.measure;

/**
 * An exact amount of something.
 *
 * @param value in the base unit of its dimension: inch, square inch, cubic inch, fluid ounce,
 *     degree, minute, degree Fahrenheit, one of the currency, or one
 * @param dimension what it measures
 */
public record Quantity(Rational value, Dimension dimension) {
  /** A bare number. */
  public static Quantity number(Rational value) {
    return new Quantity(value, Dimension.NUMBER);
  }

  /** A length. */
  public static Quantity of(Length length) {
    return new Quantity(length.inches(), Dimension.LENGTH);
  }

  /** This quantity as a length; anything else is a bug. */
  public Length asLength() {
    if (dimension != Dimension.LENGTH) {
      throw new IllegalStateException(value + " is " + dimension.phrase() + ", not a length");
    }
    return new Length(value);
  }
}
