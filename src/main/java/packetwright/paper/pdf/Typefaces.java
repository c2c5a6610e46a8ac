package packetwright.paper.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import packetwright.drawing.lettering.Face;

/** Our typefaces, parsed once and put into each document as subsets. */
final class Typefaces {
  private final Map<Face, TrueTypeFont> parsed = new EnumMap<>(Face.class);
  private final Map<Face, CmapLookup> glyphs = new EnumMap<>(Face.class);

  Typefaces() {
    for (Face face : Face.values()) {
      try (InputStream file = Typefaces.class.getResourceAsStream(face.resource())) {
        if (file == null) {
          throw new IllegalStateException("typeface missing from the class path: " + face);
        }
        TrueTypeFont font =
            new TTFParser(false).parse(new RandomAccessReadBuffer(file.readAllBytes()));
        // We need no ligatures, and PDFBox spends half of its time on them.
        font.setEnableGsub(false);
        parsed.put(face, font);
        glyphs.put(face, font.getUnicodeCmapLookup());
      } catch (IOException e) {
        throw new UncheckedIOException("unreadable typeface " + face, e);
      }
    }
  }

  /** Whether the face itself has a glyph for a code point. */
  boolean covers(Face face, int codePoint) {
    CmapLookup lookup = glyphs.get(face);
    return lookup != null && lookup.getGlyphId(codePoint) != 0;
  }

  /**
   * The face, or the symbol face where it lacks the code point; a page lacking both is refused, for
   * the character would vanish.
   */
  Face covering(Face face, int codePoint) {
    if (covers(face, codePoint)) {
      return face;
    }
    if (covers(Face.SYMBOL, codePoint)) {
      return Face.SYMBOL;
    }
    throw new PageRefused(
        "no glyph for U+%04X (%s) in %s or %s"
            .formatted(codePoint, Character.toString(codePoint), face, Face.SYMBOL),
        codePoint);
  }

  /** All faces as fonts of one document. */
  Map<Face, PDType0Font> embed(PDDocument document) throws IOException {
    Map<Face, PDType0Font> fonts = new EnumMap<>(Face.class);
    for (Map.Entry<Face, TrueTypeFont> face : parsed.entrySet()) {
      fonts.put(face.getKey(), PDType0Font.load(document, face.getValue(), true));
    }
    return Collections.unmodifiableMap(fonts);
  }
}
