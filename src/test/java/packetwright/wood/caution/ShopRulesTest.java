package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.definition.shop.ShopReader;
import packetwright.text.words.Words;

class ShopRulesTest {
  private static final int INCH = 64;

  /** A shop whose rule refuses boards over 8 ft at the planer. */
  private static final String RULE =
      """
      packetwright: 1
      shop: Nowhere Hollow School (invented)
      units: inch
      machines: {planer: {count: 1}}
      cautions:
        - name: long_at_planer
          against: support
          at: planer
          when: piece.length > 48
          signal: warning
          source: the shop's own rule
          words:
            hazard: A long board tips as it leaves the planer.
            consequence: It can fall on your feet.
            avoid: Ask a second student to receive it.
            why: The board is {piece.length} long.
          refusals:
            - code: planed-too-long
              when: piece.length > 8 ft
              message: "the {piece} is {piece.length} long; the {tool} takes none over 8 ft here"
              hint: crosscut it first
              waivable: true
      """;

  private static Shop shop(String text) {
    return ShopReader.read("shop.yaml", text).value();
  }

  private static Verdict apply(String shop, TrialOperation operation) {
    Shop of = shop(shop);
    CautionRules rules = CautionRules.of(of).value();
    return rules.apply(TrialOperation.run(of, operation), of, Words.of("en"));
  }

  private static final TrialOperation PLANE =
      TrialOperation.of(Verb.PLANE_TO_THICKNESS, MachineKind.PLANER);

  private static List<String> rules(TrialOperation operation) {
    return apply(RULE, operation).cautions().stream().map(Caution::rule).toList();
  }

  @Test
  void aShopsRuleIsPrintedBesideOurs() {
    assertThat(rules(PLANE.where("length", 48 * INCH + 1)))
        .contains("long_at_planer", "planer_feed");
    assertThat(rules(PLANE.where("length", 48 * INCH)))
        .contains("planer_feed")
        .doesNotContain("long_at_planer");
  }

  @Test
  void itIsPrintedInTheShopsOwnWords() {
    assertThat(apply(RULE, PLANE.where("length", 50 * INCH)).cautions())
        .filteredOn(c -> c.rule().equals("long_at_planer"))
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.hazard()).isEqualTo("A long board tips as it leaves the planer.");
              assertThat(c.why()).isEqualTo("The board is 50 in long.");
              assertThat(c.source()).isEqualTo("the shop's own rule");
            });
  }

  @Test
  void itRefuses() {
    assertThat(apply(RULE, PLANE.where("length", 96 * INCH + 1)).refused())
        .extracting(r -> r.finding().message())
        .containsExactly("the wall is 96 1/64 in long; the planer takes none over 8 ft here");
    assertThat(apply(RULE, PLANE.where("length", 96 * INCH)).refused()).isEmpty();
  }

  @Test
  void itsBareNumbersCountTheShopsUnit() {
    String metric = RULE.replace("units: inch", "units: mm").replace("> 48", "> 1000");
    assertThat(apply(metric, PLANE.where("length", 40 * INCH)).cautions())
        .filteredOn(c -> c.rule().equals("long_at_planer"))
        .extracting(Caution::why)
        .containsExactly("The board is 1016 mm long.");
    assertThat(apply(metric, PLANE.where("length", 39 * INCH)).cautions())
        .noneMatch(c -> c.rule().equals("long_at_planer"));
  }
}
