package packetwright.definition.project;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.text.document.Node;
import packetwright.text.document.Schema;
import packetwright.text.document.Yaml;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;

/** Reads {@code quiz.yaml}. */
final class QuizReader {
  private static final Schema SCHEMA = Schema.named("quiz");
  private static final Set<String> OF_EVERY_KIND = Set.of("kind", "count", "about");

  private QuizReader() {}

  /** The file's content, checked for its shape; none when it is no YAML. */
  static @Nullable Node read(String file, String text, Findings findings) {
    Node node = findings.take(Yaml.read(file, text));
    if (node != null) {
      findings.addAll(SCHEMA.check(node));
    }
    return node;
  }

  /** The questions that stand. */
  static QuizDefinition quiz(Node.Mapping root) {
    List<QuizDefinition.QuestionDefinition> questions = new ArrayList<>();
    for (Node item : root.items("questions")) {
      Node.Mapping question = item.asMapping();
      Located<String> kind = question == null ? null : question.text("kind");
      if (question != null && kind != null) {
        questions.add(question(kind, question));
      }
    }
    return new QuizDefinition(questions);
  }

  private static QuizDefinition.QuestionDefinition question(
      Located<String> kind, Node.Mapping question) {
    Map<String, List<Located<String>>> values = new LinkedHashMap<>();
    for (String key : question.keys()) {
      if (!OF_EVERY_KIND.contains(key)) {
        values.put(key, question.texts(key));
      }
    }
    return new QuizDefinition.QuestionDefinition(
        kind, question.whole("count", 1), values, question.text("about", ""));
  }
}
