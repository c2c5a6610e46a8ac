package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.project.Side;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Area;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Line;
import packetwright.text.measure.Length;
import packetwright.wood.part.Box;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * An edge profiled at a router table, seen along the feed: the fence at the right, open where the
 * bit stands.
 *
 * @param setUp the operation
 * @param before the wood as it comes
 * @param after what the first edge's cut leaves
 * @param guided edge at the fence
 * @param down face on the table
 * @param size of the profile, across and up
 */
record ProfileSection(SetUp setUp, Solid before, Solid after, Side guided, Side down, Length size)
    implements View {
  private static final double FENCE = 34;
  private static final double BELOW = 13;
  private static final double ROOM = 120;

  static @Nullable ProfileSection of(SetUp setUp) {
    Workpiece piece = setUp.piece();
    if (piece == null || setUp.taken().isEmpty()) {
      return null;
    }
    Solid solid = piece.solid();
    Removal first = setUp.taken().get(0);
    Box box = first.around(solid.block());
    if (box == null) {
      return null;
    }
    int axis = box.extent(0).isLess(solid.length()) ? 0 : 1;
    return new ProfileSection(
        setUp,
        solid,
        solid.minus(first),
        SetUp.near(solid, first, axis),
        SetUp.face(solid, first),
        box.extent(axis));
  }

  @Override
  public void draw(Scene scene) {
    Wood wood = Wood.of(before, guided, down, size, scene, ROOM);
    double left = wood.left(scene);
    double thick = scene.points(before.thickness());
    double wide = scene.points(size);
    double top = -Math.max(thick + 26, 44);
    scene.box(0.86, Line.FINE, new Area(0, top, FENCE, 0));
    scene.stroke(Line.VISIBLE, left - 8, 0.9, -wide - 2, 0.9);
    scene.stroke(Line.VISIBLE, 14, 0.9, FENCE, 0.9);
    // The bit's own end turns inside the opening of the fence.
    scene.box(Cutter.TONE, Line.FINE, new Area(-wide, -wide, 12, BELOW));
    wood.draw(scene, after, Length.ZERO, before.extent(guided.axis()));
    scene.box(1, Line.FINE, new Area(left + 4, -thick - 12, -4, -thick - 0.9));
    List<Scene.Measure> level = new ArrayList<>();
    for (String name : List.of("radius", "size")) {
      Setting setting = setUp.setting(name);
      if (setting != null) {
        level.add(
            new Scene.Measure(-wide, 0, BELOW, 2, false, size, setUp.said().inscription(setting)));
      }
    }
    scene.dimension(true, BELOW, 1, level);
    scene.name(setUp.text("fence"), FENCE / 2, top / 2 - 8);
    scene.label(setUp.text("cutter.router_table"), 6, BELOW - 3, 34, BELOW + 10);
    scene.label(setUp.text("table"), left - 4, 0.9, left - 4, 12);
    scene.label(setUp.text("down." + down.word()), left + 20, 0, left + 24, 24);
    scene.label(setUp.text("at_fence." + guided.word()), -1, -thick, -40, top - 8);
    if (setUp.uses(Control.PUSH_BLOCK)) {
      scene.label(setUp.control(Control.PUSH_BLOCK), left + 14, -thick - 7, left - 8, -thick - 24);
    }
    scene.caption(Inscription.of(Face.ITALIC, setUp.text("view.router")));
    scene.caption(
        Inscription.of(Face.ITALIC, scene.scale().phrase(setUp.rule().unit(), setUp.words())));
    for (Setting setting : setUp.run().settings()) {
      if (!setting.name().equals("radius") && !setting.name().equals("size")) {
        scene.caption(setUp.said().caption(setting));
      }
    }
  }

  @Override
  public List<String> alternative() {
    return List.of(
        setUp.sentence("down." + down.word()), setUp.sentence("at_fence." + guided.word()));
  }
}
