package packetwright.wood.operation;

import java.util.List;
import packetwright.definition.project.Side;

/** Names of pieces in a sentence. */
final class Listing {
  private Listing() {}

  /** {@code `side 1`, `side 2` and `lid`}. */
  static String of(List<String> names) {
    List<String> quoted = names.stream().map(name -> "`" + name + "`").toList();
    int last = quoted.size() - 1;
    return last < 1
        ? String.join("", quoted)
        : String.join(", ", quoted.subList(0, last)) + " and " + quoted.get(last);
  }

  /** {@code left end}, {@code bottom edge}, {@code inside}. */
  static String side(Side side) {
    return switch (side) {
      case LEFT, RIGHT -> side.word() + " end";
      case TOP, BOTTOM -> side.word() + " edge";
      case INSIDE, OUTSIDE -> side.word();
    };
  }

  /** {@code `lid` is} or {@code `side 1` and `lid` are}. */
  static String are(List<String> names) {
    return of(names) + (names.size() == 1 ? " is" : " are");
  }
}
