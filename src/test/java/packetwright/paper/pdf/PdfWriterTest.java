package packetwright.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter.Pen;
import packetwright.drawing.sheet.Sheet;

class PdfWriterTest {
  private static final PdfInfo INFO = new PdfInfo(LocalDate.of(2027, 1, 11), 7);
  private static final PdfWriter WRITER = new PdfWriter();

  /** Inches 0 to 6, a tick at each, in a sheet of an odd size. */
  private static Sheet ruler() {
    return new Sheet(
        "ruler",
        433.3,
        40.7,
        "A rule, six inches long",
        List.of(
            p -> {
              for (int inch = 0; inch <= 6; inch++) {
                p.stroke(Outline.line(72.0 * inch, 4, 72.0 * inch, 20), new Pen(0.5, List.of(), 0));
              }
              p.text(2, 35, 0, 9, Face.REGULAR, "first inch \u2300");
            }));
  }

  private static String page(String style, String body) {
    return """
        <html lang="en"><head><title>A page</title>
        <meta name="subject" content="Trial"/><meta name="description" content="Trial"/>
        <style>@page {size: letter; margin: 1in;
          @bottom-right {font: 8pt Roboto; content: "Page " counter(page)}}
        body {font: 11pt Roboto, 'DejaVu Sans'; margin: 0} svg {display: block}
        i {font-size: 7.5pt; vertical-align: 3pt} b {font-size: 7.5pt; vertical-align: -1pt}
        %s</style></head><body><h1>A page</h1>%s</body></html>
        """
        .formatted(style, body);
  }

  private static byte[] write(String style, String body) {
    return WRITER.write(page(style, body), Map.of("ruler", ruler()), INFO);
  }

  private static final String RULER = "<p><svg data-sheet=\"ruler\" alt=\"A rule\"></svg></p>";

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void meetsTheStandards() throws Exception {
    byte[] pdf =
        write(
            "",
            RULER
                + "<p>Length <span title=\"4 and 1 half inches\">4 <i>1</i>\u2044<b>2</b>"
                + " in</span> <strong>bold \u26a0</strong></p>");
    assertThat(VeraPdf.failures(pdf, "ua1")).isEmpty();
    assertThat(VeraPdf.failures(pdf, "2a")).isEmpty();
  }

  @Test
  void meetsTheStandardsWithASignThatOnlyADrawingUses() throws Exception {
    byte[] pdf = write("", RULER);
    assertThat(VeraPdf.failures(pdf, "ua1")).isEmpty();
    assertThat(VeraPdf.failures(pdf, "2a")).isEmpty();
  }

  @Test
  void checkerSeesABrokenPage() throws Exception {
    byte[] pdf = write("", "<h3>Two levels down</h3>");
    assertThat(VeraPdf.failures(pdf, "ua1")).isNotEmpty();
  }

  @Test
  void sameInputGivesSameBytes() {
    assertThat(write("", RULER)).isEqualTo(write("", RULER));
  }

  @Test
  void sameInputGivesSameBytesInAnotherPlace(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("other.pdf");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Duser.timezone=Asia/Kathmandu",
                "-Dfile.encoding=ISO-8859-9",
                "-Duser.home=" + folder,
                "-cp",
                System.getProperty("java.class.path"),
                PdfWriterTest.class.getName(),
                file.toString())
            .redirectErrorStream(true)
            .start();
    assertThat(process.getInputStream().readAllBytes()).asString().isEmpty();
    assertThat(process.waitFor()).isZero();
    assertThat(Files.readAllBytes(file)).isEqualTo(write("", RULER));
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).as("left behind in the home folder").containsExactly(file);
    }
  }

  /** The other JVM of {@link #sameInputGivesSameBytesInAnotherPlace}. */
  public static void main(String[] arguments) {
    try {
      Files.write(Path.of(arguments[0]), write("", RULER));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void anInchIs72Points() throws IOException {
    try (PDDocument document = Loader.loadPDF(write("", RULER))) {
      Starts starts = new Starts(document);
      starts.processPage(document.getPage(0));
      List<Double> x = starts.found;
      assertThat(x).hasSize(7);
      for (int inch = 0; inch < 6; inch++) {
        assertThat(x.get(inch + 1) - x.get(inch)).isEqualTo(72.0);
      }
    }
  }

  @Test
  void drawingTextAndRunningTextAreFoundAgain() throws IOException {
    String body =
        RULER
            + "<p><span>Set </span><span><span>4 </span><i>1</i><span>\u2044</span><b>2</b>"
            + "<span> in</span></span><span> now</span></p>";
    assertThat(text(write("", body)))
        .contains("first inch \u2300", "Page 1", "Set 4 1\u20442 in now");
  }

  @Test
  void refusesACharacterThatNoFaceHas() {
    assertThatThrownBy(() -> write("", "<p>\u6728</p>"))
        .isInstanceOf(PageRefused.class)
        .hasMessageContaining("U+6728");
  }

  @Test
  void refusesACharacterOfADrawingThatNoFaceHas() {
    Sheet sheet =
        new Sheet("ruler", 50, 50, "x", List.of(p -> p.text(0, 9, 0, 9, Face.BOLD, "a\u6728")));
    assertThatThrownBy(() -> WRITER.write(page("", RULER), Map.of("ruler", sheet), INFO))
        .isInstanceOf(PageRefused.class);
  }

  @Test
  void refusesAFontThatIsNotOurs() {
    assertThatThrownBy(() -> write("p {font-family: Helvetica}", "<p>lost</p>"))
        .isInstanceOf(PageRefused.class)
        .hasMessageContaining("not laid out as written");
  }

  @Test
  void refusesAStretchedDrawing() {
    assertThatThrownBy(() -> write("svg {width: 3in}", RULER))
        .isInstanceOf(PageRefused.class)
        .hasMessageContaining("stretches drawing `ruler`");
  }

  @Test
  void refusesADrawingWithoutAlternative() {
    assertThatThrownBy(() -> write("", "<p><svg data-sheet=\"ruler\"></svg></p>"))
        .isInstanceOf(PageRefused.class);
  }

  @Test
  void refusesADrawingThatDoesNotExist() {
    assertThatThrownBy(() -> write("", "<p><svg data-sheet=\"rule\" alt=\"a\"></svg></p>"))
        .hasMessageContaining("`rule`");
  }

  @Test
  void opensNoFile(@TempDir Path folder) throws IOException {
    Path picture = folder.resolve("p.svg");
    Files.writeString(picture, "<svg xmlns=\"http://www.w3.org/2000/svg\"/>");
    for (String uri : List.of(picture.toUri().toString(), "data:image/png;base64,iVBORw0KGgo=")) {
      assertThatThrownBy(() -> write("", "<p><img src=\"" + uri + "\" alt=\"x\"/></p>"))
          .isInstanceOf(PageRefused.class);
    }
    assertThatThrownBy(() -> write("@import url(" + picture.toUri() + ");", ""))
        .isInstanceOf(PageRefused.class);
  }

  @Test
  void refusesADocumentType() {
    assertThatThrownBy(() -> WRITER.write("<!DOCTYPE html>" + page("", ""), Map.of(), INFO))
        .isInstanceOf(PageRefused.class)
        .hasMessageContaining("DOCTYPE");
  }

  /** Where subpaths of drawings begin, in points on the page. */
  private static final class Starts extends PDFGraphicsStreamEngine {
    private final List<Double> found = new ArrayList<>();
    private boolean inDrawing;

    Starts(PDDocument document) {
      super(document.getPage(0));
    }

    @Override
    public void showForm(PDFormXObject form) throws IOException {
      inDrawing = true;
      super.showForm(form);
      inDrawing = false;
    }

    @Override
    public void moveTo(float x, float y) {
      if (inDrawing) {
        found.add((double) x);
      }
    }

    @Override
    public void appendRectangle(
        java.awt.geom.Point2D a,
        java.awt.geom.Point2D b,
        java.awt.geom.Point2D c,
        java.awt.geom.Point2D d) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int rule) {}

    @Override
    public void lineTo(float x, float y) {}

    @Override
    public void curveTo(float a, float b, float c, float d, float e, float f) {}

    @Override
    public java.awt.geom.Point2D getCurrentPoint() {
      return new java.awt.geom.Point2D.Float();
    }

    @Override
    public void closePath() {}

    @Override
    public void endPath() {}

    @Override
    public void strokePath() {}

    @Override
    public void fillPath(int rule) {}

    @Override
    public void fillAndStrokePath(int rule) {}

    @Override
    public void shadingFill(COSName name) {}
  }
}
