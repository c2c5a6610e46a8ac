package packetwright.plan.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.definition.project.Choice;
import packetwright.definition.project.Project;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.project.ProjectReader;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.FindingText;
import packetwright.text.source.Located;
import packetwright.wood.part.Difference;
import packetwright.wood.part.Part;
import packetwright.wood.workpiece.Workpiece;

/** Every sample at other values of its givens. */
class SampleGivensTest {
  private static Checked<Lesson> workOut(String sample, List<String> settings) {
    return Lessons.workOut(ProjectFolder.sample(sample), asked(settings));
  }

  /** A setting that begins with a plus sign switches an option on; the others give values. */
  private static Request asked(List<String> settings) {
    return new Request(
        "",
        settings.stream().filter(s -> !s.startsWith("+")).toList(),
        settings.stream()
            .filter(s -> s.startsWith("+"))
            .map(s -> s.substring(1))
            .collect(Collectors.toSet()),
        "");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sliding-lid-box",
        "sliding-lid-box; board_width=3-1/8",
        "sliding-lid-box; board_width=4",
        "sliding-lid-box; board_width=101.6 mm; box_length=12",
        "sliding-lid-box; board_width=5-1/2; box_width=6",
        "sliding-lid-box; board_width=7-1/4",
        "sliding-lid-box; box_length=14; box_width=7",
        "sliding-lid-box; stock_thickness=5/8",
        "sliding-lid-box; panel_thickness=3/16; play=1/64",
        "sliding-lid-box; panel_thickness=5/16",
        "sliding-lid-box; groove_inset=3/8; clearance=1/8; front_clearance=0",
        "nest-box",
        "nest-box; species=house wren",
        "nest-box; species=carolina wren; clearance=1/8; vent=1/4",
        "nest-box; species=chickadee; board_thickness=5/8",
        "nest-box; species=titmouse; hang=3",
        "nest-box; species=tree swallow; roof_side=1/2; roof_front=3-1/2",
        "nest-box; species=great crested flycatcher; floor_inset=1/8",
        "nest-box; species=red-headed woodpecker; board_thickness=11/16; drain=3/8",
        "nest-box; species=hairy woodpecker; hang=1-1/2; roof_front=2",
        "nest-box; species=yellow-bellied sapsucker; floor_inset=1/2; vent=1/2",
        "step-stool",
        "step-stool; stool_height=9-3/4",
        "step-stool; stool_height=12; stretcher_at=5",
        "step-stool; seat_length=20; leg_inset=2",
        "step-stool; seat_length=15; leg_inset=1",
        "step-stool; leg_width=7; seat_width=8-1/2",
        "step-stool; leg_width=8-1/2; foot=2",
        "step-stool; board_thickness=11/16; dado_depth=5/16",
        "step-stool; dado_depth=1/8; stretcher_at=3; arch_rise=1",
        "step-stool; arch_rise=2; foot=1-1/4; edge_radius=3/8",
        "step-stool; +round_corners; corner_radius=1-1/2; edge_radius=3/8",
      })
  void provesAcrossItsRangesWithAnyOptions(String settings) {
    List<String> words = List.of(settings.split("; "));
    ProjectFolder folder = ProjectFolder.sample(words.get(0));
    List<Request> requests = Lessons.combinations(folder, asked(words.subList(1, words.size())));
    assertThat(requests).hasSizeGreaterThan(1);
    for (Request request : requests) {
      Checked<Lesson> lesson = Lessons.workOut(folder, request);
      assertThat(lesson.findings()).as("with %s", request.options()).isEmpty();
      assertEveryPartIsMade(lesson.value());
    }
  }

  private static void assertEveryPartIsMade(Lesson lesson) {
    for (Part part : lesson.parts()) {
      List<Workpiece> made = lesson.run().made().get(part.name());
      assertThat(made).as(part.name()).hasSize(part.count());
      for (Workpiece piece : made) {
        assertThat(Difference.between(piece.solid(), part.solidOf(piece.name())))
            .as(piece.name())
            .isNull();
      }
    }
  }

  @Test
  void theRowThatIsChosenGivesTheSizes() {
    Lesson own = workOut("nest-box", List.of()).value();
    Lesson wren = workOut("nest-box", List.of("species=house wren")).value();
    assertThat(own.sizes().length("species.floor")).isEqualTo(Length.ofInches(5));
    assertThat(wren.sizes().length("species.floor")).isEqualTo(Length.ofInches(4));
    assertThat(wren.sizes().length("species.hole")).isEqualTo(Length.ofInches(5, 4));
    Choice species = wren.project().choices().get(0);
    assertThat(wren.choices().substitution().row(species).value()).isEqualTo("house wren");
    assertThat(own.choices().substitution().row(species).value()).isEqualTo("bluebird");
  }

  /** Values anywhere in the ranges, to the 64th of an inch, and any row of a table. */
  @Property(tries = 120, seed = "41")
  void anyValuesProveOrAreRefused(@ForAll("requests") List<String> request) {
    ProjectFolder folder = ProjectFolder.sample(request.get(0));
    List<String> settings = request.subList(1, request.size());
    Checked<Lesson> lesson = workOut(request.get(0), settings);
    if (lesson.isGood()) {
      assertEveryPartIsMade(lesson.value());
    }
    ProjectFolder shown = folder.with(Lessons.SET, String.join("\n", asked(settings).set()));
    for (Finding finding : lesson.findings()) {
      assertThat(FindingText.render(finding, shown.line(finding.at())))
          .contains(finding.code(), finding.at().file());
    }
  }

  @Provide
  Arbitrary<List<String>> requests() {
    return Arbitraries.of(ProjectFolder.samples())
        .flatMap(sample -> Arbitraries.longs().map(seed -> request(sample, new Random(seed))));
  }

  /** The sample's name, a set of its options, and values for about half of its givens. */
  private static List<String> request(String sample, Random random) {
    ProjectFolder folder = ProjectFolder.sample(sample);
    List<Request> combinations = Lessons.combinations(folder, Request.plain());
    Set<String> on = combinations.get(random.nextInt(combinations.size())).options();
    Project project = ProjectReader.read(folder, on).value();
    List<String> request = new ArrayList<>(List.of(sample));
    on.forEach(option -> request.add("+" + option));
    for (Choice choice : project.choices()) {
      List<String> rows = List.copyOf(choice.rows().keySet());
      request.add(choice.name().value() + "=" + rows.get(random.nextInt(rows.size())));
    }
    for (Project.Given given : project.givens()) {
      Located<Quantity> from = given.from();
      Located<Quantity> to = given.to();
      if (from != null && to != null && random.nextBoolean()) {
        Rational low = from.value().value();
        Rational span = to.value().value().minus(low);
        int steps = span.times(Rational.of(64)).floor().intValueExact();
        Rational value = low.plus(Rational.of(random.nextInt(steps + 1), 64));
        request.add(given.name().value() + "=" + value);
      }
    }
    return request;
  }
}
