package packetwright.text.source;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FindingTextTest {
  private static final Finding FINDING =
      Finding.error(
              "piece-too-short",
              new Span("procedure.md", 84, 3, 10),
              "the front end is 4 1/2 in long here",
              "move this operation to step 3")
          .inStep("9, Trim the front end");

  @Test
  void pointsAtThePlaceAndSaysWhatToTry() {
    assertThat(FindingText.render(FINDING, "- joint_edge: front_end"))
        .isEqualTo(
            """
            error: the front end is 4 1/2 in long here   [piece-too-short]
              procedure.md:84:3  step 9, Trim the front end
               84 | - joint_edge: front_end
                  |   ^^^^^^^^^^
              try: move this operation to step 3
            """);
  }

  @Test
  void showsOnlyTheStretchOfALongLineThatMatters() {
    Finding far = Finding.warning("x", new Span("f", 1, 201, 3), "m", "");
    assertThat(FindingText.render(far, "a".repeat(200) + "bbb" + "c".repeat(200)).lines())
        .contains("    1 | ..." + "a".repeat(38) + "bbb" + "c".repeat(35) + "...")
        .contains("      | " + " ".repeat(41) + "^^^")
        .hasSize(4);
  }

  @Test
  void showsNoControlCharacters() {
    Finding tab = Finding.error("x", new Span("f", 1, 2, 1), "m", "");
    assertThat(FindingText.render(tab, "\ta\u001b[2J")).contains("    1 |  a [2J\n      |  ^\n");
  }
}
