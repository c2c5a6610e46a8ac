package packetwright.wood.caution;

import java.util.List;
import packetwright.text.measure.Length;

/**
 * A limit as a shop has it, beside ours and what others publish; the key prints it.
 *
 * @param machine trade word, {@code jointer}
 * @param name of the value, {@code hand_distance}
 * @param stated in this shop
 * @param own ours
 * @param source of ours
 * @param published what others publish for it
 */
public record ComparedLimit(
    String machine,
    String name,
    Length stated,
    Length own,
    String source,
    List<Published> published) {
  /** Keeps its own copy. */
  public ComparedLimit {
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
