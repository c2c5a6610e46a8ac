package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Stroke;
import packetwright.drawing.view.View;
import packetwright.drawing.view.View.Arc;
import packetwright.drawing.view.View.Curve;
import packetwright.drawing.view.View.Edge;
import packetwright.drawing.view.View.Hole;
import packetwright.drawing.view.View.Sight;
import packetwright.text.measure.Length;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/** A view put on the sheet at a scale. */
final class ViewMarks {
  private final View view;
  private final double scale;
  private final double x;
  private final double y;

  private ViewMarks(View view, double scale, double x, double y) {
    this.view = view;
    this.scale = scale;
    this.x = x;
    this.y = y;
  }

  /** The lines of a view whose top left corner lies at a point; thin lines under thick ones. */
  static List<Mark> of(View view, Scale scale, double x, double y) {
    return new ViewMarks(view, scale.pointsPerInch(), x, y).marks();
  }

  private List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    view.holes().forEach(hole -> marks.addAll(cross(hole)));
    view.edges().stream()
        .sorted(Comparator.comparing(e -> e.sight() == Sight.VISIBLE))
        .map(this::line)
        .forEach(marks::add);
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

  private Mark line(Edge edge) {
    double past = edge.sight() == Sight.CENTRE ? Line.CENTRE_PAST : 0;
    double across = edge.isLevel() ? past : 0;
    double up = edge.isLevel() ? 0 : past;
    return Stroke.of(
        line(edge.sight()),
        u(edge.u1()) - across,
        v(edge.v1()) + up,
        u(edge.u2()) + across,
        v(edge.v2()) - up);
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

  /**
   * A preferred scale: drawn size over true size is 1 over {@code reduction}.
   *
   * @param reduction 1 for full size
   */
  record Scale(int reduction) {
    private static final List<Integer> INCH = List.of(1, 2, 4, 8, 16, 32, 64);
    private static final List<Integer> METRIC = List.of(1, 2, 5, 10, 20, 50, 100);

    /** Those of a unit's drawings, the largest first. */
    static List<Scale> preferred(Unit unit) {
      return (unit == Unit.INCH ? INCH : METRIC).stream().map(Scale::new).toList();
    }

    /** Points on paper for an inch of wood. */
    double pointsPerInch() {
      return 72.0 / reduction;
    }

    /** As the title strip prints it. */
    Phrase phrase(Unit unit, Words words) {
      if (unit != Unit.INCH) {
        return words.say("sheet.scale.ratio", (long) reduction);
      }
      return reduction == 1
          ? words.say("sheet.scale.full")
          : words.say("sheet.scale.inch", (long) reduction);
    }
  }
}
