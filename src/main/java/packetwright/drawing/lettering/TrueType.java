package packetwright.drawing.lettering;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;

/**
 * The few tables of a TrueType file that lettering needs: head, hhea, hmtx, loca, glyf and the
 * Unicode cmap, formats 4 and 12 (OpenType specification 1.9).
 */
final class TrueType {
  private static final int NO_GLYPH = 0;

  private final ByteBuffer file;
  private final int unitsPerEm;
  private final int ascender;
  private final int descender;
  private final int capHeight;
  private final int metrics;
  private final int hmtx;
  private final int cmap;

  private TrueType(byte[] bytes) {
    file = ByteBuffer.wrap(bytes);
    unitsPerEm = unsigned(table("head") + 18);
    int hhea = table("hhea");
    ascender = file.getShort(hhea + 4);
    descender = file.getShort(hhea + 6);
    metrics = unsigned(hhea + 34);
    hmtx = table("hmtx");
    cmap = unicodeTable();
    capHeight = topOf('H');
  }

  /** Reads a class-path resource; a missing or broken one is a bug. */
  static TrueType read(String resource) {
    try (InputStream in = TrueType.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("typeface " + resource + " is not on the class path");
      }
      return new TrueType(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(resource, e);
    }
  }

  int unitsPerEm() {
    return unitsPerEm;
  }

  int ascender() {
    return ascender;
  }

  /** Negative: below the baseline. */
  int descender() {
    return descender;
  }

  int capHeight() {
    return capHeight;
  }

  boolean has(int codePoint) {
    return glyph(codePoint) != NO_GLYPH;
  }

  /** In font units; that of the missing glyph when there is none. */
  int advance(int codePoint) {
    // Glyphs beyond the last metric share its advance.
    return unsigned(hmtx + 4 * Math.min(glyph(codePoint), metrics - 1));
  }

  /** Highest point of a glyph; OS/2 states the height of capitals only from its version 2 on. */
  private int topOf(int codePoint) {
    boolean isLong = file.getShort(table("head") + 50) == 1;
    int loca = table("loca") + glyph(codePoint) * (isLong ? 4 : 2);
    int offset = isLong ? file.getInt(loca) : 2 * unsigned(loca);
    return file.getShort(table("glyf") + offset + 8);
  }

  private int glyph(int codePoint) {
    return unsigned(cmap) == 12 ? inGroups(codePoint) : inSegments(codePoint);
  }

  private int inGroups(int codePoint) {
    int groups = file.getInt(cmap + 12);
    for (int i = 0; i < groups; i++) {
      int group = cmap + 16 + 12 * i;
      if (codePoint <= file.getInt(group + 4)) {
        int first = file.getInt(group);
        return codePoint < first ? NO_GLYPH : file.getInt(group + 8) + codePoint - first;
      }
    }
    return NO_GLYPH;
  }

  private int inSegments(int codePoint) {
    int doubled = unsigned(cmap + 6);
    int ends = cmap + 14;
    int starts = ends + doubled + 2;
    int segment = 0;
    while (segment < doubled && unsigned(ends + segment) < codePoint) {
      segment += 2;
    }
    if (segment == doubled || codePoint < unsigned(starts + segment)) {
      return NO_GLYPH;
    }
    int delta = unsigned(starts + doubled + segment);
    int rangeAt = starts + 2 * doubled + segment;
    int range = unsigned(rangeAt);
    if (range == 0) {
      return codePoint + delta & 0xFFFF;
    }
    int glyph = unsigned(rangeAt + range + 2 * (codePoint - unsigned(starts + segment)));
    return glyph == NO_GLYPH ? NO_GLYPH : glyph + delta & 0xFFFF;
  }

  /** Where the widest Unicode table begins: format 12 before format 4. */
  private int unicodeTable() {
    int start = table("cmap");
    int best = -1;
    for (int i = 0; i < unsigned(start + 2); i++) {
      int entry = start + 4 + 8 * i;
      int at = start + file.getInt(entry + 4);
      int format = unsigned(at);
      boolean isUnicode = unsigned(entry) == 0 || unsigned(entry) == 3;
      if (isUnicode && (format == 12 || (format == 4 && best < 0))) {
        best = at;
      }
    }
    if (best < 0) {
      throw new IllegalStateException("typeface without a Unicode table");
    }
    return best;
  }

  private int table(String tag) {
    for (int i = 0; i < unsigned(4); i++) {
      int entry = 12 + 16 * i;
      if (file.getInt(entry) == tagValue(tag)) {
        return file.getInt(entry + 8);
      }
    }
    throw new IllegalStateException("typeface without table " + tag);
  }

  private static int tagValue(String tag) {
    return tag.charAt(0) << 24 | tag.charAt(1) << 16 | tag.charAt(2) << 8 | tag.charAt(3);
  }

  private int unsigned(int at) {
    return Short.toUnsignedInt(file.getShort(at));
  }
}
