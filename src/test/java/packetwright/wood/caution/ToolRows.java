package packetwright.wood.caution;

import static packetwright.definition.procedure.Operation.Control.BACKER;
import static packetwright.definition.procedure.Operation.Control.CLAMPS;
import static packetwright.definition.procedure.Operation.Control.JIG;
import static packetwright.definition.procedure.Operation.Control.PUSH_BLOCK;
import static packetwright.definition.procedure.Operation.Control.PUSH_STICK;
import static packetwright.definition.procedure.Operation.Control.SHOOTING_BOARD;
import static packetwright.wood.caution.CautionRulesTest.row;
import static packetwright.wood.caution.CautionRulesTest.under;
import static packetwright.wood.caution.CautionRulesTest.upTo;

import java.util.stream.Stream;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.wood.caution.CautionRulesTest.Row;
import packetwright.wood.operation.OperationRun.Feed;

/**
 * Rules of all machines, and of band saw, drill press, routers, sanders, nailer, hand tools, glue
 * and finish, at their limits; lengths in 64ths of an inch.
 */
final class ToolRows {
  private static final int INCH = 64;

  private static final TrialOperation BENCH = at(Verb.CUT, MachineKind.CHISEL, CLAMPS);
  private static final TrialOperation BAND_RIP = at(Verb.RIP, MachineKind.BAND_SAW, PUSH_STICK);
  private static final TrialOperation BAND_RIP_BARE = at(Verb.RIP, MachineKind.BAND_SAW);
  private static final TrialOperation CURVE =
      at(Verb.SAW_CURVE, MachineKind.BAND_SAW).fed(Feed.FREEHAND).where("set.radius", INCH);
  private static final TrialOperation DRILL =
      at(Verb.DRILL, MachineKind.DRILL_PRESS, CLAMPS, BACKER)
          .where("set.diameter", 16)
          .where("set.inset", 5 * INCH)
          .where("set.across", 2 * INCH);
  private static final TrialOperation BLIND = DRILL.where("set.depth", 16);
  private static final TrialOperation DRILL_BY_HAND =
      at(Verb.DRILL, MachineKind.HAND_DRILL, CLAMPS)
          .where("set.diameter", 16)
          .where("set.inset", 5 * INCH)
          .where("set.across", 2 * INCH);
  private static final TrialOperation GROOVE =
      at(Verb.CUT, MachineKind.ROUTER_TABLE, PUSH_BLOCK)
          .fed(Feed.ALONG)
          .where("fence", INCH)
          .where("set.fence", INCH)
          .where("set.cutter", 16);
  private static final TrialOperation ROUT = at(Verb.ROUT, MachineKind.ROUTER_TABLE);
  private static final TrialOperation ROUND =
      at(Verb.ROUT, MachineKind.ROUTER_TABLE).fed(Feed.ALONG).where("set.radius", 16);
  private static final TrialOperation ROUT_BY_HAND =
      at(Verb.ROUT, MachineKind.HANDHELD_ROUTER, CLAMPS);
  private static final TrialOperation DISC = at(Verb.SAND, MachineKind.DISC_SANDER);
  private static final TrialOperation BELT = at(Verb.SAND, MachineKind.BELT_SANDER);
  private static final TrialOperation ORBITAL = at(Verb.SAND, MachineKind.ORBITAL_SANDER, CLAMPS);
  private static final TrialOperation NAIL =
      at(Verb.NAIL, MachineKind.NAILER).where("brad.length", INCH);
  private static final TrialOperation PLANE =
      at(Verb.CUT_TO_FIT, MachineKind.BLOCK_PLANE).where("set.length", 8 * INCH);
  private static final TrialOperation HAND_SAW = at(Verb.CROSSCUT, MachineKind.HAND_SAW);
  private static final TrialOperation SCREW = at(Verb.SCREW, MachineKind.CLAMP);
  private static final TrialOperation GLUE = at(Verb.GLUE, MachineKind.CLAMP, CLAMPS);
  private static final TrialOperation FINISH = at(Verb.FINISH, MachineKind.BRUSH);

  private ToolRows() {}

  private static TrialOperation at(Verb verb, MachineKind tool, Control... with) {
    return TrialOperation.of(verb, tool, with);
  }

  static Stream<Row> cautions() {
    return Stream.of(
            everywhere(),
            bandSaw(),
            drills(),
            routerTable(),
            routerInHand(),
            sanders(),
            fastening(),
            bench())
        .flatMap(rows -> rows);
  }

  private static Stream<Row> everywhere() {
    return Stream.of(
        row("eye_protection", ROUT, GLUE.withoutCut()),
        row("eye_protection", BENCH, GLUE.withoutCut()),
        row("ear_protection", ROUT, BENCH),
        row("loose_clothing", NAIL, HAND_SAW),
        row("power_off_first", ROUT, BENCH),
        row("one_operator", ROUT, BENCH),
        row("machine_dust", ROUT, NAIL),
        row("machine_dust", ROUT, BENCH),
        row("deep_pass", ROUT.where("depth", 9), ROUT.where("depth", 8)),
        row("deep_pass", ROUT_BY_HAND.where("depth", 9), ROUT_BY_HAND.where("depth", 8)),
        row("sanding_dust", at(Verb.SAND, MachineKind.SANDING_BLOCK), ROUT),
        row("sanding_dust", at(Verb.SQUARE_END, MachineKind.DISC_SANDER), HAND_SAW),
        row(
            "heavy_board",
            HAND_SAW.where("length", 72 * INCH),
            HAND_SAW.where("length", 72 * INCH - 1)),
        row("heavy_board", at(Verb.ROUGH_CUT, MachineKind.HAND_SAW), HAND_SAW));
  }

  private static Stream<Row> bandSaw() {
    return Stream.of(
        row("band_saw_guide", BAND_RIP, HAND_SAW),
        row("band_saw_hands", BAND_RIP, CURVE),
        row("band_saw_freehand", CURVE, BAND_RIP),
        under("small_at_band_saw", BAND_RIP, "length", 6 * INCH),
        row("small_at_band_saw", CURVE.where("length", 5 * INCH), CURVE),
        row(
            "thick_at_band_saw",
            CURVE.where("depth", 6 * INCH + 1),
            CURVE.where("depth", 6 * INCH)),
        under("tight_curve", CURVE, "set.radius", 40),
        row(
            "tight_curve", // radius 3/8 in, then 13/16 in
            at(Verb.SAW_CURVE, MachineKind.BAND_SAW).where("set.length", 48).where("set.rise", 24),
            at(Verb.SAW_CURVE, MachineKind.BAND_SAW).where("set.length", 96).where("set.rise", 32)),
        row("backing_out", CURVE, HAND_SAW),
        row("rolling_wood", BAND_RIP, HAND_SAW));
  }

  private static Stream<Row> drills() {
    return Stream.of(
        row("drill_grab", DRILL, DRILL_BY_HAND),
        row("large_bit", DRILL.where("set.diameter", 64), DRILL.where("set.diameter", 63)),
        row("drill_through", DRILL, BLIND),
        row("drill_through", DRILL_BY_HAND, DRILL_BY_HAND.where("set.depth", 16)),
        under("hole_near_edge", DRILL, "set.across", 24),
        under("hole_near_edge", DRILL, "set.inset", 24),
        row( // 4 in wide
            "hole_near_edge",
            DRILL.where("set.across", 4 * INCH - 23),
            DRILL.where("set.across", 4 * INCH - 24)),
        row( // 1 1/2 in wide: what counts is an inch of wood
            "hole_near_edge",
            DRILL.where("set.diameter", 96).where("set.across", INCH + 47),
            DRILL.where("set.diameter", 96).where("set.across", INCH + 48)),
        under("hole_near_edge", DRILL_BY_HAND, "set.across", 24),
        row("chuck_key", DRILL, DRILL_BY_HAND),
        row("drill_chips", DRILL, DRILL_BY_HAND),
        row("drill_speed", DRILL, DRILL_BY_HAND),
        row("hand_drill_slip", DRILL_BY_HAND, DRILL),
        row("hand_drill_slip", at(Verb.SCREW, MachineKind.SCREWDRIVER), SCREW));
  }

  private static Stream<Row> routerTable() {
    return Stream.of(
        row("router_feed", ROUT, ROUT_BY_HAND),
        under("small_at_router", ROUT.with(PUSH_BLOCK), "length", 12 * INCH),
        under("small_at_router", ROUT.with(PUSH_BLOCK), "width", 3 * INCH),
        row("end_at_router", ROUT.fed(Feed.ACROSS), ROUT.fed(Feed.ALONG)),
        row( // the bit reaches the far edge, 4 in from the fence
            "between_bit_and_fence",
            GROOVE.where("set.fence_2", 4 * INCH - 16),
            GROOVE.where("set.fence_2", 4 * INCH - 17)),
        row("between_bit_and_fence", GROOVE.where("width", 80), GROOVE.where("width", 81)),
        row(
            "between_bit_and_fence",
            GROOVE.where("width", 64),
            GROOVE.where("width", 64).where("fence", 0)),
        row(
            "slender_bit",
            GROOVE.where("set.cutter", 7).where("depth", 8),
            GROOVE.where("set.cutter", 8).where("depth", 8)),
        row(
            "large_router_bit",
            GROOVE.where("set.cutter", INCH + 1),
            GROOVE.where("set.cutter", INCH)),
        row(
            "large_router_bit",
            ROUND.where("set.radius", INCH / 2 + 1),
            ROUND.where("set.radius", INCH / 2)),
        row( // 3/4 in thick
            "thin_edge_left", ROUND.where("set.radius", 41), ROUND.where("set.radius", 40)),
        row("thin_edge_left", ROUT.where("set.size", 41), GROOVE.where("set.cutter", 41)),
        row("router_opening", ROUT, ROUT_BY_HAND),
        row("router_hands", ROUT, ROUT_BY_HAND),
        row(
            "slender_bit",
            ROUT_BY_HAND.where("set.cutter", 7).where("depth", 8),
            ROUT_BY_HAND.where("set.cutter", 8).where("depth", 8)),
        row(
            "large_router_bit",
            ROUT_BY_HAND.where("set.cutter", INCH + 1),
            ROUT_BY_HAND.where("set.cutter", INCH)),
        row(
            "thin_edge_left",
            ROUT_BY_HAND.where("set.radius", 41),
            ROUT_BY_HAND.where("set.radius", 40)));
  }

  private static Stream<Row> routerInHand() {
    return Stream.of(
        row("router_in_hand", ROUT_BY_HAND, ROUT),
        row(
            "router_round_the_outside",
            ROUT_BY_HAND,
            at(Verb.CUT, MachineKind.HANDHELD_ROUTER, CLAMPS)),
        under("router_tips", ROUT_BY_HAND, "width", 4 * INCH),
        row("router_way_round", ROUT_BY_HAND, ROUT),
        row("router_runs_on", ROUT_BY_HAND, ROUT));
  }

  private static Stream<Row> sanders() {
    return Stream.of(
        row("disc_side", DISC, BELT),
        row("belt_pull", BELT, DISC),
        under("small_at_sander", DISC, "length", 3 * INCH),
        under("small_at_sander", BELT, "width", 3 * INCH),
        under("small_at_sander", DISC, "thickness", 16),
        row("sander_hands", BELT, ORBITAL),
        row("sander_hands", DISC, ORBITAL),
        row("sander_gap", BELT, ORBITAL),
        row("sander_gap", DISC, ORBITAL),
        row("sander_guard", DISC, ORBITAL),
        row("sander_guard", BELT, ORBITAL),
        row("orbital_hold", ORBITAL, DISC),
        row( // so wide that the width does not count
            "small_at_orbital",
            ORBITAL.where("width", 5 * INCH).where("length", 5 * INCH - 1),
            ORBITAL.where("width", 5 * INCH).where("length", 5 * INCH)),
        under("small_at_orbital", ORBITAL, "width", 5 * INCH));
  }

  private static Stream<Row> fastening() {
    return Stream.of(
        row("nailer_hand", NAIL, ROUT),
        under("nail_near_end", NAIL, "brad.end", 32),
        under("nail_near_end", NAIL, "brad.edge", 16),
        under(
            "nail_near_end",
            at(Verb.NAIL, MachineKind.HAMMER).where("brad.length", INCH),
            "brad.end",
            32),
        row( // 4 in wide
            "nail_near_end",
            NAIL.where("brad.edge", 4 * INCH - 15),
            NAIL.where("brad.edge", 4 * INCH - 16)),
        row("nailer_people", NAIL, ROUT),
        row("nailer_trigger", NAIL, ROUT),
        row("nailer_power", NAIL, ROUT),
        row("hammer_blow", at(Verb.NAIL, MachineKind.HAMMER), NAIL),
        row("driver", SCREW, NAIL),
        row("driver", SCREW, at(Verb.SCREW, MachineKind.SCREWDRIVER)),
        row("screwdriver_slip", at(Verb.SCREW, MachineKind.SCREWDRIVER), SCREW));
  }

  private static Stream<Row> bench() {
    return Stream.of(
        row("chisel_edge", BENCH, PLANE),
        row("plane_slip", PLANE, BENCH),
        row("plane_slip", at(Verb.JOINT_FACE, MachineKind.BENCH_PLANE), BENCH),
        row("plane_slip", at(Verb.CUT, MachineKind.PLOW_PLANE), HAND_SAW),
        row("knife_slip", at(Verb.LAY_OUT, MachineKind.MARKING_KNIFE), PLANE),
        row("knife_slip", BENCH, PLANE),
        row("knife_slip", HAND_SAW, at(Verb.CROSSCUT, MachineKind.MITER_SAW)),
        row("hand_saw_jump", at(Verb.SAW_CURVE, MachineKind.COPING_SAW), PLANE),
        row("hand_saw_jump", HAND_SAW, PLANE),
        row("saw_below", at(Verb.RIP, MachineKind.HAND_SAW), HAND_SAW),
        row("saw_below", at(Verb.RIP, MachineKind.HAND_SAW), BAND_RIP),
        row("saw_slides", HAND_SAW.where("set.angle", INCH), HAND_SAW),
        row("saw_slides", HAND_SAW.where("set.tilt", INCH), HAND_SAW),
        under("thin_at_hand_saw", HAND_SAW, "thickness", 24),
        row("thin_at_hand_saw", HAND_SAW.where("thickness", 16), PLANE.where("thickness", 16)),
        under("thin_edge_planed", at(Verb.JOINT_EDGE, MachineKind.BENCH_PLANE), "thickness", 24),
        under(
            "thin_edge_planed",
            at(Verb.CUT_TO_FIT, MachineKind.BLOCK_PLANE).where("set.width", INCH),
            "thickness",
            24),
        row(
            "thin_edge_planed",
            at(Verb.JOINT_EDGE, MachineKind.BLOCK_PLANE).where("thickness", 16),
            PLANE.where("thickness", 16)),
        row("saw_blade_snaps", at(Verb.SAW_CURVE, MachineKind.COPING_SAW), HAND_SAW),
        under("short_in_hand", HAND_SAW, "length", 3 * INCH),
        under("short_in_hand", PLANE, "length", 4 * INCH),
        row(
            "end_grain_splits",
            PLANE,
            at(Verb.CUT_TO_FIT, MachineKind.BLOCK_PLANE).where("set.width", INCH)),
        row("end_grain_splits", PLANE, PLANE.with(SHOOTING_BOARD)),
        row("end_grain_splits", PLANE, PLANE.with(BACKER)),
        row(
            "end_grain_splits",
            at(Verb.CUT_TO_FIT, MachineKind.BENCH_PLANE).where("set.length", INCH),
            at(Verb.CUT_TO_FIT, MachineKind.BENCH_PLANE).where("set.width", INCH)),
        row("end_grain_splits", at(Verb.SQUARE_END, MachineKind.BLOCK_PLANE), HAND_SAW),
        row("edge_tools_carried", HAND_SAW, SCREW),
        row("edge_tools_carried", BENCH, ROUT),
        row("clamp_bars", GLUE, GLUE.with()),
        row("clamp_bars", at(Verb.DRY_FIT, MachineKind.CLAMP, CLAMPS), SCREW.with(CLAMPS)),
        row("glue_skin", GLUE, at(Verb.DRY_FIT, MachineKind.CLAMP)),
        row("oily_rags", FINISH, GLUE),
        row("finish_fumes", FINISH, GLUE));
  }

  static Stream<Row> refusals() {
    return Stream.of(
            refusedSaw(), refusedDrills(), refusedRouters(), refusedSanders(), refusedHand())
        .flatMap(rows -> rows);
  }

  private static Stream<Row> refusedSaw() {
    return Stream.of(
        upTo("push-stick-missing", BAND_RIP_BARE, "fence", 4 * INCH),
        row(
            "push-stick-missing",
            BAND_RIP_BARE.where("fence", INCH),
            BAND_RIP.where("fence", INCH)),
        row(
            "push-stick-missing",
            BAND_RIP_BARE.where("fence", INCH),
            at(Verb.CROSSCUT, MachineKind.BAND_SAW)),
        under("piece-too-short", BAND_RIP, "length", 6 * INCH),
        row(
            "piece-too-short",
            CURVE.where("length", 5 * INCH),
            CURVE.with(JIG).where("length", 5 * INCH)),
        row("cut-too-deep", CURVE.where("depth", 6 * INCH + 1), CURVE.where("depth", 6 * INCH)));
  }

  private static Stream<Row> refusedDrills() {
    return Stream.of(
        row("clamps-missing", DRILL.with(BACKER), DRILL),
        row("backer-missing", DRILL.with(CLAMPS), DRILL),
        row("backer-missing", DRILL.with(CLAMPS), BLIND.with(CLAMPS)),
        row("clamps-missing", DRILL_BY_HAND.with(), DRILL_BY_HAND));
  }

  private static Stream<Row> refusedRouters() {
    return Stream.of(
        under("piece-too-short", ROUT, "length", 12 * INCH),
        row(
            "piece-too-short",
            ROUT.where("length", 6 * INCH),
            ROUT.with(PUSH_BLOCK).where("length", 6 * INCH)),
        under("piece-too-short", ROUT.with(PUSH_BLOCK), "length", 6 * INCH),
        under("routed-too-narrow", ROUT, "width", 3 * INCH),
        row(
            "routed-too-narrow",
            ROUT.where("width", INCH),
            ROUT.with(PUSH_BLOCK).where("width", INCH)),
        row("backer-missing", ROUT.fed(Feed.ACROSS), ROUT.with(BACKER).fed(Feed.ACROSS)),
        row("between-bit-and-fence", GROOVE.where("width", 80), GROOVE.where("width", 81)),
        row("cut-too-deep", ROUT.where("depth", 9), ROUT.where("depth", 8)),
        row(
            "cut-too-deep", // a bit narrower than the depth of one pass
            GROOVE.where("set.cutter", 7).where("depth", 8),
            GROOVE.where("set.cutter", 8).where("depth", 8)),
        row("bit-too-large", ROUND.where("set.radius", 49), ROUND.where("set.radius", 48)),
        row(
            "bit-too-large",
            ROUND.where("set.radius", 49),
            ROUND.where("set.radius", 49).byInstructor()),
        row("edge-too-thin", ROUND.where("set.radius", 41), ROUND.where("set.radius", 40)),
        row("cut-too-deep", ROUT_BY_HAND.where("depth", 9), ROUT_BY_HAND.where("depth", 8)),
        row("clamps-missing", ROUT_BY_HAND.with(), ROUT_BY_HAND.with(JIG)),
        under("routed-too-narrow", ROUT_BY_HAND, "width", 4 * INCH),
        row(
            "routed-too-narrow",
            ROUT_BY_HAND.where("width", INCH),
            ROUT_BY_HAND.with(JIG).where("width", INCH)));
  }

  private static Stream<Row> refusedSanders() {
    return Stream.of(
        under("piece-too-short", DISC, "length", 3 * INCH),
        under("piece-too-short", BELT, "length", 3 * INCH),
        under("sanded-too-small", DISC, "width", 3 * INCH),
        row("sanded-too-small", BELT.where("width", INCH), BELT.with(JIG).where("width", INCH)),
        under("sanded-too-small", BELT.with(JIG), "thickness", 16),
        under("piece-too-short", ORBITAL, "length", 5 * INCH),
        under("sanded-too-small", ORBITAL.with(), "width", 5 * INCH),
        row("sanded-too-small", ORBITAL.with().where("width", INCH), ORBITAL.where("width", INCH)));
  }

  private static Stream<Row> refusedHand() {
    return Stream.of(
        under("clamps-missing", NAIL, "length", 12 * INCH),
        row("clamps-missing", NAIL.where("length", INCH), NAIL.with(CLAMPS).where("length", INCH)),
        row( // a brad so long that it counts for more than the distance
            "clamps-missing",
            NAIL.where("length", 12 * INCH).where("brad.length", 10 * INCH + 1),
            NAIL.where("length", 12 * INCH).where("brad.length", 10 * INCH)),
        row("clamps-missing", BENCH.with(), BENCH),
        row("clamps-missing", BENCH.with(), at(Verb.CUT, MachineKind.BLOCK_PLANE)),
        under("clamps-missing", HAND_SAW, "length", 3 * INCH),
        under("clamps-missing", PLANE, "length", 4 * INCH),
        row(
            "clamps-missing",
            HAND_SAW.where("length", INCH),
            HAND_SAW.with(CLAMPS).where("length", INCH)),
        row(
            "clamps-missing",
            PLANE.where("length", INCH),
            PLANE.with(SHOOTING_BOARD).where("length", INCH)),
        row(
            "clamps-missing", // a saw pushes the piece off its board
            HAND_SAW.with(SHOOTING_BOARD).where("length", INCH),
            HAND_SAW.with(CLAMPS).where("length", INCH)),
        row("clamps-missing", SCREW, SCREW.with(CLAMPS)),
        row(
            "clamps-missing",
            at(Verb.SCREW, MachineKind.SCREWDRIVER),
            at(Verb.SCREW, MachineKind.SCREWDRIVER, JIG)));
  }
}
