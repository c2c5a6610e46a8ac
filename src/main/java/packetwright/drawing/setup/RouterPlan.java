package packetwright.drawing.setup;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.text.measure.Length;

/**
 * A router table from above: which way the bit turns, and which way the wood is fed against it.
 *
 * @param setUp the operation
 * @param width of the wood, across the feed
 * @param middle of the bit, from the fence
 * @param diameter of the bit
 * @param isUnder whether the wood covers the bit
 */
record RouterPlan(SetUp setUp, Length width, Length middle, Length diameter, boolean isUnder)
    implements View {
  private static final double FENCE = 16;
  private static final double HALF = 96;
  private static final double DEEPEST = 70;

  static @Nullable RouterPlan of(@Nullable View section) {
    if (section instanceof ProfileSection profile) {
      return new RouterPlan(
          profile.setUp(),
          profile.before().extent(profile.guided().axis()),
          Length.ZERO,
          profile.size().times(2),
          false);
    }
    if (section instanceof TableSection table && table.guide() == TableSection.Guide.FENCE) {
      Length cutter = table.cutter().width();
      return new RouterPlan(
          table.setUp(),
          table.before().extent(table.guided().axis()),
          table.setUp().length("fence").plus(cutter.dividedBy(2)),
          cutter,
          true);
    }
    return null;
  }

  @Override
  public void draw(Scene scene) {
    double radius = scene.points(diameter) / 2;
    double y = scene.points(middle);
    double wide = Math.min(scene.points(width), DEEPEST);
    if (radius > 26 || y + radius > DEEPEST - 26) {
      scene.refuse();
    }
    scene.fill(1, -20, 0, HALF, 0, HALF, wide, -20, wide);
    scene.stroke(Line.VISIBLE, HALF, 0, -46, 0, -46, wide);
    if (scene.points(width) > DEEPEST) {
      scene.stroke(
          Line.FINE, -46, wide, 20, wide, 24, wide - 3, 28, wide + 3, 32, wide, HALF, wide);
    } else {
      scene.stroke(Line.VISIBLE, -46, wide, HALF, wide);
    }
    scene.breakLine(HALF, 0, wide);
    double opening = y < 6 ? radius + 5 : 0;
    scene.box(0.86, Line.FINE, new Area(-HALF, -FENCE, -opening, -1));
    scene.box(0.86, Line.FINE, new Area(opening, -FENCE, HALF, -1));
    scene.circle(isUnder ? Line.HIDDEN : Line.VISIBLE, 0, y, radius);
    drawTurn(scene, y, radius + 7);
    double feedY = Math.max(y + radius + 18, wide * 0.7);
    scene.arrow(70, feedY, 28, feedY);
    scene.label(setUp.text("feed"), 50, feedY, 82, feedY);
    scene.label(setUp.text("turn"), -radius - 5, y + 6, -72, wide + 14);
    scene.name(setUp.text("fence"), 56, -FENCE / 2 - 0.5);
    scene.label(setUp.text("cutter.router_table"), 0, y, 0, -FENCE - 12);
    if (setUp.uses(Control.PUSH_BLOCK)) {
      scene.box(1, Line.FINE, new Area(HALF - 32, 4, HALF - 8, Math.min(26, wide - 3)));
      scene.label(setUp.control(Control.PUSH_BLOCK), HALF - 14, 10, HALF - 10, -FENCE - 12);
    }
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("view.above")));
    scene.caption(
        Inscription.of(Face.ITALIC, scene.scale().phrase(setUp.rule().unit(), setUp.words())));
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("against")));
  }

  /** From above, a bit that comes up through a table turns counterclockwise. */
  private static void drawTurn(Scene scene, double y, double radius) {
    int steps = 14;
    double[] xy = new double[2 * (steps + 1)];
    for (int i = 0; i <= steps; i++) {
      double turn = Math.PI * (1.0 + 0.75 * i / steps);
      xy[2 * i] = radius * StrictMath.cos(turn);
      xy[2 * i + 1] = y - radius * StrictMath.sin(turn);
    }
    scene.stroke(Line.FINE, xy);
    double endX = xy[2 * steps];
    double endY = xy[2 * steps + 1];
    double turn = Math.PI * 1.75;
    double tx = -StrictMath.sin(turn);
    double ty = -StrictMath.cos(turn);
    scene.fill(
        0,
        endX + 6 * tx,
        endY + 6 * ty,
        endX - 2.5 * ty,
        endY + 2.5 * tx,
        endX + 2.5 * ty,
        endY - 2.5 * tx);
  }

  @Override
  public List<String> alternative() {
    return List.of(setUp.text("against"));
  }
}
