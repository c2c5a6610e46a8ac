package packetwright.text.formula;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Functions, with how many arguments each takes. */
enum Function {
  MIN(1, 20),
  MAX(1, 20),
  ROUND_UP(1, 2),
  ROUND_DOWN(1, 2),
  ROUND_TO(1, 2),
  IF(3, 3);

  private final int fewest;
  private final int most;

  Function(int fewest, int most) {
    this.fewest = fewest;
    this.most = most;
  }

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  boolean takes(int arguments) {
    return arguments >= fewest && arguments <= most;
  }

  /** As a message says it: {@code 1 to 2}. */
  String arguments() {
    return fewest == most ? String.valueOf(most) : fewest + " to " + most;
  }

  static @Nullable Function of(String word) {
    return Arrays.stream(values()).filter(f -> f.word().equals(word)).findFirst().orElse(null);
  }

  static List<String> words() {
    return Arrays.stream(values()).map(Function::word).toList();
  }
}
