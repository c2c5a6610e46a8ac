package packetwright.paper.quiz;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.sheet.Sheet;
import packetwright.text.words.Phrase;

/**
 * One form of the measuring quiz, with its key.
 *
 * @param form label on the page
 * @param questions numbered from 1 in this order
 */
public record Quiz(String form, List<Question> questions) {
  /** Keeps its own copy. */
  public Quiz {
    questions = List.copyOf(questions);
  }

  /**
   * One question.
   *
   * @param prompt what is asked
   * @param drawing to measure or read, at true scale, or none
   * @param answer the right one
   * @param working how it is reached, a line each
   * @param mistakes wrong answers that each show a mistake
   */
  public record Question(
      Phrase prompt,
      @Nullable Sheet drawing,
      Phrase answer,
      List<Phrase> working,
      List<Mistake> mistakes) {
    /** Keeps its own copies. */
    public Question {
      working = List.copyOf(working);
      mistakes = List.copyOf(mistakes);
    }
  }

  /**
   * A wrong answer and what it shows.
   *
   * @param answer as the student would write it
   * @param shows what was done wrong
   */
  public record Mistake(Phrase answer, Phrase shows) {}
}
