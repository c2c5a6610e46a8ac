package packetwright.drawing.view;

import java.util.List;

/**
 * Placed pieces as the eye sees them in a true isometric view, hidden lines removed. Places are
 * inches on paper, u to the right and v upward; an inch along an axis of the assembly is an inch.
 *
 * @param regions areas of one piece that lines surround
 * @param lines edges that are seen; the outlines of pieces first
 * @param moves where pieces that are drawn away from their places come from
 */
public record Pictorial(List<Region> regions, List<Line> lines, List<Move> moves) {
  /** Keeps its own copies. */
  public Pictorial {
    moves = List.copyOf(moves);
    regions = List.copyOf(regions);
    lines = List.copyOf(lines);
  }

  /** A place on paper. */
  public record Spot(double u, double v) {}

  /**
   * An area that shows one piece.
   *
   * @param piece index of the placed piece that it belongs to
   * @param rings its outline, then its holes
   * @param middle a place well inside
   * @param room radius of the greatest circle about {@code middle} that stays inside
   */
  public record Region(int piece, List<List<Spot>> rings, Spot middle, double room) {
    /** Keeps its own copy. */
    public Region {
      rings = List.copyOf(rings);
    }
  }

  /** The seen stretch of a line from a moved piece, or nearer to it, toward its place. */
  public record Move(Spot from, Spot to) {}

  /**
   * A seen edge.
   *
   * @param isOutline whether its piece ends there: the background begins at one side of it, or
   *     another piece farther away
   * @param spots from one end to the other
   */
  public record Line(boolean isOutline, List<Spot> spots) {
    /** Keeps its own copy. */
    public Line {
      spots = List.copyOf(spots);
    }
  }
}
