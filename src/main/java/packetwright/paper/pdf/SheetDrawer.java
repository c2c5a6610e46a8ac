package packetwright.paper.pdf;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Rectangle;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.w3c.dom.Element;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Sheet;

/**
 * Puts sheets where the HTML has {@code <svg data-sheet="name" alt="...">}, at true scale: a style
 * sheet that would stretch one is a bug.
 */
final class SheetDrawer implements SVGDrawer {
  /** Lines that run along the edge of a sheet keep their outer half. */
  private static final float BLEED = 2;

  private final PDDocument document;
  private final Map<String, Sheet> sheets;
  private final Map<Face, PDType0Font> fonts;
  private final Typefaces typefaces;
  private final Map<String, PDFormXObject> painted = new HashMap<>();

  SheetDrawer(
      PDDocument document,
      Map<String, Sheet> sheets,
      Map<Face, PDType0Font> fonts,
      Typefaces typefaces) {
    this.document = document;
    this.sheets = sheets;
    this.fonts = fonts;
    this.typefaces = typefaces;
  }

  @Override
  public SVGImage buildSVGImage(
      Element element,
      Box box,
      CssContext context,
      double cssWidth,
      double cssHeight,
      double dotsPerPixel) {
    String name = element.getAttribute("data-sheet");
    Sheet sheet = sheets.get(name);
    if (sheet == null) {
      throw new PageRefused("the page asks for a drawing `" + name + "`");
    }
    if (cssWidth >= 0 || cssHeight >= 0) {
      throw new PageRefused("a style sheet stretches drawing `" + name + "`");
    }
    // A CSS pixel is 3/4 of a point.
    return new Placed(sheet, box, dotsPerPixel * 4 / 3);
  }

  private PDFormXObject form(Sheet sheet) {
    return painted.computeIfAbsent(sheet.name(), n -> paint(sheet));
  }

  private PDFormXObject paint(Sheet sheet) {
    // Of the form XObjects, only this kind is written by a stream that knows its document, so that
    // the faces used are cut down to their glyphs when it is saved.
    PDAppearanceStream form = new PDAppearanceStream(document);
    form.setResources(new PDResources());
    form.setBBox(
        new PDRectangle(
            -BLEED, -BLEED, (float) sheet.width() + 2 * BLEED, (float) sheet.height() + 2 * BLEED));
    form.getCOSObject().setItem(COSName.TYPE, COSName.XOBJECT);
    try (OutputStream bytes = form.getContentStream().createOutputStream(COSName.FLATE_DECODE);
        PDPageContentStream out = new PDPageContentStream(document, form, bytes)) {
      sheet.paint(new OperatorPainter(out, sheet.height(), fonts, typefaces));
    } catch (IOException e) {
      throw new UncheckedIOException("drawing " + sheet.name() + " cannot be written", e);
    }
    return form;
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> rules, SharedContext shared) {
    // Sheets use our faces only.
  }

  @Override
  public void addFontFile(File file, String family, Integer weight, FontStyle style) {
    // Sheets use our faces only.
  }

  @Override
  public void close() {
    // Nothing is held open.
  }

  /** A sheet in its place on the page. */
  private final class Placed implements SVGImage {
    private final Sheet sheet;
    private final Box box;
    private final double dotsPerPoint;

    private Placed(Sheet sheet, Box box, double dotsPerPoint) {
      this.sheet = sheet;
      this.box = box;
      this.dotsPerPoint = dotsPerPoint;
    }

    @Override
    public int getIntrinsicWidth() {
      return (int) StrictMath.ceil(sheet.width() * dotsPerPoint);
    }

    @Override
    public int getIntrinsicHeight() {
      return (int) StrictMath.ceil(sheet.height() * dotsPerPoint);
    }

    @Override
    public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
      Rectangle room = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
      if (room.width != getIntrinsicWidth() || room.height != getIntrinsicHeight()) {
        throw new PageRefused(
            "drawing `%s` would be stretched: %d x %d dots of room for %d x %d"
                .formatted(
                    sheet.name(),
                    room.width,
                    room.height,
                    getIntrinsicWidth(),
                    getIntrinsicHeight()));
      }
      // Room and size are given as the same number, so that the scale is exactly 1.
      ((PdfBoxOutputDevice) device).drawPdfAsImage(form(sheet), room, room.width, room.height);
    }
  }
}
