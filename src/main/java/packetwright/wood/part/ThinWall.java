package packetwright.wood.part;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.text.measure.Length;

/**
 * A wall that a groove, dado, rabbet or hole leaves between itself and a side of the part, or
 * another cut.
 *
 * @param feature beside it
 * @param thickness of the wall
 */
public record ThinWall(Part.Feature feature, Length thickness) {
  private static final Set<FeatureKind> LEAVES_WALLS =
      EnumSet.of(FeatureKind.GROOVE, FeatureKind.DADO, FeatureKind.RABBET, FeatureKind.HOLE);

  /** The thinnest wall beside each feature that has one thinner than the least, in their order. */
  public static List<ThinWall> of(Part part, Length least) {
    Box block = part.solid().block();
    List<Box> air =
        part.features().stream()
            .flatMap(feature -> feature.removals().stream())
            .filter(r -> r instanceof Removal.Trough || r instanceof Removal.Bore)
            .flatMap(r -> boxes(r, block).stream())
            .toList();
    List<ThinWall> thin = new ArrayList<>();
    for (Part.Feature feature : part.features()) {
      if (LEAVES_WALLS.contains(feature.kind())) {
        feature.removals().stream()
            .flatMap(r -> boxes(r, block).stream())
            .flatMap(box -> walls(box, block, air).stream())
            .filter(wall -> wall.isLess(least))
            .reduce(Length::min)
            .ifPresent(wall -> thin.add(new ThinWall(feature, wall)));
      }
    }
    return thin;
  }

  private static List<Box> boxes(Removal removal, Box block) {
    Box box = removal.around(block);
    return box == null ? List.of() : List.of(box);
  }

  /** How thick the wood is on each side of a box, as far as the next cut or the part's side. */
  private static List<Length> walls(Box box, Box block, List<Box> air) {
    List<Length> thicknesses = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      List<Box> walls = new ArrayList<>();
      walls.addAll(between(axis, block.low().on(axis), box.low().on(axis), box));
      walls.addAll(between(axis, box.high().on(axis), block.high().on(axis), box));
      for (Box other : air) {
        for (Box wall : between(axis, box.high().on(axis), other.low().on(axis), box)) {
          walls.addAll(facing(wall, other, axis));
        }
        for (Box wall : between(axis, other.high().on(axis), box.low().on(axis), box)) {
          walls.addAll(facing(wall, other, axis));
        }
      }
      thicknesses.addAll(standing(walls, axis, air));
    }
    return thicknesses;
  }

  /** The box between two coordinates on an axis, as large across as another; none when reversed. */
  private static List<Box> between(int axis, Length from, Length to, Box across) {
    return from.isLess(to)
        ? List.of(new Box(across.low().with(axis, from), across.high().with(axis, to)))
        : List.of();
  }

  /** What of a wall stands before another cut. */
  private static List<Box> facing(Box wall, Box other, int axis) {
    Point low = other.low().with(axis, wall.low().on(axis));
    Point high = other.high().with(axis, wall.high().on(axis));
    Box common = wall.common(new Box(low, high));
    return common == null ? List.of() : List.of(common);
  }

  /** A wall that lies in a third cut is none. */
  private static List<Length> standing(List<Box> walls, int axis, List<Box> air) {
    return walls.stream()
        .filter(wall -> air.stream().noneMatch(cut -> cut.contains(wall)))
        .map(wall -> wall.extent(axis))
        .toList();
  }
}
