package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.project.Side;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * A piece that is routed by hand, seen from above: along which sides the router goes, and which way
 * round the outside.
 *
 * @param setUp the operation
 * @param solid routed
 * @param sides that the router follows, each once
 */
record HandRouterPlan(SetUp setUp, Solid solid, List<Side> sides) implements View {
  private static final double OUT = 9;

  static @Nullable HandRouterPlan of(SetUp setUp) {
    Workpiece piece = setUp.piece();
    List<Side> sides = new ArrayList<>();
    for (Removal removal : setUp.taken()) {
      Box box = piece == null ? null : removal.around(piece.solid().block());
      if (piece != null && box != null) {
        int axis = box.extent(0).isLess(piece.solid().length()) ? 0 : 1;
        Side side = SetUp.near(piece.solid(), removal, axis);
        if (!sides.contains(side)) {
          sides.add(side);
        }
      }
    }
    return piece == null || sides.isEmpty()
        ? null
        : new HandRouterPlan(setUp, piece.solid(), List.copyOf(sides));
  }

  @Override
  public void draw(Scene scene) {
    double right = scene.points(solid.length());
    double bottom = scene.points(solid.width());
    scene.stroke(Line.VISIBLE, 0, 0, right, 0, right, bottom, 0, bottom, 0, 0);
    for (Side side : sides) {
      drawWay(scene, side, right, bottom);
    }
    drawBand(scene, right, bottom);
    if (setUp.uses(Control.CLAMPS)) {
      for (double x : new double[] {right * 0.3, right * 0.7}) {
        scene.circle(Line.FINE, x, bottom / 2, 5);
      }
      scene.label(setUp.text("clamp"), right * 0.7, bottom / 2, right * 0.7 + 30, bottom / 2);
    }
    scene.label(
        setUp.text("feed"),
        way(sides.get(0), right, bottom)[0],
        way(sides.get(0), right, bottom)[1],
        right / 2,
        bottom + 26);
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("view.above")));
    scene.caption(
        Inscription.of(Face.ITALIC, scene.scale().phrase(setUp.rule().unit(), setUp.words())));
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("round")));
    for (Setting setting : setUp.run().settings()) {
      boolean isDrawn = setting.name().equals("fence") || setting.name().equals("stop");
      if (!isDrawn) {
        scene.caption(setUp.said().caption(setting));
      }
    }
  }

  /** Begin and end of the way along a side, counterclockwise as seen. */
  private static double[] way(Side side, double right, double bottom) {
    return switch (side) {
      case BOTTOM -> new double[] {right * 0.2, bottom + OUT, right * 0.8, bottom + OUT};
      case TOP -> new double[] {right * 0.8, -OUT, right * 0.2, -OUT};
      case RIGHT -> new double[] {right + OUT, bottom * 0.85, right + OUT, bottom * 0.15};
      default -> new double[] {-OUT, bottom * 0.15, -OUT, bottom * 0.85};
    };
  }

  private static void drawWay(Scene scene, Side side, double right, double bottom) {
    double[] way = way(side, right, bottom);
    scene.arrow(way[0], way[1], way[2], way[3]);
  }

  /** A groove's or dado's near side, and where it stands. */
  private void drawBand(Scene scene, double right, double bottom) {
    Setting stop = setUp.setting("stop");
    Setting guide = stop == null ? setUp.setting("fence") : stop;
    if (guide == null || !guide.datum().equals("near")) {
      return;
    }
    Length near = guide.value().asLength();
    Length far = near.plus(setUp.length("cutter"));
    Side side = sides.get(0);
    double[] at = {scene.points(near), scene.points(far)};
    for (double distance : at) {
      if (side.axis() == 1) {
        double y = side == Side.BOTTOM ? bottom - distance : distance;
        scene.stroke(Line.VISIBLE, 0, y, right, y);
      } else {
        double x = side == Side.LEFT ? distance : right - distance;
        scene.stroke(Line.VISIBLE, x, 0, x, bottom);
      }
    }
    double edge =
        side.axis() == 1 ? (side == Side.BOTTOM ? bottom : 0) : (side == Side.LEFT ? 0 : right);
    double to = edge + (side == Side.BOTTOM || side == Side.RIGHT ? -at[0] : at[0]);
    if (near.signum() > 0) {
      scene.dimension(
          side.axis() == 0,
          side.axis() == 0 ? bottom : 0,
          side.axis() == 0 ? 1 : -1,
          List.of(
              new Scene.Measure(
                  edge,
                  to,
                  side.axis() == 0 ? bottom : 0,
                  side.axis() == 0 ? bottom : 0,
                  false,
                  near,
                  setUp.said().inscription(guide))));
    }
  }

  @Override
  public List<String> alternative() {
    return List.of(setUp.text("round"));
  }
}
