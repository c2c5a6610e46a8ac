package packetwright.wood.part;

import java.util.ArrayList;
import java.util.List;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;

/**
 * An exact shape: a block minus removals. The frame has x along the grain from the left end, y
 * across the width from the bottom edge, z from the outside face to the inside face.
 *
 * @param length along x
 * @param width along y
 * @param thickness along z
 * @param removals wood taken out, in any order
 */
public record Solid(Length length, Length width, Length thickness, List<Removal> removals) {
  /** Refuses a block without volume. */
  public Solid {
    if (length.signum() <= 0 || width.signum() <= 0 || thickness.signum() <= 0) {
      throw new IllegalArgumentException(
          "block without volume: " + length + " x " + width + " x " + thickness);
    }
    removals = List.copyOf(removals);
  }

  /** A block with nothing taken out. */
  public static Solid block(Length length, Length width, Length thickness) {
    return new Solid(length, width, thickness, List.of());
  }

  /** Its extent on axis 0 (x), 1 (y) or 2 (z). */
  public Length extent(int axis) {
    return switch (axis) {
      case 0 -> length;
      case 1 -> width;
      case 2 -> thickness;
      default -> throw new IllegalArgumentException("axis " + axis);
    };
  }

  /** The block as a box. */
  public Box block() {
    return new Box(
        new Point(Length.ZERO, Length.ZERO, Length.ZERO), new Point(length, width, thickness));
  }

  /** The coordinate of a side on its axis. */
  public Length coordinate(Side side) {
    return side.isFar() ? extent(side.axis()) : Length.ZERO;
  }

  /** Two distances from a side as coordinates on its axis, the lesser first. */
  public List<Length> measuredFrom(Side side, Length near, Length far) {
    Length extent = extent(side.axis());
    return side.isFar() ? List.of(extent.minus(far), extent.minus(near)) : List.of(near, far);
  }

  /** Whether there is wood at a place; exact, and a place on a surface counts as wood. */
  public boolean isWood(Point place) {
    for (int axis = 0; axis < 3; axis++) {
      if (place.on(axis).signum() < 0 || place.on(axis).isMore(extent(axis))) {
        return false;
      }
    }
    Inside inside = new Inside(place);
    return removals.stream().noneMatch(removal -> removal.match(inside));
  }

  /** Whether it is the same set of points, whatever the removals that made it. */
  public boolean isSameShape(Solid other) {
    return Difference.between(this, other) == null;
  }

  /**
   * The block without its troughs, as boxes that do not overlap, in the order of x, then y, then z.
   * What holes, slopes and outlines take is still in them.
   */
  public List<Box> wood() {
    return Boxes.left(block(), Cover.of(this).troughs());
  }

  /** The mirror image along x: left and right are exchanged. */
  public Solid mirrored() {
    List<Removal> exchanged = removals.stream().map(r -> r.mirrored(length)).toList();
    return new Solid(length, width, thickness, exchanged);
  }

  /** The same block with more taken out. */
  public Solid minus(Removal removal) {
    return minus(List.of(removal));
  }

  /** The same block with more taken out. */
  Solid minus(List<Removal> taken) {
    List<Removal> more = new ArrayList<>(removals);
    more.addAll(taken);
    return new Solid(length, width, thickness, more);
  }

  /**
   * What lies between two coordinates on an axis, in a frame of its own: the slice's low side
   * becomes 0. Removals are moved along; those that end up outside are kept, in place, since their
   * order tells which operation made each.
   */
  public Solid slice(int axis, Length from, Length to) {
    if (from.signum() < 0 || !from.isLess(to) || to.isMore(extent(axis))) {
      throw new IllegalArgumentException(
          "no slice from " + from + " to " + to + " of " + extent(axis) + " on axis " + axis);
    }
    List<Removal> moved = removals.stream().map(r -> r.moved(axis, from)).toList();
    Length extent = to.minus(from);
    return new Solid(
        axis == 0 ? extent : length,
        axis == 1 ? extent : width,
        axis == 2 ? extent : thickness,
        moved);
  }
}
