package packetwright.paper.quiz;

import java.util.Map;
import java.util.TreeMap;
import packetwright.definition.project.QuizDefinition.QuestionDefinition;
import packetwright.text.source.Checked;
import packetwright.text.source.Findings;

/** Makes one form of a quiz: the same input gives the same form on every machine. */
public final class QuizMaker {
  private static final Map<String, Kind> KINDS =
      new TreeMap<>(
          Map.of(
              "read_rule", RuleReading::ask,
              "add", Addition::ask,
              "subtract", Subtraction::ask));

  private QuizMaker() {}

  /** Asks all the questions of one definition, or says why it cannot. */
  private interface Kind {
    void ask(QuestionDefinition definition, Desk desk);
  }

  /** One form with its key, or what is wrong with the definitions. */
  public static Checked<Quiz> make(QuizInput input) {
    Findings findings = new Findings();
    Desk desk = new Desk(input, findings);
    for (QuestionDefinition definition : input.questions()) {
      String name = definition.kind().value();
      Kind kind = KINDS.get(name);
      if (kind == null) {
        throw new IllegalStateException("no kind of question " + name);
      }
      kind.ask(definition, desk);
    }
    return findings.checked(new Quiz(input.form(), desk.questions()));
  }
}
