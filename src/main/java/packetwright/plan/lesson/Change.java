package packetwright.plan.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Procedure;
import packetwright.definition.procedure.Step;
import packetwright.definition.procedure.Variant;
import packetwright.definition.project.Project;
import packetwright.definition.project.Project.BlankDefinition;
import packetwright.text.source.Located;

/** One change of what an instructor wrote, so that a refused operation may be done. */
sealed interface Change {
  /** The procedure with the change made; the same where it changes the project. */
  default Procedure in(Procedure procedure, Variant variant) {
    return procedure;
  }

  /** The project with the change made; the same where it changes the procedure. */
  default Project in(Project project) {
    return project;
  }

  /** The refused operation as it was written. */
  Operation old();

  /** The same as it reads after the change. */
  Operation instead();

  /** The same change, with the operation written in another way. */
  Change saying(Operation other);

  /** What a change looks like to those that put it into words or carry it out. */
  <R> R match(Cases<R> cases);

  /** One answer for each kind of change. */
  interface Cases<R> {
    R rewritten(Rewritten change);

    R stepMoved(StepMoved change);

    R moved(Moved change);

    R longer(Longer change);
  }

  /** An operation written in another way where it stands. */
  record Rewritten(Operation old, Operation instead) implements Change {
    @Override
    public Procedure in(Procedure procedure, Variant variant) {
      return procedure.with(replaced(procedure.steps(), old, List.of(instead)), variant);
    }

    @Override
    public Change saying(Operation other) {
      return new Rewritten(old, other);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.rewritten(this);
    }
  }

  /**
   * A whole step moved.
   *
   * @param step as it stood
   * @param before the step that it now comes before
   * @param old the refused operation; it need not be in the moved step
   * @param instead how it reads there
   */
  record StepMoved(Step step, Step before, Operation old, Operation instead) implements Change {
    @Override
    public Procedure in(Procedure procedure, Variant variant) {
      List<Step> steps = new ArrayList<>(procedure.steps());
      steps.removeIf(other -> other.id().equals(step.id()));
      int to = steps.stream().map(Step::id).toList().indexOf(before.id());
      steps.add(to, step);
      return procedure.with(replaced(steps, old, List.of(instead)), variant);
    }

    @Override
    public Change saying(Operation other) {
      return new StepMoved(step, before, old, other);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.stepMoved(this);
    }
  }

  /**
   * One operation moved, out of a step that does more.
   *
   * @param old the refused operation
   * @param instead how it reads there
   * @param into the step that it moves to
   * @param before the operation of that step that it now comes before
   */
  record Moved(Operation old, Operation instead, Step into, Operation before) implements Change {
    @Override
    public Procedure in(Procedure procedure, Variant variant) {
      List<Step> without = replaced(procedure.steps(), old, List.of());
      return procedure.with(replaced(without, before, List.of(instead, before)), variant);
    }

    @Override
    public Change saying(Operation other) {
      return new Moved(old, other, into, before);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.moved(this);
    }
  }

  /**
   * A blank from which more is kept for one part.
   *
   * @param old the refused operation
   * @param blank its name
   * @param part whose section it is
   * @param section a formula
   */
  record Longer(Operation old, Located<String> blank, String part, String section)
      implements Change {
    @Override
    public Project in(Project project) {
      List<BlankDefinition> blanks = new ArrayList<>();
      for (BlankDefinition definition : project.blanks()) {
        boolean isIt = definition.name().value().equals(blank.value());
        blanks.add(isIt ? definition.with(sections(definition)) : definition);
      }
      return project.with(blanks);
    }

    /** All sections of the blank after the change, by part. */
    Map<String, Located<String>> sections(BlankDefinition definition) {
      Map<String, Located<String>> sections = new LinkedHashMap<>(definition.sections());
      sections.put(part, new Located<>(section, blank.at()));
      return Collections.unmodifiableMap(sections);
    }

    @Override
    public Operation instead() {
      return old;
    }

    @Override
    public Change saying(Operation other) {
      return this;
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.longer(this);
    }
  }

  /** The steps with others in place of one operation, which its place in the file tells. */
  private static List<Step> replaced(List<Step> steps, Operation old, List<Operation> others) {
    List<Step> changed = new ArrayList<>();
    for (Step step : steps) {
      List<Operation> operations = new ArrayList<>();
      for (Operation operation : step.operations()) {
        boolean isIt = operation.place().equals(old.place());
        operations.addAll(isIt ? others : List.of(operation));
      }
      changed.add(operations.equals(step.operations()) ? step : step.with(operations));
    }
    return changed;
  }
}
