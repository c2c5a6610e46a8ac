package packetwright.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.html.Html;
import packetwright.paper.html.Paper;
import packetwright.paper.html.TemplateFiller;
import packetwright.paper.packet.Packets;
import packetwright.paper.packet.SampleLesson;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.text.source.Checked;

/** Words that never reach a student: praise, permissions, and dangerous advice. */
class PrintedWordsTest {
  private static final PdfInfo INFO = new PdfInfo(LocalDate.of(2027, 1, 11), 7);

  private static final Pattern PRAISE =
      Pattern.compile("(?i)\\b(safe(ly|r|st)?|proven|guarantee[ds]?)\\b");

  private static final Pattern MACHINE =
      Pattern.compile(
          "(?i)\\b(jointer|planer|saw|router|sander|drill press|dado set|nailer|machine)\\b");

  /** A least size as such; what a helper measures at least names no machine in its sentence. */
  private static final Pattern LEAST =
      Pattern.compile(
          "(?i)\\b(at least|no less than|not under|down to) [0-9][^.;:]* (in|mm|ft)\\b");

  private static final Pattern PERMISSION =
      Pattern.compile(
          "(?i)\\b((long|wide|thick|big|large) enough (for|to)|minimum (length|width|thickness"
              + "|size)|(takes|accepts|allows) (pieces|boards|wood) (of|from|down))\\b");

  /** Never advice; only in a sentence that forbids it. */
  private static final Pattern FORBIDDEN =
      Pattern.compile(
          "(?i)\\b(freehand|reach(ing)? (over|behind|in)|climb cut|compressed air|while it"
              + " (coasts|still turns)|(remove|raise|lift|take off|open) the guard|hold (it )?tight"
              + "|bypass|cannot happen|optional)\\b");

  private static final Pattern FORBIDS = Pattern.compile("(?i)\\b(never|do not|don.t|no|leave)\\b");

  static List<String> wrong(String text) {
    List<String> wrong = new ArrayList<>();
    for (String sentence : text.replaceAll("\\s+", " ").split("(?<=[.;:?!]) ", -1)) {
      boolean isLeast = LEAST.matcher(sentence).find() && MACHINE.matcher(sentence).find();
      boolean isAdvice = FORBIDDEN.matcher(sentence).find() && !FORBIDS.matcher(sentence).find();
      if (PRAISE.matcher(sentence).find()
          || PERMISSION.matcher(sentence).find()
          || isLeast
          || isAdvice) {
        wrong.add(sentence);
      }
    }
    return wrong;
  }

  @Test
  void theSearchFindsWhatItIsFor() {
    assertThat(
            Stream.of(
                "This is safe.",
                "The order is proven.",
                "The jointer takes a board at least 12 in long.",
                "It is long enough for the planer.",
                "Remove the guard first.",
                "Cut it freehand.",
                "Reach over the blade to pick it up."))
        .allSatisfy(text -> assertThat(wrong(text)).hasSize(1));
    assertThat(
            Stream.of(
                "Leave the clamps on, at least 60 min.",
                "Backer: at least 3 1/2 in wide.",
                "Never reach over the blade.",
                "Your school's rules come first."))
        .allSatisfy(text -> assertThat(wrong(text)).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"sliding-lid-box", "step-stool", "nest-box"})
  void noStudentPacketHoldsThem(String sample) throws IOException {
    ProjectFolder folder = ProjectFolder.sample(sample);
    int seen = 0;
    for (String shop : List.of("", "built-in", "hand-tools")) {
      Lessons.Request plain = new Lessons.Request(shop, List.of(), Set.of(), "2027 spring");
      for (Lessons.Request request : Lessons.combinations(folder, plain)) {
        Checked<Lesson> lesson = Lessons.workOut(folder, request);
        if (lesson.hasValue()) {
          seen++;
          assertThat(wrong(text(lesson.value()))).as("%s, %s", shop, request.options()).isEmpty();
        }
      }
    }
    assertThat(seen).as("packets seen").isPositive();
  }

  private static String text(Lesson lesson) throws IOException {
    Packets.Documents documents =
        Packets.of(lesson, SampleLesson.quiz(lesson), SampleLesson.WORDS).value();
    Html student =
        new TemplateFiller(SampleLesson.WORDS, Map.of())
            .student(documents.student(), Paper.LETTER)
            .value();
    try (PDDocument document =
        Loader.loadPDF(new PdfWriter().write(student.text(), student.sheets(), INFO))) {
      return new PDFTextStripper().getText(document);
    }
  }
}
