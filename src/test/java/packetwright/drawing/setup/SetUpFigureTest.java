package packetwright.drawing.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import packetwright.definition.shop.MachineKind;
import packetwright.drawing.setup.SetUpFigure.Drawn;
import packetwright.drawing.sheet.Dimension;
import packetwright.drawing.sheet.Mark;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.SheetReading;
import packetwright.plan.lesson.Lesson;
import packetwright.text.words.Words;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.setup.Setting;

/** The figures of every operation of every sample, in its own shop and in others. */
class SetUpFigureTest {
  private static final Words WORDS = Words.of("en");
  private static final List<Case> CASES = cases();

  /** A figure, with the lesson and the operation that it belongs to. */
  private record Case(String lesson, OperationRun run, Lesson of, Drawn drawn) {
    String name() {
      return lesson + " " + drawn.sheet().name() + " at the " + run.tool();
    }

    List<Dimension> dimensions() {
      List<Dimension> found = new ArrayList<>();
      for (Mark mark : drawn.sheet().marks()) {
        if (mark instanceof Moved moved) {
          moved.marks().stream()
              .filter(Dimension.class::isInstance)
              .map(Dimension.class::cast)
              .forEach(found::add);
        }
      }
      return found;
    }
  }

  private static List<Case> cases() {
    List<Case> cases = new ArrayList<>();
    SampleRuns.all()
        .forEach(
            (name, lesson) -> {
              for (OperationRun run : lesson.run().operations()) {
                for (Drawn drawn :
                    SetUpFigure.drawn(run, lesson.shop(), lesson.project().rule(), WORDS)) {
                  cases.add(new Case(name, run, lesson, drawn));
                }
              }
            });
    return cases;
  }

  @Test
  void everyFigureIsLegible() {
    assertThat(CASES).hasSizeGreaterThan(400);
    for (Case one : CASES) {
      SheetReading.of(one.drawn().sheet()).assertLegible(one.drawn().sheet());
    }
  }

  @Test
  void everyFigureFitsBesideAStep() {
    for (Case one : CASES) {
      assertThat(one.drawn().sheet().width()).as(one.name()).isLessThanOrEqualTo(3.4 * 72);
      assertThat(one.drawn().sheet().height()).as(one.name()).isLessThanOrEqualTo(2.6 * 72 + 0.01);
    }
  }

  @Test
  void everyDimensionIsAsLongAsItsLengthAtTheScale() {
    int seen = 0;
    for (Case one : CASES) {
      Scene scene = one.drawn().scene();
      for (Scene.Measured measured : scene.measured()) {
        assertThat(measured.points())
            .as("%s: %s", one.name(), measured)
            .isCloseTo(scene.points(measured.value()), within(1e-6));
        assertThat(one.dimensions())
            .as("%s: %s", one.name(), measured)
            .anyMatch(d -> Math.abs(d.to() - d.from() - measured.points()) < 1e-6);
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(500);
  }

  /** No dimension says anything but a setting of the operation, in the words of the box. */
  @Test
  void everyDimensionSaysASetting() {
    for (Case one : CASES) {
      SettingWords said = new SettingWords(one.run(), one.of().project().rule(), WORDS);
      for (Dimension dimension : one.dimensions()) {
        assertThat(one.run().settings())
            .as("%s: %s", one.name(), dimension.text())
            .anyMatch(
                setting ->
                    dimension.text().equals(said.inscription(setting))
                        || dimension.text().equals(said.first(setting)));
      }
    }
  }

  /** What a machine is set to is drawn where it can be measured, not only told. */
  @Test
  void everyFenceStopAndHeightIsDimensioned() {
    int seen = 0;
    for (Case one : CASES) {
      if (one.drawn().view() instanceof TableSection) {
        SettingWords said = new SettingWords(one.run(), one.of().project().rule(), WORDS);
        for (Setting setting : one.run().settings()) {
          if (setting.name().matches("fence.*|stop.*|height|cutter")
              && setting.value().asLength().signum() > 0) {
            assertThat(one.dimensions())
                .as("%s: %s", one.name(), setting)
                .extracting(Dimension::text)
                .contains(said.inscription(setting));
            seen++;
          }
        }
      }
    }
    assertThat(seen).isGreaterThan(50);
  }

  @Test
  void everyMachineThatCutsHasAFigure() {
    Set<MachineKind> with = new TreeSet<>();
    CASES.forEach(one -> with.add(java.util.Objects.requireNonNull(one.run().tool())));
    assertThat(with)
        .contains(
            MachineKind.TABLE_SAW,
            MachineKind.DADO_SET,
            MachineKind.MITER_SAW,
            MachineKind.JOINTER,
            MachineKind.PLANER,
            MachineKind.BAND_SAW,
            MachineKind.DRILL_PRESS,
            MachineKind.ROUTER_TABLE);
  }

  @Test
  void glueAndSandingHaveNone() {
    for (Case one : CASES) {
      assertThat(one.run().operation().verb().value().word())
          .as(one.name())
          .isNotIn("glue", "sand", "finish", "dry_fit", "lay_out", "inspect", "nail", "screw");
    }
  }

  @Test
  void noHandIsDrawnAndNoGuardIsOff() {
    for (Case one : CASES) {
      if (one.drawn().view() instanceof TableSection section && section.isThrough()) {
        assertThat(texts(one.drawn().sheet())).as(one.name()).contains("blade guard");
      }
      assertThat(texts(one.drawn().sheet())).as(one.name()).doesNotContain("hand", "finger");
    }
  }

  private static Set<String> texts(Sheet sheet) {
    Set<String> texts = new LinkedHashSet<>();
    SheetReading.of(sheet).inks.forEach(ink -> texts.add(ink.text().strip()));
    return texts;
  }

  /** The text alternative holds every number that is set. */
  @Test
  void theAlternativeSaysEverySetting() {
    for (Case one : CASES) {
      SettingWords said = new SettingWords(one.run(), one.of().project().rule(), WORDS);
      for (Setting setting : one.run().settings()) {
        assertThat(one.drawn().sheet().alternative()).as(one.name()).contains(said.aloud(setting));
      }
    }
  }
}
