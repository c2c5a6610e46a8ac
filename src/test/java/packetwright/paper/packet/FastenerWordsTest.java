package packetwright.paper.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

class FastenerWordsTest {
  private static final Words WORDS = Words.of("en");

  private static Packets.Documents documents(String sample, String... options) {
    Lesson lesson =
        Lessons.workOut(
                ProjectFolder.sample(sample),
                new Lessons.Request("", List.of(), Set.of(options), ""))
            .value();
    return Packets.of(lesson, SampleLesson.quiz(lesson), WORDS).value();
  }

  private static List<String> lines(Packets.Documents documents, String step) {
    return documents.student().steps().stream()
        .filter(s -> s.id().equals(step))
        .flatMap(s -> s.settings().stream())
        .flatMap(box -> box.lines().stream())
        .map(
            line ->
                WORDS.plain(line.name())
                    + ": "
                    + WORDS.plain(line.value())
                    + ", "
                    + WORDS.plain(line.datum())
                    + "; "
                    + WORDS.plain(line.note()))
        .toList();
  }

  private static List<String> result(Packets.Documents documents) {
    return documents.key().result().stream().map((Phrase p) -> WORDS.plain(p)).toList();
  }

  @Test
  void theStudentReadsWhereEachBradGoes() {
    Packets.Documents documents = documents("sliding-lid-box", "brads");
    assertThat(lines(documents, "nail-the-corners"))
        .hasSize(5)
        .startsWith(
            "A1 into C: 2 brads, 1 in and 2 1/2 in from the bottom edge;"
                + " on a line 1/4 in from the right end")
        .last()
        .asString()
        .startsWith("Left and right: ");
    assertThat(result(documents)).contains("Fasteners for each student: 8 brads.");
  }

  @Test
  void withoutNailsNothingIsSaidOfThem() {
    Packets.Documents documents = documents("sliding-lid-box");
    assertThat(lines(documents, "nail-the-corners")).isEmpty();
    assertThat(result(documents))
        .containsExactly(
            WORDS.plain(WORDS.say("packet.result")),
            "Put together, the project is 9 in by 5 in by 3 1/2 in outside.");
  }

  @Test
  void theKeySaysWhatATiltedRoofWasCheckedFor() {
    assertThat(result(documents("nest-box")))
        .anyMatch(
            line ->
                line.startsWith(
                    "The roof is tilted: it was checked for the slope that it lies on"));
  }

  @Test
  void screwsAskForPilotHoles() {
    assertThat(lines(documents("step-stool"), "screw-the-seat-on"))
        .anyMatch(line -> line.startsWith("Pilot holes: "));
  }
}
