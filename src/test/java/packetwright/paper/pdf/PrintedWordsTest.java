package packetwright.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.paper.html.Html;
import packetwright.paper.html.Paper;
import packetwright.paper.html.TemplateFiller;
import packetwright.paper.packet.SampleLesson;
import packetwright.paper.packet.SampleShops;

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
  void noStudentPacketHoldsThem(String sample) {
    List<SampleShops.Case> cases = SampleShops.of(sample);
    assertThat(cases).as("packets seen").hasSizeGreaterThan(5);
    for (SampleShops.Case one : cases) {
      String text = text(html(one));
      assertThat(text).as(one.name()).contains(one.lesson().procedure().steps().get(2).title());
      assertThat(wrong(text)).as(one.name()).isEmpty();
    }
  }

  /** A page holds what is drawn as well, with its letters. */
  @ParameterizedTest
  @ValueSource(strings = {"sliding-lid-box", "step-stool", "nest-box"})
  void noPrintedPageHoldsThem(String sample) throws IOException {
    Html student = html(SampleShops.of(sample).get(0));
    try (PDDocument document =
        Loader.loadPDF(new PdfWriter().write(student.text(), student.sheets(), INFO))) {
      assertThat(wrong(new PDFTextStripper().getText(document))).isEmpty();
    }
  }

  private static Html html(SampleShops.Case one) {
    return new TemplateFiller(SampleLesson.WORDS, Map.of())
        .student(one.documents().student(), Paper.LETTER)
        .value();
  }

  /** What stands between the tags; the numbers of characters do not matter to the search. */
  private static String text(Html html) {
    return html.text()
        .replaceAll("(?s)<(style|head)\\b.*?</\\1>", " ")
        .replaceAll("</(p|h[1-6]|li|td|th|div)>", " . ")
        .replaceAll("<[^>]*>", "")
        .replace("&#39;", "\u2019")
        .replace("&amp;", "&");
  }
}
