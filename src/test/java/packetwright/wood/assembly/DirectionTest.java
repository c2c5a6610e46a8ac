package packetwright.wood.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DirectionTest {
  @ParameterizedTest
  @CsvSource({"+x,+y,+z", "+y,+z,+x", "+z,+x,+y", "+z,+y,-x", "+z,-x,-y", "-z,-x,+y"})
  void completesARightHandedFrame(String first, String second, String third) {
    assertThat(direction(first).cross(direction(second))).isEqualTo(direction(third));
  }

  @Test
  void readsNothingElse() {
    assertThat(Direction.of("x")).isNull();
    assertThat(Direction.of("+w")).isNull();
    assertThat(Direction.of("*x")).isNull();
  }

  private static Direction direction(String text) {
    Direction direction = Direction.of(text);
    assertThat(direction).isNotNull();
    return direction;
  }
}
