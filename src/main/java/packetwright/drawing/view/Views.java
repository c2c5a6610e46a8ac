package packetwright.drawing.view;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import packetwright.drawing.view.View.Edge;
import packetwright.drawing.view.View.Hole;
import packetwright.drawing.view.View.Place;
import packetwright.drawing.view.View.Sight;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Solid;

/**
 * Projects a solid. Every crease of its surface is cut where another crosses it on paper, and each
 * stretch is seen when, close beside its middle, no wood lies between it and the eye.
 */
public final class Views {
  /** A step beside a line, in inches. */
  static final double BESIDE = 1e-7;

  private final Solid solid;
  private final Projection projection;
  private final Vector eye;
  private final List<Bore> bores;

  private Views(Solid solid, Projection projection) {
    this.solid = solid;
    this.projection = projection;
    this.eye = Vector.along(projection.depth());
    this.bores = solid.removals().stream().flatMap(r -> bores(r).stream()).toList();
  }

  /** The lines of one view. */
  public static View project(Solid solid, Projection projection) {
    Body body = new Body(solid);
    return new Views(solid, projection).view(body, Creases.of(body));
  }

  /** The lines of every view. */
  public static Map<Projection, View> all(Solid solid) {
    Body body = new Body(solid);
    List<Crease> creases = Creases.of(body);
    Map<Projection, View> views = new EnumMap<>(Projection.class);
    for (Projection projection : Projection.values()) {
      views.put(projection, new Views(solid, projection).view(body, creases));
    }
    return views;
  }

  private static List<Bore> bores(Removal removal) {
    return removal.match(
        new Removal.Cases<List<Bore>>() {
          @Override
          public List<Bore> trough(Removal.Trough trough) {
            return List.of();
          }

          @Override
          public List<Bore> bore(Bore bore) {
            return List.of(bore);
          }

          @Override
          public List<Bore> slope(Removal.Slope slope) {
            return List.of();
          }

          @Override
          public List<Bore> outline(Removal.Outline outline) {
            return List.of();
          }
        });
  }

  private View view(Body body, List<Crease> creases) {
    List<Crease> lines =
        creases.stream()
            .filter(c -> c.isLine(eye))
            .filter(c -> c.to().minus(c.from()).cross(eye).length() > 10 * Facet.SAME)
            .toList();
    Crossings crossings = new Crossings(lines.stream().map(this::onPaper).toList());
    PaperArcs arcs = new PaperArcs();
    PaperLines straight = new PaperLines();
    PaperCurves curves = new PaperCurves();
    for (int i = 0; i < lines.size(); i++) {
      Crease line = lines.get(i);
      Round round = line.chordOf(projection.depth());
      for (Stretch stretch : stretches(body, line, crossings.cuts(i))) {
        if (round != null) {
          arcs.add(circle(round), stretch);
        } else if (line.isCurved(eye)) {
          curves.add(stretch);
        } else {
          straight.add(stretch);
        }
      }
    }
    List<Edge> edges = new ArrayList<>(axes());
    edges.addAll(straight.edges());
    return new View(
        solid.extent(projection.across()),
        solid.extent(projection.up()),
        edges,
        arcs.arcs(),
        curves.curves(),
        holes());
  }

  private List<Stretch> stretches(Body body, Crease line, List<Double> cuts) {
    Vector aside = line.to().minus(line.from()).cross(eye).unit().times(BESIDE);
    List<Stretch> stretches = new ArrayList<>();
    double before = 0;
    for (double cut : cuts) {
      Vector from = line.from().toward(line.to(), before);
      Vector to = line.from().toward(line.to(), cut);
      if (to.minus(from).length() > 10 * Facet.SAME) {
        Vector middle = from.toward(to, 0.5);
        boolean isSeen =
            body.isFree(middle.plus(aside), eye) || body.isFree(middle.minus(aside), eye);
        stretches.add(new Stretch(place(from), place(to), isSeen));
        before = cut;
      }
    }
    return stretches;
  }

  private double[] onPaper(Crease crease) {
    Place from = place(crease.from());
    Place to = place(crease.to());
    return new double[] {from.u(), from.v(), to.u(), to.v()};
  }

  private Place place(Vector place) {
    return new Place(
        projection.onPaper(solid, projection.across(), place.on(projection.across())),
        projection.onPaper(solid, projection.up(), place.on(projection.up())));
  }

  private Hole circle(Round round) {
    boolean isAcrossFirst = projection.across() < projection.up();
    double across = isAcrossFirst ? round.u() : round.v();
    double up = isAcrossFirst ? round.v() : round.u();
    return new Hole(
        Exact.of(projection.onPaper(solid, projection.across(), across)),
        Exact.of(projection.onPaper(solid, projection.up(), up)),
        Exact.of(round.radius()));
  }

  private List<Hole> holes() {
    return bores.stream()
        .filter(bore -> bore.axis() == projection.depth())
        .map(bore -> new Hole(across(bore), up(bore), bore.diameter().dividedBy(2)))
        .toList();
  }

  private Length across(Bore bore) {
    return projection.onPaper(solid, projection.across(), bore.centre().on(projection.across()));
  }

  private Length up(Bore bore) {
    return projection.onPaper(solid, projection.up(), bore.centre().on(projection.up()));
  }

  /** Centre lines of the holes that are seen from the side. */
  private List<Edge> axes() {
    List<Edge> axes = new ArrayList<>();
    for (Bore bore : bores) {
      Length begin = bore.centre().on(bore.axis()).max(Length.ZERO);
      Length end = bore.centre().on(bore.axis()).plus(bore.depth()).min(solid.extent(bore.axis()));
      if (bore.axis() != projection.depth() && begin.isLess(end)) {
        Length one = projection.onPaper(solid, bore.axis(), begin);
        Length other = projection.onPaper(solid, bore.axis(), end);
        Length from = one.min(other);
        Length to = one.max(other);
        axes.add(
            bore.axis() == projection.across()
                ? new Edge(Sight.CENTRE, from, up(bore), to, up(bore))
                : new Edge(Sight.CENTRE, across(bore), from, across(bore), to));
      }
    }
    return axes;
  }
}
