package packetwright.drawing.view;

import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;
import packetwright.wood.part.Point;
import packetwright.wood.part.Solid;

/**
 * A piece where it sits in the assembly: x, y and z of the assembly, z upward.
 *
 * @param letter of its part
 * @param solid in its own frame
 * @param corner its lowest corner in the assembly
 * @param inside where its inside face looks
 * @param top where its top edge looks
 * @param shift how far it is drawn away from its place; nought when it is drawn in place
 * @param tilt how it is turned about its corner from there, or none
 */
public record Placed(
    String letter,
    Solid solid,
    Point corner,
    Heading inside,
    Heading top,
    Point shift,
    @Nullable Tilt tilt) {
  /** Refuses a piece whose two directions do not stand square to each other. */
  public Placed {
    if (inside.axis() == top.axis()) {
      throw new IllegalArgumentException("inside " + inside + " and top " + top);
    }
  }

  /** Not tilted. */
  public Placed(
      String letter, Solid solid, Point corner, Heading inside, Heading top, Point shift) {
    this(letter, solid, corner, inside, top, shift, null);
  }

  /** In place. */
  public Placed(String letter, Solid solid, Point corner, Heading inside, Heading top) {
    this(letter, solid, corner, inside, top, new Point(Length.ZERO, Length.ZERO, Length.ZERO));
  }

  /** Where a place of the piece lies in the assembly. */
  Vector assembled(Vector own) {
    Vector upright = new Vector(onAxis(0, own), onAxis(1, own), onAxis(2, own));
    Vector turned = tilt == null ? upright : tilt.turned(upright);
    return turned.plus(inches(corner)).plus(moved());
  }

  /** How far it is drawn away from its place. */
  Vector moved() {
    return inches(shift);
  }

  /** From its corner along an axis of the assembly, upright. */
  private double onAxis(int axis, Vector own) {
    int mine = inside.axis() == axis ? 2 : top.axis() == axis ? 1 : 0;
    return heading(mine).isPositive()
        ? own.on(mine)
        : solid.extent(mine).inches().approximate() - own.on(mine);
  }

  private static Vector inches(Point point) {
    return new Vector(
        point.x().inches().approximate(),
        point.y().inches().approximate(),
        point.z().inches().approximate());
  }

  /** Where the piece's own axis looks; x is top cross inside, so that the frame is right-handed. */
  private Heading heading(int mine) {
    if (mine == 2) {
      return inside;
    }
    if (mine == 1) {
      return top;
    }
    int axis = 3 - inside.axis() - top.axis();
    boolean isCyclic = (top.axis() + 1) % 3 == inside.axis();
    boolean isSame = top.isPositive() == inside.isPositive();
    return new Heading(axis, isCyclic == isSame);
  }

  /**
   * A turn about a line through the corner, the way a right hand's fingers curl when its thumb
   * looks along {@code about}.
   *
   * @param about where the thumb looks
   * @param rise of the slope that a level surface gets
   * @param run of that slope
   */
  public record Tilt(Heading about, Length rise, Length run) {
    private Vector turned(Vector place) {
      double up = rise.inches().approximate();
      double across = run.inches().approximate();
      double cos = across / Math.hypot(up, across);
      double sin = up / Math.hypot(up, across) * (about.isPositive() ? 1 : -1);
      Vector axis = Vector.along(about.axis());
      // Rodrigues 1840: a turn by an angle about an axis an inch long.
      return place
          .times(cos)
          .plus(axis.cross(place).times(sin))
          .plus(axis.times(axis.dot(place) * (1 - cos)));
    }
  }

  /**
   * A direction along an axis of the assembly.
   *
   * @param axis 0, 1 or 2
   * @param isPositive toward greater coordinates
   */
  public record Heading(int axis, boolean isPositive) {
    /** Reads {@code +x}, {@code -z}; anything else is a bug here, since it was checked before. */
    public static Heading of(String text) {
      int axis = text.length() == 2 ? "xyz".indexOf(text.charAt(1)) : -1;
      if (axis < 0 || "+-".indexOf(text.charAt(0)) < 0) {
        throw new IllegalArgumentException("direction " + text);
      }
      return new Heading(axis, text.charAt(0) == '+');
    }
  }
}
