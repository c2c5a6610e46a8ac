package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.definition.shop.ShopReader;
import packetwright.text.formula.Value;
import packetwright.text.measure.Quantity;
import packetwright.text.words.Words;
import packetwright.wood.caution.Vocabulary.Kind;

class VocabularyTest {
  private static final RunValues VALUES =
      new RunValues(
          TrialOperation.of(Verb.RIP, MachineKind.TABLE_SAW).run(TrialOperation.shop()),
          RuleFile.read().limits());

  private static boolean fits(Kind kind, Value value) {
    return value.match(
        new Value.Cases<>() {
          @Override
          public Boolean amount(Quantity quantity) {
            return switch (quantity.dimension()) {
              case LENGTH -> kind.isLength();
              case ANGLE -> kind == Kind.ANGLE;
              case NUMBER -> kind == Kind.NUMBER;
              default -> false;
            };
          }

          @Override
          public Boolean truth(boolean holds) {
            return kind == Kind.TRUTH;
          }
        });
  }

  @Test
  void everyNameHasAValueOfItsKindAtAnOperation() {
    assertThat(Vocabulary.names())
        .hasSizeGreaterThan(90)
        .allSatisfy(
            name -> {
              Kind kind = Objects.requireNonNull(Vocabulary.kind(name));
              assertThat(fits(kind, Objects.requireNonNull(VALUES.of(name), name))).isTrue();
            });
  }

  @Test
  void theNamesArePrintedAsTheyAre() throws IOException {
    Printed.in("names of rules").holds(print());
  }

  private static String print() {
    StringBuilder text = new StringBuilder("| name | what it is | |\n|---|---|---|\n");
    for (Map.Entry<String, Vocabulary.Word> word : Vocabulary.plain().entrySet()) {
      String kind = word.getValue().kind() == Kind.TRUTH ? "truth" : "length";
      text.append("| `%s` | %s | %s |\n".formatted(word.getKey(), kind, word.getValue().about()));
    }
    return text
        + "| `machine.NAME` | length | the shop's value, or our limit |\n"
        + "| `setting.NAME` | length | as set, 0 when not set; `tilt` and `angle` are angles,"
        + " `passes` a number |\n"
        + "| `at_TOOL`, `is_VERB` | truth | the tool, the operation: `at_planer`, `is_rip` |\n"
        + "| `"
        + String.join("`, `", Vocabulary.controls())
        + "` | truth | a control under `with` |\n\n"
        + "Kinds of hazard: "
        + Arrays.stream(Hazard.values())
            .map(h -> "`" + h.name().toLowerCase(Locale.ROOT) + "`")
            .collect(Collectors.joining(", "))
        + ".\n";
  }

  /** What the readme tells an instructor to write. */
  @Test
  void theRuleInTheReadmeWorks() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    int at = readme.indexOf("```yaml\ncautions:\n") + "```yaml\n".length();
    String rule = readme.substring(at, readme.indexOf("```", at));
    String shop = "{packetwright: 1, shop: S, units: inch, machines: {planer: {count: 1}}}";
    Shop bare = ShopReader.read("shop.yaml", shop).value();
    Shop own =
        ShopReader.read(
                "shop.yaml",
                "packetwright: 1\nshop: S\nunits: inch\nmachines: {planer: {count: 1}}\n" + rule)
            .value();
    assertThat(CautionRules.of(own).findings()).isEmpty();
    TrialOperation shortBoard =
        TrialOperation.of(Verb.PLANE_TO_THICKNESS, MachineKind.PLANER).where("length", 17 * 64);
    assertThat(refused(bare, shortBoard)).isZero();
    assertThat(refused(own, shortBoard)).isEqualTo(1);
    assertThat(refused(own, shortBoard.where("length", 18 * 64))).isZero();
  }

  private static long refused(Shop shop, TrialOperation operation) {
    CautionRules rules = CautionRules.of(shop).value();
    return rules.apply(TrialOperation.run(shop, operation), shop, Words.of("en")).refused().size();
  }
}
