package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.Side;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.text.measure.Length;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * A board on its way over a jointer, seen from where the operator stands: the infeed table lower
 * than the cutterhead by the depth of cut, which is drawn larger than it is.
 *
 * @param setUp the operation
 * @param height of the board over the tables
 * @param depth the setting that says how deep a pass is
 */
record JointerView(SetUp setUp, Length height, Setting depth) implements View {
  /** A true depth of cut would be no more than the width of a line. */
  private static final double STEP = 6;

  private static final double REACH = 70;
  private static final double HEAD = 13;

  /** A board that stands higher is drawn at a smaller scale. */
  private static final double HIGHEST = 62;

  static @Nullable JointerView of(SetUp setUp) {
    Workpiece piece = setUp.piece();
    Setting each = setUp.setting("each_pass");
    Setting depth = each == null ? setUp.setting("amount") : each;
    if (piece == null || depth == null) {
      return null;
    }
    boolean isFace = setUp.run().operation().verb().value() == Verb.JOINT_FACE;
    return new JointerView(setUp, piece.solid().extent(isFace ? 2 : 1), depth);
  }

  private boolean isFace() {
    return setUp.run().operation().verb().value() == Verb.JOINT_FACE;
  }

  @Override
  public void draw(Scene scene) {
    double tall = scene.points(height);
    double top = -tall;
    if (tall > HIGHEST) {
      scene.refuse();
    }
    scene.box(0.95, Line.FINE, new Area(-REACH, Math.min(top, -30) - 14, REACH, STEP));
    scene.fill(1, -58, top, 58, top, 58, STEP, HEAD, STEP, 0, 0, -58, 0);
    scene.stroke(Line.VISIBLE, -58, top, 58, top);
    scene.stroke(Line.FINE, 0, 0, -58, 0);
    scene.breakLine(-58, top, 0);
    scene.breakLine(58, top, STEP);
    scene.fill(1, -REACH, 0, REACH, 0, REACH, 24, -REACH, 24);
    scene.fill(1, HEAD, 0, 58, 0, 58, STEP, HEAD, STEP);
    scene.circle(Line.FINE, 0, HEAD, HEAD);
    scene.circle(Line.FINE, 0, HEAD, 2);
    for (int knife = 0; knife < 3; knife++) {
      double turn = Math.PI / 2 + knife * 2 * Math.PI / 3;
      double cos = StrictMath.cos(turn);
      double sin = StrictMath.sin(turn);
      scene.stroke(Line.VISIBLE, HEAD * cos, HEAD - HEAD * sin, 8 * cos, HEAD - 8 * sin);
    }
    scene.stroke(Line.VISIBLE, -REACH, 0, -HEAD - 2, 0, -HEAD - 2, 9);
    scene.stroke(Line.VISIBLE, REACH, STEP, HEAD + 2, STEP, HEAD + 2, 9 + STEP);
    scene.box(1, Line.FINE, new Area(-HEAD - 6, -9, HEAD + 6, -2.5));
    drawBlocks(scene, top);
    scene.arrow(48, top / 2, 16, top / 2);
    dimension(scene);
    label(scene, top);
    caption(scene);
  }

  private void drawBlocks(Scene scene, double top) {
    if (setUp.uses(Control.PUSH_BLOCK) || isFace()) {
      for (double x : isFace() ? new double[] {-36, 38} : new double[] {38}) {
        scene.box(1, Line.FINE, new Area(x - 18, top - 9, x + 18, top - 0.9));
        scene.box(1, Line.FINE, new Area(x - 5, top - 22, x + 5, top - 9));
      }
    }
  }

  private void dimension(Scene scene) {
    scene.stretched(
        REACH + 2,
        List.of(
            new Scene.Measure(
                0,
                STEP,
                HEAD + 12,
                REACH,
                true,
                depth.value().asLength(),
                setUp.said().inscription(depth))));
  }

  private void label(Scene scene, double top) {
    scene.label(setUp.text("cutterhead"), 3, HEAD + 4, -30, 2 * HEAD + 14);
    scene.label(setUp.text("infeed"), 44, STEP, 46, 24);
    scene.label(setUp.text("outfeed"), -52, 0, -50, 16);
    scene.label(setUp.text("jointer.guard"), -HEAD - 3, -6, -52, -14);
    scene.label(setUp.text("feed"), 34, top / 2, 34, top / 2 - 9);
    scene.name(setUp.text("fence"), -REACH + 22, Math.min(top, -30) - 7);
    if (setUp.uses(Control.PUSH_BLOCK) || isFace()) {
      scene.label(setUp.control(Control.PUSH_BLOCK), 41, top - 16, 68, top - 30);
    }
  }

  private void caption(Scene scene) {
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("view.front")));
    if (!isFace()) {
      scene.caption(Inscription.of(Face.ITALIC, setUp.sentence("at_fence." + against().word())));
    }
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("jointer.enlarged")));
    for (Setting setting : setUp.run().settings()) {
      if (!setting.equals(depth)) {
        scene.caption(setUp.said().caption(setting));
      }
    }
  }

  private Side against() {
    List<Side> from = setUp.run().operation().from();
    return from.isEmpty() ? Side.OUTSIDE : from.get(0);
  }

  @Override
  public List<String> alternative() {
    List<String> said = new ArrayList<>();
    if (!isFace()) {
      said.add(setUp.sentence("at_fence." + against().word()));
    }
    said.add(setUp.sentence("jointer.tables"));
    return said;
  }
}
