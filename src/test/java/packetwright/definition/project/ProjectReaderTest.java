package packetwright.definition.project;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import packetwright.text.measure.Rational;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;

class ProjectReaderTest {
  private static final ProjectFolder BOX = ProjectFolder.sample("sliding-lid-box");

  private static Project box() {
    Checked<Project> read = ProjectReader.read(BOX);
    assertThat(read.findings()).isEmpty();
    return read.value();
  }

  private static ProjectFolder edited(String... edits) {
    String text = BOX.text("project.yaml").value();
    for (int i = 0; i < edits.length; i += 2) {
      assertThat(text).contains(edits[i]);
      text = text.replace(edits[i], edits[i + 1]);
    }
    return BOX.with("project.yaml", text);
  }

  @Test
  void readsTheSampleWithoutFindings() {
    Project box = box();
    assertThat(box.id()).isEqualTo("sliding-lid-box");
    assertThat(box.rule().graduation()).isEqualTo(Rational.of(1, 32));
    assertThat(box.parts())
        .extracting(p -> p.name().value(), PartDefinition::letter, PartDefinition::count)
        .hasSize(5)
        .contains(org.assertj.core.groups.Tuple.tuple("side", "A", 2));
    assertThat(box.requires()).hasSize(5);
    assertThat(box.objectives()).hasSize(4);
    assertThat(box.options().names()).contains("brads");
  }

  @Test
  void keepsGivensInOrderWithRangeAndTolerance() {
    Project.Given first = box().givens().get(0);
    assertThat(first.name().value()).isEqualTo("board_width");
    assertThat(first.value().value().value()).isEqualTo(Rational.of(7, 2));
    assertThat(first.tolerance()).isNull();
    assertThat(box().givens())
        .filteredOn(g -> g.tolerance() != null)
        .extracting(g -> g.name().value())
        .containsExactly("stock_thickness", "panel_thickness");
  }

  @Test
  void marksTheMeasuredSize() {
    assertThat(box().sizes())
        .filteredOn(Project.DerivedSize::measured)
        .extracting(s -> s.name().value(), s -> s.formula().value())
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("tongue", "stock_thickness - rabbet_depth"));
  }

  @Test
  void readsFeaturesWithFaceReferenceAndFormulas() {
    PartDefinition.FeatureDefinition groove = box().parts().get(0).features().get(1);
    assertThat(groove.kind()).isEqualTo(PartDefinition.FeatureKind.GROOVE);
    assertThat(groove.face()).isEqualTo(Side.INSIDE);
    assertThat(groove.from()).isEqualTo(Side.TOP);
    assertThat(groove.sizes()).containsOnlyKeys("at", "width", "depth");
  }

  @Test
  void readsStockAsSold() {
    assertThat(box().materials().get(0).lengths())
        .extracting(q -> q.value().value())
        .containsExactly(Rational.of(96), Rational.of(120));
    assertThat(box().supplies().get(2).grits()).containsExactly(100, 150, 220);
    assertThat(box().blanks().get(0).cut())
        .extracting(Located::value)
        .containsExactly("side", "side", "back_end", "front_end");
  }

  @Test
  void readsTheQuiz() {
    List<QuizDefinition.QuestionDefinition> questions = box().quiz().questions();
    assertThat(questions).hasSize(5);
    assertThat(questions.get(2).values().get("take"))
        .extracting(Located::value)
        .containsExactly("tongue", "tongue");
    assertThat(ProjectReader.read(BOX.without("quiz.yaml")).value().quiz().questions()).isEmpty();
  }

  @Test
  void findsManyMistakesInOneRun() {
    Checked<Project> read =
        ProjectReader.read(
            edited(
                "box_length:      {value: 9,", "box_length:      {valu: 9,",
                "rule: 1/32", "rule: 1/3x",
                "letter: B", "letter: A",
                "blank: panel", "blank: panell",
                "inside: +y", "inside: up",
                "[side, side, back_end, front_end]", "[side, side, back_end, frontend]"));
    assertThat(read.isGood()).isFalse();
    assertThat(read.findings())
        .extracting(Finding::code)
        .contains(
            "unknown-key",
            "missing-key",
            "unreadable-length",
            "duplicate-letter",
            "unknown-blank",
            "wrong-value",
            "unknown-part");
  }

  @Test
  void givesEachMistakeOneFinding() {
    for (String[] edit :
        List.of(
            new String[] {"course: Woods 1", "curse: Woods 1"},
            new String[] {"value: 3-1/2", "value: 3,5"},
            new String[] {"units: inch", "units: inches"},
            new String[] {"front_section: max(shop.rip", "front_section: {is: max(shop.rip"},
            new String[] {"id: sliding-lid-box", "id: Sliding Lid"},
            new String[] {"about: Outside length of the box", "about: Outside length, of the box"},
            new String[] {
              "size: [box_length, board_width, stock", "size: [max(a, b), board_width, stock"
            })) {
      assertThat(ProjectReader.read(edited(edit)).findings())
          .as("%s", Arrays.toString(edit))
          .hasSize(1);
    }
  }

  @Test
  void reportsAMissingProjectFile() {
    Checked<Project> read = ProjectReader.read(BOX.without("project.yaml"));
    assertThat(read.hasValue()).isFalse();
    assertThat(read.findings()).extracting(Finding::code).containsExactly("missing-file");
  }
}
