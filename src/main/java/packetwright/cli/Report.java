package packetwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.publish.Json;
import packetwright.text.source.Finding;
import packetwright.text.source.FindingText;
import packetwright.text.source.Severity;

/** Shows findings to people and to programs. */
final class Report {
  private Report() {}

  /** Each finding with its line, and a last line that counts them; empty when there are none. */
  static String text(List<Finding> findings, @Nullable ProjectFolder folder) {
    StringBuilder text = new StringBuilder();
    for (Finding finding : findings) {
      text.append(FindingText.render(finding, folder == null ? "" : folder.line(finding.at())));
      text.append('\n');
    }
    if (!findings.isEmpty()) {
      text.append(count(findings)).append('\n');
    }
    return text.toString();
  }

  private static String count(List<Finding> findings) {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long n = findings.stream().filter(f -> f.severity() == severity).count();
      if (n > 0) {
        counts.add(n + " " + severity.word() + (n == 1 ? "" : "s"));
      }
    }
    return String.join(", ", counts);
  }

  /** A JSON list of the findings. */
  static String json(List<Finding> findings) {
    List<Object> list = new ArrayList<>();
    for (Finding finding : findings) {
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("code", finding.code());
      entry.put("severity", finding.severity().word());
      entry.put("file", finding.at().file());
      entry.put("line", finding.at().line());
      entry.put("column", finding.at().column());
      entry.put("message", finding.message());
      entry.put("hint", finding.hint());
      entry.put("step", finding.step());
      list.add(entry);
    }
    return Json.text(list);
  }
}
