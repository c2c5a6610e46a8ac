package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Scale;
import packetwright.drawing.sheet.Stroke;
import packetwright.drawing.view.View;
import packetwright.drawing.view.View.Arc;
import packetwright.drawing.view.View.Curve;
import packetwright.drawing.view.View.Edge;
import packetwright.drawing.view.View.Hole;
import packetwright.drawing.view.View.Sight;
import packetwright.text.measure.Length;

/** A view put on the sheet at a scale. */
final class ViewMarks implements CutMarks.OnSheet {
  /** Half the gap between the two lines of a break, in points. */
  private static final double BREAK = 3;

  /** How far a break line goes beyond the outline, in points. */
  private static final double BREAK_PAST = 4;

  private final View view;
  private final double scale;
  private final double x;
  private final double y;
  private final List<Length> seams;

  /**
   * A view whose top left corner lies at a point.
   *
   * @param seams where across the view something is left out
   */
  ViewMarks(View view, Scale scale, double x, double y, List<Length> seams) {
    this.view = view;
    this.scale = scale.pointsPerInch();
    this.x = x;
    this.y = y;
    this.seams = seams;
  }

  /** Its lines; thin lines under thick ones. */
  List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    seams.forEach(seam -> marks.addAll(breakLines(u(seam))));
    view.holes().forEach(hole -> marks.addAll(cross(hole)));
    view.edges().stream()
        .sorted(Comparator.comparing(e -> e.sight() == Sight.VISIBLE))
        .map(this::line)
        .forEach(marks::addAll);
    view.arcs().stream()
        .sorted(Comparator.comparing(Arc::sight))
        .map(this::curve)
        .forEach(marks::add);
    view.curves().stream()
        .sorted(Comparator.comparing(Curve::sight))
        .map(this::path)
        .forEach(marks::add);
    return marks;
  }

  private List<Mark> line(Edge edge) {
    double past = edge.sight() == Sight.CENTRE ? Line.CENTRE_PAST : 0;
    double across = edge.isLevel() ? past : 0;
    double up = edge.isLevel() ? 0 : past;
    double from = u(edge.u1()) - across;
    double to = u(edge.u2()) + across;
    double v1 = v(edge.v1()) + up;
    double v2 = v(edge.v2()) - up;
    if (!edge.isLevel()) {
      return List.of(Stroke.of(line(edge.sight()), from, v1, to, v2));
    }
    List<Mark> pieces = new ArrayList<>();
    for (double[] stretch : stretches()) {
      double begin = Math.max(from, stretch[0]);
      double end = Math.min(to, stretch[1]);
      if (begin < end) {
        pieces.add(Stroke.of(line(edge.sight()), begin, v1, end, v2));
      }
    }
    return pieces;
  }

  /** Thin ruled lines with a zigzag, on both sides of what is left out. */
  private List<Mark> breakLines(double at) {
    double top = y - BREAK_PAST;
    double bottom = v(0.0) + BREAK_PAST;
    double middle = (top + bottom) / 2;
    List<Mark> lines = new ArrayList<>();
    for (double u : new double[] {at - BREAK, at + BREAK}) {
      lines.add(
          Stroke.of(
              Line.BREAK,
              Outline.polyline(
                  u,
                  top,
                  u,
                  middle - 4,
                  u - 4,
                  middle - 1.5,
                  u + 4,
                  middle + 1.5,
                  u,
                  middle + 4,
                  u,
                  bottom)));
    }
    return lines;
  }

  @Override
  public List<double[]> stretches() {
    List<double[]> stretches = new ArrayList<>();
    double from = -Double.MAX_VALUE;
    for (Length seam : seams) {
      stretches.add(new double[] {from, u(seam) - BREAK});
      from = u(seam) + BREAK;
    }
    stretches.add(new double[] {from, Double.MAX_VALUE});
    return stretches;
  }

  @Override
  public double x(double u) {
    return u(u);
  }

  @Override
  public double y(double v) {
    return v(v);
  }

  private Mark curve(Arc arc) {
    Hole hole = arc.hole();
    double radius = hole.radius().inches().approximate() * scale;
    boolean isWhole = arc.to() - arc.from() > 2 * Math.PI - 1e-9;
    return Stroke.of(
        line(arc.sight()),
        isWhole
            ? Outline.circle(u(hole.u()), v(hole.v()), radius)
            : Outline.arc(u(hole.u()), v(hole.v()), radius, arc.from(), arc.to()));
  }

  private Mark path(Curve curve) {
    double[] xy =
        curve.places().stream()
            .flatMapToDouble(place -> DoubleStream.of(u(place.u()), v(place.v())))
            .toArray();
    return Stroke.of(line(curve.sight()), Outline.polyline(xy));
  }

  private List<Mark> cross(Hole hole) {
    double reach = hole.radius().inches().approximate() * scale + Line.CENTRE_PAST;
    double u = u(hole.u());
    double v = v(hole.v());
    return List.of(
        Stroke.of(Line.CENTRE, u - reach, v, u + reach, v),
        Stroke.of(Line.CENTRE, u, v - reach, u, v + reach));
  }

  private static Line line(Sight sight) {
    return switch (sight) {
      case VISIBLE -> Line.VISIBLE;
      case HIDDEN -> Line.HIDDEN;
      case CENTRE -> Line.CENTRE;
    };
  }

  private double u(Length u) {
    return u(u.inches().approximate());
  }

  private double v(Length v) {
    return y + view.height().minus(v).inches().approximate() * scale;
  }

  private double u(double u) {
    return x + u * scale;
  }

  private double v(double v) {
    return y + (view.height().inches().approximate() - v) * scale;
  }
}
