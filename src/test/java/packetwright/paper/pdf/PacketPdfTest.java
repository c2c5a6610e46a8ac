package packetwright.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import packetwright.paper.html.Html;
import packetwright.paper.html.Paper;
import packetwright.paper.html.TemplateFiller;
import packetwright.paper.packet.Packets;
import packetwright.paper.packet.SampleLesson;

/** Both documents of the sample, laid out with our own templates. */
class PacketPdfTest {
  private static final PdfInfo INFO = new PdfInfo(LocalDate.of(2027, 1, 11), 7);

  private static Map<String, byte[]> pdfs(Paper paper) {
    Packets.Documents documents = SampleLesson.documents();
    TemplateFiller filler = new TemplateFiller(SampleLesson.WORDS, Map.of());
    PdfWriter writer = new PdfWriter();
    Map<String, byte[]> pdfs = new TreeMap<>();
    Html student = filler.student(documents.student(), paper).value();
    Html key = filler.key(documents.key(), paper).value();
    pdfs.put("student-packet", writer.write(student.text(), student.sheets(), INFO));
    pdfs.put("answer-key", writer.write(key.text(), key.sheets(), INFO));
    return pdfs;
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void bothDocumentsMeetTheStandards(Paper paper) throws Exception {
    for (byte[] pdf : pdfs(paper).values()) {
      assertThat(VeraPdf.failures(pdf, "ua1")).isEmpty();
      assertThat(VeraPdf.failures(pdf, "2a")).isEmpty();
    }
  }

  @Test
  void numbersCanBeReadBack() throws IOException {
    Map<String, byte[]> pdfs = pdfs(Paper.LETTER);
    assertThat(text(pdfs.getOrDefault("student-packet", new byte[0])).replaceAll("\\s+", " "))
        .contains("Sliding-lid box", "Set the fence to 3 1\u20442 in. Measure to", "8 7\u204416 in")
        .doesNotContainIgnoringCase("proven")
        .doesNotContainPattern("(?i)\\bsafe\\b");
    assertThat(text(pdfs.getOrDefault("answer-key", new byte[0])).replaceAll("\\s+", " "))
        .contains("2 15\u204416 in", "4 29\u204464 in", "end_length");
  }

  @Test
  void sameLessonGivesSameBytes() {
    Map<String, byte[]> first = pdfs(Paper.LETTER);
    Map<String, byte[]> second = pdfs(Paper.LETTER);
    assertThat(second.keySet()).isEqualTo(first.keySet());
    first.forEach((name, pdf) -> assertThat(second.get(name)).as("%s", name).isEqualTo(pdf));
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void noTextRunsOutOfTheMargins(Paper paper) throws IOException {
    for (byte[] pdf : pdfs(paper).values()) {
      try (PDDocument document = Loader.loadPDF(pdf)) {
        new Margins(document.getPage(0).getMediaBox().getWidth()).getText(document);
      }
    }
  }

  /** Refuses a letter beyond the left or right edge of the text. */
  private static final class Margins extends PDFTextStripper {
    private final float right;

    Margins(float width) {
      this.right = width - 40;
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
      assertThat(letter.getX())
          .as("%s on page %d", letter, getCurrentPageNo())
          .isBetween(40f, right);
    }
  }

  /** Writes both documents into a folder, to look at. */
  public static void main(String[] arguments) {
    long start = System.nanoTime();
    try {
      Packets.Documents documents = SampleLesson.documents();
      long worked = System.nanoTime();
      TemplateFiller filler = new TemplateFiller(SampleLesson.WORDS, Map.of());
      Html student = filler.student(documents.student(), Paper.valueOf(arguments[1])).value();
      Html key = filler.key(documents.key(), Paper.valueOf(arguments[1])).value();
      long filled = System.nanoTime();
      PdfWriter writer = new PdfWriter();
      long fonts = System.nanoTime();
      Path folder = Path.of(arguments[0]);
      Files.writeString(folder.resolve("student-packet.html"), student.text());
      Files.writeString(folder.resolve("answer-key.html"), key.text());
      Files.write(
          folder.resolve("student-packet.pdf"),
          writer.write(student.text(), student.sheets(), INFO));
      long first = System.nanoTime();
      Files.write(folder.resolve("answer-key.pdf"), writer.write(key.text(), key.sheets(), INFO));
      System.out.printf(
          "lesson %d, templates %d, fonts %d, student %d, key %d ms%n",
          (worked - start) / 1000000,
          (filled - worked) / 1000000,
          (fonts - filled) / 1000000,
          (first - fonts) / 1000000,
          (System.nanoTime() - first) / 1000000);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
