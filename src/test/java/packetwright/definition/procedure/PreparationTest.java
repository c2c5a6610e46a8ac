package packetwright.definition.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import packetwright.definition.shop.ShopReader;

class PreparationTest {
  private static final Map<String, Set<String>> BLANKS =
      Map.of("side", Set.of("wall"), "lid", Set.of("panel"), "corner", Set.of("wall", "panel"));

  /** Marks of steps, each written as its operations, of which those with a star are students'. */
  private static List<String> marks(String... steps) {
    String text =
        Stream.of(steps)
            .map(
                step ->
                    Stream.of(step.split("; "))
                        .map(
                            o ->
                                o.startsWith("*")
                                    ? "- " + o.substring(1) + "\n"
                                    : "- " + o + "\n  by: instructor\n")
                        .collect(Collectors.joining("", "```operations\n", "```\n")))
            .map(block -> "## Step " + block.hashCode() + "\n" + block + "\nDo it.\n\n")
            .collect(Collectors.joining());
    Variant variant = new Variant(ShopReader.builtIn(), Set.of(), Set.of(), BLANKS);
    return ProcedureReader.read("procedure.md", text, variant).value().steps().stream()
        .map(Step::mark)
        .toList();
  }

  @Test
  void stepsOfTheInstructorBeforeAllStudentsWorkAreMarkedWithALetter() {
    assertThat(marks("rough_cut: wall", "plane_to_thickness: wall", "*rip: wall", "*drill: side.a"))
        .containsExactly("P1", "P2", "1", "2");
  }

  @Test
  void workOnAnotherBlankMayBePreparedLater() {
    assertThat(marks("rough_cut: wall", "*rip: wall", "rough_cut: panel", "*rip: panel"))
        .containsExactly("P1", "1", "P2", "2");
  }

  @Test
  void aPartIsOfItsBlankSoWorkOnItCannotBePreparedOnceTheBlankIsBegun() {
    assertThat(marks("rough_cut: wall", "*rip: wall", "cut: side.end_rabbets"))
        .containsExactly("P1", "1", "2");
    assertThat(marks("*sand: lid", "glue: corner")).containsExactly("1", "2");
    assertThat(marks("*sand: side 2", "rip: wall")).containsExactly("1", "2");
  }

  @Test
  void whatAnOperationMakesIsOfTheBlanksThatItWasMadeFrom() {
    assertThat(marks("*dry_fit: [side, lid]\n  makes: box", "sand: box", "sand: other"))
        .containsExactly("1", "2", "P1");
  }

  @Test
  void aStepOfBothStaysWithTheStudentsAndBeginsTheirWork() {
    assertThat(marks("rough_cut: wall; *rip: wall", "plane_to_thickness: wall"))
        .containsExactly("1", "2");
  }
}
