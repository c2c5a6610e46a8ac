package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import packetwright.text.measure.Length;

/**
 * Where moved pieces come from. A line runs from each to its place, at the middle of what it
 * touches there; pieces that were moved alike and touch need none between them. So few lines are
 * drawn that every piece hangs together with the others by one way only.
 */
final class Explosion {
  /** Pieces so near, in inches, are taken to touch; a panel has play in its groove. */
  private static final double PLAY = 1.0 / 16;

  private final List<Placed> pieces;
  private final List<Vector[]> boxes;

  private Explosion(List<Placed> pieces) {
    this.pieces = pieces;
    this.boxes = pieces.stream().map(Explosion::box).toList();
  }

  /**
   * A line of one piece.
   *
   * @param from where it has been moved
   * @param to its place
   */
  record Move(Vector from, Vector to) {}

  /** The lines of all pieces; none where nothing is moved. */
  static List<Move> of(List<Placed> pieces) {
    return new Explosion(pieces).moves();
  }

  private List<Move> moves() {
    int[] group = new int[pieces.size()];
    boolean[] hasLine = new boolean[pieces.size()];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    List<Move> moves = new ArrayList<>();
    for (Pair pair : pairs()) {
      int one = group[pair.one];
      int other = group[pair.other];
      if (one != other) {
        hasLine[one] = hasLine[one] || hasLine[other] || pair.rank > 0;
        for (int i = 0; i < group.length; i++) {
          group[i] = group[i] == other ? one : group[i];
        }
        if (pair.rank > 0) {
          moves.addAll(moves(pair));
        }
      }
    }
    for (int i = 0; i < group.length; i++) {
      if (isMoved(pieces.get(i)) && !hasLine[group[i]]) {
        hasLine[group[i]] = true;
        moves.add(move(i, middle(boxes.get(i), boxes.get(i))));
      }
    }
    return moves.stream().distinct().toList();
  }

  /** Those that touch: moved alike, then one of them in its place, then the others. */
  private List<Pair> pairs() {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      for (int j = i + 1; j < pieces.size(); j++) {
        if (touch(boxes.get(i), boxes.get(j))) {
          boolean isAlike = pieces.get(i).shift().equals(pieces.get(j).shift());
          boolean isHeld = !isMoved(pieces.get(i)) || !isMoved(pieces.get(j));
          pairs.add(new Pair(i, j, isAlike ? 0 : isHeld ? 1 : 2));
        }
      }
    }
    pairs.sort(Comparator.comparingInt(Pair::rank));
    return pairs;
  }

  private static boolean touch(Vector[] one, Vector[] other) {
    for (int axis = 0; axis < 3; axis++) {
      if (one[0].on(axis) > other[1].on(axis) + PLAY
          || other[0].on(axis) > one[1].on(axis) + PLAY) {
        return false;
      }
    }
    return true;
  }

  private List<Move> moves(Pair pair) {
    Vector middle = middle(boxes.get(pair.one), boxes.get(pair.other));
    List<Move> moves = new ArrayList<>();
    for (int i : List.of(pair.one, pair.other)) {
      if (isMoved(pieces.get(i))) {
        moves.add(move(i, middle));
      }
    }
    return moves;
  }

  private Move move(int piece, Vector place) {
    return new Move(place.plus(pieces.get(piece).moved()), place);
  }

  private static boolean isMoved(Placed piece) {
    return !piece.shift().x().equals(Length.ZERO)
        || !piece.shift().y().equals(Length.ZERO)
        || !piece.shift().z().equals(Length.ZERO);
  }

  /** The middle of what two boxes have in common. */
  private static Vector middle(Vector[] one, Vector[] other) {
    return new Vector(middle(0, one, other), middle(1, one, other), middle(2, one, other));
  }

  private static double middle(int axis, Vector[] one, Vector[] other) {
    return (Math.max(one[0].on(axis), other[0].on(axis))
            + Math.min(one[1].on(axis), other[1].on(axis)))
        / 2;
  }

  /** The least and the greatest corner of the box around a piece in its place. */
  private static Vector[] box(Placed piece) {
    List<Vector> corners = new ArrayList<>();
    for (int corner = 0; corner < 8; corner++) {
      Vector own =
          new Vector(
              along(corner, 1) * piece.solid().length().inches().approximate(),
              along(corner, 2) * piece.solid().width().inches().approximate(),
              along(corner, 4) * piece.solid().thickness().inches().approximate());
      corners.add(piece.assembled(own).minus(piece.moved()));
    }
    return new Vector[] {
      new Vector(least(corners, 0), least(corners, 1), least(corners, 2)),
      new Vector(most(corners, 0), most(corners, 1), most(corners, 2))
    };
  }

  private static double along(int corner, int bit) {
    return (corner & bit) == 0 ? 0 : 1;
  }

  private static double least(List<Vector> corners, int axis) {
    return corners.stream().mapToDouble(c -> c.on(axis)).min().orElse(0);
  }

  private static double most(List<Vector> corners, int axis) {
    return corners.stream().mapToDouble(c -> c.on(axis)).max().orElse(0);
  }

  private record Pair(int one, int other, int rank) {}
}
