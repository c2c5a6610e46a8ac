package packetwright.wood.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.project.Project.Bought;
import packetwright.definition.shop.Shop;
import packetwright.definition.shop.ShopReader;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Span;
import packetwright.wood.blank.Blank;
import packetwright.wood.part.Solid;
import packetwright.wood.workpiece.Layout;
import packetwright.wood.workpiece.Workpiece;

class HelpersTest {
  private static final Shop SHOP = ShopReader.builtIn();
  private static final Length HALF = Length.ofInches(1, 2);
  private static final Blank BLANK = blank();
  private static final Workpiece SIDE =
      new Workpiece(
          "side 1", "wall", Solid.block(Length.ofInches(9), Length.ofInches(7, 2), HALF), Map.of());

  private static Blank blank() {
    Blank.Reckoning width =
        new Blank.Reckoning(List.of(new Blank.Item("blank.width", "", Length.ofInches(15, 4))));
    return new Blank(
        "wall",
        "poplar",
        Bought.SURFACED_2,
        List.of("side 1"),
        new Blank.Reckoning(List.of()),
        width,
        Length.ofInches(13, 16),
        new Blank.Boards(1, width, List.of()),
        Span.startOf("project.yaml"));
  }

  private static Setting set(String name, Length value) {
    return new Setting(name, Quantity.of(value), "", null, Setting.Kind.BOUND, false);
  }

  private static Helper helper(
      Control control, @Nullable FeatureKind cut, @Nullable Layout layout, Setting... settings) {
    Helpers.Use use =
        new Helpers.Use(List.of(control), cut, List.of(settings), SIDE, BLANK, layout);
    return Helpers.of(use, SHOP).get(0);
  }

  private static List<String> sizes(Helper helper) {
    return helper.sizes().stream()
        .map(s -> (s.isLeast() ? "at least " : "") + s.name() + " " + s.value().inches())
        .toList();
  }

  @Test
  void aTestPieceIsAsWideAsTheBoardsAndAsThickAsTheWork() {
    Helper piece = helper(Control.TEST_PIECE, FeatureKind.GROOVE, null);
    assertThat(sizes(piece)).containsExactly("length 16", "width 15/4", "thickness 1/2");
    assertThat(piece.count()).isEqualTo(1);
    assertThat(piece.check()).containsExactly(new Helper.Check("slides", Length.ZERO));
  }

  @Test
  void twoTestPiecesOfARabbetAreLapped() {
    Helper half =
        helper(Control.TEST_PIECE, FeatureKind.RABBET, null, set("height", Length.ofInches(1, 4)));
    assertThat(half.count()).isEqualTo(2);
    assertThat(half.check()).containsExactly(new Helper.Check("flush", Length.ZERO));
  }

  @Test
  void aHoleIsTriedWithADowelOfItsDiameter() {
    Helper piece =
        helper(Control.TEST_PIECE, FeatureKind.HOLE, null, set("diameter", Length.ofInches(3, 8)));
    assertThat(piece.check()).containsExactly(new Helper.Check("gauge", Length.ofInches(3, 8)));
  }

  /** Two tongues on each other, counted in sixty-fourths and compared with one board. */
  @Property(seed = "20270107")
  void lappedRabbetsDifferFromABoardByTheStepThatIsSaid(
      @ForAll @IntRange(min = 2, max = 64) int thickness,
      @ForAll @IntRange(min = 1, max = 63) int depth) {
    int lapped = 2 * (thickness - depth);
    Helper.Check check = Helpers.lapped(Length.ofInches(thickness, 64), Length.ofInches(depth, 64));
    int said = check.value().dividedBy(Length.ofInches(1, 64)).ceiling().intValueExact();
    switch (check.name()) {
      case "flush" -> assertThat(lapped).isEqualTo(thickness);
      case "step_thick" -> assertThat(lapped).isEqualTo(thickness + said);
      case "step_thin" -> assertThat(lapped).isEqualTo(thickness - said);
      default -> throw new AssertionError(check.name());
    }
  }

  @Test
  void theFenceStandsByTheBlocksThicknessFartherThanTheStop() {
    Helper block = helper(Control.STAND_OFF_BLOCK, null, null, set("stop", Length.ofInches(9)));
    Length fence = block.sizes().get(1).value();
    assertThat(fence.minus(block.sizes().get(0).value())).isEqualTo(Length.ofInches(9));
  }

  @Test
  void aSledStopStandsAtTheStopAndIsAsHighAsTheWork() {
    assertThat(sizes(helper(Control.SLED_STOP, null, null, set("stop", Length.ofInches(9)))))
        .containsExactly("at 9", "at least height 1/2");
  }

  @Test
  void aSacrificialFenceHasRoomForTheCutterOnlyWhereItRunsIn() {
    Setting height = set("height", Length.ofInches(1, 4));
    Setting cutter = set("cutter", Length.ofInches(3, 4));
    assertThat(
            sizes(helper(Control.SACRIFICIAL_FENCE, null, null, set("stop", HALF), cutter, height)))
        .containsExactly("at least recess 1/4", "at least height 1/4");
    assertThat(
            sizes(
                helper(
                    Control.SACRIFICIAL_FENCE,
                    null,
                    null,
                    set("stop", Length.ofInches(1)),
                    cutter,
                    height)))
        .isEmpty();
  }

  @Test
  void aStoryStickBearsTheCutLinesOfTheLayout() {
    Layout layout =
        new Layout(
            "wall",
            Length.ofInches(35),
            Length.ofInches(7, 2),
            List.of(
                new Layout.Section(
                    "side 1", "A1", Length.ZERO, Length.ofInches(9), Length.ofInches(1, 8), false),
                new Layout.Section(
                    "", "", Length.ofInches(73, 8), Length.ofInches(35), Length.ZERO, false)));
    assertThat(sizes(helper(Control.STORY_STICK, null, layout)))
        .containsExactly("at least length 35", "mark 9");
  }

  @Test
  void aBackerIsAtLeastAsWideAsTheWork() {
    assertThat(sizes(helper(Control.BACKER, null, null))).containsExactly("at least width 7/2");
    assertThat(sizes(helper(Control.PUSH_STICK, null, null))).isEmpty();
  }
}
