package packetwright.definition.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import packetwright.definition.shop.MachineKind;
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
  private final Map<Integer, Choice> choices = new TreeMap<>();

  /** A stretch of the step under a heading, of which one may lie inside another. */
  private record Passage(boolean isLive, boolean isForMachine) {}

  /**
   * A passage that waits for machines.
   *
   * @param kinds all of which it needs; none where it is for a shop that lacks some
   * @param at its heading
   * @param holds whether the shop is such a one
   */
  record MachineVariant(List<MachineKind> kinds, Span at, boolean holds) {}

  /** Passages beside one another that wait for machines; the first that holds is taken. */
  private static final class Choice {
    final List<MachineVariant> variants = new ArrayList<>();
    boolean isTaken;
    boolean hasOperations;
  }

  StepDraft(String id, String title, Span at) {
    this.id = id;
    this.title = title;
    this.at = at;
  }

  /** Whether what is read now belongs to this shop and these options. */
  boolean isLive() {
    return passages.values().stream().allMatch(Passage::isLive);
  }

  /** Begins a passage for machines; of those beside one another, the first that holds wins. */
  void beginForMachine(int level, MachineVariant variant) {
    endDeeper(level);
    Choice choice = choices.computeIfAbsent(level, l -> new Choice());
    boolean isTaken = variant.holds() && !choice.isTaken;
    choice.isTaken |= variant.holds();
    choice.variants.add(variant);
    passages.put(level, new Passage(isTaken, true));
  }

  /** Begins a passage for options. */
  void beginForOptions(int level, boolean isLive) {
    endDeeper(level);
    passages.put(level, new Passage(isLive, false));
  }

  /** A heading ends what stands under headings as deep or deeper. */
  private void endDeeper(int level) {
    passages.keySet().removeIf(other -> other > level);
    passages.remove(level);
    choices.entrySet().removeIf(choice -> choice.getKey() > level && isEnded(choice.getValue()));
  }

  /** Ends the step: says what it cannot do in this shop. */
  void end() {
    passages.clear();
    choices.values().removeIf(this::isEnded);
  }

  private boolean isEnded(Choice choice) {
    String wanted =
        choice.variants.stream()
            .filter(v -> !v.kinds().isEmpty())
            .map(v -> words(v.kinds()))
            .collect(Collectors.joining(", or for "));
    if (!choice.isTaken && choice.hasOperations && !wanted.isEmpty()) {
      findings.add(
          Finding.error(
              "no-variant",
              choice.variants.get(0).at(),
              "this step is written for " + wanted + ", and the shop has nothing of that",
              "choose another shop, or write the step under another `With` for what this shop has"));
    }
    return true;
  }

  private static String words(List<MachineKind> kinds) {
    return kinds.stream().map(k -> "`" + k.word() + "`").collect(Collectors.joining(" and "));
  }

  /** Takes operations where their passage holds. */
  void add(List<Operation> read) {
    if (isLive()) {
      operations.addAll(read);
    }
    // Whether the choice is due at all is for the passages around it to say.
    boolean isDue = true;
    for (Map.Entry<Integer, Passage> passage : passages.entrySet()) {
      Choice choice = choices.get(passage.getKey());
      if (isDue && passage.getValue().isForMachine() && choice != null) {
        choice.hasOperations |= !read.isEmpty();
      }
      isDue &= passage.getValue().isLive();
    }
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
