package packetwright.paper.quiz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class DrawsTest {
  private static List<Long> draw(Draws draws, long bound, int count) {
    return LongStream.range(0, count).map(i -> draws.below(bound)).boxed().toList();
  }

  /** Reckoned apart from this program, with another implementation of SHA-256. */
  @Test
  void drawsTheSameOnEveryMachine() {
    Draws draws = Draws.of(List.of("sliding-lid-box", "2027 spring", "A", "1"));
    assertThat(draw(draws, 1000, 6)).containsExactly(72L, 476L, 773L, 469L, 578L, 269L);
  }

  @Test
  void keepsTextsApart() {
    assertThat(draw(Draws.of(List.of("ab", "c")), 1L << 60, 3))
        .isNotEqualTo(draw(Draws.of(List.of("a", "bc")), 1L << 60, 3));
  }

  /** Far beyond chance: 70,000 draws, each of 7 numbers within 4 standard deviations. */
  @Test
  void drawsEachNumberEquallyOften() {
    Draws draws = Draws.of(List.of("evenly"));
    long[] seen = new long[7];
    for (int i = 0; i < 70_000; i++) {
      seen[(int) draws.below(7)]++;
    }
    assertThat(LongStream.of(seen).boxed())
        .allSatisfy(n -> assertThat(n).isBetween(9_630L, 10_370L));
  }

  @Test
  void staysBelowAnyBound() {
    Draws draws = Draws.of(List.of("bounds"));
    for (long bound : new long[] {1, 2, 3, Long.MAX_VALUE / 2 + 2, Long.MAX_VALUE}) {
      assertThat(draw(draws, bound, 50)).allMatch(n -> n >= 0 && n < bound);
    }
    assertThatThrownBy(() -> draws.below(0)).hasMessageContaining("below 0");
  }
}
