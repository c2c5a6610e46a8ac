package packetwright.definition.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.text.source.Span;

/** A step while it is read, before it is known whether it stays and which number it bears. */
final class StepDraft {
  final String id;
  final String title;
  final Span at;
  final Findings findings = new Findings();
  final List<Operation> operations = new ArrayList<>();
  final List<Block> prose = new ArrayList<>();
  final List<Block.StepPlace> stepPlaces = new ArrayList<>();

  private final Map<Integer, Passage> passages = new TreeMap<>();

  /** A stretch of the step under a heading, of which one may lie inside another. */
  private record Passage(boolean isLive, boolean hasMachine) {}

  StepDraft(String id, String title, Span at) {
    this.id = id;
    this.title = title;
    this.at = at;
  }

  /** Whether what is read now belongs to this shop and these options. */
  boolean isLive() {
    return passages.values().stream().allMatch(Passage::isLive);
  }

  /**
   * Begins a passage for a machine; of those beside one another, the first that the shop has wins.
   */
  void beginForMachine(int level, boolean shopHasIt) {
    boolean isTaken = hasMachine(level);
    begin(level, new Passage(shopHasIt && !isTaken, shopHasIt || isTaken));
  }

  /** Begins a passage for options. */
  void beginForOptions(int level, boolean isLive) {
    begin(level, new Passage(isLive, hasMachine(level)));
  }

  private boolean hasMachine(int level) {
    Passage former = passages.get(level);
    return former != null && former.hasMachine();
  }

  /** A heading ends what stands under headings as deep or deeper. */
  private void begin(int level, Passage passage) {
    passages.keySet().removeIf(other -> other >= level);
    passages.put(level, passage);
  }

  boolean isEmpty() {
    return operations.isEmpty() && prose.isEmpty();
  }

  Step numbered(int number) {
    return new Step(number, id, title, at, operations, prose);
  }

  /** What was found in it, said of the step. */
  List<Finding> findings(String label) {
    return findings.list().stream().map(f -> f.inStep(label)).toList();
  }
}
