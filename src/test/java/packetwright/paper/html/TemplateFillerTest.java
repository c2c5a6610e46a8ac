package packetwright.paper.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.paper.packet.Heading;
import packetwright.paper.packet.SampleLesson;
import packetwright.paper.packet.StudentPacket;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;

class TemplateFillerTest {
  private static final StudentPacket PACKET = SampleLesson.documents().student();

  private static Checked<Html> fill(Map<String, String> overrides, StudentPacket packet) {
    return new TemplateFiller(SampleLesson.WORDS, overrides).student(packet, Paper.LETTER);
  }

  private static StudentPacket titled(String title) {
    return new StudentPacket(
        new Heading(title, "", "", "", true, List.of()),
        PACKET.cover(),
        PACKET.apart(),
        PACKET.drawings(),
        PACKET.parts(),
        PACKET.handed(),
        PACKET.blanks(),
        PACKET.steps(),
        PACKET.machines(),
        PACKET.fitting(),
        PACKET.quiz(),
        PACKET.rubric(),
        PACKET.glossary());
  }

  @Test
  void namesEveryDrawingThatItPlaces() {
    Html html = fill(Map.of(), PACKET).value();
    assertThat(html.sheets().keySet())
        .contains("scale-strip", "cover", "exploded", "layout-4", "check-bar", "sign-alert");
    html.sheets()
        .keySet()
        .forEach(name -> assertThat(html.text()).contains("data-sheet=\"" + name + "\""));
  }

  @Test
  void printsATitleAsTextWhateverItHolds() {
    assertThat(fill(Map.of(), titled("<script>${1+1}</script> & more")).value().text())
        .contains("<h1>&lt;script&gt;${1+1}&lt;/script&gt; &amp; more</h1>")
        .doesNotContain("<script>");
  }

  @Test
  void putsPaperIntoTheStyleSheet() {
    TemplateFiller filler = new TemplateFiller(SampleLesson.WORDS, Map.of());
    assertThat(filler.student(PACKET, Paper.A4).value().text()).contains("@page { size: a4;");
    assertThat(filler.student(PACKET, Paper.LETTER).value().text())
        .contains("@page { size: letter;");
  }

  @Test
  void takesAProjectsOwnFileInPlaceOfOurs() {
    assertThat(fill(Map.of("packet.css", "h1 { font-size: 50pt }"), PACKET).value().text())
        .contains("h1 { font-size: 50pt }")
        .doesNotContain(".step-head");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
        "${document?api.class}",
        "${document.class.name}",
        "${document.heading.toString()}",
        "<#include \"../../../../etc/hostname\">",
        "<#import \"/META-INF/MANIFEST.MF\" as m>${m}",
        "${nobody}",
        "<#list>"
      })
  void refusesATemplateThatReachesOut(String template) {
    Checked<Html> html = fill(Map.of("student-packet.ftlh", "x\n  " + template), PACKET);
    assertThat(html.hasValue()).isFalse();
    assertThat(html.findings()).extracting(Finding::code).containsExactly("template-error");
    assertThat(html.findings().get(0).at().file())
        .isEqualTo("packet-templates/student-packet.ftlh");
    assertThat(html.findings().get(0).at().line()).isEqualTo(2);
  }

  @Test
  void sameDataGiveSameText() {
    assertThat(List.of(fill(Map.of(), PACKET).value().text()))
        .containsExactly(fill(Map.of(), PACKET).value().text());
  }
}
