package packetwright.wood.caution;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.By;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.Machine;
import packetwright.definition.shop.MachineKind;
import packetwright.text.formula.Value;
import packetwright.text.formula.Values;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * What the names in a rule stand for at one operation.
 *
 * @param run the operation
 * @param limits used where the shop states none
 */
record RunValues(OperationRun run, Map<String, Limit> limits) implements Values {
  private static final int LENGTH = 0;
  private static final int WIDTH = 1;
  private static final int THICKNESS = 2;

  @Override
  public @Nullable Value of(String name) {
    if (Vocabulary.kind(name) == null) {
      return null;
    }
    int dot = name.indexOf('.');
    if (dot < 0) {
      return truth(name);
    }
    String last = name.substring(dot + 1);
    return switch (name.substring(0, dot)) {
      case "piece" -> least(worked(), last);
      case "made" -> least(run.after(), last);
      case "work" -> work(last);
      case "machine" -> machine(last);
      case "setting" -> setting(last);
      default -> new MeasuredValues(run).of(name.substring(0, dot), last);
    };
  }

  /** The amount of a name; asking for another is a bug. */
  Quantity amount(String name) {
    if (of(name) instanceof Value.Amount amount) {
      return amount.quantity();
    }
    throw new IllegalStateException("no amount " + name + " at " + run.operation().place());
  }

  /** The shortest of the pieces worked on. */
  Workpiece piece() {
    return worked().stream()
        .min(Comparator.comparing((Workpiece p) -> p.solid().length()))
        .orElseThrow(() -> new IllegalStateException("no piece at " + run.operation().place()));
  }

  /** Whether there is any piece, as there is not when only laying out. */
  boolean hasPiece() {
    return !worked().isEmpty();
  }

  /** A rough cut has no piece before it. */
  private List<Workpiece> worked() {
    return run.before().isEmpty() ? run.after() : run.before();
  }

  private static @Nullable Value least(List<Workpiece> pieces, String extent) {
    int axis =
        switch (extent) {
          case "length" -> LENGTH;
          case "width" -> WIDTH;
          case "thickness" -> THICKNESS;
          default -> -1;
        };
    return axis < 0
        ? null
        : Value.of(
            pieces.stream()
                .map(p -> p.solid().extent(axis))
                .reduce(Length::min)
                .orElse(Length.ZERO));
  }

  private @Nullable Value work(String name) {
    Length handWidth =
        machine("hand_width") instanceof Value.Amount amount
            ? amount.quantity().asLength()
            : Length.ZERO;
    return new WorkValues(run, handWidth).of(name);
  }

  private boolean isSet(String setting) {
    return run.settings().stream().anyMatch(s -> s.name().equals(setting));
  }

  private @Nullable Value machine(String name) {
    MachineKind tool = run.tool();
    if (tool == null) {
      return null;
    }
    Limit limit = limits.get(tool.word() + "." + name);
    Machine machine = run.machine();
    if (machine != null && machine.states(name)) {
      return Value.of(machine.value(name, Length.ZERO));
    }
    return limit == null ? null : Value.of(limit.is());
  }

  private Value setting(String name) {
    for (Setting setting : run.settings()) {
      if (setting.name().equals(name)) {
        return Value.of(setting.value());
      }
    }
    return switch (name) {
      case "passes" -> Value.of(Quantity.number(Rational.ZERO));
      case "tilt", "angle" -> Value.of(new Quantity(Rational.ZERO, Dimension.ANGLE));
      default -> Value.of(Length.ZERO);
    };
  }

  private @Nullable Value truth(String name) {
    MachineKind tool = run.tool();
    if (name.startsWith("at_")) {
      MachineKind kind = MachineKind.of(name.substring(3));
      return kind == null ? null : Value.of(kind == tool);
    }
    if (name.startsWith("is_")) {
      Verb verb = Verb.of(name.substring(3));
      return verb == null ? null : Value.of(verb == run.operation().verb().value());
    }
    return switch (name) {
      case "always" -> Value.of(true);
      case "powered" -> Value.of(tool != null && tool.isPowered());
      case "by_student" -> Value.of(run.operation().by() == By.STUDENT);
      case "stop" -> Value.of(run.operation().stop());
      case "tilted" -> Value.of(isSet("tilt"));
      case "slanted" -> Value.of(isSet("angle"));
      case "stacked" -> Value.of(run.operation().stacked() > 1);
      default -> control(name);
    };
  }

  private @Nullable Value control(String name) {
    for (Control control : Control.values()) {
      if (control.name().toLowerCase(Locale.ROOT).equals(name)) {
        return Value.of(run.operation().with().contains(control));
      }
    }
    return null;
  }
}
