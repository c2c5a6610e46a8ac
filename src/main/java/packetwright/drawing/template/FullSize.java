package packetwright.drawing.template;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.view.Projection;
import packetwright.drawing.view.Section;
import packetwright.drawing.view.View;
import packetwright.drawing.view.View.Arc;
import packetwright.drawing.view.View.Hole;
import packetwright.drawing.view.View.Place;
import packetwright.drawing.view.View.Sight;
import packetwright.drawing.view.Views;
import packetwright.text.measure.Length;
import packetwright.wood.part.Solid;

/**
 * One view of a part at full size: 72 points to the inch, x to the right and y downward from the
 * upper left corner. A long one may be turned a quarter to the left.
 */
final class FullSize {
  static final double INCH = 72;

  /** Chords leave an arc by no more than this, in points. */
  private static final double SAGITTA = 0.01;

  private final Solid solid;
  private final Projection projection;
  private final View view;
  private final boolean isTurned;

  private FullSize(Solid solid, Projection projection, View view, boolean isTurned) {
    this.solid = solid;
    this.projection = projection;
    this.view = view;
    this.isTurned = isTurned;
  }

  FullSize(Solid solid, Projection projection, boolean isTurned) {
    this(solid, projection, Views.project(solid, projection), isTurned);
  }

  /** The same, turned. */
  FullSize turned() {
    return new FullSize(solid, projection, view, true);
  }

  /** A line of places, and how it looks. */
  record Path(Line line, List<Place> places) {}

  /** The middle of a hole. */
  record Centre(Place at, Length diameter) {}

  double width() {
    return points(isTurned ? view.height() : view.width());
  }

  double height() {
    return points(isTurned ? view.width() : view.height());
  }

  private static double points(Length length) {
    return length.inches().approximate() * INCH;
  }

  /** A place of the view, u to the right and v upward in inches, on the template. */
  Place at(double u, double v) {
    return isTurned
        ? new Place(points(view.height()) - v * INCH, points(view.width()) - u * INCH)
        : new Place(u * INCH, points(view.height()) - v * INCH);
  }

  /** Every line: what is seen whole, what is not dashed; axes of holes are left out. */
  List<Path> paths() {
    List<Path> paths = new ArrayList<>();
    for (View.Edge edge : view.edges()) {
      if (edge.sight() != Sight.CENTRE) {
        Place from = at(edge.u1().inches().approximate(), edge.v1().inches().approximate());
        Place to = at(edge.u2().inches().approximate(), edge.v2().inches().approximate());
        paths.add(new Path(line(edge.sight()), List.of(from, to)));
      }
    }
    view.arcs().forEach(arc -> paths.add(new Path(line(arc.sight()), chords(arc))));
    for (View.Curve curve : view.curves()) {
      paths.add(
          new Path(
              line(curve.sight()), curve.places().stream().map(p -> at(p.u(), p.v())).toList()));
    }
    return paths;
  }

  /** Each hole that is seen end-on. */
  List<Centre> centres() {
    return view.holes().stream()
        .map(
            h ->
                new Centre(
                    at(h.u().inches().approximate(), h.v().inches().approximate()),
                    h.radius().times(2)))
        .toList();
  }

  private static Line line(Sight sight) {
    // One saws to the middle of a thin line; thick would hide half a millimetre.
    return sight == Sight.VISIBLE ? Line.FINE : Line.HIDDEN;
  }

  private List<Place> chords(Arc arc) {
    Hole circle = arc.hole();
    double radius = circle.radius().inches().approximate();
    double step = 2 * StrictMath.acos(Math.max(0.5, 1 - SAGITTA / (radius * INCH)));
    int chords = Math.max(1, (int) Math.ceil((arc.to() - arc.from()) / step));
    List<Place> places = new ArrayList<>();
    for (int i = 0; i <= chords; i++) {
      double turn = arc.from() + (arc.to() - arc.from()) * i / chords;
      places.add(
          at(
              circle.u().inches().approximate() + radius * StrictMath.cos(turn),
              circle.v().inches().approximate() + radius * StrictMath.sin(turn)));
    }
    return places;
  }

  /** The wood in the middle of its depth, as rings on the template. */
  List<List<Place>> wood() {
    Length middle = solid.extent(projection.depth()).dividedBy(2);
    return Section.of(solid, projection.depth(), middle).areas().stream()
        .flatMap(cut -> cut.rings().stream())
        .map(ring -> ring.stream().map(this::ofSection).toList())
        .toList();
  }

  private Place ofSection(Place own) {
    boolean isAcrossFirst = projection.across() < projection.up();
    double across = isAcrossFirst ? own.u() : own.v();
    double up = isAcrossFirst ? own.v() : own.u();
    return at(
        projection.onPaper(solid, projection.across(), across),
        projection.onPaper(solid, projection.up(), up));
  }
}
