package packetwright.plan.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.project.Project.BlankDefinition;
import packetwright.text.measure.Length;
import packetwright.text.source.Located;
import packetwright.wood.operation.OperationRun;

/**
 * A change after which the same work passes, verified by a run.
 *
 * @param change what to write
 * @param plan the procedure with the change in it
 * @param from the procedure without it
 */
record WayOut(Change change, Plan plan, Plan from) {
  /** As a hint says it: what to write where. */
  String words() {
    return change.match(
        new Change.Cases<>() {
          @Override
          public String rewritten(Change.Rewritten change) {
            return rewriting(change.old(), change.instead());
          }

          @Override
          public String stepMoved(Change.StepMoved change) {
            boolean isIts = change.step().operations().contains(change.old());
            String step = isIts ? "this step" : "step " + change.step().label() + ",";
            String before =
                isIts ? "step " + change.before().label() : "this one, " + change.before().label();
            return "move " + step + " before " + before + lengthThere(change) + alsoWrite(change);
          }

          @Override
          public String moved(Change.Moved change) {
            return "move this operation into step "
                + change.into().label()
                + ", before `- "
                + written(change.before())
                + "`"
                + lengthThere(change)
                + alsoWrite(change);
          }

          @Override
          public String longer(Change.Longer change) {
            return "write `sections: "
                + sections(change)
                + "` at blank `"
                + change.blank().value()
                + "`";
          }
        });
  }

  /** The hint of a moved operation that reads otherwise in its new place. */
  private static String alsoWrite(Change change) {
    String more = rewriting(change.old(), change.instead());
    return more.isEmpty() ? "" : ", and " + more;
  }

  /** What differs between two ways of writing an operation. */
  private static String rewriting(Operation old, Operation instead) {
    List<String> words = new ArrayList<>();
    if (!names(old).equals(names(instead))) {
      words.add("`- " + written(instead) + "` in place of `- " + written(old) + "`");
    }
    Located<String> piece = instead.piece();
    if (piece != null && !piece.equals(old.piece())) {
      words.add("`piece: " + piece.value() + "`");
    }
    if (instead.at() != null && !instead.at().equals(old.at())) {
      words.add("`at: " + instead.at().value().word() + "`");
    }
    if (!instead.with().equals(old.with())) {
      words.add("`with: " + controls(instead) + "`");
    }
    List<String> deleted = new ArrayList<>();
    if (instead.stacked() != old.stacked() && instead.stacked() == 1) {
      deleted.add("`stacked`");
    } else if (instead.stacked() != old.stacked()) {
      words.add("`stacked: " + instead.stacked() + "`");
    }
    old.set().keySet().stream()
        .filter(name -> !instead.set().containsKey(name))
        .forEach(name -> deleted.add("`" + name + "` under `set`"));
    if (old.stop() && !instead.stop()) {
      deleted.add("`stop`");
    }
    List<String> both = new ArrayList<>();
    if (!words.isEmpty()) {
      both.add("write " + String.join(" and ", words));
    }
    if (!deleted.isEmpty()) {
      both.add("delete " + String.join(" and ", deleted));
    }
    return String.join(" and ", both);
  }

  private static List<String> names(Operation operation) {
    return operation.targets().stream().map(Located::value).toList();
  }

  private static String written(Operation operation) {
    List<String> names = names(operation);
    String targets = names.size() == 1 ? names.get(0) : names.toString();
    return operation.verb().value().word() + ": " + targets;
  }

  private static String controls(Operation operation) {
    return operation.with().stream()
        .map(Control::name)
        .map(name -> name.toLowerCase(Locale.ROOT))
        .collect(Collectors.joining(", ", "[", "]"));
  }

  private String sections(Change.Longer change) {
    BlankDefinition definition =
        from.project().blanks().stream()
            .filter(b -> b.name().value().equals(change.blank().value()))
            .findFirst()
            .orElseThrow();
    return change.sections(definition).entrySet().stream()
        .map(section -> section.getKey() + ": " + quoted(section.getValue().value()))
        .collect(Collectors.joining(", ", "{", "}"));
  }

  /** A comma would end the formula where it stands among others. */
  private static String quoted(String formula) {
    return formula.contains(",") ? "\"" + formula + "\"" : formula;
  }

  /** Where the piece is of another length there. */
  private String lengthThere(Change change) {
    OperationRun here = from.runOf(change.instead());
    OperationRun there = plan.runOf(change.instead());
    if (here == null || there == null) {
      return "";
    }
    Length now = shortest(here);
    Length then = shortest(there);
    return now.equals(then)
        ? ""
        : ", where the piece is " + from.project().rule().printExactly(then) + " long";
  }

  private static Length shortest(OperationRun run) {
    return run.before().stream()
        .map(piece -> piece.solid().length())
        .reduce(Length::min)
        .orElse(Length.ZERO);
  }
}
