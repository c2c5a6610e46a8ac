package packetwright.wood.caution;

import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.text.source.Finding;
import packetwright.wood.operation.OperationRun;

/**
 * An operation that may not be printed.
 *
 * @param rule name of the rule that refuses it
 * @param isWaivable whether an instructor may accept it
 * @param control that would answer it, or none
 * @param run the operation
 * @param finding what is said of it
 */
public record Refused(
    String rule,
    boolean isWaivable,
    @Nullable Control control,
    OperationRun run,
    Finding finding) {}
