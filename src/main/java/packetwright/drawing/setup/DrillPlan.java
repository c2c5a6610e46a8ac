package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * Where holes are bored in a face, seen from the bit, the grain running across the sheet.
 *
 * @param setUp the operation
 * @param solid bored
 * @param bores through its thickness
 * @param face that the bit enters
 */
record DrillPlan(SetUp setUp, Solid solid, List<Bore> bores, Side face) implements View {
  static @Nullable DrillPlan of(SetUp setUp) {
    Workpiece piece = setUp.piece();
    List<Bore> bores = new ArrayList<>();
    for (Removal removal : setUp.taken()) {
      if (removal instanceof Bore bore && bore.axis() == 2) {
        bores.add(bore);
      }
    }
    if (piece == null || bores.isEmpty()) {
      return null;
    }
    Solid solid = piece.solid();
    Bore first = bores.get(0);
    boolean reachesInside = !first.centre().z().plus(first.depth()).isLess(solid.thickness());
    return new DrillPlan(setUp, solid, bores, reachesInside ? Side.INSIDE : Side.OUTSIDE);
  }

  /** Seen from the outside face, left is at the right. */
  private double x(Scene scene, Length x) {
    return scene.points(face == Side.INSIDE ? x : solid.length().minus(x));
  }

  private double y(Scene scene, Length y) {
    return scene.points(solid.width().minus(y));
  }

  @Override
  public void draw(Scene scene) {
    double right = scene.points(solid.length());
    double bottom = scene.points(solid.width());
    scene.stroke(Line.VISIBLE, 0, 0, right, 0, right, bottom, 0, bottom, 0, 0);
    for (Bore bore : bores) {
      double x = x(scene, bore.centre().x());
      double y = y(scene, bore.centre().y());
      double radius = scene.points(bore.diameter()) / 2;
      scene.circle(Line.VISIBLE, x, y, radius);
      scene.stroke(Line.FINE, x - radius - 4, y, x + radius + 4, y);
      scene.stroke(Line.FINE, x, y - radius - 4, x, y + radius + 4);
    }
    dimension(scene, bottom);
    scene.text(
        Inscription.of(Face.REGULAR, setUp.text("up." + face.word())), right / 2, bottom / 2);
    Setting diameter = setUp.setting("diameter");
    if (diameter != null) {
      Bore first = bores.get(0);
      double radius = scene.points(first.diameter()) / 2 * 0.71;
      double x = x(scene, first.centre().x()) + radius;
      double y = y(scene, first.centre().y()) - radius;
      scene.label(setUp.said().inscription(diameter), x, y, x + 40, y - 14);
    }
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("view.above")));
    scene.caption(
        Inscription.of(Face.ITALIC, scene.scale().phrase(setUp.rule().unit(), setUp.words())));
  }

  /** Each distance once, however many holes stand at it. */
  private void dimension(Scene scene, double bottom) {
    Map<List<Length>, Scene.Measure> level = new LinkedHashMap<>();
    Map<List<Length>, Scene.Measure> upright = new LinkedHashMap<>();
    for (int i = 0; i < bores.size(); i++) {
      String number = i == 0 ? "" : "_" + (i + 1);
      Setting inset = setUp.setting("inset" + number);
      Setting across = setUp.setting("across" + number);
      double x = x(scene, bores.get(i).centre().x());
      double y = y(scene, bores.get(i).centre().y());
      if (inset != null) {
        Length from = datum(inset);
        level.putIfAbsent(
            List.of(from, bores.get(i).centre().x()), measure(x(scene, from), x, bottom, y, inset));
      }
      if (across != null) {
        Length from = datum(across);
        upright.putIfAbsent(
            List.of(from, bores.get(i).centre().y()), measure(y(scene, from), y, 0, x, across));
      }
    }
    scene.dimension(true, bottom, 1, List.copyOf(level.values()));
    scene.dimension(false, 0, -1, List.copyOf(upright.values()));
  }

  private Length datum(Setting setting) {
    Side side = Side.of(setting.datum());
    return side == null ? Length.ZERO : solid.coordinate(side);
  }

  private Scene.Measure measure(double from, double to, double edge, double hole, Setting setting) {
    return new Scene.Measure(
        from, to, edge, hole, true, setting.value().asLength(), setUp.said().first(setting));
  }

  @Override
  public List<String> alternative() {
    return List.of(setUp.sentence("up." + face.word()));
  }
}
