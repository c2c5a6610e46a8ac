package packetwright.wood.setup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.text.measure.Length;

/**
 * How boards of several thicknesses are planed to one: the thickest first, the setting a little
 * lower at each pass, every other board from the pass on that reaches it. All passes but the first
 * take off the same, and the last is that of the set-up block: a board's last cuts are then like
 * every other's. Common practice, no source.
 *
 * @param passes in order
 */
public record MillingPlan(List<Pass> passes) {
  private static final int MOST_PASSES = 50;

  /** Keeps its own copy. */
  public MillingPlan {
    passes = List.copyOf(passes);
  }

  /**
   * One pass.
   *
   * @param setting the thickness that the planer is set to
   * @param boards that go through, numbered from 1 as they are listed
   */
  public record Pass(Length setting, List<Integer> boards) {
    /** Keeps its own copy. */
    public Pass {
      boards = List.copyOf(boards);
    }
  }

  /**
   * Passes at one go through the same boards.
   *
   * @param first number of the first of them, from 1
   * @param settings of each
   * @param boards that go through all of them
   */
  public record Stage(int first, List<Length> settings, List<Integer> boards) {
    /** Keeps its own copies. */
    public Stage {
      settings = List.copyOf(settings);
      boards = List.copyOf(boards);
    }
  }

  /**
   * Plans the passes.
   *
   * @param boards the thickness of each at its thinnest; none under {@code thickness}
   * @param thickness that all of them get: the set-up block's
   * @param deepest that a pass may take off, more than nothing
   * @param rough how much thicker a board may be at its thickest; zero when it has been surfaced
   * @return none when it would take too many passes
   */
  public static @Nullable MillingPlan of(
      List<Length> boards, Length thickness, Length deepest, Length rough) {
    Length thickest = boards.stream().reduce(thickness, Length::max);
    Length off = most(boards, thickness, rough);
    if (thickest.isLess(thickness) || off.isMore(deepest.times(MOST_PASSES))) {
      return null;
    }
    int count = off.dividedBy(deepest).ceiling().intValueExact();
    List<Pass> passes = new ArrayList<>();
    for (int left = count - 1; left >= 0; left--) {
      Length setting = thickness.plus(deepest.times(left));
      List<Integer> through = new ArrayList<>();
      for (int board = 0; board < boards.size(); board++) {
        if (boards.get(board).plus(rough).isMore(setting)) {
          through.add(board + 1);
        }
      }
      passes.add(new Pass(setting, through));
    }
    return new MillingPlan(passes);
  }

  /** How much comes off the thickest board at its thickest place. */
  public static Length most(List<Length> boards, Length thickness, Length rough) {
    return boards.stream()
        .map(board -> board.plus(rough).minus(thickness))
        .reduce(Length.ZERO, Length::max);
  }

  /** The passes in runs between which boards join. */
  public List<Stage> stages() {
    List<Stage> stages = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= passes.size(); i++) {
      boolean isEnd =
          i == passes.size() || !passes.get(i).boards().equals(passes.get(first).boards());
      if (isEnd) {
        List<Length> settings = passes.subList(first, i).stream().map(Pass::setting).toList();
        stages.add(new Stage(first + 1, settings, passes.get(first).boards()));
        first = i;
      }
    }
    return stages;
  }
}
