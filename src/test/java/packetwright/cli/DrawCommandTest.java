package packetwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import packetwright.definition.project.ProjectFolder;

/** {@code draw} as a person types it. */
class DrawCommandTest {
  @TempDir Path temporary;

  /** What a run came to. */
  private record Ended(int status, String out, String err) {}

  private static Ended run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Terminal terminal = new Terminal(new PrintWriter(out), new PrintWriter(err), false);
    int status = Main.run(terminal, arguments);
    return new Ended(status, out.toString(), err.toString());
  }

  private Ended draw(Path out, String... more) {
    return run(
        Stream.concat(Stream.of("draw", "--out", out.toString()), Stream.of(more))
            .toArray(String[]::new));
  }

  private static List<String> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void writesEachDrawingUnderItsName() throws IOException {
    Path out = temporary.resolve("out");
    Ended ended = draw(out, "sliding-lid-box");
    assertThat(ended.err()).isEmpty();
    assertThat(ended.status()).isZero();
    assertThat(files(out))
        .contains("part-side.svg", "set-up-5-cut-side-lid-groove.svg", "layout-4.svg")
        .allMatch(name -> name.endsWith(".svg") || name.equals(".packetwright-output"));
    assertThat(ended.out().lines())
        .hasSize(files(out).size() - 1)
        .contains(out.resolve("part-side.svg").toString());
    assertThat(out.resolve("part-side.svg"))
        .content()
        .startsWith("<svg ")
        .contains("<title>part-side</title>")
        .endsWith("</svg>\n");
  }

  @Test
  void writesOnlyTheDrawingsThatAreNamed() throws IOException {
    Path out = temporary.resolve("out");
    Ended ended = draw(out, "step-stool", "--sheet", "part-leg", "--sheet", "part-seat");
    assertThat(ended.status()).isZero();
    assertThat(files(out)).containsExactly(".packetwright-output", "part-leg.svg", "part-seat.svg");
  }

  @Test
  void drawsWhatTheOtherOptionsAskFor() throws IOException {
    Path plain = temporary.resolve("plain");
    Path wide = temporary.resolve("wide");
    String[] arguments = {"sliding-lid-box", "--sheet", "part-side"};
    assertThat(draw(plain, arguments).status()).isZero();
    assertThat(
            draw(wide, "sliding-lid-box", "--sheet", "part-side", "--set", "board_width=5-1/2")
                .status())
        .isZero();
    assertThat(wide.resolve("part-side.svg")).content().contains("5 and 1 half inches");
    assertThat(plain.resolve("part-side.svg")).content().doesNotContain("5 and 1 half inches");
    Path byHand = temporary.resolve("by-hand");
    assertThat(draw(byHand, "sliding-lid-box", "--shop", "hand-tools").status()).isZero();
    assertThat(files(byHand)).contains("part-side.svg");
    assertThat(files(byHand)).noneMatch(name -> name.contains("table_saw"));
    Path guarded = temporary.resolve("guarded");
    assertThat(draw(guarded, "nest-box", "--option", "predator_guard").status()).isZero();
    assertThat(files(guarded)).contains("part-guard.svg");
  }

  @Test
  void namesTheDrawingThatWasMeant() {
    Path out = temporary.resolve("out");
    Ended ended = draw(out, "sliding-lid-box", "--sheet", "part-lid", "--sheet", "part-sdie");
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err())
        .contains("error: no drawing is called `part-sdie`   [unknown-name]")
        .contains("--sheet:2:1")
        .contains("try: write `part-side`")
        .contains("1 error");
    assertThat(out).doesNotExist();
  }

  @Test
  void saysWhereTheNamesAreWhenNoneIsNear() {
    Ended ended = draw(temporary.resolve("out"), "sliding-lid-box", "--sheet", "everything-else");
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains("try: leave --sheet out: each file bears its name");
  }

  @Test
  void drawsNothingOfAProjectWithErrors() {
    Path out = temporary.resolve("out");
    Ended ended = draw(out, "sliding-lid-box", "--set", "board_width=9 potatoes");
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains("--set:1:13");
    assertThat(out).doesNotExist();
  }

  /** What {@code check} finds wrong is not drawn, also where no drawing shows it. */
  @Test
  void drawsNothingWhereOnlyTheQuizIsWrong() throws IOException {
    ProjectFolder sample = ProjectFolder.sample("sliding-lid-box");
    Path folder = Files.createDirectories(temporary.resolve("my-box"));
    for (String name : sample.files()) {
      String text = sample.text(name).value();
      Files.writeString(folder.resolve(name), text.replace("from: 0, to: 6", "from: 0, to: 8"));
    }
    Path out = temporary.resolve("out");
    Ended ended = draw(out, folder.toString());
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains("[rule-too-long]");
    assertThat(out).doesNotExist();
  }

  @Test
  void replacesItsOwnFolderAndLeavesAnyOtherAlone() throws IOException {
    Path out = temporary.resolve("out");
    assertThat(draw(out, "sliding-lid-box", "--sheet", "part-side").status()).isZero();
    assertThat(draw(out, "sliding-lid-box", "--sheet", "part-lid").status()).isZero();
    assertThat(files(out)).containsExactly(".packetwright-output", "part-lid.svg");
    Path mine = Files.writeString(out.resolve("mine.svg"), "mine");
    Ended ended = draw(out, "sliding-lid-box", "--sheet", "part-side");
    assertThat(ended.status()).isEqualTo(3);
    assertThat(ended.err()).contains("was not made by packetwright", "--out");
    assertThat(mine).hasContent("mine");
    assertThat(out.resolve("part-lid.svg")).exists();
  }
}
