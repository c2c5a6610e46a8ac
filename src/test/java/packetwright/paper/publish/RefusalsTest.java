package packetwright.paper.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.html.Html;
import packetwright.paper.pdf.PageRefused;
import packetwright.paper.pdf.PdfInfo;
import packetwright.paper.pdf.PdfWriter;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Finding;

class RefusalsTest {
  private static final PdfWriter WRITER = new PdfWriter();
  private static final ProjectFolder SAMPLE = ProjectFolder.sample("sliding-lid-box");

  private static PageRefused refusal(String style, String body) {
    String html =
        """
        <html lang="en"><head><title>T</title><meta name="subject" content="S"/>
        <meta name="description" content="D"/><style>%s body {font: 11pt Roboto}</style></head>
        <body><h1>T</h1><p>%s</p></body></html>
        """
            .formatted(style, body);
    return catchThrowableOfType(
        PageRefused.class,
        () -> WRITER.write(html, Map.of(), new PdfInfo(LocalDate.of(2027, 1, 11), 7)));
  }

  @Test
  void pointsAtACharacterThatCannotBePrinted() {
    String project = SAMPLE.text("project.yaml").value();
    ProjectFolder folder =
        SAMPLE.with("project.yaml", project.replace("Sliding-lid box", "Box \u6728"));
    Html page = new Html("<p>Box \u6728</p>", Map.of());
    Finding finding = Refusals.unprintable(page, folder, Request.plain());
    assertThat(finding).isNotNull();
    assertThat(finding.code()).isEqualTo("unprintable-character");
    assertThat(finding.at().file()).isEqualTo("project.yaml");
    assertThat(folder.line(finding.at()).substring(finding.at().column() - 1)).startsWith("\u6728");
  }

  @Test
  void pointsAtTheTermWhenTheCharacterStandsThere() {
    Html page = new Html("<p>2027 \u6728</p>", Map.of());
    Request request = new Request("", List.of(), Set.of(), "2027 \u6728");
    Finding finding = Refusals.unprintable(page, SAMPLE, request);
    assertThat(finding).isNotNull();
    assertThat(finding.at().toString()).isEqualTo("--term:1:6");
  }

  @Test
  void hasNothingAgainstWhatOurTypefacesHave() {
    Html page = new Html("<p>K\u00e4stchen \u2116 1 \u2610 \u26a0</p>", Map.of());
    assertThat(Refusals.unprintable(page, SAMPLE, Request.plain())).isNull();
  }

  @Test
  void blamesAProjectsOwnTemplates() {
    PageRefused refused = refusal("p {font-family: Helvetica}", "lost");
    Finding finding = Refusals.explain(refused, SAMPLE, Set.of("packet.css"));
    assertThat(finding).isNotNull();
    assertThat(finding.code()).isEqualTo("template-error");
    assertThat(finding.at().file()).isEqualTo("packet-templates/packet.css");
  }

  @Test
  void saysOnceInOurWordsThatNoOtherStyleSheetIsRead() {
    PageRefused refused = refusal("@import url('http://example.org/x.css');", "lost");
    assertThat(refused)
        .hasMessage(
            "the page was not laid out as written: a style sheet asks for another one, and no"
                + " other is read");
  }

  @Test
  void blamesNobodyForABugOfOurs() {
    PageRefused refused = refusal("p {font-family: Helvetica}", "lost");
    assertThat(Refusals.explain(refused, SAMPLE, Set.of())).isNull();
  }
}
