package packetwright.paper.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.packet.AnswerKey.Fired;
import packetwright.paper.packet.AnswerKey.LimitRow;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.text.source.Checked;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/** The key's safety page for an instructor whose shop is stricter here and looser there. */
class SafetyPageTest {
  private static final Words WORDS = Words.of("en");

  private static final String ACCEPTED =
      "accepted:\n"
          + "  - {refusal: planed-too-short-here, step: plane-the-wall-blanks, because: An aide"
          + " catches each board}\n"
          + "  - {refusal: held-too-short, step: cut-the-back-end, because: The instructor makes this"
          + " cut.}\n\n";

  private static final String OWN_RULE =
      """
      cautions:
        - name: snipe_at_planer
          against: small_piece
          at: planer
          when: piece.length < 48
          signal: warning
          source: the department's rules
          words:
            hazard: The rollers let go of a short board before it is out.
            consequence: It can jump and strike your hands.
            avoid: Plane it while it is part of a longer board.
            why: The board is {piece.length} long.
          refusals:
            - code: planed-too-short-here
              when: not jig and piece.length < 40
              message: "the {piece} is {piece.length} long; the {tool} takes none under 40 in here"
              hint: plane it before it is cut free
              waivable: true
      """;

  private static final String BACK_END =
      "- crosscut: back_end\n  of: wall\n  stop: true\n  at: miter_saw\n";

  private static AnswerKey key(ProjectFolder folder) {
    Checked<Lesson> lesson =
        Lessons.workOut(folder, new Lessons.Request("", List.of(), Set.of(), "2027 spring"));
    assertThat(lesson.findings()).isEmpty();
    return Packets.of(lesson.value(), SampleLesson.quiz(lesson.value()), WORDS).value().key();
  }

  private static AnswerKey key() {
    ProjectFolder folder = ProjectFolder.sample("sliding-lid-box");
    folder = edited(folder, "project.yaml", "rubric:", ACCEPTED + "rubric:");
    folder = edited(folder, "procedure.md", BACK_END + "  with: [clamps]\n", BACK_END);
    folder = edited(folder, "shop.yaml", "rip_narrowest: 2", "rip_narrowest: 2, push_block_at: 3");
    folder = edited(folder, "shop.yaml", "{count: 1, shortest: 12,", "{count: 1, shortest: 10,");
    return key(folder.with("shop.yaml", folder.text("shop.yaml").value() + OWN_RULE));
  }

  private static ProjectFolder edited(ProjectFolder folder, String file, String old, String with) {
    String text = folder.text(file).value();
    assertThat(text).contains(old);
    return folder.with(file, text.replace(old, with));
  }

  private static String plain(Phrase phrase) {
    return WORDS.plain(phrase);
  }

  @Test
  void namesEachAcceptedRefusalWithItsStepAndItsReason() {
    assertThat(key().accepted())
        .extracting(
            a -> a.mark() + " " + a.code(), a -> plain(a.message()), a -> plain(a.because()))
        .containsExactly(
            tuple(
                "P2 planed-too-short-here",
                "The wall is 36 in long; the planer takes none under 40 in here.",
                "An aide catches each board."),
            tuple(
                "9 held-too-short",
                "Only 4 1/2 in of the wall is held here; the miter saw takes no piece under 9 in by"
                    + " hand.",
                "The instructor makes this cut."));
  }

  @Test
  void namesEachLimitThatIsLooserThanOursBesideOurs() {
    assertThat(key().looser())
        .extracting(SafetyPageTest::row)
        .contains(
            "Jointer, shortest piece: 10 in, built-in 14 in",
            "Table saw, push block, distance from the fence to the blade: 3 in, built-in 6 in")
        .doesNotContain("Table saw, distance of hands: 6 in, built-in 5 in");
  }

  private static String row(LimitRow row) {
    return "%s, %s: %s, built-in %s"
        .formatted(plain(row.machine()), plain(row.limit()), plain(row.stated()), plain(row.own()));
  }

  @Test
  void showsAllThatIsPublishedOfALimitThatDiffers() {
    assertThat(key().disputed())
        .filteredOn(row -> row(row).startsWith("Jointer, shortest piece"))
        .singleElement()
        .satisfies(
            row ->
                assertThat(row.published().stream().map(SafetyPageTest::plain).toList())
                    .contains(
                        "14 in: notes on a school\u2019s manual",
                        "12 in: students\u2019 flashcards"));
  }

  @Test
  void tellsOfTheShopsOwnRuleWhereItFiredAndOnWhoseWord() {
    assertThat(key().safety())
        .filteredOn(s -> plain(s.statement().hazard()).startsWith("The rollers let go"))
        .singleElement()
        .satisfies(
            s -> {
              assertThat(plain(s.source()))
                  .isEqualTo("this shop\u2019s own rule: the department\u2019s rules");
              assertThat(s.fired()).flatExtracting(Fired::marks).containsExactly("P2");
              assertThat(s.fired().get(0).why().stream().map(SafetyPageTest::plain).toList())
                  .containsExactly("The board is 36 in long.");
            });
  }

  @Test
  void namesEachStepOnceForARuleAndSaysWhy() {
    for (SampleShops.Case one : SampleShops.of("sliding-lid-box")) {
      AnswerKey key = one.documents().key();
      assertThat(key.accepted()).as(one.name()).isEmpty();
      assertThat(key.safety()).as(one.name()).hasSizeGreaterThan(5);
      for (AnswerKey.Safety rule : key.safety()) {
        assertThat(rule.fired()).as(one.name()).doesNotHaveDuplicates().isNotEmpty();
        assertThat(rule.fired()).allSatisfy(f -> assertThat(f.why()).isNotEmpty());
      }
    }
  }
}
