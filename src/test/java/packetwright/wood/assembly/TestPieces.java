package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.text.source.Span;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.part.Removal.Trough;
import packetwright.wood.part.Shapes;
import packetwright.wood.part.Solid;

/** Pieces without a project, and a second opinion on where their wood is. */
final class TestPieces {
  private static final List<Side> SIDES = List.of(Side.values());

  private TestPieces() {}

  static Length in(long numerator, long denominator) {
    return Length.ofInches(numerator, denominator);
  }

  static Length in(long inches) {
    return Length.ofInches(inches);
  }

  static Point at(long x, long y, long z) {
    return new Point(in(x), in(y), in(z));
  }

  static Solid block(long length, long width, long thickness) {
    return Solid.block(in(length), in(width), in(thickness));
  }

  /** A piece with its own directions: {@code "+y +z"} for the inside face, then the top edge. */
  static Placed placed(String name, Solid solid, Point corner, String directions) {
    return placed(name, solid, corner, directions, null);
  }

  static Placed placed(
      String name,
      Solid solid,
      Point corner,
      String directions,
      @org.jspecify.annotations.Nullable Tilt tilt) {
    Direction inside = direction(directions.substring(0, 2));
    Direction top = direction(directions.substring(3));
    Part part = new Part(name, "A", 1, false, "stock", solid, List.of(), Span.startOf("test"));
    return new Placed(name, part, solid, corner, top.cross(inside), top, inside, tilt);
  }

  static Direction direction(String text) {
    Direction direction = Direction.of(text);
    if (direction == null) {
      throw new IllegalArgumentException(text);
    }
    return direction;
  }

  /** A block of up to 4 in each way on half inches, with a few troughs and slopes. */
  static Solid randomSolid(Random random) {
    Solid solid =
        Solid.block(
            in(2 + random.nextInt(7), 2),
            in(2 + random.nextInt(7), 2),
            in(2 + random.nextInt(7), 2));
    int troughs = random.nextInt(3);
    for (int i = 0; i < troughs; i++) {
      List<Length> low = new ArrayList<>();
      List<Length> high = new ArrayList<>();
      for (int axis = 0; axis < 3; axis++) {
        int begin = random.nextInt(8) - 1;
        low.add(in(begin, 2));
        high.add(in(begin + 1 + random.nextInt(3), 2));
      }
      solid =
          solid.minus(
              new Trough(
                  new Box(
                      new Point(low.get(0), low.get(1), low.get(2)),
                      new Point(high.get(0), high.get(1), high.get(2)))));
    }
    int slopes = random.nextInt(3);
    for (int i = 0; i < slopes; i++) {
      Side at = SIDES.get(random.nextInt(6));
      Side full = SIDES.get(random.nextInt(6));
      if (at.axis() != full.axis()) {
        Length most = solid.extent(at.axis());
        solid = solid.minus(Shapes.slant(solid, at, full, most.dividedBy(1 + random.nextInt(3))));
      }
    }
    return solid;
  }

  static Placed randomPiece(String name, Random random) {
    String inside = randomDirection(random);
    String top = randomDirection(random);
    while (top.charAt(1) == inside.charAt(1)) {
      top = randomDirection(random);
    }
    Point corner =
        new Point(in(random.nextInt(7), 2), in(random.nextInt(7), 2), in(random.nextInt(7), 2));
    return placed(name, randomSolid(random), corner, inside + " " + top);
  }

  private static String randomDirection(Random random) {
    return (random.nextBoolean() ? "+" : "-") + "xyz".charAt(random.nextInt(3));
  }

  /** Whether a place of the assembly is strictly within the wood, worked out point by point. */
  static boolean isWood(Placed piece, double... place) {
    double[] own = new double[3];
    List<Direction> directions = List.of(piece.right(), piece.top(), piece.inside());
    for (int axis = 0; axis < 3; axis++) {
      Direction direction = directions.get(axis);
      double along = place[direction.axis()] - value(piece.corner().on(direction.axis()));
      double extent = value(piece.solid().extent(axis));
      own[axis] = direction.isPositive() ? along : extent - along;
      if (own[axis] <= 0 || own[axis] >= extent) {
        return false;
      }
    }
    return piece.solid().removals().stream().noneMatch(removal -> isGone(removal, own));
  }

  private static boolean isGone(Removal removal, double[] own) {
    if (removal instanceof Slope slope) {
      double u = own[slope.axis() == 0 ? 1 : 0];
      double v = own[slope.axis() == 2 ? 1 : 2];
      return slope.a().approximate() * u + slope.b().approximate() * v >= value(slope.c());
    }
    Box box = ((Trough) removal).box();
    for (int axis = 0; axis < 3; axis++) {
      if (own[axis] < value(box.low().on(axis)) || own[axis] > value(box.high().on(axis))) {
        return false;
      }
    }
    return true;
  }

  static double value(Length length) {
    return length.inches().approximate();
  }
}
