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
import java.util.stream.Collectors;
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
  private static final Path SOURCES = Path.of("src/main/java/packetwright");
  private static final Path CAUTIONS =
      Path.of("src/main/resources/packetwright/wood/caution/rules");

  /** A method that makes a finding of a code: {@code error}, {@code require}. */
  private static final Pattern MAKER = Pattern.compile("\\b(\\w+)\\(\\s*String code,");

  /** The first argument of each finding made. */
  private static final Pattern MADE =
      Pattern.compile("\\b(?:Finding\\s*\\.(?:error|warning)|new Finding)\\(\\s*([^,]+),");

  private static final Pattern REFUSAL = Pattern.compile("- code: ([a-z0-9-]+)\n");

  /** What no project can cause: the drawings are our own, and a test reads them all. */
  private static final Set<String> OURS = Set.of("symbol-unreadable");

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

  /** Codes as they stand in the source, always as a literal first argument, and in the rules. */
  private static Set<String> codes() throws IOException {
    List<String> sources = new ArrayList<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        sources.add(Files.readString(file));
      }
    }
    String all = String.join("\n", sources);
    assertThat(all).doesNotContainPattern("Finding::(error|warning|new)");
    assertThat(groups(MADE, all))
        .as("the code of a finding is a literal, or handed on")
        .allMatch(first -> first.matches("\"[a-z0-9-]+\"|code|refusal\\.code\\(\\)"));
    String makers = String.join("|", groups(MAKER, all));
    Set<String> codes =
        groups(Pattern.compile("\\b(?:" + makers + ")\\(\\s*\"([a-z0-9-]+)\""), all);
    try (Stream<Path> files = Files.list(CAUTIONS)) {
      for (Path file : files.toList()) {
        codes.addAll(groups(REFUSAL, Files.readString(file)));
      }
    }
    codes.removeAll(OURS);
    assertThat(codes).as("codes seen").hasSizeGreaterThan(100);
    return codes;
  }

  private static Set<String> groups(Pattern pattern, String text) {
    return pattern
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @TestFactory
  Stream<DynamicTest> givesTheExpectedFindings() throws IOException {
    String only = System.getProperty("golden.only", "");
    return cases().stream()
        .filter(golden -> golden.name().startsWith(only))
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
    assertThat(here).as("its own code").contains("[" + golden.code() + "]\n");
    assertThat(here).doesNotContain(temporary.toString());
    assertThat(Boolean.getBoolean("golden.update")).as("golden files were rewritten").isFalse();
  }

  private String runIn(GoldenCase golden, Locale locale, String zone) throws IOException {
    Locale locales = Locale.getDefault();
    TimeZone zones = TimeZone.getDefault();
    try {
      Locale.setDefault(locale);
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      return ProjectCheck.report(
          golden, Files.createTempDirectory(temporary, golden.name()), false);
    } finally {
      Locale.setDefault(locales);
      TimeZone.setDefault(zones);
    }
  }

  /** Hints work: a case may say how its author would obey, and then nothing is found. */
  @TestFactory
  Stream<DynamicTest> isCleanWhenMended() throws IOException {
    String only = System.getProperty("golden.only", "");
    return cases().stream()
        .filter(golden -> golden.isMended() && golden.name().startsWith(only))
        .map(
            golden ->
                DynamicTest.dynamicTest(
                    golden.name(),
                    () -> {
                      Path work = Files.createTempDirectory(temporary, golden.name());
                      assertThat(ProjectCheck.report(golden, work, true)).isEmpty();
                    }));
  }

  @Test
  void pairsEveryCodeWithACase() throws IOException {
    Set<String> cases =
        cases().stream().map(GoldenCase::code).collect(Collectors.toCollection(TreeSet::new));
    assertThat(cases).containsExactlyElementsOf(codes());
  }
}
