package packetwright.published;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.project.ProjectReader;
import packetwright.plan.lesson.Lesson;
import packetwright.plan.lesson.Lessons;
import packetwright.plan.lesson.Lessons.Request;
import packetwright.text.measure.Length;
import packetwright.text.measure.QuantityReader;
import packetwright.text.measure.Unit;
import packetwright.text.source.Located;
import packetwright.text.source.Span;
import packetwright.wood.assembly.Placed;
import packetwright.wood.part.Removal.Bore;

/**
 * U.S. Fish and Wildlife Service, "For the Birds", nest box dimensions: what the nest box measures
 * inside when it is put together, for every species in its table.
 */
class NestBoxSizesTest {
  private static final String SAMPLE = "nest-box";

  /** Our names of the species, and the rows that they stand in. */
  private static final Map<String, String> PUBLISHED =
      new TreeMap<>(
          Map.ofEntries(
              entry("ash-throated flycatcher", "Ash-throated Flycatcher"),
              entry("bluebird", "Eastern & Western Bluebird"),
              entry("carolina wren", "Carolina Wren"),
              entry("chickadee", "Chickadee"),
              entry("downy woodpecker", "Downy Woodpecker"),
              entry("great crested flycatcher", "Great Crested Flycatcher"),
              entry("hairy woodpecker", "Hairy Woodpecker"),
              entry("house wren", "Bewick's/House Wren"),
              entry("mountain bluebird", "Mountain Bluebird"),
              entry("pygmy nuthatch", "Brown-headed/Pygmy/Red-breasted Nuthatch"),
              entry("red-headed woodpecker", "Red-headed Woodpecker"),
              entry("titmouse", "Titmouse"),
              entry("tree swallow", "Tree & Violet-green Swallow"),
              entry("white-breasted nuthatch", "White-breasted Nuthatch"),
              entry("yellow-bellied sapsucker", "Yellow-bellied Sapsucker")));

  private static final Map<String, List<String>> ROWS = rows();

  private static Map<String, List<String>> rows() {
    Map<String, List<String>> rows = new HashMap<>();
    try (InputStream in =
        NestBoxSizesTest.class.getResourceAsStream("/published/nest-box-dimensions.csv")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      text.lines()
          .skip(1)
          .map(line -> List.of(line.split(",", -1)))
          .forEach(r -> rows.put(r.get(0), r));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    return rows;
  }

  static Stream<String> species() {
    return PUBLISHED.keySet().stream();
  }

  @Test
  void theTableHasTheseSpeciesAndNoOthers() {
    var choice = ProjectReader.read(ProjectFolder.sample(SAMPLE)).value().choices().get(0);
    assertThat(choice.rows().keySet()).containsExactlyInAnyOrderElementsOf(PUBLISHED.keySet());
    assertThat(ROWS.keySet()).containsAll(PUBLISHED.values());
  }

  @ParameterizedTest
  @MethodSource("species")
  void theBoxMeasuresWhatIsPublished(String species) {
    List<String> row = ROWS.get(PUBLISHED.get(species));
    Box box = new Box(lesson(species));

    String floor = row.get(1).replaceFirst("x.*", "");
    assertThat(row.get(1)).as("a square floor").isEqualTo(floor + "x" + floor);
    assertThat(box.width()).as("inside, side to side").isEqualTo(inches(floor));
    assertThat(box.depth()).as("inside, front to back").isEqualTo(inches(floor));
    List<Length> heights = range(row.get(2));
    assertThat(box.heightAtFront())
        .as("height at the front")
        .isBetween(heights.get(0), heights.get(1));
    assertThat(box.heightAtBack())
        .as("height at the back")
        .isBetween(heights.get(0), heights.get(1));
    List<Length> entrances = range(row.get(3));
    assertThat(box.entranceHeight()).as("entrance").isBetween(entrances.get(0), entrances.get(1));
    assertThat(box.entrance().diameter()).as("diameter").isEqualTo(inches(row.get(4)));
  }

  private static Lesson lesson(String species) {
    Request request = new Request("", List.of("species=" + species), Set.of(), "");
    var worked = Lessons.workOut(ProjectFolder.sample(SAMPLE), request);
    assertThat(worked.findings()).isEmpty();
    return worked.value();
  }

  /** {@code 8-12}. */
  private static List<Length> range(String published) {
    List<Length> range = new ArrayList<>();
    for (String end : published.split("-", -1)) {
      range.add(inches(end));
    }
    return range;
  }

  private static Length inches(String text) {
    Located<String> written = new Located<>(text, Span.startOf("published"));
    return QuantityReader.read(written, Unit.INCH).value().asLength();
  }

  /** What a rule would say inside the box, from the pieces in their places. */
  private record Box(Lesson lesson) {
    private Placed piece(String name) {
      return lesson.assembly().pieces().stream()
          .filter(p -> p.piece().equals(name))
          .findFirst()
          .orElseThrow();
    }

    Length width() {
      return piece("side 2").block().low().x().minus(piece("side 1").block().high().x());
    }

    Length depth() {
      return piece("back").block().low().y().minus(piece("front").block().high().y());
    }

    private Length floor() {
      return piece("floor").block().high().z();
    }

    Length heightAtBack() {
      return piece("side 1").block().high().z().minus(floor());
    }

    Length heightAtFront() {
      Length by = piece("side 1").part().features().get(0).sizes().get("by");
      return heightAtBack().minus(Objects.requireNonNull(by));
    }

    Bore entrance() {
      return (Bore) piece("front").solid().removals().get(0);
    }

    /** Of its center, above the floor. */
    Length entranceHeight() {
      return piece("front").inAssembly(entrance().centre()).z().minus(floor());
    }
  }
}
