package packetwright.definition.project;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import packetwright.text.source.Located;

/**
 * What the quiz asks, as its author wrote it.
 *
 * @param questions in the order asked
 */
public record QuizDefinition(List<QuestionDefinition> questions) {
  /** A project without a quiz. */
  public static final QuizDefinition NONE = new QuizDefinition(List.of());

  /** Keeps its own copy. */
  public QuizDefinition {
    questions = List.copyOf(questions);
  }

  /**
   * Questions of one kind.
   *
   * @param kind {@code read_rule}, {@code add}, {@code subtract}
   * @param count how many, 1 or more
   * @param values of the kind's own keys, in the order written
   * @param about name of the size that the answer is; empty when it is none
   */
  public record QuestionDefinition(
      Located<String> kind, int count, Map<String, List<Located<String>>> values, String about) {
    /** Keeps its own copy. */
    public QuestionDefinition {
      values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }
  }
}
