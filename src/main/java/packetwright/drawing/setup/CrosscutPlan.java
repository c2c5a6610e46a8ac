package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.Side;
import packetwright.definition.shop.Machine;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.text.measure.Length;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * A board cut across, seen from above: the fence behind it, the kerf on the side that is not
 * measured, a stop where one is set, what holds the board.
 *
 * @param setUp the operation
 * @param end that the cut is measured from
 * @param edge at the fence; none where any will do
 * @param set the setting that says where the cut is
 * @param kerf width of the cut
 * @param wood length and width of the board; a rough cut's board is longer than anybody knows
 */
record CrosscutPlan(
    SetUp setUp, Side end, @Nullable Side edge, Setting set, Length kerf, Board wood)
    implements View {
  private static final double FENCE = 16;
  private static final double STOP = 12;
  private static final double BLADE_PAST = 9;

  /** How much of the board is shown beyond the cut before it is broken off, at most. */
  private static final double BEYOND = 70;

  /**
   * The board as it comes.
   *
   * @param length of it; zero where it is not known
   * @param width of it
   */
  record Board(Length length, Length width) {}

  static @Nullable CrosscutPlan of(SetUp setUp) {
    Verb verb = setUp.run().operation().verb().value();
    String name =
        switch (verb) {
          case SQUARE_END -> "trim";
          case ROUGH_CUT -> "length";
          default -> "stop";
        };
    Setting set = setUp.setting(name);
    Workpiece piece = setUp.piece();
    Workpiece first = setUp.run().after().isEmpty() ? null : setUp.run().after().get(0);
    if (set == null || first == null) {
      return null;
    }
    Board wood =
        piece == null
            ? new Board(Length.ZERO, setUp.length("width"))
            : new Board(piece.solid().length(), piece.solid().width());
    return new CrosscutPlan(
        setUp, end(setUp, verb), edge(setUp, verb), set, setUp.shop().kerf(setUp.tool()), wood);
  }

  private static Side end(SetUp setUp, Verb verb) {
    List<Side> sides =
        verb == Verb.SQUARE_END ? setUp.run().operation().sides() : setUp.run().operation().from();
    return sides.stream().filter(side -> side.axis() == 0).findFirst().orElse(Side.LEFT);
  }

  private static @Nullable Side edge(SetUp setUp, Verb verb) {
    return verb == Verb.ROUGH_CUT
        ? null
        : setUp.run().operation().from().stream()
            .filter(side -> side.axis() == 1)
            .findFirst()
            .orElse(Side.BOTTOM);
  }

  private boolean isTrim() {
    return set.name().equals("trim");
  }

  /** Where the kerf begins, from the end. */
  private Length near() {
    Length at = set.value().asLength();
    return isTrim() ? at.minus(kerf).max(Length.ZERO) : at;
  }

  private Length beyond() {
    return near().plus(kerf);
  }

  /** 1 where the measured end is at the left. */
  private int way() {
    return end == Side.LEFT ? 1 : -1;
  }

  private double x(Scene scene, Length fromEnd) {
    return way() * scene.points(fromEnd);
  }

  /** Where the drawing of the board ends, from the measured end. */
  private double shown(Scene scene) {
    double most = scene.points(beyond()) + BEYOND;
    boolean isKnown = wood.length().signum() > 0;
    return isKnown ? Math.min(most, scene.points(wood.length())) : most;
  }

  private boolean isBroken(Scene scene) {
    return wood.length().signum() == 0 || scene.points(wood.length()) > shown(scene) + 0.01;
  }

  @Override
  public void draw(Scene scene) {
    double wide = scene.points(wood.width());
    double shown = shown(scene);
    drawNoHands(scene, wide, shown);
    drawFence(scene, shown);
    drawBoard(scene, wide, shown);
    drawBlade(scene, wide);
    if (isStopped()) {
      double x1 = -way() * STOP;
      scene.box(
          0.86, Line.VISIBLE, new Area(Math.min(x1, 0), 0, Math.max(x1, 0), Math.min(wide, 22)));
    }
    drawClamp(scene, wide, shown);
    dimension(scene);
    label(scene, wide, shown);
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("view.above")));
    Side against = edge;
    if (against != null) {
      scene.caption(Inscription.of(Face.ITALIC, setUp.sentence("at_fence." + against.word())));
    }
    scene.caption(
        Inscription.of(Face.ITALIC, scene.scale().phrase(setUp.rule().unit(), setUp.words())));
    for (Setting other : setUp.run().settings()) {
      if (!other.equals(set)) {
        scene.caption(setUp.said().caption(other));
      }
    }
  }

  private boolean isStopped() {
    return setUp.run().operation().stop();
  }

  /** The fence is open where the blade passes. */
  private void drawFence(Scene scene, double shown) {
    double near = x(scene, near()) - way() * 5;
    double far = x(scene, beyond()) + way() * 5;
    double start = -way() * (isStopped() ? STOP + 4 : 4);
    double finish = way() * (shown + 4);
    scene.box(0.86, Line.FINE, across(start, near, -FENCE, -1));
    scene.box(0.86, Line.FINE, across(far, finish, -FENCE, -1));
  }

  private static Area across(double one, double other, double top, double bottom) {
    return new Area(Math.min(one, other), top, Math.max(one, other), bottom);
  }

  private void drawBoard(Scene scene, double wide, double shown) {
    double near = x(scene, near());
    double far = x(scene, beyond());
    double finish = way() * shown;
    scene.fill(1, 0, 0, near, 0, near, wide, 0, wide);
    scene.stroke(Line.VISIBLE, near, 0, 0, 0, 0, wide, near, wide);
    if (Math.abs(finish - far) > 0.5) {
      scene.fill(1, far, 0, finish, 0, finish, wide, far, wide);
      scene.stroke(Line.VISIBLE, far, 0, finish, 0);
      scene.stroke(Line.VISIBLE, far, wide, finish, wide);
      if (isBroken(scene)) {
        scene.breakLine(finish, 0, wide);
      } else {
        scene.stroke(Line.VISIBLE, finish, 0, finish, wide);
      }
    }
    if (isTrim()) {
      scene.cross(near / 2, wide / 2, Math.min(Math.abs(near), wide) / 2 - 2);
    }
  }

  private void drawBlade(Scene scene, double wide) {
    Area area =
        across(x(scene, near()), x(scene, beyond()), -FENCE - BLADE_PAST, wide + BLADE_PAST);
    scene.box(Cutter.TONE, Line.FINE, area);
  }

  /** Where hands have no place, before the board on the operator's side. */
  private void drawNoHands(Scene scene, double wide, double shown) {
    Length distance = handDistance();
    if (distance.signum() > 0) {
      double middle = x(scene, near().plus(kerf.dividedBy(2)));
      double reach = scene.points(distance);
      double least = Math.min(0, way() * shown);
      double most = Math.max(0, way() * shown);
      scene.fill(
          0.9,
          Math.max(least, middle - reach),
          wide + 3,
          Math.min(most, middle + reach),
          wide + 3,
          Math.min(most, middle + reach),
          wide + 19,
          Math.max(least, middle - reach),
          wide + 19);
    }
  }

  private Length handDistance() {
    Machine machine = setUp.run().machine();
    return machine == null ? Length.ZERO : machine.value("hand_distance", Length.ZERO);
  }

  /** Whether what is measured is what is held; else it is the other side of the cut. */
  private boolean isPartHeld() {
    return !isTrim() && (isStopped() || !beyond().times(2).isLess(wood.length()));
  }

  private void drawClamp(Scene scene, double wide, double shown) {
    if (setUp.uses(Control.CLAMPS)) {
      Holds.clampFromAbove(scene, clampX(scene, shown), wide / 2);
    }
  }

  private double clampX(Scene scene, double shown) {
    double held = isPartHeld() ? scene.points(near()) / 2 : (scene.points(beyond()) + shown) / 2;
    double hands = scene.points(handDistance());
    double out = isPartHeld() ? scene.points(near()) - hands : scene.points(beyond()) + hands;
    boolean isOutside = isPartHeld() ? out > 12 && out < held : out < shown - 12 && out > held;
    return way() * (isOutside ? out : held);
  }

  private void dimension(Scene scene) {
    Length value = set.value().asLength();
    scene.dimension(
        true,
        -FENCE,
        -1,
        List.of(
            new Scene.Measure(
                Math.min(0, x(scene, value)),
                Math.max(0, x(scene, value)),
                way() > 0 ? -FENCE : -FENCE - BLADE_PAST,
                way() > 0 ? -FENCE - BLADE_PAST : -FENCE,
                false,
                value,
                setUp.said().inscription(set))));
  }

  private void label(Scene scene, double wide, double shown) {
    double near = x(scene, near());
    double far = x(scene, beyond());
    double finish = way() * shown;
    double bladeX = (near + far) / 2;
    scene.label(
        setUp.text("cutter." + setUp.tool().word()),
        bladeX,
        wide + BLADE_PAST - 2,
        bladeX,
        wide + 32);
    if (handDistance().signum() > 0) {
      double x = bladeX - way() * Math.min(44, scene.points(handDistance()) / 2);
      scene.label(setUp.text("no_hands"), x, wide + 11);
    }
    if (isStopped()) {
      scene.label(setUp.text("stop"), -way() * STOP / 2, 14, -way() * STOP / 2, wide + 20);
    }
    scene.name(setUp.text("fence"), (far + finish) / 2 + way() * 6, -FENCE / 2 - 0.5);
    String kept = piece(0);
    if (isTrim()) {
      scene.label(setUp.text("waste"), near / 2, wide - 2, near / 2, wide + 12);
      scene.name(kept, (far + finish) / 2, wide * 0.72);
    } else {
      scene.name(kept, near / 2, wide * 0.75);
      if (setUp.run().after().size() > 1 || wood.length().signum() == 0) {
        scene.name(setUp.text("rest"), (far + finish) / 2, wide / 2);
      }
    }
    if (setUp.uses(Control.CLAMPS)) {
      double x = clampX(scene, shown);
      scene.label(setUp.text("clamp"), x, wide / 2, x + 24, wide / 2);
    }
  }

  private String piece(int index) {
    return setUp.run().after().get(index).name().replace('_', ' ');
  }

  @Override
  public List<String> alternative() {
    List<String> said = new ArrayList<>();
    Side against = edge;
    if (against != null) {
      said.add(setUp.sentence("at_fence." + against.word()));
    }
    if (isStopped()) {
      said.add(setUp.sentence("at_stop." + end.word()));
    }
    said.add(setUp.sentence(isTrim() ? "kerf.waste" : "kerf.rest"));
    return said;
  }
}
