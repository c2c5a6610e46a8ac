package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.List;
import packetwright.definition.procedure.Verb;
import packetwright.text.measure.Length;
import packetwright.wood.operation.Simulation.Inputs;
import packetwright.wood.part.Part;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Layout;
import packetwright.wood.workpiece.Layout.Section;
import packetwright.wood.workpiece.Workpiece;

/** Draws on each laid-out blank the lines of the cuts that will part it. */
final class LayoutLines {
  private LayoutLines() {}

  /** The same operations, those that lay out with their lines. */
  static List<OperationRun> drawn(List<OperationRun> operations, Inputs inputs) {
    List<OperationRun> drawn = new ArrayList<>();
    for (int i = 0; i < operations.size(); i++) {
      OperationRun run = operations.get(i);
      boolean isLayOut = run.operation().verb().value() == Verb.LAY_OUT;
      drawn.add(
          isLayOut ? withLayout(run, operations.subList(i + 1, operations.size()), inputs) : run);
    }
    return drawn;
  }

  private static OperationRun withLayout(
      OperationRun run, List<OperationRun> later, Inputs inputs) {
    Workpiece blank = run.after().get(0);
    List<Section> sections = new ArrayList<>();
    Length at = Length.ZERO;
    for (OperationRun cut : later) {
      boolean isDrawnAnew =
          cut.operation().verb().value() == Verb.LAY_OUT
              && cut.before().stream().anyMatch(p -> p.name().equals(blank.name()));
      if (isDrawnAnew) {
        break;
      }
      boolean partsIt =
          cut.operation().verb().value() == Verb.CROSSCUT
              && cut.before().get(0).name().equals(blank.name());
      if (!partsIt) {
        continue;
      }
      Length kerf = cut.tool() == null ? Length.ZERO : inputs.shop().kerf(cut.tool());
      boolean isFitted = cut.settings().stream().anyMatch(Setting::fitted);
      for (Workpiece piece : cut.after()) {
        Part part = inputs.part(Part.nameOf(piece.name()));
        if (part == null) {
          continue;
        }
        Length end = at.plus(piece.solid().length());
        String letter = part.pieceLetter(piece.name());
        sections.add(new Section(piece.name(), letter, at, end, kerf, isFitted));
        at = end.plus(kerf);
      }
    }
    if (sections.isEmpty()) {
      return run; // lines for a saw that is steered, on a part that is free already
    }
    Length length = blank.solid().length();
    if (at.isLess(length)) {
      sections.add(new Section("", "", at, length, Length.ZERO, false));
    }
    Layout layout = new Layout(blank.name(), length, blank.solid().width(), sections);
    return new OperationRun(
        run.step(),
        run.operation(),
        run.tool(),
        run.machine(),
        run.before(),
        run.after(),
        run.settings(),
        run.work(),
        layout);
  }
}
