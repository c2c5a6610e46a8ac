package packetwright.wood.setup;

import java.util.List;
import packetwright.definition.project.Project.Bought;
import packetwright.definition.shop.Shop;
import packetwright.text.measure.Length;
import packetwright.text.source.Located;
import packetwright.wood.blank.Blank;
import packetwright.wood.workpiece.Workpiece;

/**
 * The class's boards of one blank, as they come to the planer.
 *
 * @param boards thickness of each, with its place; empty when all are as thick as sold
 * @param jointed how much has come off each before
 * @param rough how much thicker one may be at its thickest place
 */
public record Batch(List<Located<Length>> boards, Length jointed, Length rough) {
  /** Keeps its own copy. */
  public Batch {
    boards = List.copyOf(boards);
  }

  /**
   * The boards that a piece stands for before it is planed.
   *
   * @param piece as it comes to the planer
   * @param blank that it is
   * @param shop whose allowances hold
   */
  public static Batch of(Workpiece piece, Blank blank, Shop shop) {
    boolean isRough = blank.bought() == Bought.ROUGH;
    return new Batch(
        blank.boards().atHand(),
        blank.thickness().minus(piece.solid().thickness()),
        isRough ? shop.allowance("rough_thickness") : Length.ZERO);
  }

  /** The thicknesses at the planer, in the order listed. */
  public List<Length> thicknesses() {
    return boards.stream().map(b -> b.value().minus(jointed)).toList();
  }

  /** The boards of which nothing is left to plane down to a thickness. */
  public List<Located<Length>> tooThin(Length thickness) {
    return boards.stream().filter(b -> b.value().minus(jointed).isLess(thickness)).toList();
  }

  /** A board's number, from 1 as listed. */
  public int number(Located<Length> board) {
    return boards.indexOf(board) + 1;
  }
}
