package packetwright.drawing.lettering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LetteringTest {
  private static TrueTypeFont oracle(Face face) throws IOException {
    try (InputStream in = LetteringTest.class.getResourceAsStream(face.resource())) {
      byte[] bytes = Objects.requireNonNull(in, face.resource()).readAllBytes();
      return new TTFParser(false).parse(new RandomAccessReadBuffer(bytes));
    }
  }

  @ParameterizedTest
  @EnumSource(Face.class)
  void agreesWithFontBoxOnEveryCodePointOfTheFirstPlane(Face face) throws IOException {
    try (TrueTypeFont font = oracle(face)) {
      CmapLookup cmap = font.getUnicodeCmapLookup(false);
      int units = font.getUnitsPerEm();
      int covered = 0;
      for (int codePoint = 0x20; codePoint < 0xFFFF; codePoint++) {
        int glyph = cmap.getGlyphId(codePoint);
        assertThat(Lettering.covers(face, codePoint)).as("U+%04X", codePoint).isEqualTo(glyph != 0);
        if (glyph != 0 && Character.isDefined(codePoint) && !isSurrogate(codePoint)) {
          covered++;
          assertThat(Lettering.width(face, units, Character.toString(codePoint)))
              .as("U+%04X", codePoint)
              .isEqualTo(font.getAdvanceWidth(glyph));
        }
      }
      assertThat(covered).isGreaterThan(800);
      assertThat(Lettering.ascent(face, units)).isEqualTo(font.getHorizontalHeader().getAscender());
      assertThat(Lettering.descent(face, units))
          .isEqualTo(-font.getHorizontalHeader().getDescender());
      assertThat(Lettering.capHeight(face, units)).isEqualTo(topOfH(font, cmap));
    }
  }

  private static int topOfH(TrueTypeFont font, CmapLookup cmap) throws IOException {
    return font.getGlyph().getGlyph(cmap.getGlyphId('H')).getYMaximum();
  }

  private static boolean isSurrogate(int codePoint) {
    return codePoint >= 0xD800 && codePoint <= 0xDFFF;
  }

  @Test
  void widthGrowsWithSizeAndText() {
    double one = Lettering.width(Face.REGULAR, 10, "kerf");
    assertThat(Lettering.width(Face.REGULAR, 20, "kerf")).isCloseTo(2 * one, within(1e-9));
    assertThat(Lettering.width(Face.REGULAR, 10, "kerfkerf")).isCloseTo(2 * one, within(1e-9));
    assertThat(Lettering.width(Face.REGULAR, 10, "")).isZero();
  }

  @Test
  void symbolFaceHasTheSignsThatTheTextFacesLack() {
    assertThat("⌀☐☑⚠←→✓✗".codePoints())
        .allMatch(c -> Lettering.covers(Face.SYMBOL, c))
        .noneMatch(c -> Lettering.covers(Face.REGULAR, c));
  }
}
