package packetwright.wood.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.definition.project.Project;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.project.ProjectReader;
import packetwright.definition.shop.ShopReader;
import packetwright.definition.size.Sizes;
import packetwright.definition.size.Substitution;
import packetwright.text.measure.Length;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.part.Parts;
import packetwright.wood.part.Point;

class AssemblyTest {
  private static final ProjectFolder SAMPLE = ProjectFolder.sample("sliding-lid-box");

  private static Checked<Assembly> assembly(String replaced, String by) {
    String text = SAMPLE.text("project.yaml").value();
    assertThat(text).contains(replaced);
    Project project =
        ProjectReader.read(SAMPLE.with("project.yaml", text.replace(replaced, by))).value();
    Sizes sizes = Sizes.of(project, ShopReader.builtIn(), Substitution.NONE).value();
    List<Part> parts = Parts.of(project, sizes).value();
    return Assembly.of(project, sizes, parts);
  }

  @Test
  void boxIsAsLargeOutsideAsItsGivensSay() {
    Checked<Assembly> assembly = assembly("units: inch", "units: inch");
    assertThat(assembly.findings()).isEmpty();
    assertThat(assembly.value().outside())
        .isEqualTo(
            new Box(
                new Point(Length.ZERO, Length.ZERO, Length.ZERO),
                new Point(Length.ofInches(9), Length.ofInches(5), Length.ofInches(7, 2))));
  }

  @Test
  void namesTwoPartsThatNeedTheSameSpace() {
    Checked<Assembly> assembly =
        assembly(
            "bottom:    {corner: [stock_thickness - groove_depth + clearance / 2",
            "bottom:    {corner: [stock_thickness - groove_depth - clearance");
    assertThat(assembly.findings()).extracting(Finding::code).containsOnly("parts-overlap");
    assertThat(assembly.findings().get(0).message()).contains("`front_end`").contains("`bottom`");
  }

  @Test
  void namesWhatIsInTheWayOfASlide() {
    Checked<Assembly> assembly = assembly("out: -x", "out: +x");
    assertThat(assembly.findings()).extracting(Finding::code).containsOnly("slide-blocked");
    assertThat(assembly.findings().get(0).message()).contains("`back_end` is in the way");
  }

  /** The two brads of a corner stand between the grooves' 3/8 in: from 29/32 to 2 19/32 in. */
  @Test
  void bradsOfACornerStandBetweenTheGrooves() {
    String text = SAMPLE.text("project.yaml").value();
    Project project = ProjectReader.read(SAMPLE.with("project.yaml", text)).value();
    Fastener brads = Fastener.of(project.supplies().get(1), Fastener.Kind.NAIL);
    assertThat(brads).isNotNull();
    for (Joint corner : project.assembly().joints().subList(0, 4)) {
      List<Fastening> placed =
          new FastenerPlacing(
                  assembly("units: inch", "units: inch").value(),
                  java.util.Objects.requireNonNull(brads),
                  project.rule(),
                  corner.name().at())
              .place(corner, List.of())
              .value();
      assertThat(placed).hasSize(1);
      assertThat(placed.get(0).driven()).startsWith("side");
      assertThat(placed.get(0).line().places())
          .containsExactly(Length.ofInches(1), Length.ofInches(5, 2));
      assertThat(placed.get(0).line().inset()).isEqualTo(Length.ofInches(1, 4));
    }
  }

  @Test
  void tellsHowFarPiecesStandApart() {
    Assembly box = assembly("units: inch", "units: inch").value();
    Placed lid = java.util.Objects.requireNonNull(box.piece("lid"));
    Placed side = java.util.Objects.requireNonNull(box.piece("side 1"));
    Placed front = java.util.Objects.requireNonNull(box.piece("front_end"));
    assertThat(lid.gapTo(front, 2)).isEqualTo(Length.ofInches(1, 32));
    assertThat(lid.gapTo(side, 1)).isEqualTo(Length.ofInches(1, 32));
    assertThat(lid.touches(side)).isTrue();
    assertThat(lid.touches(front)).isFalse();
  }
}
