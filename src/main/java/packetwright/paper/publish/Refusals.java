package packetwright.paper.publish;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.ProjectFolder;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.lettering.Lettering;
import packetwright.paper.html.Html;
import packetwright.paper.html.TemplateFiller;
import packetwright.paper.pdf.PageRefused;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Finding;
import packetwright.text.source.Span;

/** Says of a page that was refused where in the project the reason stands. */
final class Refusals {
  private Refusals() {}

  /** The finding, or none when the project is not to blame: then it is a bug of ours. */
  static @Nullable Finding explain(
      PageRefused refused, ProjectFolder folder, Set<String> ownTemplates) {
    return ownTemplates.stream()
        .sorted()
        .findFirst()
        .map(name -> template(name, refused))
        .orElse(null);
  }

  /** The first character of a page that our typefaces lack, where it is written; none when none. */
  static @Nullable Finding unprintable(Html page, ProjectFolder folder, Request request) {
    return page.text()
        .codePoints()
        .filter(c -> !Character.isISOControl(c) && !isCovered(c))
        .mapToObj(Character::toString)
        .findFirst()
        .map(sign -> unprintable(sign, folder, request))
        .orElse(null);
  }

  /** Text is set in the face that the page asks for, or in the face for signs. */
  private static boolean isCovered(int codePoint) {
    return Lettering.covers(Face.SYMBOL, codePoint)
        || List.of(Face.REGULAR, Face.ITALIC, Face.BOLD, Face.BOLD_ITALIC).stream()
            .allMatch(face -> Lettering.covers(face, codePoint));
  }

  private static Finding unprintable(String sign, ProjectFolder folder, Request request) {
    Span inFile = find(sign, folder);
    int inTerm = Math.max(0, request.term().indexOf(sign));
    return Finding.error(
        "unprintable-character",
        inFile == null ? new Span("--term", 1, inTerm + 1, sign.length()) : inFile,
        "our typefaces have no `" + sign + "`",
        "write it with other signs");
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
