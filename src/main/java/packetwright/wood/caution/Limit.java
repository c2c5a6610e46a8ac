package packetwright.wood.caution;

import java.util.List;
import packetwright.text.measure.Length;
import packetwright.wood.caution.ComparedLimit.Published;

/**
 * A machine's limit as we set it, used where the shop states none.
 *
 * @param machine trade word
 * @param name of the value
 * @param is the limit
 * @param isStricterLonger whether a greater value is the stricter one
 * @param source where it comes from
 * @param published what others publish for it, ours among them where it is published
 */
record Limit(
    String machine,
    String name,
    Length is,
    boolean isStricterLonger,
    String source,
    List<Published> published) {
  Limit {
    published = List.copyOf(published);
  }

  /** Whether a value allows more than this one. */
  boolean isLooser(Length stated) {
    return isStricterLonger ? stated.isLess(is) : stated.isMore(is);
  }
}
