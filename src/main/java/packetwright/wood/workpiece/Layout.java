package packetwright.wood.workpiece;

import java.util.List;
import packetwright.text.measure.Length;

/**
 * The lines drawn on a blank before it is parted, measured along x from the reference end.
 *
 * @param blank its name
 * @param length of the workpiece
 * @param width of the workpiece
 * @param sections parts in order, from the reference end; kerfs lie between them
 */
public record Layout(String blank, Length length, Length width, List<Section> sections) {
  /** Keeps its own copy. */
  public Layout {
    sections = List.copyOf(sections);
  }

  /**
   * One part's length of the blank.
   *
   * @param piece {@code side 1}; empty for waste
   * @param letter as written on the wood, {@code A1}; empty for waste
   * @param start of the part
   * @param end of the part: the cut line
   * @param kerf width of the saw cut beyond {@code end}; zero when none follows
   * @param fitted whether the length is drawn dashed, to be cut to fit later
   */
  public record Section(
      String piece, String letter, Length start, Length end, Length kerf, boolean fitted) {}
}
