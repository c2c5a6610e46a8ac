package packetwright.text.measure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A unit of measure, read in input and printed on pages. */
public enum Unit {
  ONE("", Dimension.NUMBER, Rational.ONE, false),
  PER_CENT("%", Dimension.NUMBER, Rational.of(1, 100), true),
  INCH("in", Dimension.LENGTH, Rational.ONE, false),
  FOOT("ft", Dimension.LENGTH, Rational.of(12), false),
  /** NIST SP 811 (2008), appendix B: 1 in = 25.4 mm, exact. */
  MILLIMETRE("mm", Dimension.LENGTH, Rational.of(10, 254), true),
  CENTIMETRE("cm", Dimension.LENGTH, Rational.of(100, 254), true),
  METRE("m", Dimension.LENGTH, Rational.of(10000, 254), true),
  SQUARE_INCH("sq in", Dimension.AREA, Rational.ONE, false),
  SQUARE_FOOT("sq ft", Dimension.AREA, Rational.of(144), true),
  CUBIC_INCH("cu in", Dimension.VOLUME, Rational.ONE, false),
  /** 1 in x 12 in x 12 in. */
  BOARD_FOOT("bf", Dimension.VOLUME, Rational.of(144), true),
  FLUID_OUNCE("oz", Dimension.FLUID, Rational.ONE, false),
  /** Exact: a US gallon is 231 cu in and 128 fl oz. */
  MILLILITRE("ml", Dimension.FLUID, Rational.of(128_000_000L, 3_785_411_784L), true),
  DEGREE("°", Dimension.ANGLE, Rational.ONE, true),
  MINUTE("min", Dimension.TIME, Rational.ONE, false),
  HOUR("h", Dimension.TIME, Rational.of(60), false),
  FAHRENHEIT("°F", Dimension.TEMPERATURE, Rational.ONE, true),
  MONEY("", Dimension.MONEY, Rational.ONE, true);

  private static final Map<String, Unit> BY_NAME = byName();

  private final String symbol;
  private final Dimension dimension;
  private final Rational inBase;
  private final boolean decimal;

  Unit(String symbol, Dimension dimension, Rational inBase, boolean decimal) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.inBase = inBase;
    this.decimal = decimal;
  }

  private static Map<String, Unit> byName() {
    Map<String, Unit> names = new LinkedHashMap<>();
    for (Unit unit : values()) {
      if (!unit.symbol.isEmpty()) {
        names.put(unit.symbol, unit);
      }
    }
    names.put("count", ONE);
    names.put("\"", INCH);
    names.put("'", FOOT);
    names.put("deg", DEGREE);
    names.put("F", FAHRENHEIT);
    return Collections.unmodifiableMap(names);
  }

  /** The unit that is so written after a number, or none. */
  public static @Nullable Unit named(String name) {
    return BY_NAME.get(name);
  }

  /** Everything that may be written after a number. */
  public static Set<String> names() {
    return BY_NAME.keySet();
  }

  /** As printed after a number. */
  public String symbol() {
    return symbol;
  }

  /** What it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** One of it in the base unit of its dimension. */
  public Rational inBase() {
    return inBase;
  }

  /** Whether parts of it are printed as decimals rather than as fractions. */
  public boolean isDecimal() {
    return decimal;
  }
}
