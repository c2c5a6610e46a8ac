package packetwright.paper.packet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.packet.DryFit.Piece;
import packetwright.paper.packet.DryFit.Way;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;

/** Common practice, no source: a long part to the machine, a shorter one to the plane. */
class DryFitTest {
  private static final Lesson LESSON = SampleLesson.lesson();
  private static final DryFit FIT =
      new DryFit(LESSON, new Naming(SampleLesson.WORDS, LESSON.project().rule()));

  private static Piece piece(int length, int width, int eighths, boolean isSheet) {
    return new Piece(
        Length.ofInches(length), Length.ofInches(width), Length.ofInches(eighths, 8), isSheet);
  }

  @ParameterizedTest(name = "{0} in by {1} in, {2} eighths thick, sheet {3}: {4}, {5}")
  @CsvSource({
    "24, 4, 4, false, JOINTER, TABLE_SAW",
    "14, 4, 4, false, JOINTER, TABLE_SAW",
    "11, 4, 4, false, BLOCK_PLANE, BLOCK_PLANE",
    "8, 4, 4, false, BLOCK_PLANE, BLOCK_PLANE",
    "24, 4, 2, false, BLOCK_PLANE, TABLE_SAW",
    "24, 4, 4, true, BLOCK_PLANE, TABLE_SAW",
    "8, 4, 2, true, BLOCK_PLANE, BLOCK_PLANE",
    "24, 30, 4, true, BLOCK_PLANE, BLOCK_PLANE"
  })
  void sendsAPartThatIsTooWideWhereItsSizeAllows(
      int length, int width, int eighths, boolean isSheet, Way little, Way more) {
    Piece piece = piece(length, width, eighths, isSheet);
    assertThat(FIT.narrowed(piece, false)).isEqualTo(little);
    assertThat(FIT.narrowed(piece, true)).isEqualTo(more);
  }

  @ParameterizedTest(name = "jointer from {0} in: a part {1} in long, {2}")
  @CsvSource({
    "10, 11, BLOCK_PLANE",
    "10, 12, JOINTER",
    "12, 12, JOINTER",
    "18, 17, BLOCK_PLANE",
    "18, 18, JOINTER"
  })
  void sendsALongPartToTheJointerOnlyWhereThisShopsJointerTakesIt(
      int shortest, int length, Way way) {
    Lesson lesson = atJointerFrom(shortest);
    DryFit fit = new DryFit(lesson, new Naming(SampleLesson.WORDS, lesson.project().rule()));
    assertThat(fit.narrowed(piece(length, 4, 4, false), false)).isEqualTo(way);
  }

  private static Lesson atJointerFrom(int shortest) {
    ProjectFolder folder = ProjectFolder.sample("sliding-lid-box");
    String shop = folder.text("shop.yaml").value();
    String stated = "jointer:     {count: 1, shortest: 12";
    assertThat(shop).contains(stated);
    String edited = shop.replace(stated, "jointer:     {count: 1, shortest: " + shortest);
    return SampleLesson.mended(folder.with("shop.yaml", edited));
  }

  @Test
  void sandsAThickSheetAndPlanesAThickBoard() {
    assertThat(FIT.thinned(piece(9, 4, 2, true))).isEqualTo(Way.SANDING_BLOCK);
    assertThat(FIT.thinned(piece(24, 4, 6, false))).isEqualTo(Way.BLOCK_PLANE);
  }

  @Test
  void theBoxSaysWhatToDoWithItsBottomAndItsLid() {
    PacketStep dryFit =
        SampleLesson.documents().student().steps().stream()
            .filter(s -> s.title().equals("Dry-fit the box"))
            .findFirst()
            .orElseThrow();
    assertThat(dryFit.fits())
        .extracting(
            r -> SampleLesson.WORDS.plain(r.parts()) + ": " + SampleLesson.WORDS.plain(r.wrong()))
        .contains(
            "D  Bottom and E  Lid: too wide",
            "D  Bottom and E  Lid: too thick for its slot",
            "E  Lid: too long",
            "Any part: too narrow, too short, too thin or too loose");
  }
}
