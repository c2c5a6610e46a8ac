package packetwright.definition.procedure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.By;
import packetwright.text.source.Located;

/**
 * Tells the steps that the instructor does before class from those that students do or wait for:
 * all of a preparation step is the instructor's, and no student has worked on its blanks before.
 */
final class Preparation {
  private final Map<String, Set<String>> blanks;
  private final Set<String> begun = new HashSet<>();

  /**
   * @param blanks those that each part, joint and blank stands for
   */
  Preparation(Map<String, Set<String>> blanks) {
    this.blanks = new HashMap<>(blanks);
  }

  /** The same steps with the marks that are printed: P1, P2 and so on, and 1, 2 and so on. */
  static List<Step> marked(List<Step> steps, Map<String, Set<String>> blanks) {
    Preparation preparation = new Preparation(blanks);
    List<Step> marked = new ArrayList<>();
    int prepared = 0;
    for (Step step : steps) {
      boolean isBefore = preparation.takes(step.operations());
      prepared += isBefore ? 1 : 0;
      int own = marked.size() + 1 - prepared;
      marked.add(step.marked(isBefore ? Step.PREPARED + prepared : Integer.toString(own)));
    }
    return marked;
  }

  /** Whether the next step is one of preparation; call it for each step in order. */
  private boolean takes(List<Operation> operations) {
    Set<String> worked = new HashSet<>();
    for (Operation operation : operations) {
      Set<String> own = blanks(operation);
      Located<String> makes = operation.makes();
      if (makes != null) {
        blanks.put(makes.value(), own);
      }
      worked.addAll(own);
    }
    boolean isInstructors =
        !operations.isEmpty() && operations.stream().allMatch(o -> o.by() == By.INSTRUCTOR);
    if (isInstructors && worked.stream().noneMatch(begun::contains)) {
      return true;
    }
    begun.addAll(worked);
    return false;
  }

  private Set<String> blanks(Operation operation) {
    Set<String> found = new HashSet<>();
    operation.targets().forEach(target -> found.addAll(blanks(target)));
    found.addAll(blanks(operation.piece()));
    found.addAll(blanks(operation.of()));
    return found;
  }

  /** Of {@code side.lid_groove} and {@code side 1}, those of {@code side}. */
  private Set<String> blanks(@Nullable Located<String> name) {
    if (name == null) {
      return Set.of();
    }
    String plain = name.value().replaceFirst("[. ].*", "");
    return blanks.getOrDefault(plain, Set.of(plain));
  }
}
