package packetwright.wood.caution;

import java.util.List;
import packetwright.text.measure.Length;

/**
 * A limit that a shop has set looser than our own; the key says so.
 *
 * @param machine trade word, {@code jointer}
 * @param name of the value, {@code hand_distance}
 * @param stated by the shop
 * @param own ours
 * @param source of ours
 * @param published what others publish for it
 */
public record LooserLimit(
    String machine,
    String name,
    Length stated,
    Length own,
    String source,
    List<Published> published) {
  /** Keeps its own copy. */
  public LooserLimit {
    published = List.copyOf(published);
  }

  /**
   * What someone publishes for a limit.
   *
   * @param is the value
   * @param by whom, in general words
   */
  public record Published(Length is, String by) {}
}
