package packetwright.wood.blank;

import java.util.List;
import packetwright.definition.project.Project.Bought;
import packetwright.text.measure.Length;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/**
 * A rough piece that parts are cut from.
 *
 * @param name as operations use it
 * @param material a name among the materials
 * @param bought state of its surfaces
 * @param pieces what is cut from it, in the order laid out: {@code side 1}, {@code side 2}
 * @param length how its rough length is reckoned
 * @param width how its rough width is reckoned
 * @param thickness as bought
 * @param boards what it is made of
 * @param at where it is defined
 */
public record Blank(
    String name,
    String material,
    Bought bought,
    List<String> pieces,
    Reckoning length,
    Reckoning width,
    Length thickness,
    Boards boards,
    Span at) {
  /** Keeps its own copy. */
  public Blank {
    pieces = List.copyOf(pieces);
  }

  /** Whether it is glued up from boards. */
  public boolean isGluedUp() {
    return boards.count() > 1;
  }

  /**
   * What a blank is made of.
   *
   * @param count of boards glued edge to edge; 1 for a single board
   * @param width how each board's rough width is reckoned; as the blank's for a single board
   * @param atHand thickness of each of the class's boards, with its place; empty when all are as
   *     sold
   */
  public record Boards(int count, Reckoning width, List<Located<Length>> atHand) {
    /** Keeps its own copy. */
    public Boards {
      atHand = List.copyOf(atHand);
    }

    /** The thicknesses alone. */
    public List<Length> thicknesses() {
      return atHand.stream().map(Located::value).toList();
    }
  }

  /**
   * A sum with its items named.
   *
   * @param items in the order added
   */
  public record Reckoning(List<Item> items) {
    /** Keeps its own copy. */
    public Reckoning {
      items = List.copyOf(items);
    }

    /** The sum. */
    public Length total() {
      return items.stream().map(Item::amount).reduce(Length.ZERO, Length::plus);
    }
  }

  /**
   * One item of a reckoning.
   *
   * @param phrase key of the phrase that names it, {@code blank.end_trim}
   * @param piece the piece it is for; empty when for the blank as a whole
   * @param amount added
   */
  public record Item(String phrase, String piece, Length amount) {}
}
