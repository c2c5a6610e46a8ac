package packetwright.wood.caution;

import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.text.formula.Value;
import packetwright.text.formula.Values;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;

/**
 * A value of the right kind for each name that a rule can use: true of the tool, the verb and the
 * machine, a stand-in for the rest.
 *
 * @param tool or none
 * @param verb what is done at it
 * @param limits of machines
 * @param standIn for every amount, in its base unit
 */
record TypicalValues(@Nullable MachineKind tool, Verb verb, MachineLimits limits, Rational standIn)
    implements Values {
  @Override
  public @Nullable Value of(String name) {
    if (name.startsWith(Vocabulary.MACHINE)) {
      Length limit = limits.of(tool, name.substring(Vocabulary.MACHINE.length()));
      return limit == null ? null : Value.of(limit);
    }
    Vocabulary.Kind kind = Vocabulary.kind(name);
    if (kind == null) {
      return null;
    }
    return switch (kind) {
      case TRUTH -> Value.of(Vocabulary.isSo(name, tool, verb));
      case ANGLE -> Value.of(new Quantity(standIn, Dimension.ANGLE));
      case NUMBER -> Value.of(Quantity.number(standIn));
      case EXTENT, LENGTH -> Value.of(new Length(standIn));
    };
  }

  /** Whether an operation there may give the name any value. */
  static boolean isOpen(String name) {
    return !name.startsWith(Vocabulary.MACHINE) && !Vocabulary.isFixed(name);
  }
}
