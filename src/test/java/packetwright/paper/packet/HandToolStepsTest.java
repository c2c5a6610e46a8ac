package packetwright.paper.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.shop.ShopReader;
import packetwright.paper.packet.PacketStep.Panel;
import packetwright.paper.packet.PacketStep.Tool;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.words.Words;
import packetwright.wood.caution.Caution;

/** What a step prints of its hand tools: all of them by name, and few, telling cautions. */
class HandToolStepsTest {
  private static final Words WORDS = SampleLesson.WORDS;

  /** What a text says, and the tools of which its step must then name one. */
  private static final Map<Pattern, Set<String>> MEANT =
      Map.of(
          Pattern.compile("\\bsaw (on|off|the|each)\\b|\\bhand saw\\b"),
          Set.of("Hand saw", "Coping saw"),
          Pattern.compile("\\bcoping saw\\b"),
          Set.of("Coping saw"),
          Pattern.compile("\\bplane (it|the|down|and|that)\\b"),
          Set.of("Bench plane", "Block plane", "Plow plane"),
          Pattern.compile("\\bplow the\\b"),
          Set.of("Plow plane"),
          Pattern.compile("\\bchisel\\b"),
          Set.of("Chisel"),
          Pattern.compile("\\bwith the marking knife\\b"),
          Set.of("Marking knife"),
          Pattern.compile("\\b(hand drill|brace|drill (each|the holes))\\b"),
          Set.of("Hand drill or brace"),
          Pattern.compile("\\bscrewdriver\\b"),
          Set.of("Screwdriver"),
          Pattern.compile("\\blight taps\\b"),
          Set.of("Hammer"));

  private static final String SHOP = "other-shop.yaml";
  private static final Request PLAIN = new Request(SHOP, List.of(), Set.of(), "2027 spring");

  private static final List<Lesson> LESSONS =
      ProjectFolder.samples().stream()
          .map(name -> ProjectFolder.sample(name).with(SHOP, hands()))
          .flatMap(
              folder ->
                  Lessons.combinations(folder, PLAIN).stream()
                      .map(request -> Lessons.workOut(folder, request).value()))
          .toList();

  /** Every sample with every combination of its options. */
  static List<Lesson> byHand() {
    return LESSONS;
  }

  private static String hands() {
    return ShopReader.profile(ShopReader.HAND_TOOLS);
  }

  private static Packets.Documents documents(Lesson lesson) {
    return Packets.of(lesson, SampleLesson.quiz(lesson), WORDS).value();
  }

  private static Stream<String> said(List<Panel> panels) {
    return panels.stream()
        .flatMap(p -> p.statements().stream())
        .map(s -> WORDS.plain(s.hazard()) + " " + WORDS.plain(s.avoid()));
  }

  private static String said(Caution caution) {
    return WORDS.plain(Naming.typeset(caution.hazard()))
        + " "
        + WORDS.plain(Naming.typeset(caution.avoid()));
  }

  @ParameterizedTest
  @MethodSource("byHand")
  void everyToolThatAStepSpeaksOfStandsInItsHead(Lesson lesson) {
    int spoken = 0;
    for (PacketStep step : documents(lesson).student().steps()) {
      Set<String> tools = step.tools().stream().map(Tool::name).collect(Collectors.toSet());
      for (Map.Entry<Pattern, Set<String>> meant : MEANT.entrySet()) {
        if (meant.getKey().matcher(Glossary.text(step.prose(), WORDS)).find()) {
          spoken++;
          assertThat(tools)
              .as(step.title() + meant.getKey())
              .containsAnyElementsOf(meant.getValue());
        }
      }
    }
    assertThat(spoken).isGreaterThan(15);
  }

  @ParameterizedTest
  @MethodSource("byHand")
  void everyToolOfAStepIsAmongWhatIsNeeded(Lesson lesson) {
    StudentPacket student = documents(lesson).student();
    assertThat(student.cover().machines()).isEmpty();
    assertThat(student.cover().tools().stream().map(WORDS::plain).toList())
        .containsAll(
            student.steps().stream()
                .filter(step -> !step.prepared() && !step.isBetween())
                .flatMap(step -> step.tools().stream().map(Tool::name))
                .collect(Collectors.toSet()));
  }

  /** A statement that a student meets at every other step is read at none. */
  @ParameterizedTest
  @MethodSource("byHand")
  void noCautionIsPrintedAtMoreThanFourSteps(Lesson lesson) {
    Map<String, Integer> steps = new TreeMap<>();
    for (PacketStep step : documents(lesson).student().steps()) {
      said(step.cautions()).distinct().forEach(s -> steps.merge(s, 1, Integer::sum));
    }
    assertThat(steps).hasSizeGreaterThan(5);
    assertThat(steps.values()).allMatch(count -> count <= 4);
  }

  @ParameterizedTest
  @MethodSource("byHand")
  void whatToolsHaveInCommonStandsOnThePageOfTheTools(Lesson lesson) {
    Packets.Documents documents = documents(lesson);
    List<String> pages =
        documents.student().machines().stream().flatMap(m -> said(m.panels())).toList();
    assertThat(pages).doesNotHaveDuplicates();
    List<Caution> common =
        lesson.cautions().stream()
            .filter(Caution::isOnce)
            .filter(c -> !c.fired().get(0).run().step().isPreparation())
            .toList();
    assertThat(common)
        .extracting(Caution::rule)
        .contains("plane_slip", "knife_slip", "hand_saw_jump", "edge_tools_carried", "clamp_bars");
    assertThat(pages).containsAll(common.stream().map(HandToolStepsTest::said).toList());
  }

  @Test
  void anIronAndABitAreNoStacks() {
    String noDado = ShopReader.profile(ShopReader.BUILT_IN).replaceAll("(?m)^ +dado_set:.*\n", "");
    assertThat(settings(hands()))
        .startsWith("Iron 1/4 in", "Fence 1/4 in to the near side of the iron");
    assertThat(settings(noDado))
        .startsWith("Bit 1/4 in", "Fence 1/4 in to the near side of the bit");
    assertThat(settings(ShopReader.profile(ShopReader.BUILT_IN)))
        .anyMatch(line -> line.matches("Cutter .* stack .*"))
        .contains("Fence 1/4 in to the near side of the cutter");
  }

  /** Of the step of the box that cuts the grooves. */
  private static List<String> settings(String shop) {
    ProjectFolder folder = ProjectFolder.sample("sliding-lid-box").with(SHOP, shop);
    Lesson lesson = Lessons.workOut(folder, PLAIN).value();
    return documents(lesson).student().steps().stream()
        .filter(step -> step.title().equals("Cut the grooves"))
        .flatMap(step -> step.settings().get(0).lines().stream())
        .map(
            line ->
                Stream.of(line.name(), line.value(), line.datum(), line.note())
                    .map(WORDS::plain)
                    .filter(text -> !text.isEmpty())
                    .collect(Collectors.joining(" ")))
        .toList();
  }
}
