package packetwright.text.formula;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Dimension;

/** What lengths, areas and the rest give when multiplied and divided. */
final class Dimensions {
  /** In the order of their powers of a length. */
  private static final List<Dimension> POWERS =
      List.of(Dimension.NUMBER, Dimension.LENGTH, Dimension.AREA, Dimension.VOLUME);

  private Dimensions() {}

  /** None when nothing in a shop is measured so. */
  static @Nullable Dimension product(Dimension a, Dimension b) {
    if (a == Dimension.NUMBER || b == Dimension.NUMBER) {
      return a == Dimension.NUMBER ? b : a;
    }
    return POWERS.contains(a) && POWERS.contains(b)
        ? power(POWERS.indexOf(a) + POWERS.indexOf(b))
        : null;
  }

  /** None when nothing in a shop is measured so. */
  static @Nullable Dimension quotient(Dimension a, Dimension b) {
    if (a == b || b == Dimension.NUMBER) {
      return a == b ? Dimension.NUMBER : a;
    }
    return POWERS.contains(a) && POWERS.contains(b)
        ? power(POWERS.indexOf(a) - POWERS.indexOf(b))
        : null;
  }

  private static @Nullable Dimension power(int exponent) {
    return exponent >= 0 && exponent < POWERS.size() ? POWERS.get(exponent) : null;
  }
}
