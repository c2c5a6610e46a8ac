package packetwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Files and packages stay small enough to read in one sitting. */
class FileSizeTest {
  private static final int MAX_LINES = 400;
  private static final int MAX_TYPES = 25;

  /** Path under the source root, and why it may be longer. */
  private static final Map<String, String> ALLOWED = Map.of();

  private static List<Path> sources() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      List<Path> found = files.filter(f -> f.toString().endsWith(".java")).sorted().toList();
      assertThat(found).as("source files seen").hasSizeGreaterThan(50);
      return found;
    }
  }

  @Test
  void filesAreShort() throws IOException {
    for (Path file : sources()) {
      if (!ALLOWED.containsKey(file.toString())) {
        assertThat(Files.readAllLines(file)).as("%s", file).hasSizeLessThanOrEqualTo(MAX_LINES);
      }
    }
  }

  @Test
  void packagesAreSmall() throws IOException {
    Map<Path, Long> types =
        sources().stream().collect(Collectors.groupingBy(Path::getParent, Collectors.counting()));
    assertThat(types).allSatisfy((folder, n) -> assertThat(n).isLessThanOrEqualTo(MAX_TYPES));
  }
}
