package packetwright.definition.procedure;

import java.util.ArrayList;
import java.util.List;
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

  /** Whether the passage being read belongs to this shop and these options. */
  boolean isLive = true;

  /** Whether a passage for one of the shop's machines has been taken. */
  boolean hasMachine;

  StepDraft(String id, String title, Span at) {
    this.id = id;
    this.title = title;
    this.at = at;
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
