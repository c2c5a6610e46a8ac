package packetwright.wood.assembly;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import packetwright.text.formula.Inequality;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Box;
import packetwright.wood.part.Point;

/**
 * Where a tilted piece's wood comes to lie. Sine and cosine are rational only for slopes such as 3
 * over 4; else they are taken too large by a thousand-millionth at most. The plane through the line
 * that the piece is turned about is exact.
 */
final class Turn {
  private static final BigInteger PRECISION = BigInteger.TEN.pow(9);

  private final Point corner;
  private final int about;
  private final Rational cosine;
  private final Rational sine;

  Turn(Tilt tilt, Point corner) {
    this.corner = corner;
    this.about = tilt.about().axis();
    Rational rise = tilt.rise().inches();
    Rational run = tilt.run().inches();
    Rational slant = root(rise.times(rise).plus(run.times(run)));
    this.cosine = run.dividedBy(slant);
    Rational up = rise.dividedBy(slant);
    this.sine = tilt.about().isPositive() ? up : up.negated();
  }

  /** Rounded down to a fraction; exact where there is one over the same denominator. */
  private static Rational root(Rational square) {
    BigInteger under = square.numerator().multiply(square.denominator());
    BigInteger root = under.multiply(PRECISION.pow(2)).sqrt();
    return Rational.of(root, square.denominator().multiply(PRECISION));
  }

  /** A chunk of the piece as if it were upright, turned. */
  Chunk of(Chunk upright) {
    List<Inequality> turned = new ArrayList<>();
    for (Inequality bound : upright.inequalities()) {
      turned.add(of(bound));
    }
    return new Chunk(around(upright.box()), turned);
  }

  private Inequality of(Inequality bound) {
    int u = (about + 1) % 3;
    int v = (about + 2) % 3;
    Rational ofU = bound.factors().get(u);
    Rational ofV = bound.factors().get(v);
    Rational atU = corner.on(u).inches();
    Rational atV = corner.on(v).inches();
    Rational turnedU = ofU.times(cosine).minus(ofV.times(sine));
    Rational turnedV = ofU.times(sine).plus(ofV.times(cosine));
    List<Rational> factors = new ArrayList<>(bound.factors());
    factors.set(u, turnedU);
    factors.set(v, turnedV);
    Rational limit =
        bound
            .limit()
            .minus(ofU.times(atU))
            .minus(ofV.times(atV))
            .plus(turnedU.times(atU))
            .plus(turnedV.times(atV));
    return new Inequality(factors, limit);
  }

  /** A box that what is turned lies within. */
  private Box around(Box box) {
    Point low = of(box.low());
    Point high = low;
    for (Length u : List.of(box.low().on((about + 1) % 3), box.high().on((about + 1) % 3))) {
      for (Length v : List.of(box.low().on((about + 2) % 3), box.high().on((about + 2) % 3))) {
        Point turned = of(box.low().with((about + 1) % 3, u).with((about + 2) % 3, v));
        for (int axis = 0; axis < 3; axis++) {
          low = low.with(axis, low.on(axis).min(turned.on(axis)));
          high = high.with(axis, high.on(axis).max(turned.on(axis)));
        }
      }
    }
    return new Box(low, high.with(about, box.high().on(about)));
  }

  private Point of(Point upright) {
    int u = (about + 1) % 3;
    int v = (about + 2) % 3;
    Rational awayU = upright.on(u).minus(corner.on(u)).inches();
    Rational awayV = upright.on(v).minus(corner.on(v)).inches();
    Rational toU = awayU.times(cosine).minus(awayV.times(sine));
    Rational toV = awayU.times(sine).plus(awayV.times(cosine));
    return upright
        .with(u, corner.on(u).plus(new Length(toU)))
        .with(v, corner.on(v).plus(new Length(toV)));
  }
}
