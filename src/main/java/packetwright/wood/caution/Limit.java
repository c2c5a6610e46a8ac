package packetwright.wood.caution;

import packetwright.text.measure.Length;

/**
 * A machine's limit as we set it, used where the shop states none.
 *
 * @param machine trade word
 * @param name of the value
 * @param is the limit
 * @param isStricterLonger whether a greater value is the stricter one
 * @param source where it comes from
 */
record Limit(String machine, String name, Length is, boolean isStricterLonger, String source) {
  /** Whether a shop's value allows more than this one. */
  boolean isLooser(Length stated) {
    return isStricterLonger ? stated.isLess(is) : stated.isMore(is);
  }
}
