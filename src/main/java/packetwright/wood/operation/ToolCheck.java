package packetwright.wood.operation;

import static packetwright.definition.shop.MachineKind.BAND_SAW;
import static packetwright.definition.shop.MachineKind.BELT_SANDER;
import static packetwright.definition.shop.MachineKind.BENCH_PLANE;
import static packetwright.definition.shop.MachineKind.BLOCK_PLANE;
import static packetwright.definition.shop.MachineKind.BRUSH;
import static packetwright.definition.shop.MachineKind.CHISEL;
import static packetwright.definition.shop.MachineKind.COPING_SAW;
import static packetwright.definition.shop.MachineKind.DADO_SET;
import static packetwright.definition.shop.MachineKind.DISC_SANDER;
import static packetwright.definition.shop.MachineKind.DRILL_PRESS;
import static packetwright.definition.shop.MachineKind.HAMMER;
import static packetwright.definition.shop.MachineKind.HANDHELD_ROUTER;
import static packetwright.definition.shop.MachineKind.HAND_DRILL;
import static packetwright.definition.shop.MachineKind.HAND_SAW;
import static packetwright.definition.shop.MachineKind.JOINTER;
import static packetwright.definition.shop.MachineKind.MITER_SAW;
import static packetwright.definition.shop.MachineKind.NAILER;
import static packetwright.definition.shop.MachineKind.ORBITAL_SANDER;
import static packetwright.definition.shop.MachineKind.PLANER;
import static packetwright.definition.shop.MachineKind.PLOW_PLANE;
import static packetwright.definition.shop.MachineKind.ROUTER_TABLE;
import static packetwright.definition.shop.MachineKind.SANDING_BLOCK;
import static packetwright.definition.shop.MachineKind.SCREWDRIVER;
import static packetwright.definition.shop.MachineKind.TABLE_SAW;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.shop.MachineKind;
import packetwright.text.source.Located;
import packetwright.wood.operation.Simulation.Inputs;
import packetwright.wood.part.Part;

/** Which tools can do an operation at all; whether they may is for the cautions to say. */
public final class ToolCheck {
  private ToolCheck() {}

  /** Whether an operation is done at a tool at all, on some piece or feature. */
  public static boolean isDone(Verb verb, MachineKind tool) {
    List<MachineKind> tools = new ArrayList<>(tools(verb));
    for (FeatureKind kind : FeatureKind.values()) {
      if (Handwork.makers(kind).contains(verb)) {
        tools.addAll(tools(verb, kind, true));
        tools.addAll(tools(verb, kind, false));
      }
    }
    return tools.isEmpty() || tools.contains(tool);
  }

  static void check(Situation s) {
    Located<MachineKind> at = s.operation().at();
    Verb verb = s.operation().verb().value();
    List<MachineKind> tools = tools(s.inputs(), s.operation());
    if (at != null && !tools.isEmpty() && !tools.contains(at.value())) {
      String words =
          tools.stream().map(kind -> "`" + kind.word() + "`").collect(Collectors.joining(", "));
      s.error(
          "wrong-tool",
          at.at(),
          "`" + verb.word() + "` is not done at `" + at.value().word() + "`",
          tools.size() == 1 ? "write " + words : "write one of " + words);
    }
  }

  /** None for work that any tool may help with. */
  static List<MachineKind> tools(Inputs inputs, Operation operation) {
    Verb verb = operation.verb().value();
    Part.Feature feature =
        operation.targets().isEmpty() ? null : Aim.find(inputs, operation.targets().get(0).value());
    return feature == null
        ? tools(verb)
        : tools(verb, feature.kind(), Set.of("left", "right").contains(feature.where()));
  }

  private static List<MachineKind> tools(Verb verb, FeatureKind kind, boolean isAtEnd) {
    return switch (kind) {
      case RABBET, DADO, GROOVE ->
          List.of(DADO_SET, TABLE_SAW, ROUTER_TABLE, HANDHELD_ROUTER, PLOW_PLANE, HAND_SAW, CHISEL);
      case NOTCH -> List.of(CHISEL);
      case HOLE -> List.of(DRILL_PRESS, HAND_DRILL);
      case MITER -> List.of(MITER_SAW, HAND_SAW, BAND_SAW);
      case BEVEL -> List.of(isAtEnd ? MITER_SAW : TABLE_SAW, HAND_SAW);
      case TAPER -> List.of(BAND_SAW, HAND_SAW, TABLE_SAW);
      case CORNER, CURVE -> List.of(BAND_SAW, COPING_SAW, HAND_SAW);
      case CHAMFER, ROUNDOVER ->
          verb == Verb.ROUT
              ? List.of(ROUTER_TABLE, HANDHELD_ROUTER)
              : List.of(BLOCK_PLANE, SANDING_BLOCK);
    };
  }

  private static List<MachineKind> tools(Verb verb) {
    return switch (verb) {
      case ROUGH_CUT -> List.of(MITER_SAW, TABLE_SAW, BAND_SAW, HAND_SAW);
      case RIP -> List.of(TABLE_SAW, BAND_SAW, HAND_SAW, DADO_SET);
      case CROSSCUT -> List.of(MITER_SAW, TABLE_SAW, BAND_SAW, HAND_SAW, DADO_SET);
      case SQUARE_END ->
          List.of(MITER_SAW, TABLE_SAW, HAND_SAW, BLOCK_PLANE, BENCH_PLANE, DISC_SANDER);
      case PLANE_TO_THICKNESS -> List.of(PLANER, BENCH_PLANE);
      case JOINT_FACE -> List.of(JOINTER, BENCH_PLANE);
      case JOINT_EDGE -> List.of(JOINTER, BENCH_PLANE, BLOCK_PLANE);
      case CUT -> List.of(DADO_SET, TABLE_SAW, HAND_SAW, CHISEL);
      case DRILL -> List.of(DRILL_PRESS, HAND_DRILL);
      case CUT_TO_FIT ->
          List.of(
              BLOCK_PLANE, BENCH_PLANE, SANDING_BLOCK, HAND_SAW, MITER_SAW, TABLE_SAW, DISC_SANDER);
      case SAND -> List.of(SANDING_BLOCK, ORBITAL_SANDER, BELT_SANDER, DISC_SANDER);
      case EASE ->
          List.of(SANDING_BLOCK, BLOCK_PLANE, ORBITAL_SANDER, ROUTER_TABLE, HANDHELD_ROUTER);
      case FINISH -> List.of(BRUSH);
      case NAIL -> List.of(NAILER, HAMMER);
      case SCREW -> List.of(SCREWDRIVER);
      default -> List.of();
    };
  }
}
