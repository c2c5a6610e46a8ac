package packetwright.paper.quiz;

import java.util.Map;
import java.util.TreeMap;
import packetwright.definition.project.QuizDefinition.QuestionDefinition;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.NearMiss;

/** Makes one form of a quiz: the same input gives the same form on every machine. */
public final class QuizMaker {
  /** Most questions of one definition. */
  private static final int MOST = 50;

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
        findings.add(
            Finding.error(
                "unknown-question-kind",
                definition.kind().at(),
                "no kind of question is called `" + name + "`",
                NearMiss.hint(name, KINDS.keySet())));
      } else if (definition.count() < 1 || definition.count() > MOST) {
        findings.add(
            Finding.error(
                "question-count",
                definition.kind().at(),
                "`count` is " + definition.count() + "; it is from 1 to " + MOST,
                "write a count from 1 to " + MOST));
      } else {
        kind.ask(definition, desk);
      }
    }
    return findings.checked(new Quiz(input.form(), desk.questions()));
  }
}
