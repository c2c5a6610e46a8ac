package packetwright.wood.setup;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.text.measure.Rational;

class AngleTest {
  @ParameterizedTest
  @CsvSource({"0, 1, 0", "1, 1, 45", "1, 4, 14", "1, 2, 133/5", "2, 1, 317/5", "3, 4, 369/10"})
  void isTheArcOfASlopeInTenthsOfADegree(long rise, long run, String degrees) {
    assertThat(Angle.ofSlope(Rational.of(rise, run)).value()).hasToString(degrees);
  }

  @Test
  void agreesWithTheLibraryToHalfATenth() {
    for (int rise = 0; rise <= 300; rise += 7) {
      double degrees = StrictMath.toDegrees(StrictMath.atan(rise / 97.0));
      assertThat(Angle.ofSlope(Rational.of(rise, 97)).value().approximate())
          .isCloseTo(degrees, org.assertj.core.data.Offset.offset(0.0500001));
    }
  }
}
