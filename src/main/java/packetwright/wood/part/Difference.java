package packetwright.wood.part;

import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;

/**
 * The first thing in which a solid as made is not the solid as drawn.
 *
 * @param kind what is wrong
 * @param axis on which an extent is wrong; 0 where a place is wrong
 * @param amount by which an extent is too great (positive) or too small; zero where a place is
 *     wrong
 * @param place the wrong place, or none where an extent is wrong
 */
public record Difference(Kind kind, int axis, Length amount, @Nullable Box place) {
  /** What is wrong. */
  public enum Kind {
    EXTENT,
    /** Wood stands where none is drawn. */
    WOOD_LEFT,
    /** Wood is gone where it is drawn. */
    WOOD_GONE,
    /** A hole is missing, or stands elsewhere, or is of another size. */
    HOLE
  }

  /** Compares a solid as made with the one drawn; none when they are the same set of points. */
  public static @Nullable Difference between(Solid made, Solid drawn) {
    for (int axis = 2; axis >= 0; axis--) {
      Length over = made.extent(axis).minus(drawn.extent(axis));
      if (over.signum() != 0) {
        return new Difference(Kind.EXTENT, axis, over, null);
      }
    }
    Cells madeCells = new Cells(made, drawn);
    Cells drawnCells = new Cells(drawn, made);
    for (Box cell : madeCells.all()) {
      boolean isWood = madeCells.isWood(cell);
      if (isWood != drawnCells.isWood(cell)) {
        return new Difference(isWood ? Kind.WOOD_LEFT : Kind.WOOD_GONE, 0, Length.ZERO, cell);
      }
    }
    if (!Cells.bores(made).equals(Cells.bores(drawn))) {
      return new Difference(Kind.HOLE, 0, Length.ZERO, null);
    }
    return null;
  }
}
