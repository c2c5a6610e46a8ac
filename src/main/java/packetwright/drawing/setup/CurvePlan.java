package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.view.Section;
import packetwright.drawing.view.View.Place;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * A line that a band saw follows, seen from above: the wood comes from where the operator stands,
 * the blade stays. The side that is sawn into is at the left, so that it can be fed away from the
 * operator.
 *
 * @param setUp the operation
 * @param before the wood with its line
 * @param after what is left of it
 * @param side that is sawn into
 * @param first what is sawn off first, as a box
 */
record CurvePlan(SetUp setUp, Solid before, Solid after, Side side, Box first) implements View {
  private static final double BLADE = 4;

  static @Nullable CurvePlan of(SetUp setUp) {
    Workpiece piece = setUp.piece();
    Workpiece made = setUp.made();
    List<Removal> taken = setUp.taken();
    if (piece == null || made == null || taken.isEmpty()) {
      return null;
    }
    Solid solid = piece.solid();
    Box box = taken.get(0).around(solid.block());
    return box == null ? null : new CurvePlan(setUp, solid, made.solid(), side(solid, box), box);
  }

  /** A corner counts as sawn into its end. */
  private static Side side(Solid solid, Box box) {
    if (box.low().x().signum() == 0) {
      return isAllAlong(solid, box, 0) ? edge(box) : Side.LEFT;
    }
    return box.high().x().equals(solid.length()) ? Side.RIGHT : edge(box);
  }

  private static Side edge(Box box) {
    return box.low().y().signum() == 0 ? Side.BOTTOM : Side.TOP;
  }

  private static boolean isAllAlong(Solid solid, Box box, int axis) {
    return box.low().on(axis).signum() == 0 && box.high().on(axis).equals(solid.extent(axis));
  }

  private int along() {
    return 1 - side.axis();
  }

  /** To the right from the side that is sawn into. */
  private double x(Scene scene, Place place) {
    double at = side.axis() == 0 ? place.u() : place.v();
    double extent = before.extent(side.axis()).inches().approximate();
    return (side.isFar() ? extent - at : at) * scene.scale().pointsPerInch();
  }

  private double y(Scene scene, Place place) {
    double at = along() == 0 ? place.u() : place.v();
    return (before.extent(along()).inches().approximate() - at) * scene.scale().pointsPerInch();
  }

  private double y(Scene scene, Length at) {
    return scene.points(before.extent(along()).minus(at));
  }

  @Override
  public void draw(Scene scene) {
    double wide = scene.points(before.extent(side.axis()));
    double tall = scene.points(before.extent(along()));
    scene.fill(0.92, 0, 0, wide, 0, wide, tall, 0, tall);
    scene.stroke(Line.FINE, 0, 0, wide, 0, wide, tall, 0, tall, 0, 0);
    for (Section.Cut area : Section.of(after, 2, after.thickness().dividedBy(2)).areas()) {
      double[] ring = ring(scene, area.outline());
      scene.fill(1, ring);
      for (int i = 0; i < ring.length; i += 2) {
        int next = (i + 2) % ring.length;
        scene.stroke(Line.VISIBLE, ring[i], ring[i + 1], ring[next], ring[next + 1]);
      }
    }
    double start = y(scene, first.high().on(along()));
    double end = y(scene, first.low().on(along()));
    // Where the line begins, at the edge that meets the blade first.
    scene.box(0, Line.FINE, new Area(-1, start - BLADE, 1, start + BLADE));
    scene.arrow(wide / 2, tall + 40, wide / 2, tall + 8);
    dimension(scene, start, end);
    label(scene, wide, tall, new double[] {start, end});
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("view.above")));
    scene.caption(
        Inscription.of(Face.ITALIC, scene.scale().phrase(setUp.rule().unit(), setUp.words())));
  }

  private double[] ring(Scene scene, List<Place> places) {
    double[] ring = new double[places.size() * 2];
    for (int i = 0; i < places.size(); i++) {
      ring[2 * i] = x(scene, places.get(i));
      ring[2 * i + 1] = y(scene, places.get(i));
    }
    return ring;
  }

  private void dimension(Scene scene, double start, double end) {
    List<Scene.Measure> upright = new ArrayList<>();
    List<Scene.Measure> level = new ArrayList<>();
    Setting length = setUp.setting("length");
    if (length != null) {
      upright.add(measure(start, end, new double[] {0, 0}, length));
    }
    Setting from = setUp.setting("start");
    if (from != null && from.value().asLength().signum() > 0) {
      upright.add(measure(end, y(scene, Length.ZERO), new double[] {0, 0}, from));
    }
    double depth = scene.points(first.extent(side.axis()));
    Setting rise = setUp.setting("rise");
    if (rise != null) {
      level.add(measure(0, depth, new double[] {0, (start + end) / 2}, rise));
    }
    Setting radius = setUp.setting("radius");
    if (radius != null) {
      level.add(measure(0, depth, new double[] {0, start}, radius));
    }
    scene.dimension(false, 0, -1, upright);
    scene.dimension(true, 0, -1, level);
  }

  private Scene.Measure measure(double from, double to, double[] starts, Setting setting) {
    return new Scene.Measure(
        from,
        to,
        starts[0],
        starts[1],
        true,
        setting.value().asLength(),
        setUp.said().inscription(setting));
  }

  private void label(Scene scene, double wide, double tall, double[] cut) {
    double depth = scene.points(first.extent(side.axis()));
    double middle = (cut[0] + cut[1]) / 2;
    boolean isCurve = setUp.setting("rise") != null;
    scene.label(setUp.text("cutter." + setUp.tool().word()), 0, cut[0], 44, cut[0] + 12);
    scene.label(
        setUp.text("line"),
        isCurve ? depth : depth * 0.3,
        isCurve ? middle : cut[0] + depth * 0.3,
        wide * 0.55,
        tall * 0.4);
    if (isCurve) {
      scene.label(setUp.text("waste"), depth * 0.4, middle, -17, middle);
    }
    scene.label(setUp.text("feed"), wide / 2, tall + 30, wide / 2 + 24, tall + 30);
  }

  @Override
  public List<String> alternative() {
    return List.of(setUp.sentence("follow"), setUp.sentence("guide.low"));
  }
}
