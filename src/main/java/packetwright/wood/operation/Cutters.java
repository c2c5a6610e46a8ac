package packetwright.wood.operation;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.wood.setup.CutterPlan;
import packetwright.wood.setup.Setting;
import packetwright.wood.setup.Setting.Kind;

/** Which cutter makes a width, where the fence stands at each pass, and how deep each pass goes. */
final class Cutters {
  private Cutters() {}

  /**
   * What a cut is led by.
   *
   * @param name of the setting: a fence or a stop, or the line that a hand tool follows
   * @param datum from where it is measured
   * @param fitted whether it waits for a measurement
   */
  record Guide(String name, String datum, boolean fitted) {
    /** A machine's own guide, or for a tool in the hand a line measured from a side. */
    static Guide of(MachineKind tool, String ofMachine, Side from) {
      return isFollowingLines(tool)
          ? new Guide("line", from.word(), false)
          : new Guide(ofMachine, "near", false);
    }

    Guide withFitted(boolean waits) {
      return new Guide(name, datum, waits);
    }
  }

  /** Tools that cut to lines and not along a fence. */
  static boolean isFollowingLines(MachineKind tool) {
    return tool == MachineKind.HAND_SAW || tool == MachineKind.CHISEL;
  }

  /** How a width is made with what the shop has; none with a finding. */
  static @Nullable CutterPlan plan(Situation s, MachineKind tool, Aim aim) {
    Length width = aim.length("width");
    Length graduation = s.graduation();
    Length blade = s.machineValue(MachineKind.TABLE_SAW, "kerf");
    CutterPlan plan =
        switch (tool) {
          case DADO_SET -> CutterPlan.of(width, s.inputs().shop().cutters(), graduation);
          case ROUTER_TABLE, HANDHELD_ROUTER, PLOW_PLANE ->
              CutterPlan.ofBits(width, s.inputs().shop().cutters().bitsOf(tool), graduation);
          case TABLE_SAW ->
              width.isLess(blade) || blade.signum() <= 0
                  ? null
                  : CutterPlan.inPasses(width, List.of(blade), graduation);
          case HAND_SAW, CHISEL -> new CutterPlan(width, List.of(), List.of(Length.ZERO));
          default -> null;
        };
    if (plan == null) {
      boolean takesBits = isRouter(tool) || tool == MachineKind.PLOW_PLANE;
      boolean isBitUnknown = takesBits && s.inputs().shop().cutters().bitsOf(tool).isEmpty();
      s.error(
          "no-cutter",
          "the `"
              + tool.word()
              + "` of this shop has "
              + (isBitUnknown ? "no bits" : "no cutter so narrow as " + s.print(width)),
          isBitUnknown
              ? "add `%s: {bits: [1/4, 1/2]}`, with the shop's own, under the shop's `cutters`"
                  .formatted(
                      tool == MachineKind.HANDHELD_ROUTER
                          ? MachineKind.ROUTER_TABLE.word()
                          : tool.word())
              : "widen the feature, or name another tool with `at:`");
    }
    return plan;
  }

  static boolean isRouter(MachineKind tool) {
    return tool == MachineKind.ROUTER_TABLE || tool == MachineKind.HANDHELD_ROUTER;
  }

  /** Sets the cutter; one that is wider than what it cuts is an error. */
  static Length cutter(Situation s, Aim aim, Setting reckoned) {
    Length cutter = s.settings().set(reckoned);
    if (cutter.isMore(aim.length("width"))) {
      s.error(
          "cutter-too-wide",
          "the cutter is "
              + s.print(cutter)
              + " wide, and `"
              + aim.target().value()
              + "` only "
              + s.print(aim.length("width")),
          "set a narrower cutter, or delete `cutter` under `set`");
    }
    return cutter;
  }

  /**
   * Where the fence stands, pass after pass. A router's later pass may widen only the wall away
   * from the fence: at the other wall the bit would run with the wood and throw it.
   */
  static List<Length> fences(
      Situation s, MachineKind tool, CutterPlan plan, Length first, Guide guide) {
    List<Length> fences = new ArrayList<>();
    int passes = plan.offsets().size();
    for (int i = 0; i < passes; i++) {
      boolean isInner = i > 0 && i < passes - 1;
      fences.add(
          s.settings()
              .set(
                  new Setting(
                      i == 0 ? guide.name() : guide.name() + "_" + (i + 1),
                      Quantity.of(first.plus(plan.offsets().get(i))),
                      guide.datum(),
                      null,
                      isInner ? Kind.FREE : Kind.BOUND,
                      guide.fitted())));
    }
    s.settings().passes(passes);
    for (int i = 1; i < passes && isRouter(tool); i++) {
      if (fences.get(i).isLess(fences.get(i - 1))) {
        s.error(
            "climb-cut",
            "pass "
                + (i + 1)
                + " would widen the wall beside the fence, where the bit runs with the wood",
            "let each pass stand farther from the fence than the one before");
        break;
      }
    }
    return fences;
  }

  /**
   * How high the cutter stands.
   *
   * @param reach the highest of all passes
   * @param deepest the most that one pass takes
   */
  record Depth(Length reach, Length deepest) {}

  /** Sets the height, and that of each pass before the last where one pass would take too much. */
  static Depth height(Situation s, MachineKind tool, Aim aim) {
    boolean isByHand = !tool.isPowered();
    String name = isByHand ? "depth" : "height";
    Length height = s.set(name, aim, "depth", "");
    Length most = s.machineValue(tool, "depth_per_pass");
    int passes = most.signum() <= 0 ? 1 : s.settings().needed(height, most);
    Length before = Length.ZERO;
    Length reach = height;
    Length deepest = Length.ZERO;
    for (int pass = 1; pass < passes; pass++) {
      Length reckoned = most.times(pass);
      String later = "height_" + pass;
      Length at =
          pass == 1
              ? s.set("first_height", reckoned, "", Kind.FREE, null)
              : s.set(later, reckoned, "", Kind.FREE, null);
      deepest = deepest.max(at.minus(before));
      reach = reach.max(at);
      before = at;
    }
    return new Depth(reach, deepest.max(height.minus(before)));
  }

  /** The stack that is still in the saw from before, where it is no wider than the rabbet. */
  static List<Length> stackThatFits(Situation s, MachineKind tool, Aim aim) {
    for (int i = s.earlier().size() - 1; i >= 0 && tool == MachineKind.DADO_SET; i--) {
      OperationRun before = s.earlier().get(i);
      for (Setting setting : before.settings()) {
        boolean isCutter = before.tool() == tool && setting.name().equals("cutter");
        if (isCutter && !setting.value().asLength().isMore(aim.length("width"))) {
          return setting.stack().isEmpty() ? List.of(setting.value().asLength()) : setting.stack();
        }
      }
    }
    CutterPlan plan = plan(s, tool, aim);
    return plan == null ? List.of() : plan.stack().isEmpty() ? List.of(plan.width()) : plan.stack();
  }

  /** The width of a plan: of a cutter, or of what is laid out for a hand tool. */
  static Setting asSetting(MachineKind tool, CutterPlan plan, @Nullable Length tolerance) {
    Setting setting = asSetting(plan.width(), tolerance, Kind.BOUND, plan.stack());
    return isFollowingLines(tool)
        ? new Setting("width", setting.value(), "", tolerance, Kind.BOUND, false)
        : setting;
  }

  /** A cutter as a setting. */
  static Setting asSetting(Length width, @Nullable Length tolerance, Kind kind, List<Length> of) {
    return new Setting("cutter", Quantity.of(width), "", tolerance, kind, false, of);
  }
}
