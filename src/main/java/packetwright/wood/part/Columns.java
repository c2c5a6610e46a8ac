package packetwright.wood.part;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import packetwright.text.measure.Length;

/**
 * A block that troughs have been cut into from its two faces: on each rectangle of a grid over the
 * face, one column of wood. Places are counted by the grid's lines, so that much can be asked of
 * hundreds of troughs.
 */
final class Columns {
  private final int across;
  private final int along;
  private final int thick;
  private final int[] low;
  private final int[] high;

  /** Each trough reaches the outside or the inside face. */
  Columns(Solid block, List<Box> troughs) {
    Map<Length, Integer> x = lines(block, troughs, 0);
    Map<Length, Integer> y = lines(block, troughs, 1);
    Map<Length, Integer> z = lines(block, troughs, 2);
    along = x.size() - 1;
    across = y.size() - 1;
    thick = z.size() - 1;
    low = new int[along * across];
    high = new int[along * across];
    Arrays.fill(high, thick);
    for (Box trough : troughs) {
      Box box = trough.common(block.block());
      if (box != null) {
        take(
            new int[] {x.get(box.low().x()), y.get(box.low().y()), z.get(box.low().z())},
            new int[] {x.get(box.high().x()), y.get(box.high().y()), z.get(box.high().z())});
      }
    }
  }

  private static Map<Length, Integer> lines(Solid block, Collection<Box> troughs, int axis) {
    Map<Length, Integer> lines = new TreeMap<>();
    lines.put(Length.ZERO, 0);
    lines.put(block.extent(axis), 0);
    for (Box trough : troughs) {
      lines.put(trough.low().on(axis).max(Length.ZERO).min(block.extent(axis)), 0);
      lines.put(trough.high().on(axis).min(block.extent(axis)).max(Length.ZERO), 0);
    }
    int number = 0;
    for (Map.Entry<Length, Integer> line : lines.entrySet()) {
      line.setValue(number++);
    }
    return lines;
  }

  private void take(int[] from, int[] to) {
    if (from[2] > 0 && to[2] < thick) {
      throw new IllegalArgumentException("a trough that reaches neither face");
    }
    for (int i = from[0]; i < to[0]; i++) {
      for (int j = from[1]; j < to[1]; j++) {
        int at = i * across + j;
        if (from[2] == 0) {
          low[at] = Math.max(low[at], to[2]);
        }
        if (to[2] == thick) {
          high[at] = Math.min(high[at], from[2]);
        }
      }
    }
  }

  private boolean isWood(int at) {
    return low[at] < high[at];
  }

  private int first() {
    int at = 0;
    while (at < low.length && !isWood(at)) {
      at++;
    }
    return at;
  }

  boolean isEmpty() {
    return first() == low.length;
  }

  /** Whether all columns hang together, by more than edges. */
  boolean isOnePiece() {
    boolean[] isSeen = new boolean[low.length];
    Deque<Integer> open = new ArrayDeque<>(List.of(first()));
    isSeen[first()] = true;
    while (!open.isEmpty()) {
      int at = open.pop();
      for (int next : beside(at)) {
        if (!isSeen[next] && Math.max(low[at], low[next]) < Math.min(high[at], high[next])) {
          isSeen[next] = true;
          open.push(next);
        }
      }
    }
    for (int at = 0; at < low.length; at++) {
      if (isWood(at) && !isSeen[at]) {
        return false;
      }
    }
    return true;
  }

  private int[] beside(int at) {
    int i = at / across;
    int j = at % across;
    return new int[] {
      i > 0 ? at - across : at,
      i < along - 1 ? at + across : at,
      j > 0 ? at - 1 : at,
      j < across - 1 ? at + 1 : at
    };
  }

  /** Whether wood reaches all six sides of the block. */
  boolean isFullSize() {
    boolean[] reached = new boolean[6];
    for (int at = first(); at < low.length; at++) {
      if (isWood(at)) {
        reached[0] |= at / across == 0;
        reached[1] |= at / across == along - 1;
        reached[2] |= at % across == 0;
        reached[3] |= at % across == across - 1;
        reached[4] |= low[at] == 0;
        reached[5] |= high[at] == thick;
      }
    }
    for (boolean one : reached) {
      if (!one) {
        return false;
      }
    }
    return true;
  }
}
