package packetwright.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Finding;
import packetwright.text.source.FindingText;

/** A sample with a stretch of text missing or in the wrong place never ends in an exception. */
class DamagedProjectTest {
  private static final ProjectFolder BOX = ProjectFolder.sample("sliding-lid-box");
  private static final List<String> PIECES =
      List.of(
          "", "\n", "  ", ":", "{", "}", "[", "]", "- ", "\"", "'", ",", "#", "`", "\\", "\t", "-1",
          "\u0000");

  @Property(tries = 300)
  void isReportedNotThrown(
      @ForAll @IntRange(max = 3) int file,
      @ForAll @IntRange(max = 1_000_000) int place,
      @ForAll @IntRange(max = 30) int missing,
      @ForAll @IntRange(max = 17) int piece) {
    String name = BOX.files().get(file);
    String text = BOX.text(name).value();
    int from = place % text.length();
    int to = Math.min(text.length(), from + missing);
    String damaged = text.substring(0, from) + PIECES.get(piece) + text.substring(to);
    ProjectFolder folder = BOX.with(name, damaged);
    for (Finding finding : ProjectCheck.findings(folder, Request.plain())) {
      assertThat(FindingText.render(finding, folder.line(finding.at())))
          .contains(finding.code(), finding.at().file());
    }
  }
}
