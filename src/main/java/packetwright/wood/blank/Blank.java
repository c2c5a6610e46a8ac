package packetwright.wood.blank;

import java.util.List;
import packetwright.definition.project.Project.Bought;
import packetwright.text.measure.Length;
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
    Span at) {
  /** Keeps its own copy. */
  public Blank {
    pieces = List.copyOf(pieces);
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
