package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Step;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.Side;
import packetwright.definition.shop.Machine;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.size.Evaluated;
import packetwright.definition.size.Size;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rule;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Located;
import packetwright.text.source.Span;
import packetwright.wood.operation.Simulation.Inputs;
import packetwright.wood.operation.Simulation.Outcome;
import packetwright.wood.part.Part;
import packetwright.wood.setup.Setting;
import packetwright.wood.setup.Setting.Kind;
import packetwright.wood.workpiece.Bench;
import packetwright.wood.workpiece.Workpiece;
import packetwright.wood.workpiece.Workpiece.State;

/** One operation about to be done: what is written, what lies on the bench, and what is found. */
final class Situation {
  private final Inputs inputs;
  private final Step step;
  private final Operation operation;
  private final Bench bench;
  private final List<OperationRun> earlier;
  private final Told told;
  private final Findings findings = new Findings();
  private final Settings settings = new Settings(this);

  Situation(
      Inputs inputs,
      Step step,
      Operation operation,
      Bench bench,
      List<OperationRun> earlier,
      Told told) {
    this.inputs = inputs;
    this.step = step;
    this.operation = operation;
    this.bench = bench;
    this.earlier = List.copyOf(earlier);
    this.told = told;
  }

  Inputs inputs() {
    return inputs;
  }

  Step step() {
    return step;
  }

  Operation operation() {
    return operation;
  }

  /** The operation's number through the whole procedure, from 0. */
  int index() {
    return earlier.size();
  }

  Bench bench() {
    return bench;
  }

  List<OperationRun> earlier() {
    return earlier;
  }

  List<Finding> findings() {
    return findings.list();
  }

  /** The finest graduation of the project's rule. */
  Length graduation() {
    Rule rule = inputs.project().rule();
    return new Length(rule.graduation().times(rule.unit().inBase()));
  }

  /** The place on the project's rule that is nearest to a length. */
  Length onGraduation(Length length) {
    return new Length(length.inches().roundedTo(graduation().inches()));
  }

  String print(Length length) {
    return inputs.print(length);
  }

  // ---- findings

  /** Notes an error at the operation's verb. */
  void error(String code, String message, String hint) {
    error(code, operation.place(), message, hint);
  }

  /** Notes an error at a place within the operation. */
  void error(String code, Span at, String message, String hint) {
    findings.add(Finding.error(code, at, message, hint).inStep(step.label()));
  }

  /** Notes what another stage has found about the operation. */
  void addAll(List<Finding> found) {
    found.forEach(f -> findings.add(f.inStep(step.label())));
  }

  /** What has been said before. */
  Told told() {
    return told;
  }

  /** Notes an error unless a side of the piece is in that state; once for all of its blank. */
  void require(String code, Workpiece piece, Side side, State state, String hint) {
    if (!piece.is(side, state) && told.isNew(code, piece.blank(), side.word())) {
      error(
          code,
          "the " + Listing.side(side) + " of `" + piece.name() + "` is not " + word(state) + " yet",
          hint);
    }
  }

  /** Notes one error for all the pieces that are not in that state on all of the sides. */
  void requireAll(String code, List<Workpiece> pieces, List<Side> sides, State state, String hint) {
    List<String> names =
        pieces.stream()
            .filter(p -> sides.stream().anyMatch(side -> !p.is(side, state)))
            .map(Workpiece::name)
            .toList();
    if (!names.isEmpty()) {
      String where = sides.size() == 1 ? " on the " + sides.get(0).word() : "";
      told.isNew(code);
      error(code, Listing.are(names) + " not " + word(state) + where + " yet", hint);
    }
  }

  private static String word(State state) {
    return state.name().toLowerCase(java.util.Locale.ROOT);
  }

  // ---- tools

  /** The tool that is used: the one written, or the verb's own; a missing one is a finding. */
  MachineKind tool(MachineKind otherwise) {
    Located<MachineKind> at = operation.at();
    MachineKind kind = at == null ? otherwise : at.value();
    if (!inputs.shop().has(kind) && told.isNew("tool-missing", kind.word())) {
      error(
          "tool-missing",
          at == null ? operation.place() : at.at(),
          "the shop has no `" + kind.word() + "`",
          "name another tool with `at:`, or write a variant of the step for this shop");
    }
    return kind;
  }

  @Nullable Machine machine(MachineKind kind) {
    return inputs.shop().machine(kind);
  }

  /** Width of wood that a tool turns to dust; a hand saw's is an allowance of the shop. */
  Length kerf(MachineKind kind) {
    Length kerf = inputs.shop().kerf(kind);
    // A dado set must not part anything; that it would is a caution's to say.
    boolean isMissing = kerf.signum() == 0 && kind != MachineKind.DADO_SET;
    if (isMissing && told.isNew("kerf-unknown", kind.word())) {
      error(
          "kerf-unknown",
          "the shop profile does not say how wide a cut the `" + kind.word() + "` makes",
          kind == MachineKind.HAND_SAW
              ? "add `hand_kerf:` to the shop's allowances"
              : "add `kerf:` to the machine");
    }
    return kerf;
  }

  Length machineValue(MachineKind kind, String name) {
    Machine machine = inputs.shop().machine(kind);
    return machine == null ? Length.ZERO : machine.value(name, Length.ZERO);
  }

  // ---- pieces

  /** The one piece of that name, or none with a finding that says why. */
  @Nullable Workpiece piece(Located<String> name) {
    List<Workpiece> pieces = pieces(name);
    if (pieces.size() > 1) {
      error(
          "several-pieces",
          name.at(),
          "`" + name.value() + "` stands for " + pieces.size() + " pieces here",
          "name one of them, such as `" + pieces.get(0).name() + "`");
    }
    return pieces.size() == 1 ? pieces.get(0) : null;
  }

  /** All pieces of that name; none with a finding that says why. */
  List<Workpiece> pieces(Located<String> name) {
    List<Workpiece> pieces = bench.named(name.value());
    if (pieces.isEmpty()) {
      missing(name);
    }
    return pieces;
  }

  /** The only target; naming several is a finding, and the first is taken. */
  Located<String> target() {
    List<Located<String>> targets = operation.targets();
    if (targets.size() > 1) {
      error(
          "several-targets",
          targets.get(1).at(),
          "`" + operation.verb().value().word() + "` takes one target at a time",
          "write one operation for each");
    }
    return targets.get(0);
  }

  /** The edge or end at the fence or stop, or the given one where none is written. */
  Side reference(Side otherwise) {
    return operation.from().isEmpty() ? otherwise : operation.from().get(0);
  }

  /** Notes an error where a piece is wider or thicker than the machine takes. */
  void requireCapacity(MachineKind kind, Workpiece piece) {
    String wide = over(kind, "widest", piece.solid().width());
    if (!wide.isEmpty() && told.isNew("piece-too-wide", wide)) {
      error("piece-too-wide", wide.formatted("wide"), "name another tool with `at:`");
    }
    String thick = over(kind, "thickest", piece.solid().thickness());
    if (!thick.isEmpty() && told.isNew("piece-too-thick", thick)) {
      error("piece-too-thick", thick.formatted("thick"), "name another tool with `at:`");
    }
  }

  /** That a piece is more than a machine takes, with room for the direction; or nothing. */
  private String over(MachineKind kind, String limit, Length extent) {
    Length most = machineValue(kind, limit);
    boolean isOver = most.signum() > 0 && extent.isMore(most);
    String told = "the piece is %s %%s here, and this shop's `%s` takes at most %s";
    return isOver ? told.formatted(print(extent), kind.word(), print(most)) : "";
  }

  /** The pieces of all targets, none twice. */
  List<Workpiece> targets() {
    List<Workpiece> all = new ArrayList<>();
    for (Located<String> target : operation.targets()) {
      pieces(target).stream().filter(p -> !all.contains(p)).forEach(all::add);
    }
    return all;
  }

  private void missing(Located<String> name) {
    String usedUp = bench.gone().get(name.value());
    if (usedUp != null) {
      error(
          "piece-used-up",
          name.at(),
          "nothing is left of `" + name.value() + "` after step " + usedUp,
          "move this operation before that step");
      return;
    }
    if (told.isNew("piece-not-made", Part.nameOf(name.value()))) {
      error(
          "piece-not-made",
          name.at(),
          "there is no `" + name.value() + "` yet at this step",
          makingHint(name.value()));
    }
  }

  private String makingHint(String name) {
    Verb verb = inputs.blank(name) != null ? Verb.ROUGH_CUT : Verb.CROSSCUT;
    String target = inputs.blank(name) != null ? name : Part.nameOf(name);
    boolean isPart = inputs.part(target) != null || inputs.blank(target) != null;
    return !isPart || comesLater(verb, target)
        ? "move this operation after the one that makes it"
        : "add `- " + verb.word() + ": " + target + "` to an earlier step";
  }

  /** Whether an operation of that verb on that target is still to come. */
  boolean comesLater(Verb verb, String target) {
    return inputs.procedure().steps().stream()
        .flatMap(s -> s.operations().stream())
        .skip(index())
        .filter(o -> o.verb().value() == verb)
        .anyMatch(o -> o.targets().stream().anyMatch(t -> t.value().equals(target)));
  }

  // ---- sizes and settings

  /** A formula's length, or none with findings. */
  @Nullable Evaluated length(Located<String> formula) {
    Checked<Evaluated> checked = inputs.sizes().evaluateLength(formula);
    checked.findings().forEach(f -> findings.add(f.inStep(step.label())));
    Evaluated evaluated = checked.valueOrNull();
    if (evaluated != null) {
      requireInspected(evaluated.fitted());
    }
    return evaluated;
  }

  /** Notes an error for each measured size that nobody has measured yet. */
  void requireInspected(Set<String> measured) {
    for (String size : new TreeSet<>(measured)) {
      if (!isInspectedBefore(size) && told.isNew("not-inspected", size)) {
        error(
            "not-inspected",
            "this cut depends on `" + size + "`, which nobody has measured yet",
            "add `- inspect: " + size + "`, with its `piece:`, to an earlier step");
      }
    }
  }

  /** Whether an earlier step, not this one, has the students measure it. */
  private boolean isInspectedBefore(String size) {
    return earlier.stream()
        .filter(run -> run.step().number() < step.number())
        .filter(run -> run.operation().verb().value() == Verb.INSPECT)
        .anyMatch(run -> run.operation().targets().stream().anyMatch(t -> t.value().equals(size)));
  }

  /** What is set on the machine so far. */
  Settings settings() {
    return settings;
  }

  /** Sets a length of a single thing that no measurement replaces. */
  Length set(String name, Length reckoned, String datum, Kind kind, @Nullable Length tolerance) {
    return settings.set(new Setting(name, Quantity.of(reckoned), datum, tolerance, kind, false));
  }

  /** Sets one of a feature's sizes; what depends on a measured size waits for its measurement. */
  Length set(String name, Aim aim, String key, String datum) {
    return settings.set(
        new Setting(
            name,
            Quantity.of(aim.length(key)),
            datum,
            tolerance(aim.size(key)),
            Kind.BOUND,
            !aim.fitted(this, List.of(key)).isEmpty()));
  }

  /** The tolerance of a size, where it is stated for it or for the one size that it equals. */
  @Nullable Length tolerance(String size) {
    String name = size;
    for (int hops = 0; hops < 8; hops++) {
      Size found = inputs.sizes().find(name);
      if (found == null) {
        return null;
      }
      Quantity tolerance = found.tolerance();
      if (tolerance != null) {
        return tolerance.asLength();
      }
      name = found.derivation().formula().strip();
      if (!found.from().contains(name)) {
        return null;
      }
    }
    return null;
  }

  /** The operation as done. */
  Outcome done(
      Bench after,
      @Nullable MachineKind tool,
      List<Workpiece> before,
      List<Workpiece> result,
      OperationRun.@Nullable Work work) {
    Machine machine = tool == null ? null : machine(tool);
    List<Setting> set = settings.list();
    return new Outcome(
        after, new OperationRun(step, operation, tool, machine, before, result, set, work, null));
  }
}
