package packetwright.paper.pdf;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** What the first page of a PDF paints, read from its operators by PDFBox. */
final class PaintedPdf extends PDFGraphicsStreamEngine {
  /**
   * One thing painted.
   *
   * @param what kind, letters of path segments and grey; or typeface and text
   * @param numbers places in points from the top left corner, then width and dashes, or the size
   */
  record Painted(String what, List<Double> numbers) {
    boolean isStroke(String letters) {
      return what.startsWith("stroke " + letters + " ");
    }
  }

  private final List<Painted> painted = new ArrayList<>();
  private final StringBuilder letters = new StringBuilder();
  private final List<Double> places = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private final double height;

  private PaintedPdf(PDPage page) {
    super(page);
    height = page.getMediaBox().getHeight();
  }

  static List<Painted> read(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PaintedPdf reader = new PaintedPdf(document.getPage(0));
      reader.processPage(document.getPage(0));
      return reader.painted;
    }
  }

  private void segment(char letter, float... xy) {
    letters.append(letter);
    for (int i = 0; i < xy.length; i += 2) {
      places.add((double) xy[i]);
      places.add(height - xy[i + 1]);
    }
  }

  private void end(String kind, PDColor colour, List<Double> pen) {
    places.addAll(pen);
    long level = Math.round(colour.getComponents()[0] * 255);
    painted.add(new Painted(kind + " " + letters + " " + level, List.copyOf(places)));
    endPath();
  }

  @Override
  public void strokePath() {
    List<Double> pen = new ArrayList<>();
    pen.add((double) getGraphicsState().getLineWidth());
    for (float dash : getGraphicsState().getLineDashPattern().getDashArray()) {
      pen.add((double) dash);
    }
    end("stroke", getGraphicsState().getStrokingColor(), pen);
  }

  @Override
  public void fillPath(int rule) {
    end("fill", getGraphicsState().getNonStrokingColor(), List.of());
  }

  @Override
  public void endPath() {
    letters.setLength(0);
    places.clear();
  }

  @Override
  public void moveTo(float x, float y) {
    segment('M', x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    segment('L', x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    segment('C', x1, y1, x2, y2, x3, y3);
  }

  @Override
  public void closePath() {
    segment('Z');
  }

  @Override
  protected void showGlyph(Matrix at, PDFont font, int code, Vector displacement) {
    if (text.length() == 0) {
      text.append(font.getName().replaceFirst("^[A-Z]{6}\\+", "")).append(' ');
      places.add((double) at.getTranslateX());
      places.add(height - at.getTranslateY());
      places.add((double) at.getScalingFactorX());
    }
    text.append(font.toUnicode(code));
  }

  @Override
  public void endText() {
    painted.add(new Painted(text.toString(), List.copyOf(places)));
    text.setLength(0);
    places.clear();
  }

  @Override
  public Point2D getCurrentPoint() {
    return new Point2D.Double();
  }

  @Override
  public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {}

  @Override
  public void clip(int rule) {}

  @Override
  public void drawImage(PDImage image) {}

  @Override
  public void fillAndStrokePath(int rule) {}

  @Override
  public void shadingFill(COSName name) {}
}
