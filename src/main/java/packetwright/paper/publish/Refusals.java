package packetwright.paper.publish;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.html.TemplateFiller;
import packetwright.paper.pdf.PageRefused;
import packetwright.text.source.Finding;
import packetwright.text.source.Span;

/** Says of a page that was refused where in the project the reason stands. */
final class Refusals {
  private Refusals() {}

  /** The finding, or none when the project is not to blame: then it is a bug of ours. */
  static @Nullable Finding explain(
      PageRefused refused, ProjectFolder folder, Set<String> ownTemplates) {
    if (refused.codePoint() >= 0) {
      String sign = Character.toString(refused.codePoint());
      Span at = find(sign, folder);
      if (at != null) {
        return Finding.error(
            "unprintable-character",
            at,
            "our typefaces have no `" + sign + "`",
            "write it with other signs");
      }
    }
    return ownTemplates.stream()
        .sorted()
        .findFirst()
        .map(name -> template(name, refused))
        .orElse(null);
  }

  private static Finding template(String name, PageRefused refused) {
    return Finding.error(
        "template-error",
        Span.startOf(TemplateFiller.FOLDER + name),
        "with the project's own templates, " + refused.getMessage(),
        "compare them with those that come with Packetwright");
  }

  private static @Nullable Span find(String sign, ProjectFolder folder) {
    for (String file : folder.files()) {
      if (folder.text(file).hasValue()) {
        List<String> lines = folder.lines(file);
        for (int line = 0; line < lines.size(); line++) {
          int column = lines.get(line).indexOf(sign);
          if (column >= 0) {
            return new Span(file, line + 1, column + 1, sign.length());
          }
        }
      }
    }
    return null;
  }
}
