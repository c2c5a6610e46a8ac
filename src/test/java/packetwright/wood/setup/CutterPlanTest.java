package packetwright.wood.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import packetwright.definition.shop.Shop.CutterSet;
import packetwright.text.measure.Length;

class CutterPlanTest {
  private static final Length EIGHTH = Length.ofInches(1, 8);
  private static final CutterSet SET =
      new CutterSet(
          EIGHTH,
          List.of(EIGHTH, EIGHTH, Length.ofInches(1, 16)),
          List.of(Length.ofInches(1, 64), Length.ofInches(1, 32)));
  private static final Length GRADUATION = Length.ofInches(1, 32);

  @Test
  void stacksNineThirtySecondsWithOneShim() {
    CutterPlan plan = CutterPlan.of(Length.ofInches(9, 32), SET, GRADUATION);
    assertThat(plan)
        .isEqualTo(
            new CutterPlan(
                Length.ofInches(9, 32),
                List.of(EIGHTH, EIGHTH, Length.ofInches(1, 32)),
                List.of(Length.ZERO)));
  }

  /** COMPUTED in the reference: 2 x 1/8 + 4 x 1/8 = 3/4; here 11/16 = 2 x 1/8 + 3 x 1/8 + 1/16. */
  @Test
  void stacksElevenSixteenths() {
    CutterSet more =
        new CutterSet(
            EIGHTH, List.of(EIGHTH, EIGHTH, EIGHTH, EIGHTH, Length.ofInches(1, 16)), List.of());
    CutterPlan plan = CutterPlan.of(Length.ofInches(11, 16), more, GRADUATION);
    assertThat(plan).isNotNull();
    assertThat(plan.stack()).hasSize(6);
    assertThat(CutterPlan.total(plan.stack())).isEqualTo(Length.ofInches(11, 16));
  }

  @Test
  void movesOneBladeOverWhereTheNarrowestStackIsTooWide() {
    CutterPlan plan = CutterPlan.of(Length.ofInches(7, 32), SET, GRADUATION);
    assertThat(plan)
        .isEqualTo(
            new CutterPlan(EIGHTH, List.of(EIGHTH), List.of(Length.ZERO, Length.ofInches(3, 32))));
  }

  @Test
  void ofAsManyPassesTakesTheStackWhoseMoveIsEasiestToSet() {
    CutterSet usual =
        new CutterSet(
            EIGHTH,
            List.of(EIGHTH, EIGHTH, Length.ofInches(1, 16)),
            List.of(Length.ofInches(1, 32), Length.ofInches(1, 64)));
    CutterPlan plan = CutterPlan.of(Length.ofInches(3, 4), usual, GRADUATION);
    assertThat(plan).isNotNull();
    assertThat(CutterPlan.total(plan.stack())).isEqualTo(Length.ofInches(1, 2));
    assertThat(plan.offsets()).containsExactly(Length.ZERO, Length.ofInches(1, 4));
  }

  @Test
  void hasNoPlanUnderOneBlade() {
    assertThat(CutterPlan.of(Length.ofInches(3, 32), SET, GRADUATION)).isNull();
  }

  @Property
  void passesLeaveNoRidgeAndEndExactly(
      @ForAll @IntRange(min = 8, max = 200) int sixtyFourths,
      @ForAll @IntRange(min = 4, max = 16) int bladeSixtyFourths) {
    Length width = Length.ofInches(sixtyFourths, 64);
    Length blade = Length.ofInches(Math.min(bladeSixtyFourths, sixtyFourths), 64);
    CutterPlan plan = CutterPlan.inPasses(width, List.of(blade), GRADUATION);
    assertThat(plan).isNotNull();
    List<Length> offsets = plan.offsets();
    assertThat(offsets.get(0)).isEqualTo(Length.ZERO);
    assertThat(offsets.get(offsets.size() - 1).plus(blade)).isEqualTo(width);
    for (int i = 1; i < offsets.size(); i++) {
      assertThat(offsets.get(i).minus(offsets.get(i - 1))).isLessThanOrEqualTo(blade);
    }
  }

  @Test
  void takesTheBitOfTheWidthOrMovesTheWidestNarrowerOneAwayFromTheFence() {
    List<Length> bits = List.of(EIGHTH.times(2), EIGHTH.times(3), EIGHTH.times(4));
    assertThat(CutterPlan.ofBits(EIGHTH.times(3), bits, GRADUATION))
        .isEqualTo(new CutterPlan(EIGHTH.times(3), List.of(EIGHTH.times(3)), List.of(Length.ZERO)));
    assertThat(CutterPlan.ofBits(Length.ofInches(7, 16), bits, GRADUATION))
        .isEqualTo(
            new CutterPlan(
                EIGHTH.times(3),
                List.of(EIGHTH.times(3)),
                List.of(Length.ZERO, Length.ofInches(1, 16))));
    assertThat(CutterPlan.ofBits(EIGHTH, bits, GRADUATION)).isNull();
  }
}
