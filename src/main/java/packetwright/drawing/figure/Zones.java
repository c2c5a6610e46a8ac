package packetwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Stroke;
import packetwright.drawing.view.Projection;
import packetwright.drawing.view.View;
import packetwright.drawing.view.View.Edge;
import packetwright.drawing.view.View.Place;
import packetwright.drawing.view.View.Sight;
import packetwright.drawing.view.Views;
import packetwright.wood.part.Solid;

/** What will be cut into a part, as seen on its inside face, dashed. */
final class Zones {
  private final View view;
  private final double scale;

  Zones(Solid solid, double scale) {
    this.view = Views.project(solid, Projection.FRONT);
    this.scale = scale;
  }

  /**
   * Every line but those of the part's own outline.
   *
   * @param left x of the part's left end
   * @param bottom y of its bottom edge
   * @param room what reaches beyond is left out
   */
  List<Mark> marks(double left, double bottom, Area room) {
    List<List<Place>> paths = new ArrayList<>();
    for (Edge edge : view.edges()) {
      if (edge.sight() != Sight.CENTRE && !isOutline(edge)) {
        paths.add(
            List.of(
                new Place(edge.u1().inches().approximate(), edge.v1().inches().approximate()),
                new Place(edge.u2().inches().approximate(), edge.v2().inches().approximate())));
      }
    }
    view.curves().forEach(curve -> paths.add(curve.places()));
    List<Mark> marks = new ArrayList<>();
    paths.forEach(path -> add(marks, polyline(path, left, bottom), room));
    for (View.Arc arc : view.arcs()) {
      double u = left + arc.hole().u().inches().approximate() * scale;
      double v = bottom - arc.hole().v().inches().approximate() * scale;
      double radius = arc.hole().radius().inches().approximate() * scale;
      add(marks, Outline.arc(u, v, radius, arc.from(), arc.to()), room);
    }
    return marks;
  }

  private boolean isOutline(Edge edge) {
    boolean isEnd = edge.isUpright() && (edge.u1().signum() == 0 || edge.u1().equals(view.width()));
    boolean isSide = edge.isLevel() && (edge.v1().signum() == 0 || edge.v1().equals(view.height()));
    return isEnd || isSide;
  }

  private Outline polyline(List<Place> places, double left, double bottom) {
    double[] xy = new double[2 * places.size()];
    for (int i = 0; i < places.size(); i++) {
      xy[2 * i] = left + places.get(i).u() * scale;
      xy[2 * i + 1] = bottom - places.get(i).v() * scale;
    }
    return Outline.polyline(xy);
  }

  private static void add(List<Mark> marks, Outline path, Area room) {
    boolean isWithin =
        path.segments().stream()
            .map(Outline.Segment::xy)
            .allMatch(
                xy ->
                    new Area(
                            xy.get(xy.size() - 2),
                            xy.get(xy.size() - 1),
                            xy.get(xy.size() - 2),
                            xy.get(xy.size() - 1))
                        .isWithin(room.grown(1e-6)));
    if (isWithin) {
      marks.add(Stroke.of(Line.HIDDEN, path));
    }
  }
}
