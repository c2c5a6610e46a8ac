package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Finding;
import packetwright.wood.caution.Caution.Signal;

/** The rules over the whole procedure of the sliding-lid box, as it is and spoilt. */
class SampleRefusalsTest {
  private static final ProjectFolder SAMPLE = ProjectFolder.sample("sliding-lid-box");

  /**
   * One edit of the sample.
   *
   * @param code that must be found
   * @param step its number
   * @param file edited
   * @param old taken out, in its first place
   * @param with put in
   */
  record Edit(String code, int step, String file, String old, String with) {
    @Override
    public String toString() {
      return code + " in step " + step;
    }
  }

  static Stream<Edit> edits() {
    String procedure = "procedure.md";
    String shop = "shop.yaml";
    return Stream.of(
        new Edit(
            "push-block-missing", 3, procedure, "  with: [push_block]\n```\nPick", "```\nPick"),
        new Edit(
            "push-stick-missing",
            4,
            procedure,
            "  at: table_saw\n  with: [push_stick]\n```\nSet the fence to {board_width}",
            "  at: table_saw\n```\nSet the fence to {board_width}"),
        new Edit(
            "featherboard-missing", 7, procedure, "[featherboard, push_block]", "[push_block]"),
        new Edit(
            "push-block-missing", 7, procedure, "[featherboard, push_block]", "[featherboard]"),
        new Edit("gauge-missing", 9, procedure, "[miter_gauge, backer, clamps,", "[clamps,"),
        new Edit("piece-too-short", 9, shop, "gauge_shortest: 9", "gauge_shortest: 9-1/64"),
        new Edit("held-too-short", 8, shop, "held_shortest: 9", "held_shortest: 9-1/64"),
        new Edit("held-too-short", 11, shop, "clamped_shortest: 4,", "clamped_shortest: 4-5/8,"),
        new Edit(
            "held-too-short",
            11,
            procedure,
            "  at: miter_saw\n  with: [clamps]\n```\nThe drawing says {end_length}",
            "  at: miter_saw\n```\nThe drawing says {end_length}"),
        new Edit("backer-missing", 15, procedure, "  with: [backer]\n", ""),
        new Edit("clamps-missing", 19, procedure, "  at: chisel\n  with: [clamps]", "  at: chisel"),
        new Edit("planed-too-short", 2, shop, "shortest: 14", "shortest: 40"),
        new Edit("rip-too-narrow", 12, shop, "rip_narrowest: 2,", "rip_narrowest: 3,"));
  }

  private static ProjectFolder edited(Edit edit) {
    String text = SAMPLE.text(edit.file()).value();
    assertThat(text).contains(edit.old());
    int at = text.indexOf(edit.old());
    return SAMPLE.with(
        edit.file(),
        text.substring(0, at) + edit.with() + text.substring(at + edit.old().length()));
  }

  @ParameterizedTest
  @MethodSource("edits")
  void refusesTheSpoiltSampleAtItsStep(Edit edit) {
    List<Finding> findings = Lessons.workOut(edited(edit), Request.plain()).findings();
    assertThat(findings)
        .filteredOn(f -> f.code().equals(edit.code()))
        .extracting(Finding::step)
        .anyMatch(step -> step.startsWith(edit.step() + ", "));
  }

  @Test
  void theSampleIsRefusedNothing() {
    assertThat(Lessons.workOut(SAMPLE, Request.plain()).findings()).isEmpty();
  }

  @Test
  void everyPoweredStepOfTheSampleWarns() {
    var lesson = Lessons.workOut(SAMPLE, Request.plain()).value();
    assertThat(lesson.cautions()).noneMatch(Caution::refuses);
    assertThat(lesson.run().operations())
        .filteredOn(o -> o.tool() != null && o.tool().isPowered())
        .hasSizeGreaterThan(10)
        .allSatisfy(
            o ->
                assertThat(lesson.cautions())
                    .anyMatch(
                        c ->
                            c.step() == o.step().number()
                                && c.signal() == Signal.WARNING
                                && !c.rule().equals("powered_machine")));
  }
}
