package packetwright.golden;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.html.Paper;
import packetwright.paper.publish.Publisher;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.FindingText;
import packetwright.text.source.Findings;

/** What golden cases run: everything that finds something in a project folder. */
final class ProjectCheck {
  private ProjectCheck() {}

  /** All findings of a folder on disk, as a terminal shows them. */
  static String report(Checked<ProjectFolder> read, Request request) {
    List<Finding> findings = new ArrayList<>(read.findings());
    ProjectFolder folder = read.valueOrNull();
    if (folder != null && read.isGood()) {
      findings.addAll(findings(folder, request));
    }
    StringBuilder text = new StringBuilder();
    for (Finding finding : findings) {
      String line = folder == null ? "" : withSet(folder, request).line(finding.at());
      text.append(FindingText.render(finding, line)).append('\n');
    }
    return text.toString();
  }

  /** All findings of the whole way to the documents, in order. */
  static List<Finding> findings(ProjectFolder folder, Request request) {
    Findings findings = new Findings();
    Lesson lesson = findings.take(Lessons.workOut(withSet(folder, request), request));
    if (lesson != null) {
      Publisher.Output output = new Publisher.Output(Paper.LETTER, "A");
      findings.addAll(new Publisher(folder, request, output).check(lesson));
    }
    return findings.list();
  }

  /** With the text of {@code --set} under the name that findings use for it. */
  private static ProjectFolder withSet(ProjectFolder folder, Request request) {
    return folder.with(Lessons.SET, String.join("\n", request.set()));
  }

  /** The findings of an edited sample. */
  static String report(GoldenCase golden, Path work, boolean mended) throws IOException {
    return report(golden.project(work, mended), golden.request());
  }
}
