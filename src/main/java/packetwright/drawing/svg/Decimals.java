package packetwright.drawing.svg;

/** Numbers as SVG text, from whole thousandths, so that every machine writes the same. */
final class Decimals {
  private Decimals() {}

  /** Rounded to 1/1000, without trailing noughts. */
  static String of(double value) {
    return of(Math.round(value * 1000), 3);
  }

  /** Rounded to 1/1000000, without trailing noughts. */
  static String fine(double value) {
    return of(Math.round(value * 1_000_000), 6);
  }

  private static String of(long scaled, int places) {
    String digits = Long.toString(Math.abs(scaled));
    String padded = "0".repeat(Math.max(0, places + 1 - digits.length())) + digits;
    int point = padded.length() - places;
    int end = padded.length();
    while (end > point && padded.charAt(end - 1) == '0') {
      end--;
    }
    String fraction = end > point ? "." + padded.substring(point, end) : "";
    return (scaled < 0 ? "-" : "") + padded.substring(0, point) + fraction;
  }
}
