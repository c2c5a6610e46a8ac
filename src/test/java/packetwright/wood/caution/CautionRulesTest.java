package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static packetwright.definition.procedure.Operation.Control.CLAMPS;

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
import packetwright.definition.shop.ShopReader;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.source.Finding;
import packetwright.text.words.Words;
import packetwright.wood.caution.Caution.Signal;

class CautionRulesTest {
  private static final CautionRules RULES = CautionRules.builtIn();
  private static final Words WORDS = Words.of("en");
  private static final int INCH = 64;

  private static final TrialOperation RIP = SawRows.RIP;
  private static final TrialOperation MITER = SawRows.MITER;
  private static final TrialOperation JOINT = SawRows.JOINT;

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
    return Stream.concat(SawRows.cautions(), ToolRows.cautions());
  }

  /** Those of every machine. */
  static Stream<Row> allRefusals() {
    return Stream.concat(SawRows.refusals(), ToolRows.refusals());
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
    assertThat(RULES.looserLimits(shop).get(0).own()).isEqualTo(Length.ofInches(14));
    assertThat(RULES.looserLimits(TrialOperation.shop())).isEmpty();
    assertThat(RULES.looserLimits(ShopReader.builtIn())).isEmpty();
  }

  @Test
  void aRefusalStatesSizeAndLimitAndItsStep() {
    Finding finding =
        apply(TrialOperation.shop(), JOINT.inStep(9).on("front_end").where("length", 288))
            .refused()
            .get(0)
            .finding();
    assertThat(finding.message())
        .isEqualTo("the front end is 4 1/2 in long here; the jointer takes no piece under 14 in");
    assertThat(finding.hint()).isEqualTo("plane it with `at` set to bench_plane");
    assertThat(finding.step()).isEqualTo("9, Step 9");
    assertThat(finding.at().line()).isEqualTo(90);
  }

  @Test
  void printsARuleOnceInAStepAndTheMachineRuleOnceInAProcedure() {
    List<Caution> cautions = apply(TrialOperation.shop(), JOINT, JOINT, JOINT.inStep(2)).cautions();
    assertThat(cautions)
        .extracting(c -> c.step() + " " + c.rule())
        .filteredOn(c -> c.endsWith("loose_clothing") || c.endsWith("joint_edge_hands"))
        .containsExactly("1 loose_clothing", "1 joint_edge_hands", "2 joint_edge_hands");
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
    assertThat(apply(TrialOperation.shop(), RIP.where("fence", 4 * INCH)).cautions())
        .filteredOn(c -> c.rule().equals("rip_hands"))
        .extracting(Caution::why)
        .containsExactly(
            "The fence is 4 in from the blade: within 6 in a push stick is used. A hand at the fence"
                + " would be 0 in from it; the limit is 5 in.");
  }

  @Test
  void theReasonAtTheMiterSawTellsWhatIsHeldAndNotTheWholeBoard() {
    assertThat(apply(TrialOperation.shop(), MITER.where("held", 10 * INCH)).cautions())
        .filteredOn(c -> c.rule().equals("miter_saw_held"))
        .extracting(Caution::why)
        .containsExactly(
            "Held by hand: 10 in; the limit by hand is 12 in, and hands stay 6 in from the blade.");
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
            "Held by a clamp or a jig: 18 in; the limit by hand is 12 in. Held by a clamp or a jig: 8"
                + " in; the limit by hand is 12 in.");
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
