package packetwright.wood.operation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import packetwright.wood.workpiece.Workpiece;

/**
 * The whole procedure as it was simulated.
 *
 * @param operations in order
 * @param made each part's pieces as made, by part name
 */
public record Run(List<OperationRun> operations, Map<String, List<Workpiece>> made) {
  /** Keeps its own copies. */
  public Run {
    operations = List.copyOf(operations);
    made = Map.copyOf(made);
  }

  /** The operations of one step, in order. */
  public List<OperationRun> ofStep(int number) {
    return operations.stream().filter(o -> o.step().number() == number).toList();
  }

  /** How many fasteners one student uses, by the supply's name, in the order used. */
  public Map<String, Integer> fasteners() {
    Map<String, Integer> counts = new LinkedHashMap<>();
    operations.stream()
        .flatMap(o -> o.fastened().stream())
        .forEach(f -> counts.merge(f.fastener().supply(), f.count(), Integer::sum));
    return counts;
  }
}
