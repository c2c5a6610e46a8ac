package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.setup.Setting;

/**
 * A hole as it is bored at a drill press: the bit down at its deepest, the wood in section, what
 * lies under it and what holds it.
 *
 * @param setUp the operation
 * @param thickness of the wood
 * @param bore the first of its holes
 */
record DrillSection(SetUp setUp, Length thickness, Bore bore) implements View {
  private static final double SIDE = 46;
  private static final double BACKER = 14;
  private static final double HIGHEST = 60;
  private static final double WIDEST = 90;

  static @Nullable DrillSection of(@Nullable DrillPlan plan) {
    return plan == null
        ? null
        : new DrillSection(plan.setUp(), plan.solid().thickness(), plan.bores().get(0));
  }

  private boolean isThrough() {
    return !bore.depth().isLess(thickness);
  }

  @Override
  public void draw(Scene scene) {
    double thick = scene.points(thickness);
    double wide = scene.points(bore.diameter());
    double half = wide / 2;
    if (thick > HIGHEST || wide > WIDEST) {
      scene.refuse();
    }
    double deep = isThrough() ? thick : scene.points(bore.depth());
    double under = setUp.uses(Control.BACKER) ? BACKER : 0;
    double left = -half - SIDE;
    double right = half + SIDE;
    double[] wood =
        isThrough()
            ? new double[0]
            : new double[] {
              left,
              -thick,
              -half,
              -thick,
              -half,
              deep - thick,
              half,
              deep - thick,
              half,
              -thick,
              right,
              -thick,
              right,
              0,
              left,
              0
            };
    if (isThrough()) {
      draw(scene, left, -half, thick);
      draw(scene, half, right, thick);
    } else {
      scene.hatch(List.of(wood), true);
    }
    scene.stroke(
        Line.VISIBLE,
        left,
        -thick,
        -half,
        -thick,
        -half,
        deep - thick,
        half,
        deep - thick,
        half,
        -thick,
        right,
        -thick);
    scene.stroke(Line.VISIBLE, left, 0, right, 0);
    scene.breakLine(left, -thick, 0);
    scene.breakLine(right, -thick, 0);
    if (under > 0) {
      scene.box(0.95, Line.FINE, new Area(left + 2, 0.9, right - 2, under));
    }
    scene.stroke(Line.VISIBLE, left - 14, under + 0.9, right + 14, under + 0.9);
    scene.box(Cutter.TONE, Line.FINE, new Area(-half + 0.9, -thick - 26, half - 0.9, deep - thick));
    double chuck = Math.max(9, Math.min(half, 14));
    scene.box(1, Line.FINE, new Area(-chuck, -thick - 44, chuck, -thick - 26));
    Holds.clamp(scene, left + 17, -thick);
    dimension(scene, thick, left, half);
    label(scene, left, right, new double[] {thick, half, under});
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("view.front")));
    scene.caption(
        Inscription.of(Face.ITALIC, scene.scale().phrase(setUp.rule().unit(), setUp.words())));
  }

  private static void draw(Scene scene, double from, double to, double thick) {
    double[] ring = {from, -thick, to, -thick, to, 0, from, 0};
    scene.hatch(List.of(ring), true);
  }

  private void dimension(Scene scene, double thick, double left, double half) {
    Setting depth = setUp.setting("depth");
    if (depth != null) {
      scene.dimension(
          false,
          left - 8,
          -1,
          List.of(
              new Scene.Measure(
                  -thick,
                  -thick + scene.points(depth.value().asLength()),
                  left - 6,
                  -half,
                  false,
                  depth.value().asLength(),
                  setUp.said().inscription(depth))));
    }
    Setting diameter = setUp.setting("diameter");
    if (diameter != null) {
      scene.dimension(
          true,
          12,
          1,
          List.of(
              new Scene.Measure(
                  -half,
                  half,
                  setUp.uses(Control.BACKER) ? BACKER + 2 : 2,
                  setUp.uses(Control.BACKER) ? BACKER + 2 : 2,
                  true,
                  diameter.value().asLength(),
                  setUp.said().inscription(diameter))));
    }
  }

  private void label(Scene scene, double left, double right, double[] at) {
    double thick = at[0];
    double under = at[2];
    scene.label(setUp.text("cutter.drill"), at[1] - 2, -thick - 16, at[1] + 26, -thick - 18);
    scene.label(setUp.text("clamp"), left + 17, -thick - 20, left - 10, -thick - 24);
    if (under > 0) {
      scene.name(setUp.control(Control.BACKER), left + 30, under / 2 + 0.5);
    }
    scene.label(setUp.text("table"), right + 8, under + 0.9, right + 2, under + 12);
  }

  @Override
  public List<String> alternative() {
    List<String> said = new ArrayList<>();
    if (setUp.uses(Control.BACKER)) {
      said.add(setUp.words().plain("setup.under", setUp.control(Control.BACKER)));
    }
    said.add(setUp.sentence("clamped"));
    return said;
  }
}
