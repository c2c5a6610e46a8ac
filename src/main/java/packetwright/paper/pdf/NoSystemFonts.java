package packetwright.paper.pdf;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/** Keeps PDFBox from searching the system for fonts and from leaving a list of them at home. */
final class NoSystemFonts implements FontMapper {
  private NoSystemFonts() {}

  static void install() {
    FontMappers.set(new NoSystemFonts());
  }

  @Override
  public @Nullable FontMapping<TrueTypeFont> getTrueTypeFont(
      String baseFont, @Nullable PDFontDescriptor descriptor) {
    return null;
  }

  @Override
  public @Nullable FontMapping<FontBoxFont> getFontBoxFont(
      String baseFont, @Nullable PDFontDescriptor descriptor) {
    return null;
  }

  @Override
  public @Nullable CIDFontMapping getCIDFont(
      String baseFont, @Nullable PDFontDescriptor descriptor, @Nullable PDCIDSystemInfo system) {
    return null;
  }
}
