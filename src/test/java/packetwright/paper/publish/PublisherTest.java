package packetwright.paper.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.html.Paper;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;

class PublisherTest {
  private static final ProjectFolder SAMPLE = ProjectFolder.sample("sliding-lid-box");

  /** Front width by hand: the board less 1/4, 9/32 and 1/32 of an inch, 9/16 in all. */
  @ParameterizedTest
  @CsvSource({
    "board_width=5-1/2, 5 1\u20442, 4 15\u204416, 5 3\u20444",
    "board_width=101.6 mm, 4, 3 7\u204416, 4 1\u20444"
  })
  void anotherBoardWidthChangesEveryPageThatNamesIt(
      String set, String board, String front, String rough) throws IOException {
    Map<String, byte[]> files = files(set);
    String student = text(files, "student-packet.pdf");
    String key = text(files, "answer-key.pdf");
    assertThat(student)
        .as("the step and its setting")
        .contains("Set the fence to " + board + " in.")
        .contains("Set the fence to " + front + " in.")
        .as("the parts table and the rough pieces")
        .contains("C Front end 1 poplar 4 1\u20442 in \u2020 " + front + " in")
        .contains("36 in " + rough + " in");
    assertThat(key)
        .contains(
            "Front width front_width " + front + " in",
            "Board at least as wide as " + rough + " in");
    assertThat(student).as("the front as it was before").doesNotContain("2 15\u204416 in");
  }

  private static Map<String, byte[]> files(String set) {
    Request request = new Request("", List.of(set), Set.of(), "");
    Lesson lesson = Lessons.workOut(SAMPLE, request).value();
    Publisher publisher = new Publisher(SAMPLE, request, new Publisher.Output(Paper.LETTER, "A"));
    return publisher.files(lesson, doing -> {}).value();
  }

  private static String text(Map<String, byte[]> files, String name) throws IOException {
    try (PDDocument document = Loader.loadPDF(files.getOrDefault(name, new byte[0]))) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }
}
