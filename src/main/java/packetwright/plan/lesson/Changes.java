package packetwright.plan.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.procedure.Step;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Length;
import packetwright.text.measure.Unit;
import packetwright.text.source.Located;
import packetwright.wood.blank.Blank;
import packetwright.wood.caution.Refused;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.operation.Simulation;
import packetwright.wood.part.Part;
import packetwright.wood.workpiece.Bench;
import packetwright.wood.workpiece.Workpiece;

/** The changes that are likely to help where an operation is refused; none of them is run here. */
final class Changes {
  private static final Pattern QUOTED = Pattern.compile("`([a-z_]+)`");

  /** Work on a piece up to this length is soon done by hand; common practice, no source. */
  private static final Length SMALL = Length.ofInches(12);

  /** How much longer a section is tried, in whole inches or in steps of 20 mm. */
  private static final int LONGER = 24;

  private final Plan plan;
  private final Refused refused;
  private final Operation old;
  private final Set<String> blanks = new LinkedHashSet<>();

  Changes(Plan plan, Refused refused) {
    this.plan = plan;
    this.refused = refused;
    this.old = refused.run().operation();
    blanks.addAll(blanks(refused.run()));
  }

  /**
   * Changes of one kind, of which one is enough.
   *
   * @param changes those that give least trouble first
   * @param isRising whether all that follow one that helps would help too
   */
  record Kind(List<Change> changes, boolean isRising) {
    Kind {
      changes = List.copyOf(changes);
    }

    private static Kind of(List<Change> changes) {
      return new Kind(changes, false);
    }
  }

  /** All but the controls, those that give least trouble first. */
  List<Kind> byKind() {
    boolean isSmall =
        refused.run().before().stream().noneMatch(p -> p.solid().length().isMore(SMALL));
    List<Kind> kinds = new ArrayList<>();
    kinds.add(Kind.of(lessWritten()));
    kinds.add(Kind.of(positions()));
    kinds.add(Kind.of(tools(true)));
    kinds.add(control(refused) == Control.JIG ? used(Control.JIG) : Kind.of(List.of()));
    Kind byHand = Kind.of(tools(false));
    if (isSmall) {
      kinds.add(byHand);
    }
    kinds.addAll(longer());
    if (!isSmall) {
      kinds.add(byHand);
    }
    return kinds;
  }

  // ---- controls

  /** The control that answers a refusal: as the rule says, or as its hint names it. */
  static @Nullable Control control(Refused refused) {
    if (refused.control() != null) {
      return refused.control();
    }
    Matcher quoted = QUOTED.matcher(refused.finding().hint());
    return Stream.iterate(quoted.find(), found -> found, found -> quoted.find())
        .map(found -> quoted.group(1).toUpperCase(Locale.ROOT))
        .flatMap(word -> Arrays.stream(Control.values()).filter(c -> c.name().equals(word)))
        .findFirst()
        .orElse(null);
  }

  /** The control that is missing, where it lies ready. */
  Kind controls() {
    Control control = control(refused);
    return control == Control.JIG ? Kind.of(List.of()) : used(control);
  }

  private Kind used(@Nullable Control control) {
    return Kind.of(
        control == null || old.with().contains(control)
            ? List.of()
            : List.of(new Change.Rewritten(old, old.withControls(Set.of(control)))));
  }

  // ---- what is written at the operation

  /** A lower stack, the highest first; then each setting left to be reckoned. */
  private List<Change> lessWritten() {
    List<Change> changes = new ArrayList<>();
    for (int pieces = old.stacked() - 1; pieces > 0; pieces--) {
      changes.add(new Change.Rewritten(old, old.withStacked(pieces)));
    }
    for (String setting : old.set().keySet()) {
      changes.add(new Change.Rewritten(old, old.withoutSetting(setting)));
    }
    return changes;
  }

  // ---- positions

  /** From the nearest earlier on; then after the next step. */
  private List<Change> positions() {
    List<Step> steps = plan.procedure().steps();
    int own = steps.stream().map(Step::id).toList().indexOf(refused.run().step().id());
    Step step = steps.get(own);
    List<Change> changes = new ArrayList<>();
    for (Operation earlier : step.operations()) {
      if (earlier.place().equals(old.place())) {
        break;
      }
      changes.addAll(0, moved(step, earlier));
    }
    for (int i = own - 1; i >= 0; i--) {
      Step before = steps.get(i);
      if (touches(before) && !begins(before)) {
        for (Operation there : there(before, 0)) {
          changes.add(new Change.StepMoved(step, before, old, there));
        }
        if (step.operations().size() > 1 && !before.operations().isEmpty()) {
          changes.addAll(moved(before, before.operations().get(0)));
        }
      }
    }
    if (own + 1 < steps.size() && touches(steps.get(own + 1))) {
      changes.add(new Change.StepMoved(steps.get(own + 1), step, old, old));
    }
    return changes;
  }

  private List<Change> moved(Step into, Operation before) {
    int offset = into.operations().indexOf(before);
    return there(into, offset).stream()
        .map(there -> (Change) new Change.Moved(old, there, into, before))
        .toList();
  }

  /** How the operation may read at an earlier place: on its own piece, or on what holds it then. */
  private List<Operation> there(Step step, int offset) {
    Bench bench = plan.trace().before(plan.firstOf(step) + offset);
    boolean isFeature = old.targets().stream().anyMatch(t -> t.value().contains("."));
    List<String> names =
        isFeature && old.piece() != null
            ? List.of(old.piece().value())
            : old.targets().stream().map(t -> t.value().replaceFirst("\\..*", "")).toList();
    boolean isParting = old.verb().value() == Verb.CROSSCUT;
    if (isParting || names.stream().noneMatch(name -> bench.named(name).isEmpty())) {
      return List.of(old);
    }
    return bench.pieces().values().stream()
        .filter(p -> blanks.contains(p.blank()))
        .map(Workpiece::name)
        .filter(name -> !isPart(name))
        .map(old::on)
        .toList();
  }

  private boolean isPart(String piece) {
    return plan.fixed().parts().stream().anyMatch(p -> p.name().equals(Part.nameOf(piece)));
  }

  private boolean touches(Step step) {
    return plan.inOrder().stream()
        .filter(o -> o.step().id().equals(step.id()))
        .anyMatch(o -> blanks(o).stream().anyMatch(blanks::contains));
  }

  /** Whether a step makes the blank: nothing can be done to it before. */
  private boolean begins(Step step) {
    return step.operations().stream()
        .filter(o -> o.verb().value() == Verb.ROUGH_CUT)
        .anyMatch(o -> o.targets().stream().map(Located::value).anyMatch(blanks::contains));
  }

  private static Set<String> blanks(OperationRun run) {
    Set<String> blanks = new LinkedHashSet<>();
    run.before().forEach(piece -> blanks.add(piece.blank()));
    run.after().forEach(piece -> blanks.add(piece.blank()));
    return blanks;
  }

  // ---- tools

  private List<Change> tools(boolean powered) {
    List<Change> changes = new ArrayList<>();
    for (MachineKind kind : Simulation.tools(plan.inputs(), old)) {
      if (kind != refused.run().tool()
          && kind.isPowered() == powered
          && plan.fixed().shop().has(kind)) {
        changes.add(new Change.Rewritten(old, old.at(kind, old.stop())));
        if (old.stop()) {
          changes.add(new Change.Rewritten(old, old.at(kind, false)));
        }
      }
    }
    return changes;
  }

  // ---- longer blanks

  /** A longer section for the last part of each blank. */
  private List<Kind> longer() {
    List<Kind> kinds = new ArrayList<>();
    for (Blank blank : plan.blanks()) {
      if (blanks.contains(blank.name()) && !blank.pieces().isEmpty()) {
        String part = Part.nameOf(blank.pieces().get(blank.pieces().size() - 1));
        Located<String> name = new Located<>(blank.name(), blank.at());
        List<Change> changes = new ArrayList<>();
        sections(kept(blank)).forEach(s -> changes.add(new Change.Longer(old, name, part, s)));
        kinds.add(new Kind(changes, true));
      }
    }
    return kinds;
  }

  /** What is kept for the last piece of a blank now, with what holds it while it is cut. */
  private static Length kept(Blank blank) {
    String last = blank.pieces().get(blank.pieces().size() - 1);
    return blank.length().items().stream()
        .filter(
            item ->
                item.piece().equals(last)
                    || item.phrase().endsWith("_reserve")
                    || item.phrase().equals("blank.sheet_hold"))
        .map(Blank.Item::amount)
        .reduce(Length.ZERO, Length::plus);
  }

  private List<String> sections(Length kept) {
    boolean isInch = plan.project().rule().unit() == Unit.INCH;
    int stride = isInch ? 1 : 20;
    Length unit = new Length(plan.project().rule().unit().inBase());
    List<String> sections = new ArrayList<>();
    int at = 0;
    while (sections.size() < LONGER) {
      at += stride;
      if (unit.times(at).isMore(kept)) {
        sections.add(Integer.toString(at));
      }
    }
    return sections;
  }
}
