package packetwright.definition.size;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.definition.project.Project;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.project.ProjectReader;
import packetwright.definition.shop.Shop;
import packetwright.definition.shop.ShopReader;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Unit;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/** The sliding-lid box against the sizes that were reckoned on paper. */
class SampleSizesTest {
  private static final ProjectFolder FOLDER = ProjectFolder.sample("sliding-lid-box");

  private static Checked<Sizes> sizes(ProjectFolder folder, Map<String, String> substitution) {
    Project project = ProjectReader.read(folder).value();
    Shop shop = ShopReader.read("shop.yaml", folder.text("shop.yaml").value()).value();
    Map<String, Located<Quantity>> set = new LinkedHashMap<>();
    substitution.forEach((name, value) -> set.put(name, quantity(value)));
    return Sizes.of(project, shop, Substitution.of(set));
  }

  private static Located<Quantity> quantity(String text) {
    Span at = new Span("--set", 1, 1, text.length());
    return new Located<>(QuantityReader.read(new Located<>(text, at), Unit.INCH).value(), at);
  }

  private static Quantity exactly(String text) {
    return quantity(text).value();
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          rabbet_depth, 1/4
          tongue, 1/4
          end_length, 4 1/2
          groove_width, 9/32
          groove_depth, 1/4
          front_width, 2 15/16
          inside_length, 8
          inside_width, 4
          inside_height, 2 7/16
          bottom_length, 8 7/16
          bottom_width, 4 7/16
          lid_width, 4 7/16
          lid_length, 8 3/4
          front_section, 12
          side.length, 9
          back_end.length, 4 1/2
          front_end.width, 2 15/16
          lid.finger_notch.depth, 1/8
          side.end_rabbets.width, 1/2
          table_saw.kerf, 1/8
          """)
  void comeOutAsReckonedOnPaper(String name, String inches) {
    Checked<Sizes> sizes = sizes(FOLDER, Map.of());
    assertThat(sizes.findings()).isEmpty();
    assertThat(sizes.value().get(name).value()).isEqualTo(exactly(inches));
  }

  @ParameterizedTest
  @CsvSource({
    "3-1/8, 2 9/16, 2 1/16",
    "4, 3 7/16, 2 15/16",
    "101.6 mm, 3 7/16, 2 15/16",
    "5 1/2, 4 15/16, 4 7/16",
    "7-1/4, 6 11/16, 6 3/16"
  })
  void followAnotherBoard(String board, String front, String inside) {
    Sizes sizes = sizes(FOLDER, Map.of("board_width", board)).value();
    assertThat(sizes.get("front_width").value()).isEqualTo(exactly(front));
    assertThat(sizes.get("inside_height").value()).isEqualTo(exactly(inside));
    assertThat(sizes.get("side.width").value()).isEqualTo(exactly(board));
  }

  @Test
  void theEndsStrayBetweenTheWorstCasesOfTheWalk() {
    Size end = sizes(FOLDER, Map.of()).value().get("end_length");
    assertThat(end.low()).isEqualTo(exactly("4 29/64"));
    assertThat(end.high()).isEqualTo(exactly("4 35/64"));
    assertThat(end.fitted()).containsExactly("tongue");
  }

  @Test
  void aBoardThatIsTooNarrowFailsARequirementToo() {
    Checked<Sizes> sizes = sizes(FOLDER, Map.of("board_width", "2-3/4"));
    assertThat(sizes.findings())
        .extracting(Finding::code)
        .containsExactly("value-out-of-range", "requirement-fails");
    assertThat(sizes.findings().get(1).message())
        .isEqualTo(
            "The box would be too shallow inside: `inside_height >= 1 3/4`"
                + " comes to 1 11/16 in ≥ 1 3/4 in");
  }

  @Test
  void aFindingPointsIntoTheFile() {
    String text = FOLDER.text("project.yaml").value();
    String broken = text.replace("box_width - 2 * tongue", "box_width - 2 * tonge");
    Finding finding = sizes(FOLDER.with("project.yaml", broken), Map.of()).findings().get(0);
    assertThat(finding.code()).isEqualTo("unknown-name");
    String line = broken.split("\n", -1)[finding.at().line() - 1];
    int start = finding.at().column() - 1;
    assertThat(line.substring(start, start + finding.at().length())).isEqualTo("tonge");
  }
}
