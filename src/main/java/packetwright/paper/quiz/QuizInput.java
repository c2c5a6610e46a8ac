package packetwright.paper.quiz;

import java.util.List;
import packetwright.definition.project.Project.Given;
import packetwright.definition.project.QuizDefinition.QuestionDefinition;
import packetwright.definition.size.Sizes;
import packetwright.text.measure.Rule;
import packetwright.text.words.Words;

/**
 * What one form of a quiz is made from.
 *
 * @param projectId fixed for the project's life; seeds use it, as they use term and form
 * @param rule the project's rule: unit and graduation of what is added and subtracted
 * @param term label of this run; may be empty
 * @param form label of the form, or the student it is for
 * @param questions what is asked, in order
 * @param sizes of the lesson, so that a substitution changes the questions
 * @param givens with the ranges that their values may have
 * @param words to print in
 */
public record QuizInput(
    String projectId,
    Rule rule,
    String term,
    String form,
    List<QuestionDefinition> questions,
    Sizes sizes,
    List<Given> givens,
    Words words) {
  /** Keeps its own copy. */
  public QuizInput {
    questions = List.copyOf(questions);
    givens = List.copyOf(givens);
  }
}
