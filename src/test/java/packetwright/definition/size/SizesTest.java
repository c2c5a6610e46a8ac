package packetwright.definition.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import packetwright.text.formula.Derivation;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

class SizesTest {
  /** The sample's corner: a rabbet half through, a tongue, and the end between two of them. */
  private static TestProject corner() {
    return TestProject.inInches()
        .given("box_width", "5", "4-1/2", "7", null)
        .given("stock_thickness", "1/2", "3/8", "5/8", "1/64")
        .size("end_length", "box_width - 2 * tongue")
        .size("tongue", "stock_thickness - rabbet_depth", null, true)
        .size("rabbet_depth", "stock_thickness / 2", "1/64", false)
        .part("back_end", "end_length", "2 * box_width", "stock_thickness", "rabbet_depth");
  }

  private static Located<String> formula(String text) {
    return new Located<>(text, new Span("procedure.md", 7, 3, text.length()));
  }

  private static Finding only(TestProject project) {
    Checked<Sizes> sizes = project.evaluate();
    assertThat(sizes.hasValue()).isFalse();
    assertThat(sizes.findings()).hasSize(1);
    return sizes.findings().get(0);
  }

  @Test
  void reckonsInOrderOfNeedAndKeepsTheOrderOfTheFile() {
    Sizes sizes = corner().good();
    assertThat(sizes.length("end_length")).isEqualTo(Length.ofInches(9, 2));
    assertThat(sizes.all())
        .extracting(Size::name)
        .containsExactly(
            "box_width",
            "stock_thickness",
            "end_length",
            "tongue",
            "rabbet_depth",
            "back_end.length",
            "back_end.width",
            "back_end.thickness",
            "back_end.count",
            "back_end.lid_groove.depth",
            "back_end.lid_groove.width",
            "table_saw.kerf",
            "table_saw.rip_shortest",
            "shop.end_trim",
            "shop.crosscut_kerf",
            "shop.gauge_shortest",
            "shop.held_shortest",
            "shop.mill_shortest",
            "shop.rip_shortest");
  }

  @Test
  void namesPartsFeaturesMachinesAndAllowances() {
    Sizes sizes =
        corner()
            .size(
                "sum",
                "back_end.length * back_end.count + back_end.lid_groove.depth"
                    + " + table_saw.kerf + shop.end_trim")
            .good();
    assertThat(sizes.length("sum")).isEqualTo(Length.ofInches(83, 8));
    assertThat(sizes.get("back_end.count").value()).isEqualTo(Quantity.number(Rational.of(2)));
  }

  @Test
  void worstCaseCountsEachToleranceOnce() {
    Size end = corner().good().get("end_length");
    assertThat(end.low()).isEqualTo(Quantity.of(Length.ofInches(4 * 64 + 29, 64)));
    assertThat(end.high()).isEqualTo(Quantity.of(Length.ofInches(4 * 64 + 35, 64)));
    assertThat(corner().good().get("back_end.length").low()).isEqualTo(end.low());
  }

  @Test
  void aSizesOwnToleranceIsInItsWorstCase() {
    Size depth = corner().good().get("rabbet_depth");
    assertThat(depth.low()).isEqualTo(Quantity.of(Length.ofInches(16 * 2 - 3, 128)));
    assertThat(depth.high()).isEqualTo(Quantity.of(Length.ofInches(16 * 2 + 3, 128)));
  }

  @Test
  void whatCancelsDoesNotStray() {
    Size none = corner().size("none", "tongue + rabbet_depth - stock_thickness").good().get("none");
    assertThat(none.low()).isEqualTo(none.high()).isEqualTo(Quantity.of(Length.ZERO));
  }

  private static Quantity inches(long numerator, long denominator) {
    return Quantity.of(Length.ofInches(numerator, denominator));
  }

  /** Each peaks, or jumps, between the corners, which all agree or miss it. */
  @Test
  void theWorstCaseHoldsWhatLiesBetweenTheCorners() {
    Sizes sizes =
        TestProject.inInches()
            .given("t", "1 1/16", "1", "2", "1/8")
            .size("hill", "(t - 1) * (1 1/8 - t) / 1 in")
            .size("ridge", "min(t, 2 in + 1/8 - t)")
            .size("step", "if(t = 1, 3 in, 1 in)")
            .size("late", "ridge * 2")
            .good();
    // At t = 1 1/16 each factor is 1/16; at the corners they are -1/16 and 3/16.
    assertThat(sizes.get("hill").high().value()).isGreaterThanOrEqualTo(Rational.of(1, 256));
    assertThat(sizes.get("hill").low().value()).isLessThanOrEqualTo(Rational.of(-3, 256));
    assertThat(sizes.get("ridge").high().value()).isGreaterThanOrEqualTo(Rational.of(17, 16));
    assertThat(sizes.get("ridge").low().value()).isLessThanOrEqualTo(Rational.of(15, 16));
    assertThat(sizes.get("step").high()).isEqualTo(inches(3, 1));
    assertThat(sizes.get("step").low()).isEqualTo(inches(1, 1));
    assertThat(sizes.get("late").high().value()).isGreaterThanOrEqualTo(Rational.of(17, 8));
  }

  @Test
  void aDivisorThatChangesItsSignIsAFinding() {
    Finding finding =
        only(
            TestProject.inInches()
                .given("play", "1/16", "0", "1/8", "1/16")
                .size("share", "1 in * 1 in / (play - 1/32 in)"));
    assertThat(finding.code()).isEqualTo("division-by-zero");
    assertThat(finding.message())
        .isEqualTo("`(play - 1/32 in)` may come to zero, at the worst case of the tolerances");
    assertThat(finding.hint()).contains("make the tolerances smaller");
  }

  @Test
  void manyTolerancesOfASumAddUp() {
    TestProject project = TestProject.inInches();
    StringBuilder sum = new StringBuilder("0");
    for (int i = 0; i < 40; i++) {
      project.given("g" + i, "1", null, null, "1/64");
      sum.append(" + g").append(i);
    }
    Size size = project.size("sum", sum.toString()).good().get("sum");
    assertThat(size.low()).isEqualTo(Quantity.of(Length.ofInches(40 * 63, 64)));
    assertThat(size.high()).isEqualTo(Quantity.of(Length.ofInches(40 * 65, 64)));
  }

  @Test
  void aPartThatDependsOnAMeasuredSizeIsFitted() {
    Sizes sizes = corner().good();
    assertThat(sizes.get("tongue").fitted()).containsExactly("tongue");
    assertThat(sizes.get("back_end.length").fitted()).containsExactly("tongue");
    assertThat(sizes.get("back_end.width").fitted()).isEmpty();
    assertThat(sizes.get("rabbet_depth").fitted()).isEmpty();
  }

  @Test
  void keepsFormulaAndNumbers() {
    Size end = corner().good().get("end_length");
    assertThat(end.from()).isEqualTo(Set.of("box_width", "tongue"));
    assertThat(end.derivation().formula()).isEqualTo("box_width - 2 * tongue");
    assertThat(end.derivation().numbers())
        .contains(new Derivation.Term("", Quantity.of(Length.ofInches(5))));
    assertThat(corner().good().get("box_width").derivation().formula()).isEqualTo("5 in");
  }

  @Test
  void aSubstitutionMovesWhatDependsOnIt() {
    Sizes sizes = corner().set("box_width", "5-1/2").good();
    assertThat(sizes.length("box_width")).isEqualTo(Length.ofInches(11, 2));
    assertThat(sizes.length("end_length")).isEqualTo(Length.ofInches(5));
    assertThat(sizes.length("back_end.width")).isEqualTo(Length.ofInches(11));
  }

  @Test
  void evaluatesAFormulaOverThem() {
    Evaluated evaluated = corner().good().evaluate(formula("end_length - 1/16")).value();
    assertThat(evaluated.length()).isEqualTo(Length.ofInches(71, 16));
    assertThat(evaluated.low()).isEqualTo(Quantity.of(Length.ofInches(4 * 64 + 25, 64)));
    assertThat(evaluated.fitted()).containsExactly("tongue");
    assertThat(evaluated.from()).containsExactly("end_length");
  }

  @Test
  void tellsALengthFromWhatIsNone() {
    Sizes sizes = corner().good();
    assertThat(sizes.evaluateLength(formula("2 * tongue")).value().length())
        .isEqualTo(Length.ofInches(1, 2));
    Checked<Evaluated> count = sizes.evaluateLength(formula("back_end.count"));
    assertThat(count.hasValue()).isFalse();
    assertThat(count.findings()).extracting(Finding::code).containsExactly("not-a-length");
    assertThat(count.findings().get(0).message())
        .isEqualTo("`back_end.count` is a number, and a length is wanted");
  }

  @Test
  void aFormulaThatNamesNothingKnownHintsAtWhatIs() {
    Checked<Evaluated> evaluated = corner().good().evaluate(formula("end_lenght + 1"));
    assertThat(evaluated.findings()).hasSize(1);
    assertThat(evaluated.findings().get(0).code()).isEqualTo("unknown-name");
    assertThat(evaluated.findings().get(0).at()).isEqualTo(new Span("procedure.md", 7, 3, 10));
    assertThat(evaluated.findings().get(0).hint()).isEqualTo("write `end_length`");
  }

  @Test
  void evaluatesAFormulaForMeasuredSizes() {
    Quantity measured = Quantity.of(Length.ofInches(17, 64));
    Sizes sizes = corner().good();
    assertThat(sizes.evaluate(formula("back_end.length"), Map.of("tongue", measured)).value())
        .isEqualTo(Quantity.of(Length.ofInches(5 * 32 - 17, 32)));
    assertThat(sizes.evaluate(formula("rabbet_depth"), Map.of("tongue", measured)).value())
        .isEqualTo(Quantity.of(Length.ofInches(1, 4)));
    assertThat(sizes.length("back_end.length")).isEqualTo(Length.ofInches(9, 2));
  }

  @Test
  void takesInTheSizesOfBlanks() {
    Sizes sizes = corner().good();
    Size model = sizes.get("box_width");
    Size rough =
        new Size(
            "wall.rough_length",
            Size.Kind.BLANK,
            Quantity.of(Length.ofInches(36)),
            model.derivation(),
            "",
            null,
            Quantity.of(Length.ofInches(36)),
            Quantity.of(Length.ofInches(36)),
            false,
            Set.of(),
            Set.of());
    Sizes more = sizes.with(List.of(rough));
    assertThat(more.evaluate(formula("wall.rough_length / 2")).value().length())
        .isEqualTo(Length.ofInches(18));
    assertThat(sizes.find("wall.rough_length")).isNull();
  }

  @Test
  void aMissingNameAskedForByCodeIsABug() {
    assertThatThrownBy(() -> corner().good().get("nowhere")).hasMessageContaining("nowhere");
  }

  @Test
  void namesTheChainOfACycle() {
    Finding finding =
        only(
            corner()
                .size("a", "b + 1")
                .size("b", "2 * c")
                .size("c", "box_width - a")
                .size("hangs_on_it", "a + 1"));
    assertThat(finding.code()).isEqualTo("size-cycle");
    assertThat(finding.message()).endsWith("a -> b -> c -> a");
    assertThat(finding.at()).isEqualTo(new Span("project.yaml", 7, 1, 1));
  }

  @Test
  void aSizeOfItselfIsACycle() {
    assertThat(only(corner().size("a", "a + 1")).message()).endsWith("a -> a");
  }

  @Test
  void reportsAnUnknownNameOnceAndNotWhatHangsOnIt() {
    Finding finding = only(corner().size("a", "box_widht + 1").size("b", "a * 2"));
    assertThat(finding.code()).isEqualTo("unknown-name");
    assertThat(finding.hint()).isEqualTo("write `box_width`");
  }

  @Test
  void tellsAMachineThatTheShopHasNotFromAMisspeltName() {
    Finding finding = only(corner().size("a", "1 + planer.shortest"));
    assertThat(finding.code()).isEqualTo("machine-missing");
    assertThat(finding.at()).isEqualTo(new Span("project.yaml", 7, 5, 15));
    assertThat(corner().good().evaluate(formula("jointer.widest")).findings())
        .extracting(Finding::code)
        .containsExactly("machine-missing");
    assertThat(only(corner().requires("planer.widest > 1", "No")).code())
        .isEqualTo("machine-missing");
    assertThat(only(corner().size("a", "table_saw.kref")).hint())
        .isEqualTo("write `table_saw.kerf`");
  }

  @Test
  void refusesToSubstituteWhatIsNoGiven() {
    Finding finding = only(corner().set("tongue", "1/4"));
    assertThat(finding.code()).isEqualTo("not-a-given");
    assertThat(finding.at().file()).isEqualTo("--set tongue");
    assertThat(finding.hint()).isEqualTo("write one of box_width, stock_thickness");
  }

  @Test
  void refusesAValueOutOfItsRange() {
    Finding finding = only(corner().set("box_width", "8"));
    assertThat(finding.code()).isEqualTo("value-out-of-range");
    assertThat(finding.message())
        .isEqualTo("`box_width` is 8 in, and must be from 4 1/2 in to 7 in");
    assertThat(only(TestProject.inInches().given("g", "1", "2", null, null)).message())
        .isEqualTo("`g` is 1 in, and must be at least 2 in");
  }

  @Test
  void refusesAnotherUnitThanTheGivens() {
    assertThat(only(corner().set("box_width", "45 deg")).code()).isEqualTo("wrong-unit");
  }

  @Test
  void refusesNamesThatMeanSomethingElse() {
    for (String taken : List.of("shop", "back_end", "table_saw", "min", "and", "box_width")) {
      assertThat(only(corner().given(taken, "6")).code()).as(taken).isEqualTo("name-taken");
    }
  }

  @Test
  void saysWhatARequirementComesTo() {
    Finding finding =
        only(
            corner()
                .requires("end_length - 1 >= 4", "The box is too narrow")
                .requires("tongue > 0", "There is no tongue"));
    assertThat(finding.code()).isEqualTo("requirement-fails");
    assertThat(finding.message())
        .isEqualTo("The box is too narrow: `end_length - 1 >= 4` comes to 3 1/2 in ≥ 4 in");
    assertThat(finding.hint()).isEqualTo("change one of box_width, stock_thickness");
  }

  @Test
  void refusesARequirementThatIsNoCondition() {
    assertThat(only(corner().requires("tongue", "Nothing")).code()).isEqualTo("wrong-unit");
  }

  @Test
  void refusesAPartThatIsNoLengthOrNone() {
    assertThat(only(corner().part("p", "2 count", "1", "1", "1")).code()).isEqualTo("wrong-unit");
    assertThat(only(corner().part("p", "1 - 1", "1", "1", "1")).code()).isEqualTo("part-too-small");
    assertThat(corner().part("p", "1", "1", "1", "0").good().length("p.lid_groove.width"))
        .isEqualTo(Length.ZERO);
  }

  @Test
  void tellsWhenTheWorstCaseDividesByZero() {
    Finding finding =
        only(
            TestProject.inInches()
                .given("gap", "1/64", null, null, "1/64")
                .size("ratio", "1 in / gap"));
    assertThat(finding.code()).isEqualTo("division-by-zero");
    assertThat(finding.message()).endsWith("at the worst case of the tolerances");
  }

  @Test
  void findsSeveralThingsInOneRun() {
    assertThat(
            corner()
                .size("a", "1-3/4")
                .size("b", "nowhere")
                .size("c", "box_width / 0")
                .set("tongue", "1")
                .evaluate()
                .findings())
        .extracting(Finding::code)
        .containsExactlyInAnyOrder(
            "hyphen-in-formula", "unknown-name", "division-by-zero", "not-a-given");
  }

  @Test
  void bareNumbersAreInTheProjectsUnit() {
    Sizes sizes = new TestProject(Unit.MILLIMETRE).size("a", "127").good();
    assertThat(sizes.length("a")).isEqualTo(Length.ofInches(5));
    assertThat(sizes.length("table_saw.kerf")).isEqualTo(Length.ofInches(1, 8));
  }

  /** Half a second of work; the rest of the time is for a busy machine. */
  @Test
  @Timeout(10)
  void aChainOfTenThousandSizesEndsSoon() {
    TestProject project = TestProject.inInches().given("s0", "1", null, null, "1/64");
    for (int i = 10_000; i > 0; i--) {
      project.size("s" + i, "s" + (i - 1) + " + 1");
    }
    assertThat(project.good().length("s10000")).isEqualTo(Length.ofInches(10_001));
  }

  @Test
  @Timeout(3)
  void aCycleOfTenThousandSizesEndsSoon() {
    TestProject project = TestProject.inInches().size("s0", "s10000");
    for (int i = 10_000; i > 0; i--) {
      project.size("s" + i, "s" + (i - 1) + " + 1");
    }
    assertThat(only(project).message().length()).isLessThan(200);
  }
}
