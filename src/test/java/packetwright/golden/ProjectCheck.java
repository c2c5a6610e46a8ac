package packetwright.golden;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.ProcedureReader;
import packetwright.definition.procedure.Variant;
import packetwright.definition.project.Project;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.project.ProjectReader;
import packetwright.definition.shop.Shop;
import packetwright.definition.shop.ShopReader;
import packetwright.definition.size.Sizes;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.FindingText;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/** What golden cases run: everything that finds something in a project folder. */
final class ProjectCheck {
  private ProjectCheck() {}

  /** All findings in order of their places, as a terminal shows them. */
  static String findings(GoldenCase golden, Path work) throws java.io.IOException {
    Checked<ProjectFolder> read = golden.project(work);
    ProjectFolder folder = read.valueOrNull();
    List<Finding> findings = new ArrayList<>(read.findings());
    if (folder != null) {
      findings.addAll(findings(folder, Set.copyOf(golden.options()), golden.substitution()));
    }
    StringBuilder text = new StringBuilder();
    for (Finding finding : findings.stream().sorted((a, b) -> a.at().compareTo(b.at())).toList()) {
      String line = folder == null ? "" : folder.line(finding.at());
      text.append(FindingText.render(finding, line)).append('\n');
    }
    return text.toString();
  }

  static List<Finding> findings(
      ProjectFolder folder, Set<String> options, Map<String, Located<Quantity>> substitution) {
    Findings findings = new Findings();
    Project project = findings.take(ProjectReader.read(folder));
    Shop shop = folder.has("shop.yaml") ? shop(folder, findings) : ShopReader.builtIn();
    if (project != null) {
      findings.take(Sizes.of(project, shop, substitution));
    }
    String text = findings.take(folder.text(ProcedureReader.PROCEDURE));
    if (text != null) {
      Set<String> known = project == null ? null : project.options().keySet();
      Procedure procedure =
          findings.take(
              ProcedureReader.read(
                  ProcedureReader.PROCEDURE, text, new Variant(shop, known, options)));
      if (procedure == null) {
        return findings.list();
      }
    }
    return findings.list();
  }

  private static Shop shop(ProjectFolder folder, Findings findings) {
    String text = findings.take(folder.text("shop.yaml"));
    Shop shop = text == null ? null : findings.take(ShopReader.read("shop.yaml", text));
    return shop == null ? ShopReader.builtIn() : shop;
  }
}
