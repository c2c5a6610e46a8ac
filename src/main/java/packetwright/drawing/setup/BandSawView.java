package packetwright.drawing.setup;

import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.text.measure.Length;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * Wood at a band saw, seen from where the operator stands: the blade runs down through it into the
 * table, and the guide with its guard stands just above the wood.
 *
 * @param setUp the operation
 * @param thickness of what is sawn at once
 * @param width of the wood
 * @param fence the setting of the fence; none where a line is followed
 */
record BandSawView(SetUp setUp, Length thickness, Length width, @Nullable Setting fence)
    implements View {
  /** School shop rules say 1/4 in at most. */
  private static final Length ABOVE = Length.ofInches(1, 8);

  private static final double HIGHEST = 60;
  private static final double FENCE = 26;
  private static final double ARM = 40;
  private static final double WIDEST = 150;

  static @Nullable BandSawView of(SetUp setUp) {
    Workpiece piece = setUp.piece();
    if (piece == null) {
      return null;
    }
    Length stack = piece.solid().thickness().times(Math.max(1, setUp.run().operation().stacked()));
    return new BandSawView(setUp, stack, piece.solid().width(), setUp.setting("fence"));
  }

  @Override
  public void draw(Scene scene) {
    double thick = scene.points(thickness);
    double reach = fence == null ? 0 : scene.points(fence.value().asLength());
    if (thick > HIGHEST || reach > WIDEST) {
      scene.refuse();
    }
    double kerf = Math.max(1.2, scene.points(setUp.shop().kerf(setUp.tool())));
    double right = fence == null ? 70 : reach;
    double beyond = scene.points(width) - reach - kerf;
    double left = fence == null ? -70 : -kerf - Math.max(0, Math.min(50, beyond));
    drawWood(scene, new double[] {0, right}, thick, fence == null);
    drawWood(scene, new double[] {left, -kerf}, thick, fence == null || beyond > 50);
    scene.stroke(Line.VISIBLE, left - 12, 0.9, -kerf - 2, 0.9);
    scene.stroke(Line.VISIBLE, 2, 0.9, right + (fence == null ? 12 : FENCE), 0.9);
    double above = -thick - scene.points(ABOVE);
    scene.box(Cutter.TONE, Line.FINE, new Area(-kerf, above - ARM, 0, 22));
    scene.box(1, Line.FINE, new Area(-kerf - 9, above - 16, 9, above));
    scene.box(1, Line.FINE, new Area(-kerf - 6, above - ARM, 6, above - 16));
    if (fence != null) {
      scene.box(0.86, Line.FINE, new Area(reach, -thick - 16, reach + FENCE, 0));
      scene.dimension(
          true,
          22,
          1,
          List.of(
              new Scene.Measure(
                  0,
                  reach,
                  22,
                  2,
                  false,
                  fence.value().asLength(),
                  setUp.said().inscription(fence))));
      scene.name(setUp.text("fence"), reach + FENCE / 2, -thick / 2 - 8);
    }
    scene.label(setUp.text("cutter.band_saw"), -kerf / 2, 16, -28, 16);
    scene.label(setUp.text("guide"), 6, above - 8, 62, above - 8);
    scene.label(setUp.text("guide.guard"), -kerf - 4, above - 28, -44, above - 30);
    scene.label(setUp.text("table"), right - 10, 0.9, right - 4, 14);
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("view.front")));
    scene.caption(
        Inscription.of(Face.ITALIC, scene.scale().phrase(setUp.rule().unit(), setUp.words())));
  }

  private static void drawWood(Scene scene, double[] span, double thick, boolean isBroken) {
    double from = span[0];
    double to = span[1];
    scene.stroke(Line.VISIBLE, from, -thick, to, -thick);
    scene.stroke(Line.VISIBLE, from, 0, to, 0);
    boolean isRight = from >= 0;
    double outer = isRight ? to : from;
    if (isBroken) {
      scene.breakLine(outer, -thick, 0);
    } else {
      scene.stroke(Line.VISIBLE, outer, -thick, outer, 0);
    }
  }

  @Override
  public List<String> alternative() {
    return List.of(setUp.sentence("guide.low"));
  }
}
