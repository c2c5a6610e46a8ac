package packetwright.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.ShopReader;
import packetwright.paper.html.Html;
import packetwright.paper.html.Paper;
import packetwright.paper.html.TemplateFiller;
import packetwright.paper.packet.Packets;
import packetwright.paper.packet.SampleLesson;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;

/** In a shop in which nothing has a switch no page speaks of a machine. */
class HandToolPagesTest {
  private static final PdfInfo INFO = new PdfInfo(LocalDate.of(2027, 1, 11), 7);

  /** Every powered machine by its printed name; what only machines have; nothing is excepted. */
  private static final Pattern MACHINE =
      Pattern.compile(
          "\\b(machines?|switch(es)? (on|off)|power|cutterhead|riving knife|set-up check|"
              + Arrays.stream(MachineKind.values())
                  .filter(MachineKind::isPowered)
                  .map(kind -> SampleLesson.WORDS.plain("packet.tool." + kind.word()))
                  .map(name -> Pattern.quote(name.toLowerCase(Locale.ROOT)) + "s?")
                  .collect(Collectors.joining("|"))
              + ")\\b");

  private static final String SHOP = "other-shop.yaml";
  private static final Request PLAIN = new Request(SHOP, List.of(), Set.of(), "2027 spring");

  private static ProjectFolder sample(String name, String shop) {
    return ProjectFolder.sample(name).with(SHOP, ShopReader.profile(shop));
  }

  private static List<String> machines(String text) {
    String line = text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    return MACHINE.matcher(line).results().map(MatchResult::group).distinct().toList();
  }

  @TestFactory
  Stream<DynamicTest> noPageNamesAMachine() {
    return ProjectFolder.samples().stream()
        .map(name -> sample(name, ShopReader.HAND_TOOLS))
        .flatMap(
            folder ->
                noneAndAll(Lessons.combinations(folder, PLAIN))
                    .map(
                        request ->
                            DynamicTest.dynamicTest(
                                folder.name() + " with " + request.options(),
                                () -> noPageNamesAMachine(folder, request))));
  }

  /** Without options, and with as many as go together. */
  private static Stream<Request> noneAndAll(List<Request> combinations) {
    Comparator<Request> byCount = Comparator.comparing(request -> request.options().size());
    return Stream.of(
        Collections.min(combinations, byCount), Collections.max(combinations, byCount));
  }

  private static void noPageNamesAMachine(ProjectFolder folder, Request request)
      throws IOException {
    for (Html document : documents(Lessons.workOut(folder, request).value())) {
      String text = text(document);
      assertThat(text).hasSizeGreaterThan(5000);
      assertThat(machines(text)).isEmpty();
    }
  }

  @Test
  void theSearchFindsMachinesWhereThereAreSome() throws IOException {
    Lesson lesson = Lessons.workOut(sample("sliding-lid-box", ShopReader.BUILT_IN), PLAIN).value();
    for (Html document : documents(lesson)) {
      assertThat(machines(text(document)))
          .contains("table saw", "miter saw", "jointer", "dado set", "riving knife", "machine");
    }
  }

  private static List<Html> documents(Lesson lesson) {
    Packets.Documents documents =
        Packets.of(lesson, SampleLesson.quiz(lesson), SampleLesson.WORDS).value();
    TemplateFiller filler = new TemplateFiller(SampleLesson.WORDS, Map.of());
    return List.of(
        filler.student(documents.student(), Paper.LETTER).value(),
        filler.key(documents.key(), Paper.LETTER).value());
  }

  private static String text(Html html) throws IOException {
    try (PDDocument document =
        Loader.loadPDF(new PdfWriter().write(html.text(), html.sheets(), INFO))) {
      return new PDFTextStripper().getText(document);
    }
  }
}
