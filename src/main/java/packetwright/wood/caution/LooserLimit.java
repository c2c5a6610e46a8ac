package packetwright.wood.caution;

import packetwright.text.measure.Length;

/**
 * A limit that a shop has set looser than our own; the key says so.
 *
 * @param machine trade word, {@code jointer}
 * @param name of the value, {@code hand_distance}
 * @param stated by the shop
 * @param own ours
 * @param source of ours
 */
public record LooserLimit(String machine, String name, Length stated, Length own, String source) {}
