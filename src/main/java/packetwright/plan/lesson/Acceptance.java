package packetwright.plan.lesson;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.Step;
import packetwright.definition.project.Project;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.NearMiss;
import packetwright.wood.caution.CautionRules;
import packetwright.wood.caution.Refused;

/**
 * What became of the refusals, and of the entries under {@code accepted}.
 *
 * @param accepted those that an entry answers for, in the order of the operations
 * @param standing those that stop the packet, in the same order
 */
record Acceptance(List<Lesson.Accepted> accepted, List<Refused> standing) {
  Acceptance {
    accepted = List.copyOf(accepted);
    standing = List.copyOf(standing);
  }

  /** What is wrong with the entries whatever is refused. */
  static List<Finding> wrong(Project project, Procedure procedure, CautionRules rules) {
    List<String> steps = procedure.steps().stream().map(Step::id).toList();
    List<Finding> findings = new ArrayList<>();
    for (Project.Accepted entry : project.accepted()) {
      String code = entry.refusal().value();
      String step = entry.step().value();
      if (!rules.codes().contains(code)) {
        findings.add(
            Finding.error(
                "unknown-refusal",
                entry.refusal().at(),
                "no caution refuses anything as `" + code + "`",
                near(code, rules.codes(), "copy the code that the report shows in brackets")));
      } else if (!rules.isEverWaivable(code)) {
        findings.add(notWaivable(entry));
      }
      if (!steps.contains(step)) {
        findings.add(
            Finding.error(
                "unknown-step",
                entry.step().at(),
                "there is no step `" + step + "`",
                near(
                    step, steps, "write the step's title in lower case, with hyphens for spaces")));
      }
    }
    return findings;
  }

  private static String near(String word, Collection<String> known, String otherwise) {
    String hint = NearMiss.hint(word, known);
    return hint.isEmpty() ? otherwise : hint;
  }

  /** Takes out what is accepted; an entry that answers for nothing is a finding. */
  static Acceptance of(Project project, List<Refused> refused, Findings findings) {
    List<Lesson.Accepted> accepted = new ArrayList<>();
    List<Refused> standing = new ArrayList<>();
    for (Refused one : refused) {
      Located<String> because = because(project, one);
      if (because == null) {
        standing.add(one);
      } else {
        accepted.add(new Lesson.Accepted(one, because.value()));
      }
    }
    for (Project.Accepted entry : project.accepted()) {
      List<Refused> answered = refused.stream().filter(one -> answers(entry, one)).toList();
      if (answered.isEmpty()) {
        findings.add(inVain(entry));
      } else if (!answered.stream().allMatch(Refused::isWaivable)) {
        findings.add(notWaivable(entry)); // another machine's refusal of that code could be
      }
    }
    return new Acceptance(accepted, standing);
  }

  private static @Nullable Located<String> because(Project project, Refused refused) {
    return project.accepted().stream()
        .filter(entry -> refused.isWaivable() && answers(entry, refused))
        .map(Project.Accepted::because)
        .findFirst()
        .orElse(null);
  }

  private static boolean answers(Project.Accepted entry, Refused refused) {
    return entry.refusal().value().equals(refused.finding().code())
        && entry.step().value().equals(refused.run().step().id());
  }

  private static Finding notWaivable(Project.Accepted entry) {
    return Finding.error(
        "not-waivable",
        entry.refusal().at(),
        "nobody may accept `" + entry.refusal().value() + "`, whatever the reason",
        "delete this entry, and change the step instead");
  }

  /**
   * A warning and no error: the packet is as it should be, and the same project may need the entry
   * in another shop.
   */
  private static Finding inVain(Project.Accepted entry) {
    return Finding.warning(
        "accepted-in-vain",
        entry.refusal().at(),
        "nothing is refused as `"
            + entry.refusal().value()
            + "` in step `"
            + entry.step().value()
            + "` now",
        "delete this entry, so that it does not answer for a later change that nobody has looked"
            + " at");
  }
}
