package packetwright.wood.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import packetwright.text.measure.Dimension;
import packetwright.text.measure.Length;
import packetwright.text.source.Finding;
import packetwright.wood.setup.Setting;

/**
 * One thing at a time is wrong in each sample, in its own shop and in one with hand tools only: a
 * setting, or a step that is missing.
 */
class SamplePerturbationTest {
  /** Every setting that bounds a kept surface, 1/64 in off either way: caught, its step named. */
  @TestFactory
  Stream<DynamicTest> boundSettingsOffByASixtyFourthAreCaught() {
    return perturbed(
        Setting.Kind.BOUND,
        trial -> Length.ofInches(1, 64),
        (trial, index, name, off) ->
            assertThat(trial.with(index, name, off).findings())
                .filteredOn(Finding::isError)
                .extracting(Finding::step)
                .contains(trial.operations().get(index).step().label()));
  }

  /** Every setting that only clears waste, moved both ways: nothing is said. */
  @TestFactory
  Stream<DynamicTest> freeSettingsMayBeOff() {
    return perturbed(
        Setting.Kind.FREE,
        SampleTrial::slack,
        (trial, index, name, off) -> assertThat(trial.with(index, name, off).findings()).isEmpty());
  }

  /** Each step left out in turn. */
  @TestFactory
  Stream<DynamicTest> everyStepIsMissed() {
    return SampleTrial.inBothShops().stream()
        .flatMap(
            trial ->
                trial.steps().stream()
                    .map(
                        step ->
                            DynamicTest.dynamicTest(
                                trial.id() + " " + step.label(),
                                () -> assertThat(trial.without(step).findings()).isNotEmpty())));
  }

  private interface Claim {
    void check(SampleTrial trial, int index, String setting, Length off);
  }

  private static Stream<DynamicTest> perturbed(
      Setting.Kind kind, Function<SampleTrial, Length> by, Claim claim) {
    List<DynamicTest> tests = new ArrayList<>();
    for (SampleTrial trial : SampleTrial.inBothShops()) {
      int before = tests.size();
      trial
          .indices()
          .forEach(index -> tests.addAll(perturbed(trial, index, kind, by.apply(trial), claim)));
      assertThat(tests.size() - before).as("settings of " + trial.id()).isGreaterThan(8);
    }
    return tests.stream();
  }

  private static List<DynamicTest> perturbed(
      SampleTrial trial, int index, Setting.Kind kind, Length by, Claim claim) {
    List<DynamicTest> tests = new ArrayList<>();
    OperationRun run = trial.operations().get(index);
    for (Setting setting : run.settings()) {
      boolean isTried =
          setting.kind() == kind
              && setting.value().dimension() == Dimension.LENGTH
              && !setting.name().equals("each_pass"); // follows from the machine
      if (isTried) {
        Length value = setting.value().asLength();
        for (Length off : List.of(value.plus(by), value.minus(by))) {
          tests.add(
              DynamicTest.dynamicTest(
                  trial.id() + " " + run.step().label() + " " + setting.name() + " " + off,
                  () -> claim.check(trial, index, setting.name(), off)));
        }
      }
    }
    return tests;
  }
}
