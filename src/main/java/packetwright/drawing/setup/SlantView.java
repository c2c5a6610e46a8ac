package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.view.Section;
import packetwright.drawing.view.View.Place;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Slope;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * An end cut at an angle: a miter seen from above with the fence behind, or a bevel seen from the
 * front with the blade tilted. The cut end is at the left.
 *
 * @param setUp the operation
 * @param solid before the cut
 * @param slope that is cut
 * @param against the edge at the fence, or the face on the table
 * @param end that is cut
 */
record SlantView(SetUp setUp, Solid solid, Slope slope, Side against, Side end) implements View {
  private static final double FENCE = 16;

  /** How far the blade is drawn beyond the wood. */
  private static final double PAST = 22;

  /** How much of a long piece is drawn beyond the cut. */
  private static final double BEYOND = 96;

  static @Nullable SlantView of(SetUp setUp) {
    Workpiece piece = setUp.piece();
    List<Removal> taken = setUp.taken();
    if (piece == null || taken.isEmpty() || !(taken.get(0) instanceof Slope slope)) {
      return null;
    }
    boolean isAtEnd = slope.axis() != 0 && setUp.setting("by") != null;
    if (!isAtEnd) {
      return null;
    }
    int axis = slope.axis() == 2 ? 1 : 2;
    Side against =
        setUp.run().operation().from().stream()
            .filter(side -> side.axis() == axis)
            .findFirst()
            .orElse(axis == 1 ? Side.BOTTOM : Side.OUTSIDE);
    return new SlantView(setUp, piece.solid(), slope, against, SetUp.near(piece.solid(), slope, 0));
  }

  private boolean isMiter() {
    return slope.axis() == 2;
  }

  private Length by() {
    return setUp.length("by");
  }

  /** Across the sheet, 0 at the end before the cut. */
  private double x(Scene scene, double along) {
    double perInch = scene.scale().pointsPerInch();
    return (end == Side.LEFT ? along : solid.length().inches().approximate() - along) * perInch;
  }

  /** Down the sheet; a miter's fence and a bevel's table are at 0. */
  private double y(Scene scene, double across) {
    double extent = solid.extent(against.axis()).inches().approximate();
    double from = against.isFar() ? extent - across : across;
    return (isMiter() ? from : -from) * scene.scale().pointsPerInch();
  }

  private Length shown(Scene scene) {
    long sixtyFourths =
        (long) Math.ceil((scene.points(by()) + BEYOND) / scene.scale().pointsPerInch() * 64);
    return solid.length().min(new Length(Rational.of(sixtyFourths, 64)));
  }

  /** Where the cut meets the side against the fence or table (0), and the side opposite (1). */
  private double[] cut(Scene scene) {
    double[] x = new double[2];
    for (int i = 0; i < 2; i++) {
      Side side = i == 0 ? against : against.opposite();
      double v = solid.coordinate(side).inches().approximate();
      double along =
          (slope.c().inches().approximate() - slope.b().approximate() * v)
              / slope.a().approximate();
      x[i] = x(scene, along);
    }
    return x;
  }

  @Override
  public void draw(Scene scene) {
    Length shown = shown(scene);
    boolean isBroken = shown.isLess(solid.length());
    double right = scene.points(shown);
    double far = y(scene, solid.coordinate(against.opposite()).inches().approximate());
    double[] cut = cut(scene);
    drawSupport(scene, right, cut[0]);
    scene.fill(0.92, 0, 0, right, 0, right, far, 0, far);
    scene.stroke(Line.FINE, cut[0], 0, 0, 0, 0, far, cut[1], far);
    drawBlade(scene, cut, far);
    drawWood(scene, shown, isBroken);
    if (isBroken) {
      scene.breakLine(right, Math.min(0, far), Math.max(0, far));
    }
    drawClamp(scene, cut, far, right);
    dimension(scene, cut, far);
    label(scene, cut, far, right);
    caption(scene);
  }

  private void drawSupport(Scene scene, double right, double cutX) {
    if (isMiter()) {
      scene.box(0.86, Line.FINE, new Area(Math.min(-30, cutX - 40), -FENCE, cutX - 8, -1));
      scene.box(0.86, Line.FINE, new Area(cutX + 12, -FENCE, right + 4, -1));
    } else {
      scene.stroke(Line.VISIBLE, -26, 0.9, cutX - 10, 0.9);
      scene.stroke(Line.VISIBLE, cutX + 12, 0.9, right + 8, 0.9);
    }
  }

  /** The kerf lies in the waste, along the cut. */
  private void drawBlade(Scene scene, double[] cut, double far) {
    double length = Math.hypot(cut[1] - cut[0], far);
    double ux = (cut[1] - cut[0]) / length;
    double uy = far / length;
    double kerf = scene.points(setUp.shop().kerf(setUp.tool()));
    double wide = kerf / Math.abs(uy);
    double before = isMiter() ? FENCE + 6 : 8;
    double x1 = cut[0] - ux * before;
    double y1 = -uy * before;
    double x2 = cut[1] + ux * PAST;
    double y2 = far + uy * PAST;
    double[] ring = {x1, y1, x2, y2, x2 - wide, y2, x1 - wide, y1};
    scene.fill(Cutter.TONE, ring);
    scene.stroke(Line.FINE, x1, y1, x2, y2, x2 - wide, y2, x1 - wide, y1, x1, y1);
  }

  private void drawWood(Scene scene, Length shown, boolean isBroken) {
    Solid after = solid.minus(slope);
    Length start = end == Side.LEFT ? Length.ZERO : solid.length().minus(shown);
    Solid slice = after.slice(0, start, start.plus(shown));
    Section section = Section.of(slice, slope.axis(), slice.extent(slope.axis()).dividedBy(2));
    double offset = start.inches().approximate();
    double edge = scene.points(shown);
    for (Section.Cut area : section.areas()) {
      double[] ring = new double[area.outline().size() * 2];
      int at = 0;
      for (Place place : area.outline()) {
        ring[at++] = x(scene, place.u() + offset);
        ring[at++] = y(scene, place.v());
      }
      scene.fill(1, ring);
      if (!isMiter()) {
        scene.hatch(List.of(ring), true);
      }
      for (int i = 0; i < ring.length; i += 2) {
        int next = (i + 2) % ring.length;
        boolean isAtBreak =
            isBroken && Math.abs(ring[i] - edge) < 0.01 && Math.abs(ring[next] - edge) < 0.01;
        if (!isAtBreak) {
          scene.stroke(Line.VISIBLE, ring[i], ring[i + 1], ring[next], ring[next + 1]);
        }
      }
    }
  }

  private void drawClamp(Scene scene, double[] cut, double far, double right) {
    if (setUp.uses(Control.CLAMPS)) {
      double x = clampX(cut, right);
      if (isMiter()) {
        Holds.clampFromAbove(scene, x, far / 2);
      } else {
        Holds.clamp(scene, x, far);
      }
    }
  }

  private static double clampX(double[] cut, double right) {
    return Math.max(cut[0], cut[1]) * 0.25 + right * 0.75;
  }

  private void dimension(Scene scene, double[] cut, double far) {
    Setting setting = setUp.setting("by");
    if (setting != null) {
      // The short side is where more comes off.
      boolean isShortFar = cut[1] > cut[0];
      double at = isShortFar ? far : 0;
      double push = isMiter() ? (isShortFar ? PAST : -FENCE - 8) : (isShortFar ? -PAST : 10);
      scene.dimension(
          true,
          at + push,
          isMiter() == isShortFar ? 1 : -1,
          List.of(
              new Scene.Measure(
                  0,
                  scene.points(by()),
                  at,
                  at + push,
                  true,
                  by(),
                  setUp.said().inscription(setting))));
    }
  }

  private void label(Scene scene, double[] cut, double far, double right) {
    double nearX = cut[0];
    if (setUp.uses(Control.CLAMPS)) {
      double x = clampX(cut, right);
      double y = isMiter() ? far / 2 : far - 16;
      scene.label(setUp.text("clamp"), x + 3, y, x + 24, isMiter() ? y + 14 : y - 4);
    }
    double wasteX = (cut[0] + cut[1]) / 4;
    if (isMiter()) {
      scene.name(setUp.text(support()), (nearX + 12 + right) / 2, -FENCE / 2 - 0.5);
      scene.name(setUp.text("miter.kept"), (cut[1] + right) / 2 - 14, far * 0.75);
      scene.label(setUp.text("waste"), wasteX, far * 0.8, -24, far * 0.8);
      double bladeX = cut[1] + (cut[1] - nearX) / far * 14 - 1;
      scene.label(blade(), bladeX, far + 14, bladeX + 34, far + 18);
    } else {
      scene.label(setUp.text("table"), -22, 0.9, -24, 16);
      scene.label(setUp.text("down." + against.word()), right * 0.6, 0, right * 0.55, 14);
      double bladeX = cut[1] + (cut[1] - nearX) / far * -14 - 1;
      scene.label(blade(), bladeX, far - 14, bladeX + 36, far - 16);
      double y = cut[1] > cut[0] ? far * 0.8 : far * 0.2;
      scene.label(setUp.text("waste"), Math.max(cut[0], cut[1]) * 0.25, y, -28, far * 0.6);
    }
  }

  private String support() {
    return setUp.tool() == MachineKind.TABLE_SAW ? "gauge" : "fence";
  }

  private String blade() {
    return setUp.text("cutter." + setUp.tool().word());
  }

  private void caption(Scene scene) {
    scene.caption(Inscription.of(Face.ITALIC, setUp.text(isMiter() ? "view.above" : "view.front")));
    if (isMiter()) {
      scene.caption(Inscription.of(Face.ITALIC, setUp.sentence("at_fence." + against.word())));
    }
    scene.caption(
        Inscription.of(Face.ITALIC, scene.scale().phrase(setUp.rule().unit(), setUp.words())));
    for (Setting setting : setUp.run().settings()) {
      if (!setting.name().equals("by")) {
        scene.caption(setUp.said().caption(setting));
      }
    }
  }

  @Override
  public List<String> alternative() {
    List<String> said = new ArrayList<>();
    said.add(setUp.sentence((isMiter() ? "at_fence." : "down.") + against.word()));
    said.add(setUp.sentence("kerf.waste"));
    return said;
  }
}
