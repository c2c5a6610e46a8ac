package packetwright.wood.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import packetwright.text.measure.Length;

class MillingPlanTest {
  private static Length sixtyFourths(int count) {
    return Length.ofInches(count, 64);
  }

  @Test
  void boardsJoinWhenTheSettingReachesThem() {
    List<Length> boards =
        List.of(
            Length.ofInches(7, 8),
            Length.ofInches(13, 16),
            Length.ofInches(13, 16),
            Length.ofInches(3, 4));
    MillingPlan plan =
        MillingPlan.of(boards, Length.ofInches(11, 16), Length.ofInches(1, 32), Length.ZERO);
    assertThat(plan).isNotNull();
    assertThat(plan.stages())
        .containsExactly(
            new MillingPlan.Stage(
                1, List.of(Length.ofInches(27, 32), Length.ofInches(13, 16)), List.of(1)),
            new MillingPlan.Stage(
                3, List.of(Length.ofInches(25, 32), Length.ofInches(3, 4)), List.of(1, 2, 3)),
            new MillingPlan.Stage(
                5, List.of(Length.ofInches(23, 32), Length.ofInches(11, 16)), List.of(1, 2, 3, 4)));
  }

  /** Common practice, no source; the thinner board is listed first and still waits. */
  @Test
  void ofTwoBoardsOfUnlikeThicknessTheThickestIsPlanedFirst() {
    MillingPlan plan =
        MillingPlan.of(
            List.of(sixtyFourths(50), sixtyFourths(56)),
            sixtyFourths(48),
            sixtyFourths(2),
            Length.ZERO);
    assertThat(plan).isNotNull();
    assertThat(plan.passes())
        .extracting(MillingPlan.Pass::boards)
        .containsExactly(List.of(2), List.of(2), List.of(2), List.of(1, 2));
  }

  @Test
  void theFirstPassTakesWhatTheOthersLeave() {
    MillingPlan plan =
        MillingPlan.of(List.of(sixtyFourths(37)), sixtyFourths(32), sixtyFourths(2), Length.ZERO);
    assertThat(plan).isNotNull();
    assertThat(plan.passes())
        .extracting(MillingPlan.Pass::setting)
        .containsExactly(sixtyFourths(36), sixtyFourths(34), sixtyFourths(32));
  }

  @Test
  void hasNoPlanOfMoreThanFiftyPasses() {
    assertThat(
            MillingPlan.of(
                List.of(sixtyFourths(83)), sixtyFourths(32), sixtyFourths(1), Length.ZERO))
        .isNull();
  }

  /** Every pass on boards whose thickest places lie anywhere within what is still rough. */
  @Property(seed = "20270105")
  void everyPassCutsNoDeeperThanAllowedAndAllBoardsEndAlike(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 40) Integer> over,
      @ForAll @Size(min = 6, max = 6) List<@IntRange(min = 0, max = 4) Integer> high,
      @ForAll @IntRange(min = 1, max = 5) int deepest,
      @ForAll @IntRange(min = 0, max = 4) int rough) {
    int block = 32;
    List<Length> boards = over.stream().map(o -> sixtyFourths(block + o)).toList();
    List<Length> now = new ArrayList<>();
    for (int i = 0; i < over.size(); i++) {
      now.add(sixtyFourths(block + over.get(i) + Math.min(high.get(i), rough)));
    }
    MillingPlan plan =
        MillingPlan.of(boards, sixtyFourths(block), sixtyFourths(deepest), sixtyFourths(rough));
    assertThat(plan).isNotNull();
    for (MillingPlan.Pass pass : plan.passes()) {
      for (int board = 1; board <= boards.size(); board++) {
        Length off = now.get(board - 1).minus(pass.setting());
        boolean goesThrough = pass.boards().contains(board);
        assertThat(off.isMore(sixtyFourths(deepest))).as("too deep").isFalse();
        assertThat(off.signum() > 0 && !goesThrough).as("left out though thicker").isFalse();
        if (goesThrough) {
          now.set(board - 1, now.get(board - 1).min(pass.setting()));
        }
      }
    }
    assertThat(now).containsOnly(sixtyFourths(block));
  }

  /** No way of fewer passes: each takes at most so much off the thickest board. */
  @Property(seed = "20270106")
  void takesNoMorePassesThanTheThickestBoardNeeds(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 0, max = 40) Integer> over,
      @ForAll @IntRange(min = 1, max = 5) int deepest) {
    MillingPlan plan =
        MillingPlan.of(
            over.stream().map(o -> sixtyFourths(32 + o)).toList(),
            sixtyFourths(32),
            sixtyFourths(deepest),
            Length.ZERO);
    int thickest = over.stream().mapToInt(Integer::intValue).max().orElse(0);
    int passes = 0;
    for (int left = thickest; left > 0; left -= deepest) {
      passes++;
    }
    assertThat(plan).isNotNull();
    assertThat(plan.passes()).hasSize(passes);
  }
}
