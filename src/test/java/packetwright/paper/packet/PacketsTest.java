package packetwright.paper.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import packetwright.definition.project.ProjectFolder;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter;
import packetwright.drawing.sheet.Sheet;
import packetwright.paper.packet.AnswerKey.SizeRow;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.text.source.Span;
import packetwright.text.words.Phrase;
import packetwright.wood.caution.Caution;

class PacketsTest {
  private static final Packets.Documents DOCUMENTS = SampleLesson.documents();

  private static String plain(Phrase phrase) {
    return SampleLesson.WORDS.plain(phrase);
  }

  private static PacketStep step(Packets.Documents documents, String title) {
    return documents.student().steps().stream()
        .filter(s -> s.title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  private static String prose(PacketStep step) {
    return step.prose().stream().map(p -> plain(p.text())).collect(Collectors.joining(" "));
  }

  private static Packets.Documents with(String given, Length value) {
    Lesson lesson =
        SampleLesson.lesson(
            Map.of(given, new Located<>(Quantity.of(value), new Span("command line", 1, 1, 1))));
    return Packets.of(lesson, SampleLesson.quiz(lesson), SampleLesson.WORDS).value();
  }

  @Test
  void fillsSizesIntoTheProse() {
    assertThat(prose(step(DOCUMENTS, "Rip the wall blank to width")))
        .contains("Set the fence to 3 1/2 in. Measure to the near side");
  }

  @Test
  void fillsStepNumbersIntoTheProse() {
    String back = step(DOCUMENTS, "Cut the back end").mark();
    String front = step(DOCUMENTS, "Cut the front end").mark();
    assertThat(prose(step(DOCUMENTS, "Lay out the wall blank")))
        .contains("in steps " + back + " and " + front + ".");
  }

  @Test
  void aSubstitutionChangesProseTableSettingAndKey() {
    Packets.Documents wide = with("board_width", Length.ofInches(11, 2));
    PacketStep rip = step(wide, "Rip the wall blank to width");
    assertThat(prose(rip)).contains("Set the fence to 5 1/2 in.");
    assertThat(plain(rip.settings().get(0).lines().get(0).value())).isEqualTo("5 1/2 in");
    assertThat(plain(wide.student().parts().get(0).width())).isEqualTo("5 1/2 in");
    assertThat(wide.key().substituted()).hasSize(1);
    assertThat(plain(wide.key().substituted().get(0).own())).isEqualTo("3 1/2 in");
    assertThat(plain(wide.key().substituted().get(0).now()))
        .isEqualTo("5 1/2 in (given as 139.7 mm)");
    assertThat(DOCUMENTS.key().substituted()).isEmpty();
  }

  @Test
  void oneSetUpOfTwoCutsIsPrintedOnce() {
    assertThat(step(DOCUMENTS, "Cut the grooves").settings()).hasSize(1);
    assertThat(step(DOCUMENTS, "Cut the bottom and the lid").settings()).hasSize(3);
  }

  @Test
  void asksForTheInstructorsLookWhereTheShopDemandsIt() {
    assertThat(plain(step(DOCUMENTS, "Cut the grooves").check())).contains("dado set");
    assertThat(plain(step(DOCUMENTS, "Square one end").check())).contains("miter saw");
    assertThat(step(DOCUMENTS, "Fit the lid").check().pieces()).isEmpty();
  }

  private static PacketStep prepared(String title) {
    return DOCUMENTS.key().preparation().stream()
        .filter(s -> s.title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatTheInstructorDoesBeforeClassStandsInTheKeyAlone() {
    assertThat(DOCUMENTS.key().preparation())
        .extracting(s -> s.mark() + " " + s.title())
        .containsExactly("P1 Cut the rough pieces", "P2 Plane the wall blanks");
    assertThat(DOCUMENTS.key().between()).isEmpty();
    List<String> marks = DOCUMENTS.student().steps().stream().map(PacketStep::mark).toList();
    assertThat(marks).hasSizeGreaterThan(15).startsWith("1", "2", "3").doesNotContain("P1", "P2");
    assertThat(marks.get(marks.size() - 1)).isEqualTo(Integer.toString(marks.size()));
    assertThat(DOCUMENTS.student().steps().get(0).title()).isEqualTo("Joint the bottom edge");
  }

  @Test
  void aPreparationStepSaysAllThatAStudentsStepSays() {
    PacketStep plane = prepared("Plane the wall blanks");
    assertThat(prose(plane)).contains("Plane every wall blank");
    assertThat(plane.settings()).hasSize(1);
    assertThat(plane.cautions()).isNotEmpty();
    assertThat(plane.checks()).hasSize(1);
    assertThat(plane.checks().get(0).items().stream().map(PacketsTest::plain))
        .anyMatch(i -> i.startsWith("Outfeed clear"))
        .anyMatch(i -> i.startsWith("Thickness 1/2 in"));
  }

  @Test
  void thePacketSaysWhatIsHandedOutAsItIsThen() {
    assertThat(DOCUMENTS.student().handed())
        .extracting(
            b ->
                plain(b.name())
                    + ", "
                    + plain(b.length())
                    + ", "
                    + plain(b.width())
                    + ", "
                    + plain(b.thickness())
                    + ", "
                    + plain(b.done()))
        .containsExactly(
            "Wall blank, 36 in, 3 3/4 in, 1/2 in, cut and planed",
            "Panel blank, 19 in, 4 3/4 in, 1/4 in, cut");
    assertThat(DOCUMENTS.student().blanks()).isEmpty();
  }

  @Test
  void anInstructorsStepAfterAStudentsWorkKeepsItsNumberAndSaysWhatComesBack() {
    ProjectFolder sample = ProjectFolder.sample("sliding-lid-box");
    String procedure =
        sample
            .text("procedure.md")
            .value()
            .replace("  to: front_width\n", "  to: front_width\n  by: instructor\n");
    Lesson lesson = SampleLesson.mended(sample.with("procedure.md", procedure));
    Packets.Documents documents =
        Packets.of(lesson, SampleLesson.quiz(lesson), SampleLesson.WORDS).value();
    PacketStep rip = step(documents, "Rip the front section");
    assertThat(rip.mark()).isEqualTo(step(DOCUMENTS, "Rip the front section").mark());
    assertThat(plain(rip.back()))
        .isEqualTo(
            "Your instructor does this step. You get back: "
                + "Wall blank, 12 1/8 in long, 2 15/16 in wide, 1/2 in thick.");
    assertThat(documents.key().between()).containsExactly(rip);
    assertThat(documents.key().preparation()).extracting(PacketStep::mark).doesNotContain("P3");
  }

  @Test
  void aBlankThatStudentsCutThemselvesIsRoughAndNotHandedOut() {
    ProjectFolder sample = ProjectFolder.sample("sliding-lid-box");
    String procedure =
        sample
            .text("procedure.md")
            .value()
            .replace("  at: table_saw\n  by: instructor\n", "  at: table_saw\n");
    Lesson lesson = SampleLesson.mended(sample.with("procedure.md", procedure));
    Packets.Documents documents =
        Packets.of(lesson, SampleLesson.quiz(lesson), SampleLesson.WORDS).value();
    assertThat(documents.student().steps().get(0).title()).isEqualTo("Cut the rough pieces");
    assertThat(documents.student().steps().get(0).isBetween()).isFalse();
    assertThat(documents.student().blanks())
        .extracting(b -> plain(b.name()))
        .containsExactly("Wall blank", "Panel blank");
  }

  @Test
  void everyCautionStandsOnTheSafetyPage() {
    assertThat(SampleLesson.lesson().cautions()).hasSizeGreaterThan(20);
    for (Caution caution : SampleLesson.lesson().cautions()) {
      assertThat(DOCUMENTS.key().safety())
          .filteredOn(s -> plain(s.statement().hazard()).equals(caution.hazard()))
          .flatExtracting(AnswerKey.Safety::fired)
          .as(caution.rule())
          .flatExtracting(AnswerKey.Fired::marks)
          .contains(caution.fired().get(0).run().step().mark());
    }
  }

  @Test
  void theFittingSheetNamesEveryPartCutToFit() {
    StudentPacket.FittingSheet sheet = DOCUMENTS.student().fitting();
    assertThat(sheet.measured())
        .extracting(m -> plain(m.name()))
        .containsExactly("Tongue, 2 measured together");
    assertThat(sheet.fitted())
        .extracting(f -> plain(f.part()).substring(0, 1) + " " + plain(f.what()))
        .containsExactly("B length", "C length", "D width", "E width");
    assertThat(plain(sheet.fitted().get(0).low())).isEqualTo("4 15/32 in");
    assertThat(plain(sheet.fitted().get(0).high())).isEqualTo("4 17/32 in");
    assertThat(plain(sheet.fitted().get(0).reckoning()))
        .isEqualTo("box width 5 in \u2212 your tongue, 2 together");
    assertThat(plain(sheet.fitted().get(2).reckoning()))
        .isEqualTo("your end length \u2212 clearance 1/16 in");
  }

  @Test
  void theKeyAnswersTheFittingSheetForWhateverIsMeasured() {
    assertThat(DOCUMENTS.key().fitting()).hasSize(1);
    AnswerKey.FittingTable table = DOCUMENTS.key().fitting().get(0);
    assertThat(table.parts())
        .extracting(PacketsTest::plain)
        .containsExactly("B length", "C length", "D width", "E width");
    List<String> rows =
        table.rows().stream()
            .map(
                r ->
                    plain(r.measured())
                        + ": "
                        + r.cuts().stream()
                            .map(PacketsTest::plain)
                            .collect(Collectors.joining(", ")))
            .toList();
    assertThat(rows)
        .hasSize(7)
        .contains("1/2 in: 4 1/2 in, 4 1/2 in, 4 7/16 in, 4 7/16 in")
        .startsWith("29/64 in: 4 35/64 in, 4 35/64 in, 4 31/64 in, 4 31/64 in")
        .endsWith("35/64 in: 4 29/64 in, 4 29/64 in, 4 25/64 in, 4 25/64 in");
  }

  @Test
  void theDaggerStandsAtTheSizeThatIsCutToFit() {
    List<String> marked =
        DOCUMENTS.student().parts().stream()
            .flatMap(
                p ->
                    Stream.of(p.length(), p.width(), p.thickness())
                        .map(size -> p.letter() + " " + plain(size)))
            .filter(text -> text.endsWith("\u2020"))
            .toList();
    assertThat(marked)
        .containsExactly(
            "B 4 1/2 in \u2020", "C 4 1/2 in \u2020", "D 4 7/16 in \u2020", "E 4 7/16 in \u2020");
  }

  @Test
  void explainsTheTradeWordsThatTheStepsUseAndNoOthers() {
    List<String> words =
        DOCUMENTS.student().glossary().stream().map(StudentPacket.Term::word).toList();
    assertThat(words)
        .contains("Rabbet", "Dry fit", "Push stick", "Tongue")
        .doesNotContain("Plow plane");
    assertThat(Glossary.WORDS).allMatch(w -> SampleLesson.WORDS.hasKey(Glossary.key(w)));
  }

  @Test
  void allPartsAreDrawnAtOneScale() {
    assertThat(with("board_width", Length.ofInches(25, 8)).student().drawings())
        .allSatisfy(sheet -> assertThat(texts(sheet)).contains("1/2 size"));
  }

  private static List<String> texts(Sheet sheet) {
    List<String> texts = new ArrayList<>();
    sheet.paint(
        new Painter() {
          @Override
          public void stroke(Outline path, Pen pen) {}

          @Override
          public void fill(Outline path, double grey) {}

          @Override
          public void text(double x, double y, double angle, double size, Face face, String text) {
            texts.add(text);
          }
        });
    return texts;
  }

  @Test
  void theKeyShowsTheWorkingOfASize() {
    List<SizeRow> rows = DOCUMENTS.key().sizes().stream().flatMap(g -> g.rows().stream()).toList();
    SizeRow end = row(rows, "end_length");
    assertThat(end.formula()).isEqualTo("box_width - 2 * tongue");
    assertThat(plain(end.value())).isEqualTo("4 1/2 in");
    assertThat(plain(end.title())).isEqualTo("End length");
    assertThat(end.fitted()).isFalse();
    SizeRow back = row(rows, "back_end.length");
    assertThat(plain(back.title())).isEqualTo("Back end, length");
    assertThat(back.fitted()).isTrue();
  }

  private static SizeRow row(List<SizeRow> rows, String name) {
    return rows.stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void anUnknownPlaceIsAFindingWithANearMiss() {
    ProjectFolder sample = ProjectFolder.sample("sliding-lid-box");
    String procedure = sample.text("procedure.md").value();
    String wrong =
        procedure
            .replace("Set the fence to {board_width}.", "Set the fence to {bord_width}.")
            .replace("Lock the fence.", "Lock the fence at {setting: fense}.");
    Lesson lesson = SampleLesson.mended(sample.with("procedure.md", wrong));
    Checked<Packets.Documents> documents =
        Packets.of(lesson, SampleLesson.quiz(lesson), SampleLesson.WORDS);
    assertThat(documents.hasValue()).isFalse();
    assertThat(documents.findings())
        .extracting(Finding::code)
        .containsExactly("unknown-place", "unknown-place");
    assertThat(documents.findings())
        .extracting(Finding::hint)
        .containsExactly("write `board_width`", "write `fence`");
    assertThat(documents.findings().get(0).step()).contains("Rip the wall blank to width");
  }
}
