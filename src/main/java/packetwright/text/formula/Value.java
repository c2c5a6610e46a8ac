package packetwright.text.formula;

import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;

/** What a name stands for: an amount or a truth. */
public sealed interface Value {
  /** Calls the case that fits. */
  <R> R match(Cases<R> cases);

  /** One method for each kind of value. */
  interface Cases<R> {
    /** So much of something. */
    R amount(Quantity quantity);

    /** Whether something is so. */
    R truth(boolean holds);
  }

  /** An amount. */
  static Value of(Quantity quantity) {
    return new Amount(quantity);
  }

  /** A length. */
  static Value of(Length length) {
    return new Amount(Quantity.of(length));
  }

  /** A truth. */
  static Value of(boolean holds) {
    return new Truth(holds);
  }

  /**
   * So much of something.
   *
   * @param quantity exact
   */
  record Amount(Quantity quantity) implements Value {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.amount(quantity);
    }
  }

  /**
   * Whether something is so.
   *
   * @param holds whether it is
   */
  record Truth(boolean holds) implements Value {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.truth(holds);
    }
  }
}
