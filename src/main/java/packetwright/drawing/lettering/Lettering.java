package packetwright.drawing.lettering;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** How much room text takes in our typefaces, without kerning; lengths are points. */
public final class Lettering {
  private static final Map<Face, TrueType> READ = new ConcurrentHashMap<>();

  private Lettering() {}

  /** Advance width of a line of text. */
  public static double width(Face face, double size, String text) {
    TrueType type = type(face);
    long units = text.codePoints().mapToLong(type::advance).sum();
    return units * size / type.unitsPerEm();
  }

  /** Whether the typeface has a glyph for a character. */
  public static boolean covers(Face face, int codePoint) {
    return type(face).has(codePoint);
  }

  /** Whether the typeface has a glyph for each character. */
  public static boolean covers(Face face, String text) {
    return text.codePoints().allMatch(type(face)::has);
  }

  /** From the baseline to the top of a capital or a digit. */
  public static double capHeight(Face face, double size) {
    TrueType type = type(face);
    return type.capHeight() * size / type.unitsPerEm();
  }

  /** From the baseline to the top of the line. */
  public static double ascent(Face face, double size) {
    TrueType type = type(face);
    return type.ascender() * size / type.unitsPerEm();
  }

  /** From the baseline down to the bottom of the line; positive. */
  public static double descent(Face face, double size) {
    TrueType type = type(face);
    return -type.descender() * size / type.unitsPerEm();
  }

  private static TrueType type(Face face) {
    return READ.computeIfAbsent(face, f -> TrueType.read(f.resource()));
  }
}
