package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.text.document.Node;
import packetwright.text.document.Yaml;
import packetwright.text.measure.Unit;
import packetwright.text.source.Finding;
import packetwright.text.source.Findings;
import packetwright.wood.operation.OperationRun.Feed;

class RuleCheckTest {
  private static final MachineLimits LIMITS = new MachineLimits(Map.of(), RuleFile.read().limits());

  private static List<Finding> check(Node node) {
    Findings findings = new Findings();
    HazardRule rule = new RuleReader(Unit.INCH, findings).rule((Node.Mapping) node);
    new RuleCheck(LIMITS, findings).check(Objects.requireNonNull(rule), (Node.Mapping) node);
    return findings.list();
  }

  private static List<String> codes(String at, String when) {
    String text =
        "{name: trial, against: hands, at: [%s], when: \"%s\", signal: warning, source: s}"
            .formatted(at, when);
    return check(Yaml.read("shop.yaml", text).value()).stream().map(Finding::code).toList();
  }

  @Test
  void ourOwnRulesMakeSense() {
    List<Finding> all = new ArrayList<>();
    int seen = 0;
    for (String file : RuleFile.FILES) {
      for (Node rule : RuleFile.file(file).items("rules")) {
        all.addAll(check(rule));
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(20);
    assertThat(all).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "table_saw | work.along and work.across",
        "table_saw | work.along and not work.cuts",
        "table_saw | work.fence > 3 and not work.cuts",
        "table_saw | is_drill",
        "table_saw | at_jointer",
        "table_saw | not powered",
        "chisel | powered",
        "jointer | piece.length < 0",
        "jointer | piece.length <= 0",
        "jointer | machine.shortest > 15",
        "jointer | piece.length < machine.shortest and piece.length > 14",
        "jointer | piece.length < piece.width and piece.width < 4 and piece.length > 5",
        "jointer | is_joint_face and is_joint_edge",
        "drill_press | is_rip or is_crosscut",
      })
  void findsWhatCanNeverFire(String at, String when) {
    assertThat(codes(at, when)).containsExactly("rule-never-fires");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "table_saw | work.along and not work.through",
        "table_saw | is_rip and work.fence <= 3",
        "jointer | piece.length < machine.shortest and piece.length > 11",
        "jointer | piece.length < piece.width",
        "router_table | is_cut and work.along",
        "band_saw | is_saw_curve and work.freehand",
        "jointer | work.fence = 0",
        "clamp | is_glue",
        "jointer | piece.length * piece.width > 3 sq ft",
      })
  void believesWhatCanFire(String at, String when) {
    assertThat(codes(at, when)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "piece.lenght < 3 | unknown-name",
        "piece.length < 3 count | wrong-unit",
        "piece.length < 3 oz | wrong-unit",
        "piece.length | wrong-unit",
        "piece.length and clamps | wrong-unit",
        "clamps < 3 | wrong-unit",
        "setting.tilt > 3 in | wrong-unit",
        "machine.widest > 3 | unknown-name",
        "piece.length / work.depth > 3 | division-by-zero",
        "piece.length / (work.fence - 1) > 3 | division-by-zero",
        "round_up(piece.length, work.depth) > 3 | wrong-step",
      })
  void findsWhatMakesNoSense(String when, String code) {
    assertThat(codes("jointer", when)).containsExactly(code);
  }

  @ParameterizedTest
  @ValueSource(strings = {"setting.tilt > 30 deg", "setting.passes >= 3", "setting.inset_2 < 3"})
  void knowsSettingsByTheirKinds(String when) {
    assertThat(codes("table_saw", when)).isEmpty();
  }

  @Test
  void findsTheOneMachineAtWhichARuleNeverFires() {
    assertThat(codes("jointer, planer", "is_joint_edge")).containsExactly("rule-never-fires");
    assertThat(codes("jointer, planer", "is_joint_edge or is_plane_to_thickness")).isEmpty();
  }

  @Test
  void knowsEveryFeed() {
    assertThat(Feed.values())
        .allSatisfy(
            feed ->
                assertThat(
                        Vocabulary.kind("work." + feed.name().toLowerCase(java.util.Locale.ROOT)))
                    .isEqualTo(Vocabulary.Kind.TRUTH))
        .hasSize(4);
  }
}
