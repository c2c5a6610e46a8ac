package packetwright.wood.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import packetwright.definition.project.Project;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.project.ProjectReader;
import packetwright.definition.shop.ShopReader;
import packetwright.definition.size.Sizes;
import packetwright.definition.size.Substitution;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.wood.part.Box;
import packetwright.wood.part.Parts;

/**
 * A shelter 8 in deep whose sides fall from 12 in at the back to 6 in at the front: 3 in for each
 * 4. The roof lies on them, 10 in long down the slope, turned about the line at the back.
 */
class MatingPlaneTest {
  private static final String ROOF =
      "roof: {corner: [0, 0, 12], inside: +z, top: +x, tilt: {rise: 3, run: 4, about: +y}}";

  private static final String PROJECT =
      String.join(
          "\n",
          "packetwright: 1",
          "id: shelter",
          "title: Shelter",
          "units: inch",
          "rule: 1/32",
          "parts:",
          "  side:",
          "    letter: A",
          "    count: 2",
          "    blank: stock",
          "    size: [12, 8, 3/4]",
          "    features:",
          "      slope: {miter: right, from: bottom, by: 6}",
          "  roof: {letter: B, count: 1, blank: stock, size: [9, 10, 3/4]}",
          "blanks:",
          "  stock: {material: pine, bought: surfaced_4, cut: [side, side, roof]}",
          "materials:",
          "  pine: {thickness: 3/4, sold: foot, price: 1}",
          "assembly:",
          "  places:",
          "    side 1: {corner: [0, 0, 0], inside: +y, top: +x}",
          "    side 2: {corner: [0, 7, 0], inside: +y, top: +x}",
          "    " + ROOF,
          "  joints:",
          "    roof_on: {rest: [roof, side 1, side 2]}",
          "");

  private static Checked<Assembly> assembly(String replaced, String by) {
    assertThat(PROJECT).contains(replaced);
    return of(PROJECT.replace(replaced, by));
  }

  private static Checked<Assembly> of(String text) {
    ProjectFolder folder =
        ProjectFolder.sample("sliding-lid-box").with("project.yaml", text).with("quiz.yaml", "");
    Project project = ProjectReader.read(folder).value();
    Sizes sizes = Sizes.of(project, ShopReader.builtIn(), Substitution.NONE).value();
    return Assembly.of(project, sizes, Parts.of(project, sizes).value());
  }

  private static List<String> messages(String replaced, String by) {
    Checked<Assembly> assembly = assembly(replaced, by);
    assertThat(assembly.findings()).extracting(Finding::code).containsOnly("tilt-mismatch");
    return assembly.findings().stream().map(Finding::message).toList();
  }

  @Test
  void aRoofOfTheSameSlopeLiesOnItsSides() {
    Checked<Assembly> assembly = assembly(ROOF, ROOF);
    assertThat(assembly.findings()).isEmpty();
    assertThat(assembly.value().tilted()).extracting(Placed::piece).containsExactly("roof");
  }

  @Test
  void aTiltedPieceDoesNotCountOutside() {
    Box outside = assembly(ROOF, ROOF).value().outside();
    assertThat(outside)
        .isEqualTo(
            new Box(TestPieces.at(0, 0, 0), TestPieces.at(8, 0, 12).with(1, TestPieces.in(31, 4))));
  }

  @Test
  void aRoofMayReachUpPastTheBack() {
    // 4 in behind the back the plane is 3 in higher.
    assertThat(assembly("roof: {corner: [0, 0, 12]", "roof: {corner: [-4, 0, 15]").findings())
        .isEmpty();
  }

  @Test
  void namesTheOtherSlope() {
    assertThat(messages("{rise: 3, run: 4", "{rise: 1, run: 2"))
        .containsExactly(
            "`roof` rises 1 in over 2 in, and `side 1` is cut to rise 1 1/2 in over that",
            "`roof` rises 1 in over 2 in, and `side 2` is cut to rise 1 1/2 in over that");
  }

  @Test
  void namesTheOtherWay() {
    assertThat(messages("about: +y", "about: -y").get(0)).endsWith("rise 3 in the other way");
  }

  @Test
  void namesTheHeight() {
    assertThat(messages("[0, 0, 12]", "[0, 0, 12 1/8]").get(0))
        .isEqualTo("`roof` lies 1/8 in above the slope of `side 1`, along z");
    assertThat(messages("[0, 0, 12]", "[0, 0, 11 3/4]").get(0))
        .isEqualTo("`roof` lies 1/4 in below the slope of `side 1`, along z");
  }

  /** 10 in down the slope are exactly 8 in level: 3, 4, 5. */
  @Test
  void comparesTheReachDownTheSlopeExactly() {
    assertThat(messages("[0, 0, 12]", "[-8, 0, 18]").get(0)).endsWith("and beside it");
    assertThat(assembly("[0, 0, 12]", "[-8 + 1/64, 0, 18 - 3/256]").findings()).isEmpty();
    assertThat(messages("[0, 0, 12]", "[8, 0, 6]").get(0)).endsWith("and beside it");
  }

  @Test
  void liesBesideWhatItDoesNotCover() {
    assertThat(messages("[0, 0, 12]", "[0, 3/4, 12]"))
        .containsExactly("`roof` lies in the plane of `side 1` and beside it");
  }

  /** Over 4 the roof's lower face is at 9 and, its slope being 3, 4, 5, its upper at 9 15/16. */
  @Test
  void aTiltedPieceNeedsItsSpace() {
    String upright = "side 2: {corner: [0, 7, 0], inside: +y, top: +x}";
    String post = "side 2: {corner: [4, 7, 9 15/16], inside: +y, top: +x}";
    String rest = "roof_on: {rest: [roof, side 1]}\n    post: {butt: [roof, side 2]}";
    String project = PROJECT.replace("roof_on: {rest: [roof, side 1, side 2]}", rest);
    assertThat(of(project.replace(upright, post)).findings()).isEmpty();
    assertThat(of(project.replace(upright, post.replace("9 15/16", "9 7/8"))).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.code()).isEqualTo("parts-overlap"))
        .satisfies(f -> assertThat(f.message()).contains("roof", "side 2"));
  }

  @Test
  void aLevelPieceRestsWhereItTouches() {
    String level = "roof: {corner: [0, 0, 12], inside: +z, top: +x}";
    assertThat(assembly(ROOF, level.replace("12", "12 + 1/16")).findings())
        .extracting(Finding::message)
        .contains(
            "`side 1` and `roof` stand 1/16 in apart along z,"
                + " and a rest joint is meant to close up");
    assertThat(assembly(ROOF, level).findings()).isEmpty();
  }
}
