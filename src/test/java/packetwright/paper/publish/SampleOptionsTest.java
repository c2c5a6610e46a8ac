package packetwright.paper.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import packetwright.definition.project.ProjectFolder;
import packetwright.paper.html.Paper;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.source.Checked;

/** Every sample with every combination of its options, up to the filled pages. */
class SampleOptionsTest {
  private static final Publisher.Output OUTPUT = new Publisher.Output(Paper.LETTER, "A");

  private static List<Request> requests(ProjectFolder folder) {
    return Lessons.combinations(folder, Request.plain());
  }

  @TestFactory
  Stream<DynamicTest> everyCombinationProves() {
    return ProjectFolder.samples().stream()
        .map(ProjectFolder::sample)
        .flatMap(
            folder ->
                requests(folder).stream()
                    .map(
                        request ->
                            DynamicTest.dynamicTest(
                                folder.name() + " with " + request.options(),
                                () -> nothingIsFound(folder, request))));
  }

  private static void nothingIsFound(ProjectFolder folder, Request request) {
    Checked<Lesson> lesson = Lessons.workOut(folder, request);
    assertThat(lesson.findings()).isEmpty();
    assertThat(new Publisher(folder, request, OUTPUT).check(lesson.value())).isEmpty();
  }

  /** No option is there for nothing, and none does what another does. */
  @TestFactory
  Stream<DynamicTest> everyCombinationGivesAnotherProcedureOrOtherParts() {
    return ProjectFolder.samples().stream()
        .map(ProjectFolder::sample)
        .map(
            folder ->
                DynamicTest.dynamicTest(
                    folder.name(),
                    () ->
                        assertThat(requests(folder).stream().map(r -> made(folder, r)))
                            .hasSizeGreaterThan(1)
                            .doesNotHaveDuplicates()));
  }

  private static List<Object> made(ProjectFolder folder, Request request) {
    Lesson lesson = Lessons.workOut(folder, request).value();
    return List.of(
        lesson.parts(), lesson.procedure().steps().stream().map(s -> s.operations()).toList());
  }
}
