package packetwright.definition.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.text.measure.Length;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;

class ShopReaderTest {
  private static final String SHOP =
      """
      packetwright: 1
      shop: Nowhere
      units: inch
      machines:
        table_saw: {count: 2, kerf: 1/8, rip_shortest: 12}
        dado_set: {count: 1}
      cutters:
        dado_set: {outside: 1/8, chippers: [1/8, 1/16], shims: [1/64]}
      hand_tools: [chisel]
      setup_check: [table_saw]
      allowances: {end_trim: 1}
      period: 45 min
      tax: 7 %
      """;

  private static Checked<Shop> read(String text) {
    return ShopReader.read("shop.yaml", text);
  }

  @Test
  void readsMachinesToolsCuttersAndAllowances() {
    Shop shop = read(SHOP).value();
    assertThat(shop.unit()).isEqualTo(Unit.INCH);
    assertThat(shop.machines()).containsOnlyKeys(MachineKind.TABLE_SAW, MachineKind.DADO_SET);
    Machine saw = Objects.requireNonNull(shop.machine(MachineKind.TABLE_SAW));
    assertThat(saw.count()).isEqualTo(2);
    assertThat(saw.values()).containsOnlyKeys("kerf", "rip_shortest");
    assertThat(saw.value("kerf", Length.ZERO)).isEqualTo(Length.ofInches(1, 8));
    assertThat(shop.cutters().chippers())
        .containsExactly(Length.ofInches(1, 8), Length.ofInches(1, 16));
    assertThat(shop.allowance("end_trim")).isEqualTo(Length.ofInches(1));
    assertThat(shop.has(MachineKind.CHISEL)).isTrue();
    assertThat(shop.has(MachineKind.BAND_SAW)).isFalse();
  }

  @Test
  void countsBareNumbersInTheShopsUnit() {
    Shop shop =
        read(SHOP.replace("units: inch", "units: mm").replace("end_trim: 1", "end_trim: 25.4"))
            .value();
    assertThat(shop.allowance("end_trim")).isEqualTo(Length.ofInches(1));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "table_saw: {count | tabel_saw: {count | unknown-key",
        "kerf: 1/8 | kerf: 3 min | wrong-unit",
        "kerf: 1/8 | kerf: -1/8 | negative-value",
        "kerf: 1/8 | kerf: thin | unreadable-length",
        "kerf: 1/8 | curve: 1/8 | unknown-key",
        "count: 2, | | missing-key",
        "period: 45 min | period: 45 in | wrong-unit",
        "[chisel] | [chissel] | wrong-value",
      })
  void findsWhatIsWrongAndKeepsTheRest(String right, String wrong, String code) {
    Checked<Shop> read = read(SHOP.replace(right, wrong == null ? "" : wrong));
    assertThat(read.isGood()).isFalse();
    assertThat(read.hasValue()).isTrue();
    assertThat(read.findings().get(0).code()).isEqualTo(code);
  }

  @Test
  void refusesADadoSetWithoutATableSaw() {
    String text = SHOP.replaceAll("(?m)^  table_saw:.*\n", "");
    assertThat(read(text).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.code()).isEqualTo("dado-set-alone"));
  }

  @Test
  void hasAProfileOfItsOwn() {
    Shop shop = ShopReader.builtIn();
    assertThat(shop.machines()).hasSize(13);
    assertThat(shop.handTools()).contains(MachineKind.BENCH_PLANE, MachineKind.HAND_SAW);
    assertThat(shop.setupCheck()).allSatisfy(kind -> assertThat(kind.isPowered()).isTrue());
  }

  @Test
  void namesNoMachineWhereTheFileIsEmpty() {
    assertThat(read("").findings())
        .singleElement()
        .satisfies(f -> assertThat(f.code()).isEqualTo("empty-file"));
  }

  @ParameterizedTest
  @CsvSource({
    "inch, kerf, 3, 3 mm",
    "inch, rip_shortest, 300, 300 mm",
    "inch, hand_distance, 150, 150 mm",
    "mm, kerf, 1/8, 1/8 in",
    "mm, rip_shortest, 12, 12 in",
    "mm, hand_distance, 6, 6 in"
  })
  void findsANumberInTheWrongUnit(String unit, String name, String value, String meant) {
    String text =
        "{packetwright: 1, shop: S, units: %s, machines: {table_saw: {count: 1, %s: %s}}}";
    assertThat(read(text.formatted(unit, name, value)).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.hint()).contains("`" + meant + "`"));
    assertThat(read(text.formatted(unit, name, meant)).findings()).isEmpty();
  }

  @Test
  void findsAShopWithNothingInIt() {
    String text = "{packetwright: 1, shop: S, units: inch, machines: {}, hand_tools: [%s]}";
    assertThat(read(text.formatted("")).findings())
        .extracting(f -> f.code())
        .containsExactly("empty-shop");
    assertThat(read(text.formatted("chisel")).findings()).isEmpty();
  }
}
