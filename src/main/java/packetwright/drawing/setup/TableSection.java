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
import packetwright.text.measure.Length;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * A cut on a table, seen along the feed: the wood in section, a fence or a stop at the right, the
 * cutter coming up through the table.
 *
 * @param setUp the operation
 * @param guide what is set at the right
 * @param guided side of the wood at it
 * @param down face on the table
 * @param before the wood as it comes
 * @param after what this cut leaves of it; for a cut right through, the same as before
 * @param cutter across its axis of turning
 * @param height of the cutter over the table
 * @param isThrough whether the wood is parted
 */
record TableSection(
    SetUp setUp,
    Guide guide,
    Side guided,
    Side down,
    Solid before,
    Solid after,
    Cutter cutter,
    Length height,
    boolean isThrough)
    implements View {
  /** A blade stands that much over the wood, at least; school shop rules say 1/4 in at most. */
  private static final Length ABOVE = Length.ofInches(1, 8);

  private static final double FENCE = 34;
  private static final double BELOW = 13;
  private static final double ROOM = 140;

  /** What the wood lies against. */
  enum Guide {
    FENCE,
    STOP
  }

  /** A cut along a fence that parts the wood. */
  static @Nullable TableSection rip(SetUp setUp) {
    Workpiece piece = setUp.piece();
    Setting fence = setUp.setting("fence");
    Length kerf = setUp.shop().kerf(setUp.tool());
    if (piece == null || fence == null || kerf.signum() <= 0) {
      return null;
    }
    List<Side> from = setUp.run().operation().from();
    Solid solid = piece.solid();
    return new TableSection(
        setUp,
        Guide.FENCE,
        from.isEmpty() ? Side.BOTTOM : from.get(0),
        from.size() > 1 ? from.get(1) : Side.OUTSIDE,
        solid,
        solid,
        Cutter.of(kerf, List.of()),
        solid.thickness().plus(ABOVE),
        true);
  }

  /** A rabbet, dado or groove. */
  static @Nullable TableSection band(SetUp setUp) {
    Workpiece piece = setUp.piece();
    Setting set = setUp.setting("cutter");
    Setting stop = setUp.setting("stop");
    Setting guide = stop == null ? setUp.setting("fence") : stop;
    boolean isTrough = !setUp.taken().isEmpty() && setUp.taken().get(0) instanceof Removal.Trough;
    if (piece == null || set == null || guide == null || !isTrough) {
      return null;
    }
    Solid solid = piece.solid();
    Removal first = setUp.taken().get(0);
    int axis = across(solid, first);
    Solid after = solid;
    for (Removal removal : setUp.takenAtOnce(solid, axis)) {
      after = after.minus(removal);
    }
    return new TableSection(
        setUp,
        stop == null ? Guide.FENCE : Guide.STOP,
        SetUp.near(solid, first, axis),
        SetUp.face(solid, first),
        solid,
        after,
        Cutter.of(set.value().asLength(), set.stack()),
        setUp.length("height"),
        false);
  }

  /** The axis that a trough does not run along. */
  private static int across(Solid solid, Removal removal) {
    var box = removal.around(solid.block());
    return box != null && box.extent(0).isLess(solid.length()) ? 0 : 1;
  }

  /** From the guide to the near side of the cutter. */
  private Length near() {
    Setting setting = guideSetting();
    Length set = setting.value().asLength();
    return setting.datum().equals("far") ? set.minus(cutter.width()).max(Length.ZERO) : set;
  }

  private Setting guideSetting() {
    return guideSettings().get(0);
  }

  private List<Setting> guideSettings() {
    return setUp.passes(guide == Guide.STOP ? "stop" : "fence");
  }

  /** From the guide to the far side of the cutter, at the pass that reaches farthest. */
  Length far() {
    return guideSettings().stream()
        .map(s -> s.value().asLength())
        .reduce(near(), Length::max)
        .max(near())
        .plus(cutter.width());
  }

  @Override
  public void draw(Scene scene) {
    Wood wood = Wood.of(before, guided, down, far(), scene, ROOM);
    double left = wood.left(scene);
    double thick = scene.points(before.thickness());
    double cutterLeft = -scene.points(near().plus(cutter.width()));
    drawTable(scene, left - 8, cutterLeft);
    if (guide == Guide.STOP) {
      drawGauge(scene, left, thick);
    }
    if (isThrough) {
      drawParted(scene, wood);
    } else {
      wood.fill(scene, before, 0.92);
      drawCutter(scene, cutterLeft);
      wood.draw(scene, after, Length.ZERO, before.extent(guided.axis()));
    }
    drawGuide(scene, thick);
    drawHolds(scene, left, thick);
    dimension(scene, left, cutterLeft);
    label(scene, left, thick, cutterLeft);
    caption(scene);
  }

  private void drawTable(Scene scene, double left, double cutterLeft) {
    double right = cutterLeft + scene.points(cutter.width());
    double edge = guide == Guide.FENCE ? FENCE : 22;
    scene.stroke(Line.VISIBLE, left, 0, cutterLeft - 2, 0);
    scene.stroke(Line.VISIBLE, Math.min(right + 2, edge), 0, edge, 0);
  }

  private void drawCutter(Scene scene, double cutterLeft) {
    cutter.draw(scene, cutterLeft, -scene.points(height), BELOW);
  }

  private void drawParted(Scene scene, Wood wood) {
    Length extent = before.extent(guided.axis());
    Length beyond = near().plus(cutter.width());
    wood.fill(scene, before, 0.92);
    drawCutter(scene, -scene.points(beyond));
    wood.draw(scene, before, Length.ZERO, near());
    if (beyond.isLess(extent)) {
      if (isKept()) {
        wood.draw(scene, before, beyond, extent);
      } else {
        wood.drawWaste(scene, before, beyond, extent);
        cross(scene, wood, beyond);
      }
    }
  }

  private boolean isKept() {
    return setUp.run().operation().makes() != null;
  }

  /** X on the waste. */
  private void cross(Scene scene, Wood wood, Length beyond) {
    double right = -scene.points(beyond);
    double left = wood.isBroken() ? -scene.points(wood.shown()) : wood.left(scene);
    double middle = (left + right) / 2;
    double y = -scene.points(before.thickness()) / 2;
    scene.cross(middle, y, Math.min((right - left) / 2, -y) - 1.5);
  }

  private void drawGuide(Scene scene, double thick) {
    double top = -Math.max(thick + 26, 44);
    Area area = guide == Guide.FENCE ? new Area(0, top, FENCE, 0) : new Area(0, -thick - 12, 14, 0);
    scene.box(0.86, Line.FINE, area);
    scene.stroke(Line.VISIBLE, 0, area.top(), 0, 0);
  }

  /** The miter gauge stands behind the wood. */
  private void drawGauge(Scene scene, double left, double thick) {
    scene.box(1, Line.FINE, new Area(left + 10, -thick - 20, 22, -thick / 2));
  }

  /** Guard and what holds the wood down, never a hand. */
  private void drawHolds(Scene scene, double left, double thick) {
    double nearX = -scene.points(near());
    double farX = -scene.points(far());
    if (guide == Guide.STOP) {
      double x = Math.min((left + farX) / 2, farX - 14);
      Holds.clamp(scene, x, -thick);
    } else if (isThrough) {
      double guardRight = Math.min(nearX + 16, nearX / 2 - 8);
      double top = -scene.points(height) - 16;
      double foot = -thick - 4;
      scene.stroke(
          Line.FINE,
          farX - 16,
          foot,
          farX - 16,
          top + 6,
          farX - 10,
          top,
          guardRight - 6,
          top,
          guardRight,
          top + 6,
          guardRight,
          foot,
          farX - 16,
          foot);
      if (setUp.uses(Control.PUSH_BLOCK)) {
        double wide = Math.min(34, -(guardRight + 4) - 3);
        Holds.block(scene, new double[] {-3 - wide, -3}, -3 - wide / 2, -thick);
      } else {
        Holds.stick(scene, nearX / 2 + 2, -thick);
      }
    } else {
      drawBlock(scene, left, -thick);
    }
  }

  /** The handle stands beside the line of the cutter, not over it. */
  private void drawBlock(Scene scene, double left, double on) {
    double right = -3;
    double end = Math.max(left + 4, right - 96);
    Holds.block(scene, new double[] {end, right}, handle(scene, end, right), on);
  }

  private double handle(Scene scene, double left, double right) {
    double near = -scene.points(near());
    double far = -scene.points(far());
    return right - near > far - left ? (right + near) / 2 : (left + far) / 2;
  }

  private void dimension(Scene scene, double left, double cutterLeft) {
    List<Scene.Measure> level = new ArrayList<>();
    Setting set = setUp.setting("cutter");
    double right = cutterLeft + scene.points(cutter.width());
    SettingWords said = setUp.said();
    if (set != null) {
      level.add(
          new Scene.Measure(
              cutterLeft, right, BELOW, BELOW, false, cutter.width(), said.inscription(set)));
    }
    for (Setting setting : guideSettings()) {
      Length value = setting.value().asLength();
      if (value.signum() > 0) {
        boolean isAtCutter = setting.equals(guideSetting());
        level.add(
            new Scene.Measure(
                -scene.points(value),
                0,
                isAtCutter ? BELOW : 2,
                2,
                false,
                value,
                said.inscription(setting)));
      }
    }
    scene.dimension(true, BELOW, 1, level);
    Setting up = setUp.setting("height");
    if (up != null) {
      scene.dimension(
          false,
          left - 4,
          -1,
          List.of(
              new Scene.Measure(
                  -scene.points(height),
                  0,
                  cutterLeft,
                  left - 10,
                  false,
                  height,
                  said.inscription(up))));
    }
  }

  private void label(Scene scene, double left, double thick, double cutterLeft) {
    double middle = cutterLeft + scene.points(cutter.width()) / 2;
    String at = (guide == Guide.FENCE ? "at_fence." : "at_stop.") + guided.word();
    scene.label(
        setUp.text("cutter." + setUp.tool().word()), middle, BELOW - 2, middle - 34, BELOW + 10);
    double lies = isThrough ? -scene.points(near()) / 2 : left + 8;
    scene.label(setUp.text("down." + down.word()), lies, 0, isThrough ? lies : left, 10);
    if (guide == Guide.FENCE) {
      scene.name(setUp.text("fence"), FENCE / 2, -Math.max(thick + 26, 44) / 2);
      scene.label(setUp.text("table"), FENCE - 6, 0, FENCE - 8, 9);
      scene.label(setUp.text(at), -1, -thick, -40, -Math.max(thick + 26, 44) - 8);
    } else {
      scene.label(setUp.text("stop"), 7, -thick - 10, 30, -thick - 24);
      scene.label(setUp.text("table"), 18, 0, 20, 9);
      scene.label(setUp.text(at), -1, -thick, -30, -thick - 28);
      scene.label(behind(), left + 16, -thick - 16, left - 10, -thick - 30);
    }
    if (isThrough) {
      double guard = -scene.points(far()) - 12;
      scene.label(setUp.text("guard"), guard, -scene.points(height) - 15, guard, -thick - 44);
      boolean isBlock = setUp.uses(Control.PUSH_BLOCK);
      double stick = isBlock ? -18 : -scene.points(near()) / 2 + 2;
      scene.label(
          hold(), stick, -thick - (isBlock ? 6 : 24), stick + (isBlock ? -30 : 38), -thick - 26);
      if (beyondIsWaste()) {
        scene.label(setUp.text("waste"), left + 1.5, -1, left - 8, 9);
      }
    } else if (guide == Guide.FENCE) {
      scene.label(hold(), left + 14, -thick - 6, left - 10, -thick - 22);
    } else if (setUp.uses(Control.CLAMPS)) {
      double far = -scene.points(far());
      double x = Math.min((left + far) / 2, far - 14);
      scene.label(setUp.text("clamp"), x + 2, -thick - 22, x + 30, -thick - 30);
    }
  }

  private boolean beyondIsWaste() {
    return !isKept() && far().isLess(before.extent(guided.axis()));
  }

  /** What pushes the wood across the table. */
  private String behind() {
    return setUp.control(
        setUp.uses(Control.MITER_GAUGE) || setUp.tool() != MachineKind.ROUTER_TABLE
            ? Control.MITER_GAUGE
            : Control.BACKER);
  }

  private String hold() {
    return setUp.control(
        setUp.uses(Control.PUSH_BLOCK) || !isThrough ? Control.PUSH_BLOCK : Control.PUSH_STICK);
  }

  private void caption(Scene scene) {
    scene.caption(
        Inscription.of(
            Face.ITALIC,
            setUp.text(setUp.tool() == MachineKind.ROUTER_TABLE ? "view.router" : "view.along")));
    scene.caption(
        Inscription.of(Face.ITALIC, scene.scale().phrase(setUp.rule().unit(), setUp.words())));
    for (Setting setting : setUp.run().settings()) {
      boolean isDrawn =
          guideSettings().contains(setting)
              || setting.name().equals("cutter")
              || setting.name().equals("height");
      if (!isDrawn) {
        scene.caption(setUp.said().caption(setting));
      }
    }
  }

  @Override
  public List<String> alternative() {
    List<String> said = new ArrayList<>();
    said.add(setUp.sentence("down." + down.word()));
    said.add(setUp.sentence((guide == Guide.FENCE ? "at_fence." : "at_stop.") + guided.word()));
    if (isThrough && beyondIsWaste()) {
      said.add(setUp.sentence("kerf.waste"));
    }
    if (guide == Guide.FENCE) {
      said.add(setUp.words().plain("setup.holds", hold()));
    }
    return said;
  }
}
