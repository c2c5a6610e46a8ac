package packetwright.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import packetwright.drawing.figure.Drawings;
import packetwright.drawing.setup.SampleRuns;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.svg.SvgWriter;
import packetwright.paper.pdf.PaintedPdf.Painted;
import packetwright.plan.lesson.Lesson;
import packetwright.text.words.Words;

/** Each sheet as SVG and as PDF operators, both read again by libraries: the same marks. */
class SamePictureTest {
  /** SVG files hold thousandths of a point; a PDF single precision, at up to 800 points. */
  private static final double CLOSE = 0.001;

  private static Stream<Lesson> lessons() {
    return SampleRuns.inOwnShops().values().stream();
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void bothWritersPaintTheSame(Lesson lesson) throws IOException {
    for (Sheet sheet : new Drawings(lesson, Words.of("en")).all()) {
      List<Painted> svg = inSvg(sheet);
      List<Painted> pdf = PaintedPdf.read(pdf(sheet));
      assertThat(svg).as(sheet.name()).hasSizeGreaterThan(5);
      assertThat(pdf).extracting(Painted::what).isEqualTo(svg.stream().map(Painted::what).toList());
      for (int i = 0; i < svg.size(); i++) {
        assertSame(svg.get(i), pdf.get(i));
      }
    }
  }

  private static void assertSame(Painted one, Painted other) {
    assertThat(other.numbers()).as(one.what()).hasSameSizeAs(one.numbers());
    for (int i = 0; i < one.numbers().size(); i++) {
      assertThat(other.numbers().get(i)).isCloseTo(one.numbers().get(i), within(CLOSE));
    }
  }

  private static byte[] pdf(Sheet sheet) throws IOException {
    Typefaces typefaces = new Typefaces();
    try (PDDocument document = new PDDocument()) {
      PDRectangle size = new PDRectangle((float) sheet.width(), (float) sheet.height());
      PDPage page = new PDPage(size);
      document.addPage(page);
      try (PDPageContentStream out = new PDPageContentStream(document, page)) {
        sheet.paint(
            new OperatorPainter(out, size.getHeight(), typefaces.embed(document), typefaces));
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    }
  }

  private static List<Painted> inSvg(Sheet sheet) throws IOException {
    Element root =
        new SAXSVGDocumentFactory(null)
            .createDocument("sheet.svg", new StringReader(SvgWriter.write(sheet)))
            .getDocumentElement();
    List<Painted> found = new ArrayList<>();
    for (Node node = root.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        switch (element.getTagName()) {
          case "path" -> found.add(path(element));
          case "text" -> found.add(text(element));
          default -> assertThat(element.getTagName()).isIn("title", "desc");
        }
      }
    }
    return found;
  }

  private static Painted path(Element path) {
    List<Double> numbers = new ArrayList<>();
    StringBuilder letters = new StringBuilder();
    for (String segment : path.getAttribute("d").split("(?=[MLCZ])", -1)) {
      letters.append(segment.charAt(0));
      numbers.addAll(numbers(segment.substring(1)));
    }
    boolean isStroke = path.getAttribute("fill").equals("none");
    if (isStroke) {
      numbers.addAll(numbers(path.getAttribute("stroke-width")));
      numbers.addAll(numbers(path.getAttribute("stroke-dasharray")));
    }
    String grey = path.getAttribute(isStroke ? "stroke" : "fill");
    int level = Integer.parseInt(grey.substring(1, 3), 16);
    return new Painted((isStroke ? "stroke " : "fill ") + letters + " " + level, numbers);
  }

  private static Painted text(Element text) {
    List<Double> numbers = new ArrayList<>();
    for (String name : List.of("x", "y", "font-size")) {
      numbers.addAll(numbers(text.getAttribute(name)));
    }
    return new Painted(face(text) + " " + text.getTextContent(), numbers);
  }

  /** As the font files call it. */
  private static String face(Element text) {
    if (text.getAttribute("font-family").startsWith("'DejaVu Sans'")) {
      return "DejaVuSans";
    }
    String style =
        (text.getAttribute("font-weight").equals("700") ? "Bold" : "")
            + (text.getAttribute("font-style").equals("italic") ? "Italic" : "");
    return "Roboto-" + (style.isEmpty() ? "Regular" : style);
  }

  private static List<Double> numbers(String text) {
    return Stream.of(text.trim().split(" ", -1))
        .filter(n -> !n.isEmpty())
        .map(Double::valueOf)
        .toList();
  }
}
