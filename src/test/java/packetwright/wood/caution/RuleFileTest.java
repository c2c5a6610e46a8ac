package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.definition.shop.MachineKind;
import packetwright.text.document.Node;
import packetwright.text.document.Yaml;

class RuleFileTest {
  private static final String GOOD =
      """
      limits:
        jointer.shortest: {is: 12, stricter: longer, source: a school}
      rules:
        - name: jointer_hands
          against: hands
          at: jointer
          when: always
          signal: warning
          source: a school
          refusals:
            - {code: piece-too-short, when: always, message: m, hint: h, waivable: true}
      """;

  private static Node node(String text) {
    return Yaml.read("rules.yaml", text).value();
  }

  @Test
  void readsWhatIsSpeltRight() {
    assertThat(RuleFile.checked(node(GOOD))).isNotNull();
  }

  @ParameterizedTest
  @ValueSource(strings = {"refusals", "waivable", "at", "signal", "stricter"})
  void refusesAMisspeltKey(String key) {
    Node spoilt = node(GOOD.replace(key + ":", key + "x:"));
    assertThatThrownBy(() -> RuleFile.checked(spoilt)).hasMessageContaining(key + "x");
  }

  @Test
  void everyLimitIsOfAMachineAndOfAKnownDirection() {
    assertThat(RuleFile.read().limits()).hasSizeGreaterThan(15);
    assertThat(RuleFile.read().limits().values())
        .allMatch(limit -> MachineKind.of(limit.machine()) != null)
        .allMatch(limit -> limit.is().signum() > 0);
  }

  @Test
  void everyMachineValueThatARuleNamesHasALimitForEachOfItsMachines() {
    Set<String> missing = new HashSet<>();
    int seen = 0;
    for (HazardRule hazard : RuleFile.read().rules()) {
      Set<String> names = new HashSet<>(hazard.when().names());
      hazard.refusals().forEach(r -> names.addAll(r.when().names()));
      names.addAll(hazard.shows());
      for (MachineKind kind : hazard.at()) {
        for (String name : names) {
          if (name.startsWith("machine.")) {
            seen++;
            missing.add(kind.word() + name.substring("machine".length()));
          }
        }
      }
    }
    assertThat(seen).isGreaterThan(20);
    missing.removeAll(RuleFile.read().limits().keySet());
    assertThat(missing).isEmpty();
  }

  @Test
  void everyRefusalOfACodeIsWaivableOrNone() {
    List<HazardRule.Refusal> all =
        RuleFile.read().rules().stream().flatMap(h -> h.refusals().stream()).toList();
    Set<String> waivable = new HashSet<>();
    Set<String> firm = new HashSet<>();
    all.forEach(r -> (r.isWaivable() ? waivable : firm).add(r.code()));
    assertThat(waivable).isNotEmpty().doesNotContainAnyElementsOf(firm);
    assertThat(firm).contains("gauge-missing", "push-stick-missing", "clamps-missing");
  }
}
