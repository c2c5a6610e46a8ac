package packetwright.paper.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter;

/** Paints a sheet as PDF operators, point for point; the sheet's y runs down, the PDF's up. */
final class OperatorPainter implements Painter {
  private final PDPageContentStream out;
  private final double height;
  private final Map<Face, PDType0Font> fonts;
  private final Typefaces typefaces;

  OperatorPainter(
      PDPageContentStream out, double height, Map<Face, PDType0Font> fonts, Typefaces typefaces) {
    this.out = out;
    this.height = height;
    this.fonts = fonts;
    this.typefaces = typefaces;
  }

  @Override
  public void stroke(Outline path, Pen pen) {
    write(
        () -> {
          out.setStrokingColor((float) pen.grey());
          out.setLineWidth((float) pen.width());
          float[] dash = new float[pen.dash().size()];
          for (int i = 0; i < dash.length; i++) {
            dash[i] = pen.dash().get(i).floatValue();
          }
          out.setLineDashPattern(dash, 0);
          trace(path);
          out.stroke();
        });
  }

  @Override
  public void fill(Outline path, double grey) {
    write(
        () -> {
          out.setNonStrokingColor((float) grey);
          trace(path);
          out.fillEvenOdd();
        });
  }

  @Override
  public void text(double x, double y, double angle, double size, Face face, String text) {
    write(
        () -> {
          out.setNonStrokingColor(0f);
          out.beginText();
          out.setTextMatrix(
              Matrix.getRotateInstance(
                  StrictMath.toRadians(angle), (float) x, (float) (height - y)));
          int start = 0;
          while (start < text.length()) {
            Face covering = typefaces.covering(face, text.codePointAt(start));
            int end = start + Character.charCount(text.codePointAt(start));
            while (end < text.length()
                && typefaces.covering(face, text.codePointAt(end)) == covering) {
              end += Character.charCount(text.codePointAt(end));
            }
            out.setFont(fonts.get(covering), (float) size);
            out.showText(text.substring(start, end));
            start = end;
          }
          out.endText();
        });
  }

  private void trace(Outline path) throws IOException {
    for (Outline.Segment segment : path.segments()) {
      List<Double> at = segment.xy();
      switch (segment.kind()) {
        case 'M' -> out.moveTo(x(at, 0), y(at, 0));
        case 'L' -> out.lineTo(x(at, 0), y(at, 0));
        case 'C' -> out.curveTo(x(at, 0), y(at, 0), x(at, 1), y(at, 1), x(at, 2), y(at, 2));
        case 'Z' -> out.closePath();
        default -> throw new IllegalArgumentException("no segment " + segment.kind());
      }
    }
  }

  private static float x(List<Double> at, int point) {
    return at.get(2 * point).floatValue();
  }

  private float y(List<Double> at, int point) {
    return (float) (height - at.get(2 * point + 1));
  }

  private static void write(Writing writing) {
    try {
      writing.run();
    } catch (IOException e) {
      throw new UncheckedIOException("drawing cannot be written", e);
    }
  }

  /** Something that writes operators. */
  private interface Writing {
    void run() throws IOException;
  }
}
