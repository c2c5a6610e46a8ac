package packetwright.paper.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.packet.PacketStep.MachineRules;
import packetwright.paper.packet.PacketStep.Panel;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.text.words.Words;
import packetwright.wood.caution.Caution;
import packetwright.wood.caution.Caution.Firing;
import packetwright.wood.operation.OperationRun;

/** Where each rule that fired is printed, in every sample. */
class CautionPlacesTest {
  private static final Words WORDS = Words.of("en");

  private static Lesson lesson(String sample) {
    return Lessons.workOut(
            ProjectFolder.sample(sample),
            new Lessons.Request("", List.of(), Set.of(), "2027 spring"))
        .value();
  }

  private static Packets.Documents documents(Lesson lesson) {
    return Packets.of(lesson, SampleLesson.quiz(lesson), WORDS).value();
  }

  private static List<PacketStep> steps(Packets.Documents documents) {
    return Stream.concat(
            documents.student().steps().stream(), documents.key().preparation().stream())
        .toList();
  }

  private static Stream<String> said(List<Panel> panels) {
    return panels.stream()
        .flatMap(p -> p.statements().stream())
        .map(s -> WORDS.plain(s.hazard()) + WORDS.plain(s.avoid()));
  }

  private static String said(Caution caution) {
    return WORDS.plain(Naming.typeset(caution.hazard()))
        + WORDS.plain(Naming.typeset(caution.avoid()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"sliding-lid-box", "step-stool", "nest-box"})
  void aStepHasThreeStatementsAtMostTheMostSevereFirst(String sample) {
    List<SampleShops.Case> cases = SampleShops.of(sample);
    assertThat(cases).hasSizeGreaterThan(5);
    for (SampleShops.Case one : cases) {
      List<PacketStep> steps = steps(one.documents());
      assertThat(steps).as(one.name()).hasSizeGreaterThan(8);
      for (PacketStep step : steps) {
        String which = one.name() + ", " + step.title();
        assertThat(said(step.cautions()).toList()).as(which).hasSizeLessThanOrEqualTo(3);
        assertThat(step.cautions().stream().map(p -> Caution.Signal.valueOf(upper(p))).toList())
            .as(which)
            .isSorted();
      }
    }
  }

  private static String upper(Panel panel) {
    return panel.severity().toUpperCase(Locale.ROOT);
  }

  @ParameterizedTest
  @ValueSource(strings = {"sliding-lid-box", "step-stool", "nest-box"})
  void everyRuleThatFiredIsPrintedAtItsStepOrAtItsMachine(String sample) {
    Lesson lesson = lesson(sample);
    Packets.Documents documents = documents(lesson);
    List<String> machines = new ArrayList<>();
    for (MachineRules machine :
        Stream.concat(documents.student().machines().stream(), documents.key().machines().stream())
            .toList()) {
      said(machine.panels()).forEach(machines::add);
    }
    assertThat(lesson.cautions()).hasSizeGreaterThan(10);
    for (Caution caution : lesson.cautions()) {
      String mark = caution.fired().get(0).run().step().mark();
      List<String> here =
          steps(documents).stream()
              .filter(s -> s.mark().equals(mark))
              .flatMap(s -> said(s.cautions()))
              .toList();
      if (caution.isOnce()) {
        assertThat(machines).contains(said(caution));
        assertThat(here).doesNotContain(said(caution));
      } else if (caution.isReplaced()) {
        assertThat(caution.fired()).extracting(Firing::replacedBy).doesNotContain("");
      } else {
        assertThat(Stream.concat(here.stream(), machines.stream()).toList())
            .as(caution.rule())
            .contains(said(caution));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sliding-lid-box", "step-stool", "nest-box"})
  void whatIsOverAtAStepIsNamedThere(String sample) {
    Lesson lesson = lesson(sample);
    for (PacketStep step : steps(documents(lesson))) {
      long statements =
          lesson.cautions().stream()
              .filter(c -> mark(c).equals(step.mark()) && !c.isOnce() && !c.isReplaced())
              .map(CautionPlacesTest::said)
              .distinct()
              .count();
      assertThat(step.more().isEmpty()).as(step.title()).isEqualTo(statements <= 3);
    }
  }

  private static String mark(Caution caution) {
    return caution.fired().get(0).run().step().mark();
  }

  @ParameterizedTest
  @ValueSource(strings = {"sliding-lid-box", "step-stool", "nest-box"})
  void eachSetUpHasOneBoxInThePacketAndOneListInTheKey(String sample) {
    Lesson lesson = lesson(sample);
    Packets.Documents documents = documents(lesson);
    List<PacketStep.Check> boxes =
        documents.student().steps().stream()
            .filter(s -> !s.isBetween())
            .flatMap(s -> s.checks().stream())
            .toList();
    assertThat(documents.key().checks().stream().flatMap(c -> c.checks().stream()).toList())
        .isEqualTo(boxes)
        .allSatisfy(c -> assertThat(c.items()).hasSizeGreaterThan(1));
    for (OperationRun run : lesson.run().operations()) {
      if (run.tool() != null && lesson.shop().setupCheck().contains(run.tool())) {
        assertThat(steps(documents))
            .filteredOn(s -> s.mark().equals(run.step().mark()))
            .allSatisfy(s -> assertThat(s.checks()).isNotEmpty());
      }
    }
  }
}
