package packetwright.wood.part;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Removal.Bend;
import packetwright.wood.part.Removal.Corner;
import packetwright.wood.part.Removal.Outline;

/** Where places and rectangles of the plane lie to a closed path; exact. */
final class Ring {
  private final List<Edge> edges;

  private Ring(List<Edge> edges) {
    this.edges = List.copyOf(edges);
  }

  static Ring of(Outline outline) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < outline.path().size(); i++) {
      Corner from = outline.path().get(i);
      edges.add(new Edge(from, outline.path().get((i + 1) % outline.path().size()), from.bend()));
    }
    return new Ring(edges);
  }

  /** Whether a place lies inside; not when it lies on the path. */
  boolean surrounds(Length u, Length v) {
    boolean isInside = false;
    for (Edge edge : edges) {
      if (edge.holds(u, v)) {
        return false;
      }
      // A ray to the right crosses the path an odd number of times just when it begins inside.
      isInside ^= edge.isCrossedFrom(u, v);
    }
    return isInside;
  }

  /** Whether the path runs through the inside of a rectangle. */
  boolean runsThrough(Rectangle rectangle) {
    return edges.stream().anyMatch(edge -> edge.runsThrough(rectangle));
  }

  /** Whether all of a rectangle lies inside. */
  boolean surrounds(Rectangle rectangle) {
    return !runsThrough(rectangle) && surrounds(rectangle.middleU(), rectangle.middleV());
  }

  /** Corners of a convex area that all of it lies in. */
  List<Corner> hull() {
    List<Corner> hull = new ArrayList<>();
    for (Edge edge : edges) {
      hull.add(edge.from());
      if (edge.bend() != null) {
        hull.add(edge.tangents(edge.bend()));
      }
    }
    return hull;
  }

  /** Whether nothing of a rectangle lies inside. */
  boolean misses(Rectangle rectangle) {
    return !runsThrough(rectangle) && !surrounds(rectangle.middleU(), rectangle.middleV());
  }

  /** The line or arc from one corner to the next; an arc turns at most a quarter. */
  private record Edge(Corner from, Corner to, @Nullable Bend bend) {
    Rectangle around() {
      return new Rectangle(
          from.u().min(to.u()), from.v().min(to.v()), from.u().max(to.u()), from.v().max(to.v()));
    }

    boolean holds(Length u, Length v) {
      return around().holds(u, v) && (bend == null ? turn(u, v) : reach(bend, u, v)) == 0;
    }

    /** Which side of the line from corner to corner a place lies on: 1 at its left. */
    int turn(Length u, Length v) {
      Rational left = product(to.u().minus(from.u()), v.minus(from.v()));
      return left.compareTo(product(to.v().minus(from.v()), u.minus(from.u())));
    }

    /** Whether a place lies outside (1), on (0) or inside (-1) the circle of the arc. */
    int reach(Bend arc, Length u, Length v) {
      return squares(u, v, arc).compareTo(squares(from.u(), from.v(), arc));
    }

    boolean isCrossedFrom(Length u, Length v) {
      boolean passes = from.v().isMore(v) != to.v().isMore(v);
      if (!passes || !u.isLess(around().highU())) {
        return false;
      }
      if (u.isLess(around().lowU())) {
        return true;
      }
      if (bend == null) {
        return turn(u, v) == (to.v().isMore(from.v()) ? 1 : -1);
      }
      boolean isRightOfCentre = !around().lowU().isLess(bend.u());
      return reach(bend, u, v) == (isRightOfCentre ? -1 : 1);
    }

    /** Where the tangents at both ends of the arc meet. */
    Corner tangents(Bend arc) {
      Length u1 = from.u().minus(arc.u());
      Length v1 = from.v().minus(arc.v());
      Length u2 = to.u().minus(arc.u());
      Length v2 = to.v().minus(arc.v());
      Rational square = product(u1, u1).plus(product(v1, v1));
      Rational far = square.dividedBy(square.plus(product(u1, u2)).plus(product(v1, v2)));
      return new Corner(
          arc.u().plus(new Length(u1.plus(u2).inches().times(far))),
          arc.v().plus(new Length(v1.plus(v2).inches().times(far))),
          null);
    }

    boolean runsThrough(Rectangle rectangle) {
      if (!around().meets(rectangle)) {
        return false;
      }
      // Within its own rectangle an arc is all there is of its circle.
      Rectangle near = bend == null ? rectangle : around().common(rectangle);
      int least = 1;
      int most = -1;
      for (Corner corner : near.corners()) {
        int side =
            bend == null ? turn(corner.u(), corner.v()) : reach(bend, corner.u(), corner.v());
        least = Math.min(least, side);
        most = Math.max(most, side);
      }
      return least < 0 && most > 0;
    }
  }

  static Rational squares(Length u, Length v, Bend bend) {
    Length du = u.minus(bend.u());
    Length dv = v.minus(bend.v());
    return product(du, du).plus(product(dv, dv));
  }

  private static Rational product(Length a, Length b) {
    return a.inches().times(b.inches());
  }
}
