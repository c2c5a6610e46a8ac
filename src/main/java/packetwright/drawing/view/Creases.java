package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import packetwright.drawing.view.Crease.Face;

/**
 * Finds the creases of a body. Wherever two facets meet there may be one: the meeting is cut by
 * every other facet that it runs through, and around the middle of each stretch the sectors between
 * the facets are tried for wood. So no case needs a rule of its own, however removals overlap.
 */
final class Creases {
  /** How far around a crease the sectors are tried, in inches. */
  private static final double AROUND = 1e-5;

  /** Facets at less than this angle, in radians, are one. */
  private static final double ONE_WAY = 1e-6;

  private final Body body;
  private final List<Crease> found = new ArrayList<>();

  private Creases(Body body) {
    this.body = body;
  }

  /** All of them; those that go on straight between flat facets are one. */
  static List<Crease> of(Body body) {
    Creases creases = new Creases(body);
    List<Facet> facets = body.facets();
    for (int i = 0; i < facets.size(); i++) {
      Facet facet = facets.get(i);
      List<Facet> near = facets.stream().filter(facet::isNear).toList();
      for (Facet other : facets.subList(i + 1, facets.size())) {
        List<Vector> ends = facet.isNear(other) ? facet.meet(other) : List.of();
        if (!ends.isEmpty()) {
          creases.add(ends.get(0), ends.get(1), near);
        }
      }
    }
    return Straight.joined(creases.found);
  }

  /** Cuts where two facets meet; all that can matter there are near one of them. */
  private void add(Vector from, Vector to, List<Facet> near) {
    Vector way = to.minus(from);
    List<Facet> nearer = near.stream().filter(facet -> facet.isNear(from, to)).toList();
    TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, 1.0));
    for (Facet facet : nearer) {
      double at = facet.crossing(from, way);
      if (!Double.isNaN(at)) {
        cuts.add(at);
      }
    }
    double before = 0;
    for (double cut : cuts) {
      if ((cut - before) * way.length() > 10 * Facet.SAME) {
        Vector begin = from.toward(to, before);
        Vector end = from.toward(to, cut);
        Vector middle = begin.toward(end, 0.5);
        addStretch(begin, end, faces(middle, way.unit(), nearer));
        before = cut;
      }
    }
  }

  private void addStretch(Vector from, Vector to, List<Face> faces) {
    boolean isFlat =
        faces.size() == 2 && faces.get(0).outward().dot(faces.get(1).outward()) > 1 - 1e-12;
    if (!faces.isEmpty() && !isFlat) {
      found.add(new Crease(from, to, faces));
    }
  }

  /** The facets at a place of a line between wood and air. */
  private List<Face> faces(Vector middle, Vector along, List<Facet> near) {
    Vector one =
        (Math.abs(along.x()) < 0.9 ? Vector.along(0) : Vector.along(1)).cross(along).unit();
    Vector other = along.cross(one);
    List<Ray> rays = rays(middle, new Vector[] {along, one, other}, near);
    List<Face> faces = new ArrayList<>();
    for (int i = 0; i < rays.size(); i++) {
      double before = rays.get((i + rays.size() - 1) % rays.size()).turn;
      double turn = rays.get(i).turn;
      double after = rays.get((i + 1) % rays.size()).turn;
      boolean isWoodBefore = isWood(middle, one, other, half(before, turn));
      boolean isWoodAfter = isWood(middle, one, other, half(turn, after));
      if (isWoodBefore != isWoodAfter) {
        Vector toward = one.times(-StrictMath.sin(turn)).plus(other.times(StrictMath.cos(turn)));
        Vector air = isWoodAfter ? toward.times(-1) : toward;
        Facet facet = rays.get(i).facet;
        Vector normal = facet.normal();
        faces.add(new Face(facet, normal.dot(air) < 0 ? normal.times(-1) : normal));
      }
    }
    return faces;
  }

  /** Halfway from one turn on to another; a whole turn on when they are one. */
  private static double half(double from, double to) {
    double turn = to - from;
    return from + (turn <= 0 ? turn + 2 * Math.PI : turn) / 2;
  }

  private boolean isWood(Vector middle, Vector one, Vector other, double turn) {
    return body.isWood(
        middle
            .plus(one.times(AROUND * StrictMath.cos(turn)))
            .plus(other.times(AROUND * StrictMath.sin(turn))));
  }

  /** The ways in which facets leave a line, by the angle about it; the line comes first. */
  private static List<Ray> rays(Vector middle, Vector[] frame, List<Facet> near) {
    Vector along = frame[0];
    Vector one = frame[1];
    Vector other = frame[2];
    List<Ray> rays = new ArrayList<>();
    for (Facet facet : near) {
      if (Math.abs(facet.distance(middle)) < Facet.SAME && facet.isAlong(along)) {
        Vector way = facet.normal().cross(along).unit();
        for (Vector toward : List.of(way, way.times(-1))) {
          double turn = StrictMath.atan2(toward.dot(other), toward.dot(one));
          boolean isNew = rays.stream().noneMatch(r -> apart(r.turn, turn) < ONE_WAY);
          if (isNew && facet.holds(middle.plus(toward.times(AROUND)))) {
            rays.add(new Ray(turn, facet));
          }
        }
      }
    }
    rays.sort(Comparator.comparingDouble(Ray::turn));
    return rays;
  }

  private static double apart(double one, double other) {
    double apart = Math.abs(one - other);
    return Math.min(apart, 2 * Math.PI - apart);
  }

  private record Ray(double turn, Facet facet) {}
}
