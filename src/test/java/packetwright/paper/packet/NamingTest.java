package packetwright.paper.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Located;
import packetwright.text.source.Span;
import packetwright.wood.caution.Caution;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.setup.Setting;

/** Whatever the engine can name has words on paper. */
class NamingTest {
  private static final Path MAIN = Path.of("src/main/java/packetwright");
  private static final Naming NAMING =
      new Naming(SampleLesson.WORDS, SampleLesson.lesson().project().rule());

  /** A setting's name as the engine writes it: the first argument after the bracket. */
  private static final Pattern SET = Pattern.compile("\\bs\\.set\\(\\s*\"([a-z_]+)\"");

  private static final Pattern ITEM = Pattern.compile("\"(blank\\.[a-z_]+)\"");

  private static String words(String setting) {
    return SampleLesson.WORDS.plain(NAMING.setting(setting));
  }

  private static Set<String> found(Path folder, Pattern pattern) throws IOException {
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.walk(MAIN.resolve(folder))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        pattern.matcher(Files.readString(file)).results().map(r -> group(r)).forEach(found::add);
      }
    }
    return found;
  }

  private static String group(MatchResult result) {
    return result.group(1);
  }

  @Test
  void everyWordOfTheDefinitionsHasAPhrase() {
    List<String> keys = new ArrayList<>();
    Arrays.stream(Verb.values()).map(v -> "packet.verb." + v.word()).forEach(keys::add);
    Arrays.stream(MachineKind.values()).map(k -> "packet.tool." + k.word()).forEach(keys::add);
    Arrays.stream(Control.values()).map(c -> "packet.control." + word(c)).forEach(keys::add);
    Arrays.stream(Caution.Signal.values()).map(c -> "packet.signal." + word(c)).forEach(keys::add);
    Arrays.stream(FeatureKind.values()).map(k -> "sheet.kind." + word(k)).forEach(keys::add);
    for (Side side : Side.values()) {
      keys.addAll(List.of("packet.datum." + side.word(), "sheet.side." + side.word()));
    }
    keys.addAll(List.of("packet.datum.near", "packet.datum.far"));
    assertThat(keys).allMatch(SampleLesson.WORDS::hasKey);
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  @Test
  void everySettingThatTheEngineWritesHasAPhrase() throws IOException {
    Set<String> names = found(Path.of("wood/operation"), SET);
    assertThat(names).contains("first_height", "across", "trim", "diameter");
    names.addAll(List.of("height", "fence", "passes", "each_pass", "blade_height"));
    assertThat(names).allMatch(name -> SampleLesson.WORDS.hasKey("packet.set." + name));
  }

  @Test
  void everyItemOfABlanksReckoningHasAPhrase() throws IOException {
    Set<String> items = found(Path.of("wood/blank"), ITEM);
    assertThat(items).contains("blank.piece", "blank.kerf");
    for (String allowance : List.of("end_trim", "sheet_trim", "hold_reserve", "sheet_hold")) {
      items.add("blank." + allowance);
    }
    items.addAll(List.of("blank.falling_strip", "blank.sheet_strip"));
    assertThat(items).allMatch(item -> SampleLesson.WORDS.hasKey("packet." + item));
  }

  /** A narrow groove is cut in passes of one blade, each with a fence of its own. */
  @ParameterizedTest
  @CsvSource({
    "panel_thickness, 13, 64",
    "panel_thickness, 3, 16",
    "board_width, 25, 8",
    "board_width, 29, 4",
    "box_length, 14, 1",
    "stock_thickness, 5, 8"
  })
  void everySettingOfTheSampleAtOtherSizesIsSaidInWords(String given, int over, int under) {
    Lesson lesson =
        SampleLesson.lesson(
            Map.of(
                given,
                new Located<>(
                    Quantity.of(Length.ofInches(over, under)), new Span("command line", 1, 1, 1))));
    for (OperationRun run : lesson.run().operations()) {
      for (Setting setting : run.settings()) {
        assertThat(words(setting.name())).isNotBlank().doesNotContain("_");
        assertThat(
                SampleLesson.WORDS.hasKey("packet.set." + setting.name().replaceAll("_\\d+", "")))
            .as(setting.name())
            .isTrue();
      }
    }
    Packets.of(lesson, SampleLesson.quiz(lesson), SampleLesson.WORDS).value();
  }

  @Test
  void aLaterPassIsNumbered() {
    assertThat(words("fence_2")).isEqualTo("Fence, pass 2");
    assertThat(words("fence_12")).isEqualTo("Fence, pass 12");
  }

  @Test
  void anUnknownSettingIsPrintedByItsName() {
    assertThat(words("chip_breaker")).isEqualTo("Chip breaker");
  }
}
