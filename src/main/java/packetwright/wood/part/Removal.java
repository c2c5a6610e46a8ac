package packetwright.wood.part;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;

/**
 * Wood taken out of a block. A trough and a bore end within the block; a slope and an outline run
 * right through it along their axis. A chamfer is a slope, and a roundover an outline, along an
 * edge.
 */
public sealed interface Removal {
  /** Calls the case that fits. */
  <R> R match(Cases<R> cases);

  /** The same, seen from an origin that has moved up an axis by that much. */
  Removal moved(int axis, Length by);

  /** The same in the mirror image of a block so long: left and right are exchanged. */
  Removal mirrored(Length length);

  /** The box that it fits in, which may reach beyond a block; none when that has no volume. */
  default @Nullable Box reach(Box block) {
    return Extents.reach(this, block);
  }

  /** The box that what it takes from a block fits in; none when it takes nothing. */
  default @Nullable Box around(Box block) {
    Box reach = reach(block);
    return reach == null ? null : reach.common(block);
  }

  /** One method for each kind of removal. */
  interface Cases<R> {
    /** A rabbet, dado, groove or notch. */
    R trough(Trough trough);

    /** A round hole. */
    R bore(Bore bore);

    /** A miter, bevel, taper or chamfer. */
    R slope(Slope slope);

    /** A rounded corner, curve or roundover. */
    R outline(Outline outline);
  }

  /** The lesser of the two axes across one: the axis of {@code u} in the plane across it. */
  static int acrossU(int axis) {
    return axis == 0 ? 1 : 0;
  }

  /** The greater of the two axes across one: the axis of {@code v} in the plane across it. */
  static int acrossV(int axis) {
    return axis == 2 ? 1 : 2;
  }

  /**
   * A rabbet, dado, groove or notch.
   *
   * @param box what is taken out; it may reach beyond the block
   */
  record Trough(Box box) implements Removal {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.trough(this);
    }

    @Override
    public Trough moved(int axis, Length by) {
      return new Trough(
          new Box(
              box.low().with(axis, box.low().on(axis).minus(by)),
              box.high().with(axis, box.high().on(axis).minus(by))));
    }

    @Override
    public Trough mirrored(Length length) {
      return new Trough(
          new Box(
              box.low().with(0, length.minus(box.high().x())),
              box.high().with(0, length.minus(box.low().x()))));
    }
  }

  /**
   * A round hole.
   *
   * @param axis the axis it runs along: 0, 1 or 2
   * @param centre on its axis; the coordinate on {@code axis} is where it begins (the lesser end)
   * @param depth along the axis
   * @param diameter of the hole
   */
  record Bore(int axis, Point centre, Length depth, Length diameter) implements Removal {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.bore(this);
    }

    @Override
    public Bore moved(int along, Length by) {
      return new Bore(axis, centre.with(along, centre.on(along).minus(by)), depth, diameter);
    }

    @Override
    public Bore mirrored(Length length) {
      Length lesserEnd = axis == 0 ? centre.x().plus(depth) : centre.x();
      return new Bore(axis, centre.with(0, length.minus(lesserEnd)), depth, diameter);
    }

    /** The box that it just fits in. */
    Box around() {
      Point low = centre;
      Point high = centre.with(axis, centre.on(axis).plus(depth));
      for (int other : List.of(acrossU(axis), acrossV(axis))) {
        low = low.with(other, centre.on(other).minus(diameter.dividedBy(2)));
        high = high.with(other, centre.on(other).plus(diameter.dividedBy(2)));
      }
      return new Box(low, high);
    }
  }

  /**
   * Everything on one side of a plane that runs along an axis and is oblique to the other two: the
   * points with {@code a u + b v > c}. The factors are coprime whole numbers, neither of them 0, so
   * that one plane is written in one way.
   *
   * @param axis the axis it runs along: 0, 1 or 2
   * @param a factor of the coordinate on {@link #acrossU}
   * @param b factor of the coordinate on {@link #acrossV}
   * @param c where the plane stands
   */
  record Slope(int axis, Rational a, Rational b, Length c) implements Removal {
    /** Brings the factors to their lowest terms. */
    public Slope {
      if (a.signum() == 0 || b.signum() == 0) {
        throw new IllegalArgumentException("a slope that is not oblique: " + a + ", " + b);
      }
      Rational common =
          Rational.of(
              a.numerator().multiply(b.denominator()).gcd(b.numerator().multiply(a.denominator())),
              a.denominator().multiply(b.denominator()));
      a = a.dividedBy(common);
      b = b.dividedBy(common);
      c = new Length(c.inches().dividedBy(common));
    }

    /**
     * The slope through two places of the plane across an axis; what lies at the left of the way
     * from the first to the second, u to the right and v upward, is taken away.
     */
    public static Slope leftOf(int axis, Length u1, Length v1, Length u2, Length v2) {
      Rational a = v1.minus(v2).inches();
      Rational b = u2.minus(u1).inches();
      return new Slope(axis, a, b, new Length(a.times(u1.inches()).plus(b.times(v1.inches()))));
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.slope(this);
    }

    @Override
    public Slope moved(int along, Length by) {
      Rational factor = along == axis ? Rational.ZERO : along == acrossU(axis) ? a : b;
      return new Slope(axis, a, b, new Length(c.inches().minus(factor.times(by.inches()))));
    }

    @Override
    public Slope mirrored(Length length) {
      return axis == 0
          ? this
          : new Slope(axis, a.negated(), b, new Length(c.inches().minus(a.times(length.inches()))));
    }

    /** On which side a place lies: more than 0 in what is taken away, 0 on the plane. */
    public int side(Length u, Length v) {
      return over(u, v).signum();
    }

    /** By how much the plane's own sum is more than {@code c} at a place. */
    Rational over(Length u, Length v) {
      return a.times(u.inches()).plus(b.times(v.inches())).minus(c.inches());
    }
  }

  /**
   * What a closed path of lines and arcs surrounds, right through the block. The path runs
   * counterclockwise (u to the right, v upward) from its least corner, and no corner lies on a
   * straight line between its neighbours, so that one path is written in one way. An arc has a
   * corner wherever it runs level or upright, and nowhere else on its way, so that it turns at most
   * a quarter and the path lies in the box of its corners.
   *
   * @param axis the axis it runs along: 0, 1 or 2
   * @param path corners in order; the last goes on to the first
   */
  record Outline(int axis, List<Corner> path) implements Removal {
    /** Brings the path, given in either sense, to its one form. */
    public Outline {
      path = OutlinePath.normal(path);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.outline(this);
    }

    @Override
    public Outline moved(int along, Length by) {
      if (along == axis) {
        return this;
      }
      boolean isU = along == acrossU(axis);
      Length du = isU ? by : Length.ZERO;
      Length dv = isU ? Length.ZERO : by;
      return new Outline(axis, path.stream().map(corner -> corner.moved(du, dv)).toList());
    }

    @Override
    public Outline mirrored(Length length) {
      return axis == 0
          ? this
          : new Outline(axis, path.stream().map(corner -> corner.mirrored(length)).toList());
    }
  }

  /**
   * A corner of a path and how the path goes on from it.
   *
   * @param u place on the lesser of the axes across
   * @param v place on the greater
   * @param bend the arc to the next corner; a straight line when none
   */
  record Corner(Length u, Length v, @Nullable Bend bend) {
    Corner moved(Length du, Length dv) {
      return new Corner(
          u.minus(du),
          v.minus(dv),
          bend == null
              ? null
              : new Bend(bend.u().minus(du), bend.v().minus(dv), bend.isCounterclockwise()));
    }

    /** Of the same way round; an arc then turns the other way. */
    Corner mirrored(Length length) {
      return new Corner(
          length.minus(u),
          v,
          bend == null
              ? null
              : new Bend(length.minus(bend.u()), bend.v(), !bend.isCounterclockwise()));
    }
  }

  /**
   * An arc of a circle.
   *
   * @param u centre
   * @param v centre
   * @param isCounterclockwise the way it turns about its centre
   */
  record Bend(Length u, Length v, boolean isCounterclockwise) {}
}
