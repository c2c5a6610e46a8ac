package packetwright.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each finding has a case named after it: edits of a sample, and the report that they must give.
 */
class GoldenTest {
  private static final Path CASES = Path.of("src/test/resources/golden");
  private static final Pattern CODE =
      Pattern.compile("Finding\\s*\\.(?:error|warning)\\(\\s*\"([a-z0-9-]+)\"");

  /** The wings whose findings {@link ProjectCheck} reaches. */
  private static final List<String> WINGS = List.of("text", "definition");

  /** Every way to make a finding. */
  private static final Pattern MADE =
      Pattern.compile(
          "\\bFinding\\s*\\.(?:error|warning)\\(|\\bnew Finding\\(|Finding::(?:error|warning|new)");

  @TempDir Path temporary;

  private static List<GoldenCase> cases() throws IOException {
    List<GoldenCase> cases = new ArrayList<>();
    try (Stream<Path> folders = Files.list(CASES)) {
      for (Path folder : folders.sorted().toList()) {
        assertThat(folder.resolve("case.yaml")).isRegularFile();
        cases.add(GoldenCase.read(folder));
      }
    }
    assertThat(cases).as("cases seen").hasSizeGreaterThan(20);
    return cases;
  }

  /** Codes as they stand in the source, always as the literal first argument. */
  private static Set<String> codes() throws IOException {
    Set<String> codes = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/packetwright"))) {
      for (Path file : files.filter(GoldenTest::isReached).toList()) {
        String source = Files.readString(file);
        CODE.matcher(source).results().forEach(r -> codes.add(r.group(1)));
        if (!file.endsWith("Finding.java")) {
          assertThat(CODE.matcher(source).results().count())
              .as("findings of %s whose code is a literal", file)
              .isEqualTo(MADE.matcher(source).results().count());
        }
      }
    }
    assertThat(codes).as("codes seen").hasSizeGreaterThan(20);
    return codes;
  }

  private static boolean isReached(Path file) {
    Path wing = Path.of("src/main/java/packetwright").relativize(file).getName(0);
    return file.toString().endsWith(".java") && WINGS.contains(wing.toString());
  }

  @TestFactory
  Stream<DynamicTest> givesTheExpectedFindings() throws IOException {
    return cases().stream()
        .map(golden -> DynamicTest.dynamicTest(golden.name(), () -> check(golden)));
  }

  private void check(GoldenCase golden) throws IOException {
    String here = runIn(golden, Locale.US, "UTC");
    String there = runIn(golden, new Locale("ar", "EG"), "Asia/Kathmandu");
    assertThat(there).as("the same in another locale and time zone").isEqualTo(here);
    assertThat(golden.orphans()).isEmpty();
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(golden.expected().getParent());
      Files.writeString(golden.expected(), here);
    }
    assertThat(golden.expected()).isRegularFile();
    assertThat(here).isEqualTo(Files.readString(golden.expected()));
    assertThat(here).as("its own code").contains("[" + golden.name() + "]\n");
    assertThat(here).doesNotContain(temporary.toString());
    assertThat(Boolean.getBoolean("golden.update")).as("golden files were rewritten").isFalse();
  }

  private String runIn(GoldenCase golden, Locale locale, String zone) throws IOException {
    Locale locales = Locale.getDefault();
    TimeZone zones = TimeZone.getDefault();
    try {
      Locale.setDefault(locale);
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      return ProjectCheck.findings(golden, Files.createTempDirectory(temporary, golden.name()));
    } finally {
      Locale.setDefault(locales);
      TimeZone.setDefault(zones);
    }
  }

  @Test
  void pairsEveryCodeWithACase() throws IOException {
    assertThat(cases()).extracting(GoldenCase::name).containsExactlyElementsOf(codes());
  }
}
