package packetwright.wood.part;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;

/**
 * The first thing in which a solid as made is not the solid as drawn.
 *
 * @param kind what is wrong
 * @param axis on which an extent is wrong; 0 where a place is wrong
 * @param amount by which an extent is too great (positive) or too small; zero where a place is
 *     wrong
 * @param place a box in which wood is left or gone, or none where an extent is wrong
 * @param made the removal, among those of the solid as made, that takes too much or that stands for
 *     {@code drawn}; none when there is no such
 * @param drawn the removal, among those of the solid as drawn, that is not made or that {@code
 *     made} stands for; none when there is no such
 */
public record Difference(
    Kind kind,
    int axis,
    Length amount,
    @Nullable Box place,
    @Nullable Removal made,
    @Nullable Removal drawn) {
  /** What is wrong. */
  public enum Kind {
    EXTENT,
    /** Wood stands where none is drawn. */
    WOOD_LEFT,
    /** Wood is gone where it is drawn. */
    WOOD_GONE
  }

  /**
   * Compares a solid as made with the one drawn; none when they are the same set of points. It
   * never calls different solids the same; see {@link Cover} for the rare same ones that it tells
   * apart. Blocks of different size are different whatever is taken out of them.
   */
  public static @Nullable Difference between(Solid made, Solid drawn) {
    for (int axis = 2; axis >= 0; axis--) {
      Length over = made.extent(axis).minus(drawn.extent(axis));
      if (over.signum() != 0) {
        return new Difference(Kind.EXTENT, axis, over, null, null, null);
      }
    }
    Difference left = missed(Kind.WOOD_LEFT, drawn.removals(), made);
    return left != null ? left : missed(Kind.WOOD_GONE, made.removals(), drawn);
  }

  /** The first removal of one solid that another does not make. */
  private static @Nullable Difference missed(Kind kind, List<Removal> wanted, Solid other) {
    Cover cover = Cover.of(other);
    for (Removal removal : wanted) {
      Box missed = cover.missed(removal);
      if (missed != null) {
        Removal instead = instead(removal, wanted, other);
        return kind == Kind.WOOD_LEFT
            ? new Difference(kind, 0, Length.ZERO, missed, instead, removal)
            : new Difference(kind, 0, Length.ZERO, missed, removal, instead);
      }
    }
    return null;
  }

  /** What stands for a removal in another solid: one of its kind that the first solid lacks. */
  private static @Nullable Removal instead(Removal removal, List<Removal> own, Solid other) {
    Box block = other.block();
    Cover known = Cover.of(new Solid(other.length(), other.width(), other.thickness(), own));
    List<Removal> strange =
        other.removals().stream()
            .filter(r -> r.getClass() == removal.getClass() && !known.has(r))
            .toList();
    Box around = removal.around(block);
    return strange.stream()
        .filter(r -> overlap(around, r.around(block)))
        .findFirst()
        .orElse(strange.isEmpty() ? null : strange.get(0));
  }

  private static boolean overlap(@Nullable Box one, @Nullable Box other) {
    return one != null && other != null && one.overlaps(other);
  }
}
