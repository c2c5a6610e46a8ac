package packetwright.wood.caution;

import static packetwright.definition.procedure.Operation.Control.BACKER;
import static packetwright.definition.procedure.Operation.Control.CLAMPS;
import static packetwright.definition.procedure.Operation.Control.FEATHERBOARD;
import static packetwright.definition.procedure.Operation.Control.JIG;
import static packetwright.definition.procedure.Operation.Control.MITER_GAUGE;
import static packetwright.definition.procedure.Operation.Control.PUSH_BLOCK;
import static packetwright.definition.procedure.Operation.Control.PUSH_STICK;
import static packetwright.definition.procedure.Operation.Control.SACRIFICIAL_FENCE;
import static packetwright.definition.procedure.Operation.Control.SLED_STOP;
import static packetwright.definition.procedure.Operation.Control.STAND_OFF_BLOCK;
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
 * Rules of miter saw, table saw, dado set, jointer and planer at their limits; lengths in 64ths of
 * an inch.
 */
final class SawRows {
  private static final int INCH = 64;

  static final TrialOperation RIP = at(Verb.RIP, MachineKind.TABLE_SAW, PUSH_STICK);
  static final TrialOperation MITER = at(Verb.CROSSCUT, MachineKind.MITER_SAW);
  static final TrialOperation JOINT = at(Verb.JOINT_EDGE, MachineKind.JOINTER, PUSH_BLOCK);
  private static final TrialOperation RIP_BARE = at(Verb.RIP, MachineKind.TABLE_SAW);
  private static final TrialOperation RIP_BLOCK = at(Verb.RIP, MachineKind.TABLE_SAW, PUSH_BLOCK);
  private static final TrialOperation SAW = at(Verb.CROSSCUT, MachineKind.TABLE_SAW, MITER_GAUGE);
  private static final TrialOperation GROOVE =
      at(Verb.CUT, MachineKind.DADO_SET, FEATHERBOARD, PUSH_BLOCK)
          .fed(Feed.ALONG)
          .where("set.fence", INCH);
  private static final TrialOperation SAW_GROOVE =
      at(Verb.CUT, MachineKind.TABLE_SAW, FEATHERBOARD, PUSH_BLOCK)
          .fed(Feed.ALONG)
          .where("set.fence", INCH);
  private static final TrialOperation RABBET =
      at(Verb.CUT, MachineKind.DADO_SET, MITER_GAUGE, CLAMPS).fed(Feed.ACROSS);
  private static final TrialOperation SAW_RABBET =
      at(Verb.CUT, MachineKind.TABLE_SAW, MITER_GAUGE, CLAMPS).fed(Feed.ACROSS);
  private static final TrialOperation FACE = at(Verb.JOINT_FACE, MachineKind.JOINTER, PUSH_BLOCK);
  private static final TrialOperation PLANE = at(Verb.PLANE_TO_THICKNESS, MachineKind.PLANER);
  private static final TrialOperation TILTED =
      at(Verb.CUT, MachineKind.TABLE_SAW, PUSH_STICK)
          .fed(Feed.ALONG)
          .through()
          .where("set.tilt", 1)
          .where("fence", 10 * INCH);
  private static final TrialOperation TAPER =
      at(Verb.CUT, MachineKind.TABLE_SAW, JIG).fed(Feed.ALONG).through().where("set.angle", 1);

  private SawRows() {}

  private static TrialOperation at(Verb verb, MachineKind tool, Control... with) {
    return TrialOperation.of(verb, tool, with);
  }

  static Stream<Row> cautions() {
    return Stream.of(miterSaw(), ripping(), crosscutting(), dadoSet(), jointer(), planer())
        .flatMap(rows -> rows);
  }

  static Stream<Row> refusals() {
    return Stream.of(
            atMiterSaw(),
            alongTheFence(),
            slantedAtTheFence(),
            atTheGauge(),
            overTheCutter(),
            atJointer(),
            atPlaner())
        .flatMap(rows -> rows);
  }

  // ---- cautions

  private static Stream<Row> miterSaw() {
    TrialOperation clamped = MITER.with(CLAMPS);
    return Stream.of(
        row("miter_saw_held", MITER, clamped),
        row("miter_saw_held", MITER.with(BACKER), MITER.with(JIG)),
        row("miter_saw_clamped", clamped, MITER),
        under("short_at_miter_saw", clamped, "held", 4 * INCH),
        row("stop_block", MITER.stopped(), MITER),
        row("stop_block", clamped.stopped(), SAW.stopped()),
        under("short_offcut", MITER, "freed", 2 * INCH),
        row("short_offcut", MITER.where("freed", 1), MITER.where("freed", 0)),
        row("swung_saw", MITER.where("set.angle", 1), MITER),
        row("swung_saw", MITER.where("set.tilt", 1), TILTED),
        upTo("thin_at_miter_saw", MITER.with(BACKER), "thickness", 16),
        under("narrow_at_miter_saw", MITER.with(BACKER), "width", INCH),
        row(
            "long_at_miter_saw",
            MITER.where("held", 24 * INCH + 1),
            MITER.where("held", 24 * INCH)),
        row(
            "long_at_miter_saw",
            clamped.where("held", INCH).where("freed", 24 * INCH + 1),
            clamped.where("held", INCH).where("freed", 24 * INCH)),
        row("long_at_miter_saw", at(Verb.ROUGH_CUT, MachineKind.MITER_SAW).withoutCut(), SAW),
        row("seated_at_miter_saw", MITER, SAW),
        row("miter_saw_guard", MITER, SAW));
  }

  private static Stream<Row> ripping() {
    return Stream.of(
        row("rip_kickback", RIP, SAW),
        row("rip_kickback", RIP, TILTED),
        row(
            "rip_kickback",
            at(Verb.CUT_TO_FIT, MachineKind.TABLE_SAW).fed(Feed.ALONG).through(),
            TAPER),
        under("short_rip", RIP, "length", 12 * INCH),
        under("short_rip", TILTED, "length", 12 * INCH),
        upTo("rip_hands", RIP, "fence", 9 * INCH - 1),
        row("rip_hands", RIP.where("fence", 6 * INCH + 1), RIP.where("fence", 6 * INCH)),
        upTo("narrow_rip", RIP_BLOCK, "fence", 6 * INCH),
        upTo("thin_under_fence", RIP, "thickness", 16),
        row("thin_under_fence", RIP.where("thickness", 16), TILTED.where("thickness", 16)),
        under("falling_strip", RIP, "freed", 32),
        row("falling_strip", RIP.where("freed", 1), RIP),
        row("tilted_blade", TILTED, TAPER),
        row("taper_at_fence", TAPER, TILTED),
        row("taper_at_fence", TAPER, TAPER.fed(Feed.ACROSS)),
        row("thick_at_table_saw", RIP.where("depth", 97), RIP.where("depth", 96)),
        row("thick_at_table_saw", SAW_GROOVE.where("depth", 97), SAW_GROOVE.where("depth", 96)),
        row("table_saw_guard", RIP, SAW_GROOVE),
        row("blade_height", SAW, SAW_GROOVE),
        row(
            "long_at_table_saw",
            RIP.where("length", 24 * INCH + 1),
            RIP.where("length", 24 * INCH)),
        row("long_at_table_saw", at(Verb.ROUGH_CUT, MachineKind.TABLE_SAW), MITER),
        row(
            "long_at_table_saw",
            GROOVE.where("length", 24 * INCH + 1),
            GROOVE.where("length", 24 * INCH)),
        row("fed_at_table_saw", GROOVE, GROOVE.withoutCut()),
        row("fed_at_table_saw", RIP, RIP.withoutCut()));
  }

  private static Stream<Row> crosscutting() {
    return Stream.of(
        row("table_saw_across", SAW, RIP),
        row("table_saw_across", SAW, SAW_RABBET),
        under("table_saw_held", SAW.with(MITER_GAUGE, CLAMPS), "held", 9 * INCH),
        under("short_at_gauge", SAW, "length", 12 * INCH),
        row(
            "short_at_gauge",
            SAW.where("length", 20 * INCH).where("width", 20 * INCH + 1),
            SAW.where("length", 20 * INCH).where("width", 20 * INCH)),
        row("fence_as_stop", SAW.stopped(), SAW),
        row("fence_as_stop", SAW.stopped(), SAW_RABBET.stopped()));
  }

  private static Stream<Row> dadoSet() {
    return Stream.of(
        row("hidden_cutter", GROOVE, RABBET),
        row("hidden_cutter", SAW_GROOVE, RIP),
        row("dado_across", RABBET, GROOVE),
        row("dado_across", SAW_RABBET, SAW),
        under("short_over_cutter", GROOVE, "length", 12 * INCH),
        under("short_over_cutter", RABBET, "length", 9 * INCH),
        under("short_over_cutter", SAW_GROOVE, "length", 12 * INCH),
        row("cutter_at_fence", SAW_GROOVE.where("set.fence", 0), SAW_GROOVE.where("set.fence", 1)),
        row("dado_parts", GROOVE.through(), GROOVE),
        row("cutter_at_fence", GROOVE.where("set.fence", 0), GROOVE.where("set.fence", 1)),
        row("cutter_at_fence", GROOVE.where("set.fence", 0), RABBET),
        row("wide_stack", GROOVE.where("set.cutter", 59), GROOVE.where("set.cutter", 58)),
        row("deep_pass", GROOVE.where("depth", 25), GROOVE.where("depth", 24)),
        row("dado_kickback", GROOVE, SAW_GROOVE));
  }

  private static Stream<Row> jointer() {
    return Stream.of(
        row("joint_edge_hands", JOINT, FACE),
        row("joint_face_hands", FACE, JOINT),
        under("short_at_jointer", JOINT, "length", 14 * INCH),
        under("short_at_jointer", FACE, "thickness", 32),
        under("short_at_jointer", JOINT, "width", 48),
        row("end_grain_jointed", JOINT.working("left"), JOINT.working("top")),
        row("deep_pass", JOINT.where("depth", 3), JOINT.where("depth", 2)),
        row("jointer_kickback", JOINT, PLANE),
        row("jointer_guard", FACE, PLANE),
        row("long_at_jointer", JOINT, PLANE),
        row("jointer_feed", JOINT, PLANE));
  }

  private static Stream<Row> planer() {
    return Stream.of(
        row("planer_feed", PLANE, JOINT),
        row("planer_hands", PLANE, JOINT),
        under("short_at_planer", PLANE, "length", 14 * INCH),
        under("short_at_planer", PLANE.where("thickness", 8), "width", 48),
        row(
            "short_at_planer",
            PLANE.where("width", 2 * INCH).where("thickness", 2 * INCH + 1),
            PLANE.where("width", 2 * INCH).where("thickness", 2 * INCH)),
        under("thin_at_planer", PLANE, "made", 16),
        row("deep_pass", PLANE.where("depth", 3), PLANE.where("depth", 2)),
        row("wood_for_planer", PLANE, JOINT),
        row("planer_guard", PLANE, JOINT),
        row("tipping_at_planer", PLANE, JOINT),
        row("one_board_at_planer", PLANE, JOINT));
  }

  // ---- refusals

  private static Stream<Row> atMiterSaw() {
    return Stream.of(
        under("held-too-short", MITER, "held", 12 * INCH),
        row(
            "held-too-short",
            MITER.where("held", 12 * INCH - 1),
            MITER.with(CLAMPS).where("held", 12 * INCH - 1)),
        under("held-too-short", MITER.with(CLAMPS), "held", 4 * INCH),
        under("held-too-short", MITER.with(JIG), "held", 4 * INCH),
        row("clamps-missing", MITER.where("set.angle", 1), MITER),
        row("clamps-missing", MITER.where("set.tilt", 1), MITER.with(CLAMPS).where("set.tilt", 1)),
        upTo("backer-missing", MITER, "thickness", 16),
        row(
            "backer-missing",
            MITER.where("thickness", 16),
            MITER.with(BACKER).where("thickness", 16)),
        under("backer-missing", MITER, "width", INCH));
  }

  private static Stream<Row> alongTheFence() {
    return Stream.of(
        under("piece-too-short", RIP, "length", 12 * INCH),
        row(
            "rip-wider-than-long",
            RIP.where("length", 20 * INCH).where("width", 20 * INCH + 1),
            RIP.where("length", 20 * INCH).where("width", 20 * INCH)),
        row("fence-and-gauge", RIP.with(PUSH_STICK, MITER_GAUGE), RIP),
        upTo("push-stick-missing", RIP_BARE, "fence", 9 * INCH - 1),
        row("push-block-missing", RIP.where("fence", 6 * INCH), RIP_BLOCK.where("fence", 6 * INCH)),
        row(
            "push-stick-missing",
            RIP_BARE.where("fence", 6 * INCH + 1),
            RIP_BLOCK.where("fence", 6 * INCH + 1)),
        upTo("push-block-missing", RIP, "fence", 6 * INCH),
        under("rip-too-narrow", RIP_BLOCK, "fence", 2 * INCH),
        row("cut-too-deep", RIP.where("depth", 97), RIP.where("depth", 96)),
        row("cut-too-deep", SAW_GROOVE.where("depth", 97), SAW_GROOVE.where("depth", 96)));
  }

  private static Stream<Row> slantedAtTheFence() {
    return Stream.of(
        under("piece-too-short", TILTED, "length", 12 * INCH),
        row(
            "rip-wider-than-long",
            TILTED.where("length", 20 * INCH).where("width", 20 * INCH + 1),
            TILTED.where("length", 20 * INCH).where("width", 20 * INCH)),
        upTo("push-stick-missing", TILTED.with(), "fence", 9 * INCH - 1),
        row(
            "push-block-missing",
            TILTED.with(PUSH_STICK).where("fence", 6 * INCH),
            TILTED.with(PUSH_BLOCK).where("fence", 6 * INCH)),
        under("rip-too-narrow", TILTED, "fence", 2 * INCH),
        row("jig-missing", TAPER.with(), TAPER),
        under("piece-too-short", TAPER, "length", 12 * INCH));
  }

  private static Stream<Row> atTheGauge() {
    TrialOperation wide = SAW.where("length", 20 * INCH).where("width", 20 * INCH + 1);
    return Stream.of(
        row("gauge-missing", SAW.with(), SAW),
        under("held-too-short", SAW, "held", 9 * INCH),
        row(
            "held-too-short",
            SAW.where("held", 64),
            SAW.with(MITER_GAUGE, CLAMPS).where("held", 64)),
        under("piece-too-short", SAW, "length", 12 * INCH),
        row("piece-too-short", SAW.where("length", 64), SAW.with(JIG).where("length", 64)),
        row("piece-too-short", wide, wide.where("width", 20 * INCH)),
        row("fence-and-gauge", SAW.stopped(), SAW.with(MITER_GAUGE, STAND_OFF_BLOCK).stopped()),
        row("fence-and-gauge", SAW.stopped(), SAW.with(MITER_GAUGE, SLED_STOP).stopped()));
  }

  private static Stream<Row> overTheCutter() {
    TrialOperation beside = GROOVE.where("set.fence", 0);
    return Stream.of(
        row("through-cut-with-dado-set", GROOVE.through(), GROOVE),
        row("push-block-missing", GROOVE.with(FEATHERBOARD), GROOVE),
        row("push-block-missing", SAW_GROOVE.with(FEATHERBOARD), SAW_GROOVE),
        row("featherboard-missing", GROOVE.with(PUSH_BLOCK), GROOVE),
        row("featherboard-missing", GROOVE.with(PUSH_BLOCK), GROOVE.with(JIG)),
        under("piece-too-short", GROOVE, "length", 12 * INCH),
        under("piece-too-short", RABBET, "length", 9 * INCH),
        row("gauge-missing", RABBET.with(CLAMPS), RABBET),
        row("gauge-missing", SAW_RABBET.with(CLAMPS), SAW_RABBET),
        row("clamps-missing", RABBET.with(MITER_GAUGE), RABBET),
        row("clamps-missing", RABBET.with(MITER_GAUGE), RABBET.with(MITER_GAUGE, JIG)),
        row(
            "sacrificial-fence-missing",
            beside,
            beside.with(FEATHERBOARD, PUSH_BLOCK, SACRIFICIAL_FENCE)),
        row("cutter-too-wide", GROOVE.where("set.cutter", 59), GROOVE.where("set.cutter", 58)),
        row("cut-too-deep", GROOVE.where("depth", 25), GROOVE.where("depth", 24)));
  }

  private static Stream<Row> atJointer() {
    return Stream.of(
        under("piece-too-short", JOINT, "length", 14 * INCH),
        under("jointed-too-thin", JOINT, "thickness", 32),
        under("jointed-too-narrow", JOINT, "width", 48),
        upTo("push-block-missing", JOINT.with(), "width", 6 * INCH),
        row(
            "push-block-missing",
            FACE.with().where("width", 7 * INCH),
            JOINT.with().where("width", 7 * INCH)),
        row("push-block-missing", FACE.with(), FACE),
        row("end-grain-jointed", JOINT.working("right"), JOINT.working("bottom")),
        row("cut-too-deep", JOINT.where("depth", 3), JOINT.where("depth", 2)));
  }

  private static Stream<Row> atPlaner() {
    TrialOperation narrow = PLANE.where("width", 47);
    return Stream.of(
        under("planed-too-short", PLANE, "length", 14 * INCH),
        row(
            "planed-too-short",
            PLANE.where("length", 20 * INCH).where("width", 20 * INCH + 1),
            PLANE.where("length", 20 * INCH).where("width", 20 * INCH)),
        under("planed-too-narrow", PLANE.where("thickness", 8), "width", 48),
        row(
            "planed-too-narrow",
            PLANE.where("width", 2 * INCH).where("thickness", 2 * INCH + 1),
            PLANE.where("width", 2 * INCH).where("thickness", 2 * INCH)),
        row("planed-too-narrow", narrow, narrow.with(JIG)),
        under("planed-too-thin", PLANE, "made", 16),
        row("planed-too-thin", PLANE.where("made", 8), PLANE.with(JIG).where("made", 8)),
        row("cut-too-deep", PLANE.where("depth", 3), PLANE.where("depth", 2)));
  }
}
