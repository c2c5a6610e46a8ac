package packetwright.drawing.setup;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.text.measure.Length;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * A board at its last pass through a planer, seen from the side: what the head leaves between
 * itself and the bed is the thickness that is set.
 *
 * @param setUp the operation
 * @param thickness as set
 * @param pass how much the last pass takes off
 */
record PlanerView(SetUp setUp, Setting thickness, Length pass) implements View {
  private static final double REACH = 62;
  private static final double HEAD = 20;
  private static final double ROLLER = 8;

  /** Thicker wood is drawn at a smaller scale. */
  private static final double HIGHEST = 64;

  static @Nullable PlanerView of(SetUp setUp) {
    Setting thickness = setUp.setting("thickness");
    Workpiece piece = setUp.piece();
    if (thickness == null || piece == null) {
      return null;
    }
    Length off = piece.solid().thickness().minus(thickness.value().asLength());
    Length each = setUp.length("each_pass");
    return new PlanerView(setUp, thickness, each.signum() > 0 ? each.min(off) : off);
  }

  @Override
  public void draw(Scene scene) {
    double left = -scene.points(thickness.value().asLength());
    double comes = left - scene.points(pass);
    if (-comes > HIGHEST) {
      scene.refuse();
    }
    double[] wood = {
      -REACH + 10, left, 0, left, 9, comes, REACH - 10, comes, REACH - 10, 0, -REACH + 10, 0
    };
    scene.fill(1, wood);
    scene.hatch(List.of(wood), true);
    scene.stroke(
        Line.VISIBLE,
        -REACH + 10,
        left,
        0,
        left,
        Math.min(9, scene.points(pass) + 3),
        comes,
        REACH - 10,
        comes);
    scene.stroke(Line.VISIBLE, -REACH, 0, REACH, 0);
    scene.breakLine(-REACH + 10, left, 0);
    scene.breakLine(REACH - 10, comes, 0);
    scene.fill(
        1, -HEAD, left - HEAD, HEAD, left - HEAD, HEAD, left - HEAD - 1, -HEAD, left - HEAD - 1);
    scene.circle(Line.FINE, 0, left - HEAD, HEAD);
    scene.circle(Line.FINE, 0, left - HEAD, 2.5);
    for (int knife = 0; knife < 3; knife++) {
      double turn = -Math.PI / 2 + knife * 2 * Math.PI / 3;
      double cos = StrictMath.cos(turn);
      double sin = StrictMath.sin(turn);
      scene.stroke(
          Line.VISIBLE, HEAD * cos, left - HEAD - HEAD * sin, 13 * cos, left - HEAD - 13 * sin);
    }
    scene.circle(Line.FINE, 36, comes - ROLLER, ROLLER);
    scene.circle(Line.FINE, -36, left - ROLLER, ROLLER);
    scene.arrow(REACH + 14, comes / 2, REACH - 4, comes / 2);
    scene.dimension(
        false,
        -REACH,
        -1,
        List.of(
            new Scene.Measure(
                left,
                0,
                -REACH + 8,
                -REACH - 2,
                false,
                thickness.value().asLength(),
                setUp.said().inscription(thickness))));
    scene.label(setUp.text("cutterhead"), 4, left - HEAD - 6, 0, left - 2 * HEAD - 10);
    scene.label(setUp.text("roller"), 36, comes - ROLLER - 4, 52, comes - 2 * ROLLER - 12);
    scene.label(setUp.text("bed"), 42, 0, 48, 12);
    scene.label(setUp.text("feed"), REACH + 6, comes / 2, REACH + 4, comes / 2 - 18);
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("planer.last")));
    scene.caption(
        Inscription.of(Face.ITALIC, scene.scale().phrase(setUp.rule().unit(), setUp.words())));
    for (Setting setting : setUp.run().settings()) {
      if (!setting.equals(thickness)) {
        scene.caption(setUp.said().caption(setting));
      }
    }
  }

  @Override
  public List<String> alternative() {
    return List.of(setUp.text("planer.last"));
  }
}
