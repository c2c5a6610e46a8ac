package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import packetwright.definition.project.Side;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.view.Section;
import packetwright.drawing.view.View.Place;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Solid;

/**
 * A piece in section as it lies on a table: its guided side at the right where x is 0, the face
 * that is down at y 0. Where it is too wide for the paper a stretch is broken out.
 *
 * @param guided side at the fence or the stop
 * @param down face on the table
 * @param extent across, from the guided side
 * @param shown how much of it is drawn from the guided side
 * @param rest how much is drawn at the other side; zero when nothing is broken out
 */
record Wood(Side guided, Side down, Length extent, Length shown, Length rest) {
  private static final double GAP = 6;
  private static final double REST = 18;

  /** How much is left to be seen beyond what matters. */
  private static final double LEAD = 26;

  /**
   * Breaks a piece where it is wider than the room.
   *
   * @param needed from the guided side, never broken
   * @param room in points
   */
  static Wood of(Solid solid, Side guided, Side down, Length needed, Scene scene, double room) {
    Length extent = solid.extent(guided.axis());
    Length shown = rounded(scene, scene.points(needed) + LEAD);
    Length rest = rounded(scene, REST);
    boolean isWhole =
        scene.points(extent) <= room
            || !shown.plus(rest).plus(rounded(scene, 2 * GAP)).isLess(extent);
    return isWhole
        ? new Wood(guided, down, extent, extent, Length.ZERO)
        : new Wood(guided, down, extent, shown, rest);
  }

  /** Some points on paper as a length of wood. */
  private static Length rounded(Scene scene, double points) {
    long sixtyFourths = (long) Math.ceil(points / scene.scale().pointsPerInch() * 64);
    return new Length(Rational.of(sixtyFourths, 64));
  }

  boolean isBroken() {
    return rest.signum() > 0;
  }

  /** Where its far side is drawn. */
  double left(Scene scene) {
    return isBroken() ? -scene.points(shown) - GAP - scene.points(rest) : -scene.points(extent);
  }

  /** Fills what there is of a solid between two distances from the guided side. */
  void fill(Scene scene, Solid solid, double grey) {
    for (Stretch stretch : stretches(Length.ZERO, extent)) {
      for (double[] ring : stretch.rings(scene, solid)) {
        scene.fill(grey, ring);
      }
    }
  }

  /** Draws cut wood, lined. */
  void draw(Scene scene, Solid solid, Length from, Length to) {
    outline(scene, solid, from, to, true);
  }

  /** Draws what comes off, not lined. */
  void drawWaste(Scene scene, Solid solid, Length from, Length to) {
    outline(scene, solid, from, to, false);
  }

  private void outline(Scene scene, Solid solid, Length from, Length to, boolean isLined) {
    for (Stretch stretch : stretches(from, to)) {
      List<double[]> rings = stretch.rings(scene, solid);
      rings.forEach(ring -> scene.fill(1, ring));
      if (isLined) {
        scene.hatch(rings, true);
      }
      rings.forEach(ring -> edges(scene, ring, stretch));
    }
    double top = -scene.points(solid.thickness());
    if (isBroken() && !to.isLess(extent) && from.isLess(shown)) {
      scene.breakLine(-scene.points(shown), top, 0);
      scene.breakLine(-scene.points(shown) - GAP, top, 0);
    }
  }

  /** Every side of a ring but those at a break. */
  private void edges(Scene scene, double[] ring, Stretch stretch) {
    for (int i = 0; i < ring.length; i += 2) {
      int next = (i + 2) % ring.length;
      boolean isAtBreak =
          isBroken()
              && ring[i] == ring[next]
              && (isNear(ring[i], -scene.points(shown))
                  || isNear(ring[i], -scene.points(shown) - GAP))
              && stretch.touchesBreak(this);
      if (!isAtBreak) {
        scene.stroke(Line.VISIBLE, ring[i], ring[i + 1], ring[next], ring[next + 1]);
      }
    }
  }

  private static boolean isNear(double one, double other) {
    return Math.abs(one - other) < 0.01;
  }

  private List<Stretch> stretches(Length from, Length to) {
    if (!isBroken()) {
      return List.of(new Stretch(this, from, to, 0));
    }
    List<Stretch> stretches = new ArrayList<>();
    if (from.isLess(shown)) {
      stretches.add(new Stretch(this, from, to.min(shown), 0));
    }
    Length start = extent.minus(rest);
    if (to.isMore(start)) {
      stretches.add(new Stretch(this, from.max(start), to, GAP));
    }
    return stretches;
  }

  /** A part of the piece that is drawn in one: between two distances from the guided side. */
  private record Stretch(Wood wood, Length from, Length to, double gap) {
    boolean touchesBreak(Wood of) {
      return to.equals(of.shown) || gap > 0;
    }

    List<double[]> rings(Scene scene, Solid solid) {
      int axis = wood.guided.axis();
      Length extent = solid.extent(axis);
      Solid slice =
          wood.guided.isFar()
              ? solid.slice(axis, extent.minus(to), extent.minus(from))
              : solid.slice(axis, from, to);
      int across = 1 - axis;
      Section section = Section.of(slice, across, slice.extent(across).dividedBy(2));
      List<double[]> rings = new ArrayList<>();
      for (Section.Cut cut : section.areas()) {
        for (List<Place> ring : cut.rings()) {
          rings.add(points(scene, solid, ring));
        }
      }
      return rings;
    }

    private double[] points(Scene scene, Solid solid, List<Place> ring) {
      double span = to.minus(from).inches().approximate();
      double start = from.inches().approximate();
      double thickness = solid.thickness().inches().approximate();
      double perInch = scene.scale().pointsPerInch();
      double back =
          gap == 0
              ? 0
              : scene.points(wood.extent.minus(wood.rest).minus(wood.shown)) - wood.gapOnPaper();
      double[] xy = new double[ring.size() * 2];
      for (int i = 0; i < ring.size(); i++) {
        Place place = ring.get(i);
        double distance = start + (wood.guided.isFar() ? span - place.u() : place.u());
        double height = wood.down == Side.OUTSIDE ? place.v() : thickness - place.v();
        xy[2 * i] = -distance * perInch + back;
        xy[2 * i + 1] = -height * perInch;
      }
      return xy;
    }
  }

  private double gapOnPaper() {
    return GAP;
  }
}
