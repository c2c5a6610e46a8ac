package packetwright.wood.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.shop.MachineKind;
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
   * @param step the number of the step that it must be found in
   * @param after text that comes before the edit
   * @param old taken out, in its first place from there
   * @param with put in
   */
  record Edit(String code, String step, String after, String old, String with) {
    private static final String SHOP = "machines:";

    static Edit inShop(String code, String step, String old, String with) {
      return new Edit(code, step, SHOP, old, with);
    }

    String file() {
      return after.equals(SHOP) ? "shop.yaml" : "procedure.md";
    }

    @Override
    public String toString() {
      return code + " in step " + step;
    }
  }

  static Stream<Edit> edits() {
    String joint = "## Joint the bottom edge";
    String rip = "## Rip the wall blank";
    String grooves = "## Cut the grooves";
    String controls = "[featherboard, push_block]";
    return Stream.of(
        new Edit("push-block-missing", "1", joint, "  with: [push_block]\n", ""),
        new Edit("push-block-missing", "2", rip, "  with: [push_block]\n", ""),
        new Edit("featherboard-missing", "5", grooves, controls, "[push_block]"),
        new Edit("push-block-missing", "5", grooves, controls, "[featherboard]"),
        new Edit("gauge-missing", "7", "## Cut the rabbets", "miter_gauge, ", ""),
        new Edit("clamps-missing", "7", "## Cut the rabbets", "clamps, ", ""),
        new Edit("held-too-short", "9", "## Cut the back end", "  with: [clamps]\n", ""),
        new Edit("backer-missing", "13", "## Cut the bottom", ", backer]", "]"),
        new Edit("clamps-missing", "17", "### Unless plain_lid", "  with: [clamps]\n", ""),
        Edit.inShop("piece-too-short", "7", "gauge_shortest: 9", "gauge_shortest: 9-1/64"),
        Edit.inShop("held-too-short", "9", "clamped_shortest: 4", "clamped_shortest: 4-5/8"),
        Edit.inShop("planed-too-short", "P2", "shortest: 14", "shortest: 40"),
        Edit.inShop("rip-too-narrow", "10", "rip_narrowest: 2", "rip_narrowest: 3"));
  }

  private static ProjectFolder edited(Edit edit) {
    String text = SAMPLE.text(edit.file()).value();
    int from = text.indexOf(edit.after());
    int at = text.indexOf(edit.old(), from);
    assertThat(from).as(edit.after()).isNotNegative();
    assertThat(at).as(edit.old()).isNotNegative();
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
  void aMiterSawStepHasFewStatementsBesideThoseOfTheMachine() {
    var lesson = Lessons.workOut(SAMPLE, Request.plain()).value();
    assertThat(lesson.run().operations())
        .filteredOn(o -> o.tool() == MachineKind.MITER_SAW)
        .hasSizeGreaterThan(5)
        .allSatisfy(
            o ->
                assertThat(lesson.cautions())
                    .filteredOn(c -> c.step() == o.step().number())
                    .filteredOn(c -> !c.isOnce() && c.against() != Hazard.LIFTING)
                    .hasSizeBetween(1, 4));
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
                                && !c.isOnce()));
  }
}
