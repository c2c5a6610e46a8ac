package packetwright.wood.operation;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Step;
import packetwright.definition.project.Side;
import packetwright.definition.shop.Machine;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Length;
import packetwright.wood.assembly.Fastening;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Layout;
import packetwright.wood.workpiece.Workpiece;

/**
 * One operation as it was simulated.
 *
 * @param step it belongs to
 * @param operation as written
 * @param tool machine or hand tool, or none (laying out, a dry fit)
 * @param machine the shop's machine of that kind, or none for a hand tool
 * @param before the pieces worked on, as they were
 * @param after the pieces that result, freed parts first, then what is left
 * @param settings in the order they are set
 * @param work what the cut does to the piece; null when nothing is cut
 * @param layout lines drawn, or none
 * @param fastened where fasteners go, joint by joint; empty for other work
 */
public record OperationRun(
    Step step,
    Operation operation,
    @Nullable MachineKind tool,
    @Nullable Machine machine,
    List<Workpiece> before,
    List<Workpiece> after,
    List<Setting> settings,
    @Nullable Work work,
    @Nullable Layout layout,
    List<Fastening> fastened) {
  /** Keeps its own copies. */
  public OperationRun {
    before = List.copyOf(before);
    after = List.copyOf(after);
    settings = List.copyOf(settings);
    fastened = List.copyOf(fastened);
  }

  /** Work without fasteners. */
  public OperationRun(
      Step step,
      Operation operation,
      @Nullable MachineKind tool,
      @Nullable Machine machine,
      List<Workpiece> before,
      List<Workpiece> after,
      List<Setting> settings,
      @Nullable Work work,
      @Nullable Layout layout) {
    this(step, operation, tool, machine, before, after, settings, work, layout, List.of());
  }

  /** The same with fasteners. */
  OperationRun with(List<Fastening> placed) {
    return new OperationRun(
        step, operation, tool, machine, before, after, settings, work, layout, placed);
  }

  /**
   * On which side of its line the blade runs, as seen from the piece that the cut is measured on:
   * always the side of the waste or of what is left. None where a cut has no line.
   */
  public @Nullable Side kerfSide() {
    List<Side> from = operation.from();
    List<Side> sides = operation.sides();
    return switch (operation.verb().value()) {
      case CROSSCUT -> (from.isEmpty() ? Side.LEFT : from.get(0)).opposite();
      case RIP -> (from.isEmpty() ? Side.BOTTOM : from.get(0)).opposite();
      case SQUARE_END -> sides.isEmpty() ? Side.LEFT : sides.get(0);
      default -> null;
    };
  }

  /**
   * What a cut looks like from the machine, for cautions and figures.
   *
   * @param feed how the piece moves to the cutter
   * @param fence the narrowest width between fence and cutter; zero when no fence is used
   * @param depth the deepest cut of one pass
   * @param held the shortest length that is held, from the cutter
   * @param freed how long the shortest piece is that comes loose and that nobody holds, or how wide
   *     the strip that a rip leaves beside the blade; zero when the cut does not go through
   * @param isThrough whether the piece is parted
   * @param turn how the piece is turned between passes
   */
  public record Work(
      Feed feed,
      Length fence,
      Length depth,
      Length held,
      Length freed,
      boolean isThrough,
      Set<Turn> turn) {}

  /** How wood and cutter move to each other. */
  public enum Feed {
    ALONG,
    ACROSS,
    /** The piece does not move. */
    CLAMPED,
    /** The piece is steered, so that a saw follows a line. */
    FREEHAND
  }

  /** How a piece is turned between two passes. */
  public enum Turn {
    /** End for end, the same face down. */
    ROTATE_END_FOR_END,
    /** The other face down. */
    TURN_OVER
  }
}
