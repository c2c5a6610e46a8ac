package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static packetwright.definition.procedure.Operation.Control.BACKER;
import static packetwright.definition.procedure.Operation.Control.CLAMPS;
import static packetwright.definition.procedure.Operation.Control.FEATHERBOARD;
import static packetwright.definition.procedure.Operation.Control.JIG;
import static packetwright.definition.procedure.Operation.Control.MITER_GAUGE;
import static packetwright.definition.procedure.Operation.Control.PUSH_BLOCK;
import static packetwright.definition.procedure.Operation.Control.PUSH_STICK;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.source.Finding;
import packetwright.text.words.Words;
import packetwright.wood.caution.Caution.Signal;
import packetwright.wood.operation.OperationRun.Feed;

class CautionRulesTest {
  private static final CautionRules RULES = CautionRules.builtIn();
  private static final Words WORDS = Words.of("en");
  private static final int INCH = 64;

  private static final TrialOperation RIP =
      TrialOperation.of(Verb.RIP, MachineKind.TABLE_SAW, PUSH_STICK);
  private static final TrialOperation RIP_BARE = TrialOperation.of(Verb.RIP, MachineKind.TABLE_SAW);
  private static final TrialOperation SAW =
      TrialOperation.of(Verb.CROSSCUT, MachineKind.TABLE_SAW, MITER_GAUGE);
  private static final TrialOperation GROOVE =
      TrialOperation.of(Verb.CUT, MachineKind.DADO_SET, FEATHERBOARD, PUSH_BLOCK).fed(Feed.ALONG);
  private static final TrialOperation RABBET =
      TrialOperation.of(Verb.CUT, MachineKind.DADO_SET, MITER_GAUGE, CLAMPS).fed(Feed.ACROSS);
  private static final TrialOperation MITER =
      TrialOperation.of(Verb.CROSSCUT, MachineKind.MITER_SAW);
  private static final TrialOperation JOINT =
      TrialOperation.of(Verb.JOINT_EDGE, MachineKind.JOINTER, PUSH_BLOCK);
  private static final TrialOperation PLANE =
      TrialOperation.of(Verb.PLANE_TO_THICKNESS, MachineKind.PLANER);
  private static final TrialOperation TILTED =
      TrialOperation.of(Verb.CUT, MachineKind.TABLE_SAW, PUSH_STICK)
          .fed(Feed.ALONG)
          .through()
          .where("set.tilt", 1)
          .where("fence", 3 * INCH);
  private static final TrialOperation TAPER =
      TrialOperation.of(Verb.CUT, MachineKind.TABLE_SAW, JIG)
          .fed(Feed.ALONG)
          .through()
          .where("set.angle", 1);

  /**
   * A rule at its limit.
   *
   * @param what rule or refusal
   * @param inside where it just applies
   * @param outside where it just does not
   */
  record Row(String what, TrialOperation inside, TrialOperation outside) {
    @Override
    public String toString() {
      return what;
    }
  }

  static Row row(String what, TrialOperation inside, TrialOperation outside) {
    return new Row(what, inside, outside);
  }

  /** The same operation just under a limit and at it. */
  static Row under(String what, TrialOperation operation, String amount, int limit) {
    return row(what, operation.where(amount, limit - 1), operation.where(amount, limit));
  }

  /** The same operation at a limit and just over it. */
  static Row upTo(String what, TrialOperation operation, String amount, int limit) {
    return row(what, operation.where(amount, limit), operation.where(amount, limit + 1));
  }

  private static TrialOperation at(Verb verb, MachineKind tool) {
    return TrialOperation.of(verb, tool);
  }

  static Stream<Row> cautions() {
    return Stream.of(
        row("rip_kickback", RIP, SAW),
        upTo("rip_hands", RIP, "fence", 6 * INCH),
        upTo("thin_under_fence", RIP, "thickness", 16),
        row("table_saw_across", SAW, RIP),
        row("hidden_cutter", GROOVE, RABBET),
        row("hidden_cutter", RABBET.through(), RABBET),
        row("dado_across", RABBET, GROOVE),
        row("deep_pass", GROOVE.where("depth", 25), GROOVE.where("depth", 24)),
        row("miter_saw_held", MITER, MITER.with(CLAMPS)),
        row("miter_saw_held", MITER.with(BACKER), SAW),
        row("miter_saw_clamped", MITER.with(CLAMPS), MITER),
        row("stop_block", MITER.stopped(), MITER),
        row("stop_block", MITER.stopped(), MITER.with(CLAMPS).stopped()),
        upTo("thin_at_miter_saw", MITER.with(BACKER), "thickness", 16),
        row("jointer_hands", JOINT, PLANE),
        row("planer_feed", PLANE, JOINT),
        row("tilted_blade", TILTED, TAPER),
        row("taper_at_fence", TAPER, TILTED),
        row("taper_at_fence", TAPER, TAPER.fed(Feed.ACROSS)),
        row("swung_saw", MITER.where("set.angle", 1), MITER),
        row("swung_saw", MITER.where("set.tilt", 1), TILTED));
  }

  static Stream<Row> refusals() {
    return Stream.of(
        under("piece-too-short", RIP, "length", 12 * INCH),
        row(
            "rip-wider-than-long",
            RIP.where("length", 20 * INCH).where("width", 20 * INCH + 1),
            RIP.where("length", 20 * INCH).where("width", 20 * INCH)),
        upTo("push-stick-missing", RIP_BARE, "fence", 6 * INCH),
        row("push-stick-missing", RIP_BARE.where("fence", 64 * 6), RIP.where("fence", 64 * 6)),
        under("rip-too-narrow", RIP, "fence", 2 * INCH),
        row("gauge-missing", SAW.with(), SAW),
        under("held-too-short", SAW, "held", 9 * INCH),
        row(
            "held-too-short",
            SAW.where("held", 64),
            SAW.with(MITER_GAUGE, CLAMPS).where("held", 64)),
        row("through-cut-with-dado-set", GROOVE.through(), GROOVE),
        row("push-block-missing", GROOVE.with(FEATHERBOARD), GROOVE),
        row("featherboard-missing", GROOVE.with(PUSH_BLOCK), GROOVE),
        row("featherboard-missing", GROOVE.with(PUSH_BLOCK), GROOVE.with(JIG)),
        under("piece-too-short", GROOVE, "length", 12 * INCH),
        row("gauge-missing", RABBET.with(CLAMPS), RABBET),
        row("clamps-missing", RABBET.with(MITER_GAUGE), RABBET),
        row("clamps-missing", RABBET.with(MITER_GAUGE), RABBET.with(MITER_GAUGE, JIG)),
        under("piece-too-short", RABBET, "length", 9 * INCH),
        row("cut-too-deep", GROOVE.where("depth", 25), GROOVE.where("depth", 24)),
        row("cut-too-deep", JOINT.where("depth", 3), JOINT.where("depth", 2)),
        row("cut-too-deep", PLANE.where("depth", 3), PLANE.where("depth", 2)),
        under("held-too-short", MITER, "held", 9 * INCH),
        row(
            "held-too-short",
            MITER.where("held", 9 * INCH - 1),
            MITER.with(CLAMPS).where("held", 9 * INCH - 1)),
        under("held-too-short", MITER.with(CLAMPS), "held", 4 * INCH),
        under("held-too-short", MITER.with(JIG), "held", 4 * INCH),
        upTo("backer-missing", MITER, "thickness", 16),
        row(
            "backer-missing",
            MITER.where("thickness", 16),
            MITER.with(BACKER).where("thickness", 16)),
        under("piece-too-short", JOINT, "length", 12 * INCH),
        under("jointed-too-thin", JOINT, "thickness", 32),
        under("jointed-too-narrow", JOINT, "width", 48),
        upTo("push-block-missing", JOINT.with(), "width", 6 * INCH),
        row(
            "push-block-missing",
            at(Verb.JOINT_FACE, MachineKind.JOINTER).where("width", 7 * INCH),
            JOINT.with().where("width", 7 * INCH)),
        under("planed-too-short", PLANE, "length", 14 * INCH),
        under("planed-too-thin", PLANE, "made", 16),
        under("piece-too-short", TILTED, "length", 12 * INCH),
        row("push-stick-missing", TILTED.with(), TILTED),
        under("rip-too-narrow", TILTED, "fence", 2 * INCH),
        row("jig-missing", TAPER.with(), TAPER),
        under("piece-too-short", TAPER, "length", 12 * INCH));
  }

  private static Verdict apply(Shop shop, TrialOperation... operations) {
    return RULES.apply(TrialOperation.run(shop, operations), shop, WORDS);
  }

  private static List<String> fired(TrialOperation operation) {
    return apply(TrialOperation.shop(), operation).cautions().stream().map(Caution::rule).toList();
  }

  private static List<String> refused(TrialOperation operation) {
    return codes(apply(TrialOperation.shop(), operation));
  }

  private static List<String> codes(Verdict verdict) {
    return verdict.refused().stream().map(r -> r.finding().code()).toList();
  }

  /** Those of every machine. */
  static Stream<Row> allCautions() {
    return Stream.concat(cautions(), ToolRows.cautions());
  }

  /** Those of every machine. */
  static Stream<Row> allRefusals() {
    return Stream.concat(refusals(), ToolRows.refusals());
  }

  @ParameterizedTest
  @MethodSource("allCautions")
  void warnsJustInsideItsLimitAndNotOutside(Row row) {
    assertThat(fired(row.inside())).contains(row.what());
    assertThat(fired(row.outside())).doesNotContain(row.what());
  }

  @ParameterizedTest
  @MethodSource("allRefusals")
  void refusesJustInsideItsLimitAndNotOutside(Row row) {
    assertThat(refused(row.inside())).contains(row.what());
    assertThat(refused(row.outside())).doesNotContain(row.what());
    assertThat(apply(TrialOperation.shop(), row.inside()).cautions()).anyMatch(Caution::refuses);
  }

  @Test
  void everyRuleAndEveryRefusalHasARow() {
    assertThat(allCautions().map(Row::what)).containsAll(RULES.names());
    TreeSet<String> seen = new TreeSet<>();
    for (Row row : allRefusals().toList()) {
      for (Caution caution : apply(TrialOperation.shop(), row.inside()).cautions()) {
        if (caution.refuses()) {
          seen.add(caution.rule() + " " + row.what());
        }
      }
    }
    RuleFile.read()
        .rules()
        .forEach(
            hazard ->
                hazard
                    .refusals()
                    .forEach(r -> assertThat(seen).contains(hazard.name() + " " + r.code())));
  }

  @Test
  void aShopsOwnLimitReplacesOurs() {
    Shop strict = TrialOperation.shop(Map.of("jointer.shortest", Rational.of(20)));
    assertThat(codes(apply(strict, JOINT.where("length", 19 * INCH))))
        .containsExactly("piece-too-short");
    assertThat(refused(JOINT.where("length", 19 * INCH))).isEmpty();
  }

  @Test
  void tellsWhereAShopAllowsMoreThanWeDo() {
    Shop shop =
        TrialOperation.shop(
            Map.of(
                "jointer.shortest", Rational.of(10),
                "planer.shortest", Rational.of(14),
                "jointer.depth_per_pass", Rational.of(1, 16),
                "table_saw.hand_distance", Rational.of(8)));
    assertThat(RULES.looserLimits(shop))
        .extracting(l -> l.machine() + "." + l.name())
        .containsExactly("jointer.shortest", "jointer.depth_per_pass");
    assertThat(RULES.looserLimits(shop).get(0).own()).isEqualTo(Length.ofInches(12));
    assertThat(RULES.looserLimits(TrialOperation.shop())).isEmpty();
  }

  @Test
  void aRefusalStatesSizeAndLimitAndNamesAnEarlierStep() {
    Finding finding =
        apply(
                TrialOperation.shop(),
                TrialOperation.of(Verb.LAY_OUT, MachineKind.MARKING_KNIFE)
                    .inStep(3)
                    .where("length", 30 * INCH),
                JOINT.inStep(9).on("front_end").where("length", 288))
            .refused()
            .get(0)
            .finding();
    assertThat(finding.message())
        .isEqualTo("the front end is 4 1/2 in long here; the jointer takes no piece under 12 in");
    assertThat(finding.hint())
        .isEqualTo(
            "move this operation to step 3, where the piece is 30 in long, or plane it with `at`"
                + " set to block_plane");
    assertThat(finding.step()).isEqualTo("9, Step 9");
    assertThat(finding.at().line()).isEqualTo(90);
  }

  @Test
  void withoutAnEarlierStepTheHintStandsAlone() {
    assertThat(
            apply(TrialOperation.shop(), JOINT.where("length", 288))
                .refused()
                .get(0)
                .finding()
                .hint())
        .isEqualTo("plane it with `at` set to block_plane");
  }

  @Test
  void printsARuleOnceInAStepAndTheMachineRuleOnceInAProcedure() {
    List<Caution> cautions = apply(TrialOperation.shop(), JOINT, JOINT, JOINT.inStep(2)).cautions();
    assertThat(cautions)
        .extracting(c -> c.step() + " " + c.rule())
        .filteredOn(c -> c.endsWith("loose_clothing") || c.endsWith("jointer_hands"))
        .containsExactly("1 loose_clothing", "1 jointer_hands", "2 jointer_hands");
  }

  @Test
  void tellsTheMachineRuleToTheStudentThoughTheInstructorSawItBefore() {
    List<Caution> cautions =
        apply(TrialOperation.shop(), JOINT.byInstructor(), JOINT.inStep(2), JOINT.inStep(3))
            .cautions();
    assertThat(cautions)
        .filteredOn(c -> c.rule().equals("loose_clothing"))
        .extracting(Caution::step)
        .containsExactly(1, 2);
  }

  @Test
  void sortsByStepAndThenBySeverity() {
    TrialOperation sand = at(Verb.SAND, MachineKind.DISC_SANDER).inStep(2);
    TrialOperation finish = at(Verb.FINISH, MachineKind.BRUSH).inStep(2);
    List<Caution> cautions = apply(TrialOperation.shop(), sand, finish, MITER.inStep(1)).cautions();
    assertThat(cautions).extracting(Caution::step).isSorted();
    assertThat(cautions.stream().filter(c -> c.step() == 2).map(Caution::signal).toList())
        .isSorted()
        .contains(Signal.WARNING, Signal.CAUTION);
  }

  @Test
  void theReasonTellsTheAmounts() {
    assertThat(apply(TrialOperation.shop(), RIP.where("fence", 188)).cautions())
        .filteredOn(c -> c.rule().equals("rip_hands"))
        .extracting(Caution::why)
        .containsExactly("The fence is 2 15/16 in from the blade; within 6 in no hand goes there.");
  }

  @Test
  void theReasonAtTheMiterSawTellsWhatIsHeldAndNotTheWholeBoard() {
    assertThat(apply(TrialOperation.shop(), MITER.where("held", 10 * INCH)).cautions())
        .filteredOn(c -> c.rule().equals("miter_saw_held"))
        .extracting(Caution::why)
        .containsExactly("Held by hand: 10 in; the limit by hand is 9 in.");
  }

  @Test
  void twoCutsOfOneStepGiveOneStatementWithBothReasons() {
    TrialOperation cut = MITER.with(CLAMPS);
    assertThat(
            apply(
                    TrialOperation.shop(),
                    cut.where("held", 18 * INCH),
                    cut.where("held", 8 * INCH),
                    cut.where("held", 8 * INCH))
                .cautions())
        .filteredOn(c -> c.rule().equals("miter_saw_clamped"))
        .extracting(Caution::why)
        .containsExactly(
            "Held by a clamp: 18 in; the limit by hand is 9 in. Held by a clamp: 8 in; the limit by"
                + " hand is 9 in.");
  }

  @Test
  void aRoughCutWithoutPiecesBeforeItStillWarns() {
    assertThat(fired(at(Verb.ROUGH_CUT, MachineKind.MITER_SAW).withoutCut()))
        .contains("miter_saw_held", "power_off_first", "heavy_board");
    assertThat(refused(at(Verb.ROUGH_CUT, MachineKind.MITER_SAW).withoutCut())).isEmpty();
  }

  @Test
  void onlyRefusalsThatAnotherControlCanReplaceMayBeAccepted() {
    assertThat(RULES.isWaivable("held-too-short")).isTrue();
    assertThat(RULES.isWaivable("piece-too-short")).isTrue();
    assertThat(RULES.isWaivable("gauge-missing")).isFalse();
    assertThat(RULES.isWaivable("push-stick-missing")).isFalse();
    assertThat(RULES.isWaivable("no-such-code")).isFalse();
  }
}
