package packetwright.wood.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Step;
import packetwright.text.source.Checked;
import packetwright.text.source.Located;
import packetwright.wood.workpiece.Workpiece;

/** The samples' steps and operations in other orders. */
class SampleOrderTest {
  private static final long SEED = 3;
  private static final int ORDERS = 25;

  /** Either every part comes out as drawn all the same, or something is found. */
  @TestFactory
  Stream<DynamicTest> neighbouringStepsSwappedProveOrAreCaught() {
    return SampleTrial.all().stream()
        .flatMap(
            trial ->
                IntStream.range(0, trial.steps().size() - 1)
                    .mapToObj(
                        i ->
                            DynamicTest.dynamicTest(
                                trial.id() + " " + trial.steps().get(i).label(),
                                () -> provesOrIsCaught(trial, trial.withStepsSwapped(i)))));
  }

  @TestFactory
  Stream<DynamicTest> neighbouringOperationsSwappedProveOrAreCaught() {
    return SampleTrial.all().stream()
        .flatMap(
            trial ->
                trial
                    .indices()
                    .limit(trial.operations().size() - 1L)
                    .map(
                        i ->
                            DynamicTest.dynamicTest(
                                trial.id() + " operation " + i,
                                () -> provesOrIsCaught(trial, trial.inOrder(swapped(trial, i))))));
  }

  private static void provesOrIsCaught(SampleTrial trial, Checked<Run> run) {
    assertThat(trial.proves(run) || !run.findings().isEmpty()).isTrue();
  }

  private static List<Integer> swapped(SampleTrial trial, int first) {
    List<Integer> order = new ArrayList<>(trial.indices().toList());
    Collections.swap(order, first, first + 1);
    return order;
  }

  /** Steps of which the second needs the first. */
  @ParameterizedTest
  @CsvSource({
    "nest-box, cut-the-rough-pieces",
    "nest-box, joint-one-edge-of-each-blank",
    "nest-box, square-one-end-of-each-blank",
    "nest-box, lay-out-the-parts",
    "step-stool, cut-the-rough-pieces",
    "step-stool, joint-one-edge-of-each-blank",
    "step-stool, square-one-end-of-each-blank",
    "step-stool, lay-out-the-parts",
    "step-stool, cut-the-stretcher-the-legs-and-the-seat",
    "step-stool, dry-fit-the-stool",
    "sliding-lid-box, cut-the-rough-pieces",
    "sliding-lid-box, joint-the-bottom-edge",
    "sliding-lid-box, square-one-end",
    "sliding-lid-box, cut-the-grooves",
    "sliding-lid-box, cut-the-two-sides",
    "sliding-lid-box, cut-the-rabbets",
    "sliding-lid-box, measure-the-tongues",
    "sliding-lid-box, rip-the-front-section",
    "sliding-lid-box, dry-fit-the-box",
    "nest-box, put-the-box-together-dry",
  })
  void stepsThatDependOnEachOtherDoNotSwap(String sample, String first) {
    SampleTrial trial = SampleTrial.of(sample);
    List<String> ids = trial.steps().stream().map(Step::id).toList();
    assertThat(ids).contains(first);
    Checked<Run> run = trial.withStepsSwapped(ids.indexOf(first));
    assertThat(trial.proves(run)).isFalse();
    assertThat(run.findings()).isNotEmpty();
  }

  /** Orders in which each operation stays after the earlier ones on the same wood. */
  @TestFactory
  Stream<DynamicTest> ordersThatKeepWhatDependsProve() {
    return SampleTrial.all().stream()
        .flatMap(
            trial -> {
              Random random = new Random(SEED);
              return IntStream.range(0, ORDERS)
                  .mapToObj(
                      number -> {
                        List<Integer> order = legalOrder(trial, random);
                        return DynamicTest.dynamicTest(
                            trial.id() + " " + order,
                            () -> {
                              Checked<Run> run = trial.inOrder(order);
                              assertThat(run.findings()).isEmpty();
                              assertThat(trial.proves(run)).isTrue();
                            });
                      });
            });
  }

  /** Any order at all. */
  @TestFactory
  Stream<DynamicTest> shuffledOperationsProveOrAreCaught() {
    return SampleTrial.all().stream()
        .flatMap(
            trial -> {
              Random random = new Random(SEED);
              return IntStream.range(0, ORDERS)
                  .mapToObj(
                      number -> {
                        List<Integer> order = new ArrayList<>(trial.indices().toList());
                        Collections.shuffle(order, random);
                        return DynamicTest.dynamicTest(
                            trial.id() + " " + order,
                            () -> provesOrIsCaught(trial, trial.inOrder(order)));
                      });
            });
  }

  private static List<Integer> legalOrder(SampleTrial trial, Random random) {
    List<Integer> order = new ArrayList<>();
    List<Integer> left = new ArrayList<>(trial.indices().toList());
    while (!left.isEmpty()) {
      List<Integer> free =
          left.stream()
              .filter(i -> left.stream().noneMatch(j -> j < i && depends(trial, i, j)))
              .toList();
      Integer next = free.get(random.nextInt(free.size()));
      order.add(next);
      left.remove(next);
    }
    return order;
  }

  /** Whether two operations touch wood of one blank, or the second uses what the first measures. */
  private static boolean depends(SampleTrial trial, int later, int earlier) {
    Set<String> both = wood(trial.operations().get(later));
    both.retainAll(wood(trial.operations().get(earlier)));
    return !both.isEmpty() || isMeasuring(trial.operations().get(earlier).operation());
  }

  private static boolean isMeasuring(Operation operation) {
    return operation.verb().value() == packetwright.definition.procedure.Verb.INSPECT;
  }

  private static Set<String> wood(OperationRun run) {
    Set<String> blanks = new HashSet<>();
    Stream.concat(run.before().stream(), run.after().stream())
        .map(Workpiece::blank)
        .forEach(blanks::add);
    run.operation().targets().stream().map(Located::value).forEach(blanks::add);
    return blanks;
  }
}
