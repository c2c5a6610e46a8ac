package packetwright.drawing.part;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.text.measure.Length;
import packetwright.text.source.Span;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Part.Feature;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bore;
import packetwright.wood.part.Removal.Trough;
import packetwright.wood.part.Shapes;
import packetwright.wood.part.Solid;

/** The parts of the sliding-lid box, and a few others that try the drawings. */
public final class SampleParts {
  private static final Length HALF = in(1, 2);
  private static final Length QUARTER = in(1, 4);
  private static final Length GROOVE = in(9, 32);

  private SampleParts() {}

  public static Length in(long numerator, long denominator) {
    return Length.ofInches(numerator, denominator);
  }

  private static Trough trough(Length x1, Length y1, Length z1, Length x2, Length y2, Length z2) {
    return new Trough(new Box(new Point(x1, y1, z1), new Point(x2, y2, z2)));
  }

  public static Part part(
      String name, String letter, int count, Solid block, List<Feature> features) {
    List<Removal> removals = features.stream().flatMap(f -> f.removals().stream()).toList();
    Solid solid = new Solid(block.length(), block.width(), block.thickness(), removals);
    return new Part(
        name, letter, count, "wall", solid, features, new Span("project.yaml", 1, 1, 1));
  }

  private static Feature groove(Solid block, String name, Side from) {
    Length low = from == Side.BOTTOM ? QUARTER : block.width().minus(QUARTER).minus(GROOVE);
    return new Feature(
        name,
        FeatureKind.GROOVE,
        "along",
        Side.INSIDE,
        from,
        Map.of("at", QUARTER, "width", GROOVE, "depth", QUARTER),
        List.of(
            trough(
                Length.ZERO,
                low,
                block.thickness().minus(QUARTER),
                block.length(),
                low.plus(GROOVE),
                block.thickness())));
  }

  /** A side of the box, so long and so wide. */
  public static Part side(Length length, Length width) {
    Solid block = Solid.block(length, width, HALF);
    Feature rabbets =
        new Feature(
            "end_rabbets",
            FeatureKind.RABBET,
            "both ends",
            Side.INSIDE,
            null,
            Map.of("width", HALF, "depth", QUARTER),
            List.of(
                trough(Length.ZERO, Length.ZERO, QUARTER, HALF, width, HALF),
                trough(length.minus(HALF), Length.ZERO, QUARTER, length, width, HALF)));
    return part(
        "side",
        "A",
        2,
        block,
        List.of(
            rabbets,
            groove(block, "lid_groove", Side.TOP),
            groove(block, "bottom_groove", Side.BOTTOM)));
  }

  /** The back end, as wide as the sides. */
  public static Part backEnd(Length width) {
    Solid block = Solid.block(in(9, 2), width, HALF);
    return part(
        "back_end",
        "B",
        1,
        block,
        List.of(
            groove(block, "lid_groove", Side.TOP), groove(block, "bottom_groove", Side.BOTTOM)));
  }

  /** The front end, so wide. */
  public static Part frontEnd(Length width) {
    Solid block = Solid.block(in(9, 2), width, HALF);
    return part("front_end", "C", 1, block, List.of(groove(block, "bottom_groove", Side.BOTTOM)));
  }

  /** The bottom, a plain panel. */
  public static Part bottom() {
    return part("bottom", "D", 1, Solid.block(in(135, 16), in(71, 16), QUARTER), List.of());
  }

  /** The lid with its finger notch in the outside face. */
  public static Part lid() {
    Solid block = Solid.block(in(35, 4), in(71, 16), QUARTER);
    Feature notch =
        new Feature(
            "finger_notch",
            FeatureKind.NOTCH,
            "middle",
            Side.OUTSIDE,
            Side.RIGHT,
            Map.of("at", HALF, "width", in(3, 8), "length", in(1, 1), "depth", in(1, 8)),
            List.of(trough(in(63, 8), in(55, 32), Length.ZERO, in(33, 4), in(87, 32), in(1, 8))));
    return part("lid", "E", 1, block, List.of(notch));
  }

  /** A rail with a dado, a hole through the face and a blind hole in the top edge. */
  public static Part rail() {
    Solid block = Solid.block(in(12, 1), in(2, 1), in(3, 4));
    Feature dado =
        new Feature(
            "shelf_dado",
            FeatureKind.DADO,
            "across",
            Side.INSIDE,
            Side.LEFT,
            Map.of("at", in(3, 1), "width", in(3, 4), "depth", QUARTER),
            List.of(trough(in(3, 1), Length.ZERO, HALF, in(15, 4), in(2, 1), in(3, 4))));
    Feature hole =
        new Feature(
            "peg_hole",
            FeatureKind.HOLE,
            "through",
            Side.INSIDE,
            Side.RIGHT,
            Map.of("at", in(2, 1), "diameter", HALF),
            List.of(new Bore(2, new Point(in(10, 1), in(1, 1), Length.ZERO), in(3, 4), HALF)));
    Feature blind =
        new Feature(
            "dowel_hole",
            FeatureKind.HOLE,
            "blind",
            Side.TOP,
            Side.LEFT,
            Map.of("at", in(6, 1), "diameter", in(3, 8), "depth", in(3, 4)),
            List.of(new Bore(1, new Point(in(6, 1), in(5, 4), in(3, 8)), in(3, 4), in(3, 8))));
    return part("rail", "F", 4, block, List.of(dado, hole, blind));
  }

  /** The side of a nest box under a sloping roof, with its way in. */
  public static Part nestSide() {
    Solid block = Solid.block(in(12, 1), in(11, 2), in(3, 4));
    Feature slope =
        shaped(
            "roof_slope",
            FeatureKind.MITER,
            "right",
            Side.TOP,
            Map.of("by", in(3, 2)),
            Shapes.slant(block, Side.RIGHT, Side.TOP, in(3, 2)));
    Feature way =
        shaped(
            "way_in",
            FeatureKind.HOLE,
            "through",
            Side.LEFT,
            Map.of("at", in(8, 1), "diameter", in(3, 2)),
            new Bore(2, new Point(in(8, 1), in(11, 4), Length.ZERO), in(3, 4), in(3, 2)));
    Part one = part("nest_side", "G", 2, block, List.of(slope, way));
    return new Part(
        one.name(), one.letter(), 2, true, one.blank(), one.solid(), one.features(), one.at());
  }

  /** The floor of a nest box: four holes, a bevel, and a chamfer on the opposite edge. */
  public static Part nestFloor() {
    Solid block = Solid.block(in(11, 2), in(4, 1), in(3, 4));
    List<Feature> features = new java.util.ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Length x = i % 2 == 0 ? in(3, 4) : in(19, 4);
      Length y = i < 2 ? in(3, 4) : in(13, 4);
      features.add(
          shaped(
              "drain_" + i,
              FeatureKind.HOLE,
              "through",
              Side.LEFT,
              Map.of("at", x, "across", y, "diameter", QUARTER),
              new Bore(2, new Point(x, y, Length.ZERO), in(3, 4), QUARTER)));
    }
    features.add(
        shaped(
            "back_bevel",
            FeatureKind.BEVEL,
            "top",
            Side.OUTSIDE,
            Map.of("by", in(3, 16)),
            Shapes.slant(block, Side.TOP, Side.OUTSIDE, in(3, 16))));
    features.add(
        shaped(
            "front_chamfer",
            FeatureKind.CHAMFER,
            "bottom",
            null,
            Map.of("size", QUARTER),
            Shapes.chamfer(block, Side.BOTTOM, Side.INSIDE, QUARTER)));
    return part("nest_floor", "H", 1, block, features);
  }

  /** The leg of a stool: an arch between its feet, a dado, and two rounded corners. */
  public static Part leg() {
    Solid block = Solid.block(in(10, 1), in(9, 1), in(3, 4));
    Feature arch =
        shaped(
            "foot_arch",
            FeatureKind.CURVE,
            "left",
            null,
            Map.of("length", in(5, 1), "rise", in(5, 4)),
            Shapes.curve(block, Side.LEFT, in(2, 1), in(5, 1), in(5, 4)));
    Feature dado =
        shaped(
            "rail_dado",
            FeatureKind.DADO,
            "across",
            Side.LEFT,
            Map.of("at", in(6, 1), "width", in(3, 4), "depth", QUARTER),
            trough(in(6, 1), Length.ZERO, HALF, in(27, 4), in(9, 1), in(3, 4)));
    Feature corners =
        shaped(
            "top_corners",
            FeatureKind.CORNER,
            "right",
            null,
            Map.of("radius", in(1, 1)),
            Shapes.rounded(block, Side.RIGHT, Side.BOTTOM, in(1, 1)),
            Shapes.rounded(block, Side.RIGHT, Side.TOP, in(1, 1)));
    return part("leg", "J", 2, block, List.of(arch, dado, corners));
  }

  /** The seat of a stool, its corners and its upper edges rounded. */
  public static Part seat() {
    Solid block = Solid.block(in(16, 1), in(10, 1), in(3, 4));
    Feature corners =
        shaped(
            "corners",
            FeatureKind.CORNER,
            "all",
            null,
            Map.of("radius", in(1, 1)),
            Shapes.rounded(block, Side.LEFT, Side.BOTTOM, in(1, 1)),
            Shapes.rounded(block, Side.LEFT, Side.TOP, in(1, 1)),
            Shapes.rounded(block, Side.RIGHT, Side.BOTTOM, in(1, 1)),
            Shapes.rounded(block, Side.RIGHT, Side.TOP, in(1, 1)));
    Feature edges =
        shaped(
            "edges",
            FeatureKind.ROUNDOVER,
            "around",
            null,
            Map.of("radius", QUARTER),
            Shapes.rounded(block, Side.LEFT, Side.INSIDE, QUARTER),
            Shapes.rounded(block, Side.RIGHT, Side.INSIDE, QUARTER),
            Shapes.rounded(block, Side.BOTTOM, Side.INSIDE, QUARTER),
            Shapes.rounded(block, Side.TOP, Side.INSIDE, QUARTER));
    return part("seat", "K", 1, block, List.of(corners, edges));
  }

  /**
   * A rail that gets narrower, with a groove that runs out through the taper, and a rounded end.
   */
  public static Part taperedRail() {
    Solid block = Solid.block(in(12, 1), in(3, 1), in(3, 4));
    Feature taper =
        shaped(
            "taper",
            FeatureKind.TAPER,
            "top",
            Side.LEFT,
            Map.of("by", in(3, 2)),
            Shapes.slant(block, Side.TOP, Side.LEFT, in(3, 2)));
    Feature groove =
        shaped(
            "groove",
            FeatureKind.GROOVE,
            "along",
            Side.BOTTOM,
            Map.of("at", in(2, 1), "width", QUARTER, "depth", QUARTER),
            trough(Length.ZERO, in(2, 1), HALF, in(12, 1), in(9, 4), in(3, 4)));
    Feature end =
        shaped(
            "end",
            FeatureKind.ROUNDOVER,
            "left",
            null,
            Map.of("radius", HALF),
            Shapes.rounded(block, Side.LEFT, Side.INSIDE, HALF));
    return part("tapered_rail", "L", 2, block, List.of(taper, groove, end));
  }

  /** The stile of a frame: a groove stopped before both ends, and one that begins at an edge. */
  public static Part stile() {
    Solid block = Solid.block(in(24, 1), in(5, 2), in(3, 4));
    Feature groove =
        new Feature(
            "panel_groove",
            FeatureKind.GROOVE,
            "along",
            Side.INSIDE,
            Side.TOP,
            Map.of("at", in(1, 2), "width", QUARTER, "depth", in(3, 8)),
            List.of(trough(in(3, 2), in(7, 4), in(3, 8), in(45, 2), in(2, 1), in(3, 4))));
    Feature notch =
        new Feature(
            "hinge_notch",
            FeatureKind.NOTCH,
            "bottom",
            Side.INSIDE,
            Side.LEFT,
            Map.of("at", in(3, 1), "width", in(5, 2), "length", in(3, 4), "depth", in(1, 8)),
            List.of(trough(in(3, 1), Length.ZERO, in(5, 8), in(11, 2), in(3, 4), in(3, 4))));
    return part("stile", "M", 2, block, List.of(groove, notch));
  }

  public static Feature shaped(
      String name,
      FeatureKind kind,
      String where,
      @Nullable Side from,
      Map<String, Length> sizes,
      Removal... removals) {
    return new Feature(name, kind, where, Side.INSIDE, from, sizes, List.of(removals));
  }

  public static Feature slant(FeatureKind kind, Solid block, Side at, Side full, Length by) {
    return shaped(
        "slant", kind, at.word(), full, Map.of("by", by), Shapes.slant(block, at, full, by));
  }

  /** Parts with slants, curves and rounded edges. */
  public static List<Part> shaped() {
    return List.of(nestSide(), nestFloor(), leg(), seat(), taperedRail());
  }

  /** All of them at the sample's sizes. */
  public static List<Part> all() {
    return List.of(
        side(in(9, 1), in(7, 2)),
        backEnd(in(7, 2)),
        frontEnd(in(47, 16)),
        bottom(),
        lid(),
        rail(),
        stile());
  }
}
