package packetwright.paper.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.w3c.dom.Document;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Sheet;

/**
 * Lays XHTML out as tagged pages that meet PDF/UA-1 and PDF/A-2a. One writer may write many
 * documents, one at a time; the same input gives the same bytes. Nothing is read but the arguments
 * and our own typefaces.
 */
public final class PdfWriter {
  private static final String PRODUCER = "Packetwright";

  private final Typefaces typefaces = new Typefaces();

  /** Parses the typefaces. */
  public PdfWriter() {
    NoSystemFonts.install();
    Diagnostics.silenceTheLog();
  }

  /**
   * The finished file.
   *
   * @param html well-formed, without a document type; drawings stand as {@code <svg
   *     data-sheet="name" alt="...">} with nothing in them
   * @param sheets drawings by name
   * @param info what the file says of itself
   * @throws PageRefused when the page cannot be laid out as it is written
   */
  public byte[] write(String html, Map<String, Sheet> sheets, PdfInfo info) {
    Document page = PageText.parse(html);
    PageText.checkGlyphs(page.getDocumentElement(), typefaces);
    try (PDDocument document = new PDDocument()) {
      layOut(page, sheets, document);
      Stamp.apply(document, info);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes, CompressParameters.DEFAULT_COMPRESSION);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException("the PDF cannot be written", e);
    }
  }

  private void layOut(Document page, Map<String, Sheet> sheets, PDDocument document)
      throws IOException {
    Map<Face, PDType0Font> fonts = typefaces.embed(document);
    Diagnostics diagnostics = new Diagnostics();
    PdfRendererBuilder builder = new PdfRendererBuilder();
    fonts.forEach(
        (face, font) ->
            builder.useFont(
                new PDFontSupplier(font),
                face.family(),
                face.weight(),
                face.isItalic() ? FontStyle.ITALIC : FontStyle.NORMAL,
                true));
    builder
        .usePdfUaAccessibility(true)
        .usePdfAConformance(PdfAConformance.PDFA_2_A)
        .useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData())
        .withProducer(PRODUCER)
        .withDiagnosticConsumer(diagnostics)
        .useSVGDrawer(new SheetDrawer(document, sheets, fonts, typefaces))
        .usePDDocument(document)
        .withW3cDocument(page, "");
    shutTheDoor(builder);
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      renderer.createPDFWithoutClosing();
    }
    diagnostics.refuseAny();
  }

  /** Nothing outside the arguments is fetched, whatever the page asks for. */
  private static void shutTheDoor(PdfRendererBuilder builder) {
    builder.useUriResolver((base, uri) -> null);
    for (ExternalResourceControlPriority moment : ExternalResourceControlPriority.values()) {
      builder.useExternalResourceAccessControl((uri, type) -> false, moment);
    }
  }
}
