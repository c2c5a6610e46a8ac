package packetwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import packetwright.definition.project.ProjectFolder;

/** The commands as a person types them. */
class MainTest {
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

  /** The sample in a folder of its own, with one text in a file replaced. */
  private Path sampleWith(String file, String text, String by) throws IOException {
    ProjectFolder sample = ProjectFolder.sample("sliding-lid-box");
    Path folder = temporary.resolve("my-box");
    Files.createDirectories(folder);
    for (String name : sample.files()) {
      String content = sample.text(name).value();
      if (name.equals(file)) {
        assertThat(content).contains(text);
        content = content.replace(text, by);
      }
      Files.writeString(folder.resolve(name), content);
    }
    return folder;
  }

  @Test
  void checksTheSampleInOneLine() {
    assertThat(run("check", "sliding-lid-box"))
        .isEqualTo(
            new Ended(
                0,
                "Sliding-lid box: 20 steps, 28 operations; all 6 pieces come out as drawn\n",
                ""));
  }

  @Test
  void checksEveryCombinationOfTheOptions() {
    assertThat(run("check", "nest-box", "--all-options"))
        .isEqualTo(
            new Ended(
                0,
                """
                Nest box: 14 steps, 30 operations; all 6 pieces come out as drawn
                Nest box, with predator_guard: 17 steps, 36 operations; all 7 pieces come out as drawn
                """,
                ""));
  }

  @Test
  void saysWhichCombinationHasErrors() throws IOException {
    Path folder = sampleWith("procedure.md", "### Unless plain_lid\n", "");
    Ended ended = run("check", folder.toString(), "--all-options", "--option", "brads");
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.out())
        .contains("with brads: 21 steps", "errors, with brads and plain_lid")
        .hasLineCount(2);
    assertThat(ended.err()).contains("stands only without the option `plain_lid`");
  }

  @Test
  void namesTheOptionThatWasMeant() {
    for (String command : List.of("check", "show", "draw", "make")) {
      Ended ended = run(command, "nest-box", "--option", "predator_gard");
      assertThat(ended.status()).isEqualTo(1);
      assertThat(ended.err()).contains("--option:1:1", "try: write `predator_guard`");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "end_length, 'end_length         4 1/2 in', 'box_width - 2 * tongue'",
    "front_width, 'front_width        2 15/16 in', 'board_width - groove_inset'",
    "side.lid_groove.depth, '1/4 in', 'groove_depth'",
    "wall.rough_length, '36 in', 'wall.rough_length'",
    "table_saw.kerf, '1/8 in', 'table_saw.kerf'"
  })
  void showsASizeWithWhereItComesFrom(String name, String value, String formula) {
    Ended ended = run("show", "sliding-lid-box", name);
    assertThat(ended.status()).isZero();
    assertThat(ended.out()).contains(value).contains(formula);
  }

  @Test
  void showsExactRationalsAsJson() {
    Ended ended = run("show", "sliding-lid-box", "--json", "--set", "board_width=101.6 mm");
    assertThat(ended.status()).isZero();
    assertThat(ended.out())
        .contains("\"front_width\": {\n      \"value\": \"55/16\",\n      \"unit\": \"in\"")
        .contains("\"text\": \"3 7/16 in\"")
        .contains("\"formula\": \"board_width - groove_inset - groove_width - front_clearance\"");
  }

  @Test
  void pointsAtWhatIsWrongAndWritesNothing() throws IOException {
    Path folder =
        sampleWith("project.yaml", "front_width:   board_width", "front_width:   board_widht");
    Path out = temporary.resolve("out");
    Ended ended = run("make", folder.toString(), "--out", out.toString());
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err())
        .contains("[unknown-name]")
        .contains("^^^^^^^^^^^")
        .contains("board_width");
    assertThat(out).doesNotExist();
  }

  @Test
  void pointsIntoTheCommandLineToo() {
    Ended ended = run("check", "sliding-lid-box", "--set", "board_width=9 potatoes");
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains("--set:1:13").contains("board_width=9 potatoes");
  }

  @Test
  void printsFindingsAsJson() throws IOException {
    Path folder = sampleWith("procedure.md", "- joint_edge: wall", "- joint_egde: wall");
    Ended ended = run("check", "--json", folder.toString());
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.out()).contains("\"code\": \"unknown-verb\"").contains("\"line\": ");
  }

  @Test
  void checksTheQuizToo() throws IOException {
    Path folder = sampleWith("quiz.yaml", "from: 0, to: 6", "from: 0, to: 8");
    Ended ended = run("check", folder.toString());
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err()).contains("[rule-too-long]").contains("quiz.yaml:3:58");
    assertThat(run("check", "--json", folder.toString()).out()).contains("rule-too-long");
    assertThat(run("make", folder.toString(), "--out", temporary.resolve("out").toString()).err())
        .isEqualTo(ended.err());
  }

  @Test
  void pointsAtANameThatIsNoSize() {
    Ended ended = run("show", "sliding-lid-box", "tongue", "tonge");
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err())
        .contains("error: no size is called `tonge`   [unknown-name]")
        .contains("show:2:1")
        .contains("try: write `tongue`")
        .contains("1 error");
  }

  @Test
  void showsThatAPrintedValueIsALittleOff() {
    Ended ended = run("show", "sliding-lid-box", "board_width", "--set", "board_width=101.5 mm");
    assertThat(ended.out()).startsWith("board_width        4 in scant");
    assertThat(run("show", "--json", "sliding-lid-box", "--set", "board_width=101.5 mm").out())
        .contains("\"text\": \"4 in scant\"");
  }

  @Test
  void helpsAndTellsItsVersion() {
    assertThat(run("--version")).isEqualTo(new Ended(0, "packetwright 1\n", ""));
    assertThat(run().status()).isEqualTo(2);
    assertThat(run().out() + run().err()).contains("Usage: packetwright");
    for (String command : List.of("make", "draw", "check", "show")) {
      Ended ended = run(command, "--help");
      assertThat(ended.status()).isZero();
      assertThat(ended.out()).contains("Usage: packetwright " + command);
      assertThat(ended.out()).contains("Samples: ").contains("sliding-lid-box");
    }
  }

  /** The packet's files do not tell where its shop profile lay, and hold the one that was used. */
  @Test
  void keepsTheShopProfileThatWasUsed() throws IOException {
    Path folder = sampleWith("quiz.yaml", "1/32", "1/32");
    Files.writeString(folder.resolve("shop.yaml"), "this is not read");
    String used = ProjectFolder.sample("sliding-lid-box").text("shop.yaml").value() + "# used\n";
    Path early = Files.writeString(temporary.resolve("aaa.yaml"), used);
    Path late = Files.writeString(temporary.resolve("zzz.yaml"), used);
    Map<String, String> one = made(folder, early);
    assertThat(one).containsEntry("inputs/shop.yaml", used);
    assertThat(one.get("manifest.json"))
        .doesNotContain(temporary.toString(), "aaa.yaml")
        .contains("\"set\": [\"board_width=101.6 mm\"]");
    assertThat(made(folder, late)).isEqualTo(one);
    assertThat(
            made(
                folder,
                temporary.resolve("..").resolve(temporary.getFileName()).resolve("aaa.yaml")))
        .isEqualTo(one);
  }

  private Map<String, String> made(Path folder, Path shop) throws IOException {
    Path out = temporary.resolve("out");
    Ended ended =
        run(
            "make",
            folder.toString(),
            "--shop",
            shop.toString(),
            "--set",
            "board_width=101.6 mm",
            "--out",
            out.toString());
    assertThat(ended.err()).isEmpty();
    Map<String, String> made = new TreeMap<>();
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        made.put(
            out.relativize(file).toString().replace('\\', '/'),
            Files.readString(file, StandardCharsets.ISO_8859_1));
      }
    }
    return made;
  }

  @Test
  void tellsWrongUsageFromWhatCannotBeRead() {
    assertThat(run("make").status()).isEqualTo(2);
    assertThat(run("mak", "sliding-lid-box").status()).isEqualTo(2);
    assertThat(run("make", "sliding-lid-box", "--paper", "a3").status()).isEqualTo(2);
    assertThat(run("make", "no-such-folder").status()).isEqualTo(3);
    assertThat(run("check", "sliding-lid-box", "--shop", "no-such-file.yaml").status())
        .isEqualTo(3);
    assertThat(run("make", "sliding-lid-boks").err()).contains("sliding-lid-box");
  }

  @Test
  void cannotWriteWhereAFileStandsInTheWay() throws IOException {
    Path file = Files.writeString(temporary.resolve("taken"), "mine");
    Ended ended = run("make", "sliding-lid-box", "--out", file.resolve("packet").toString());
    assertThat(ended.status()).isEqualTo(3);
    assertThat(file).hasContent("mine");
  }

  @Test
  void neverReplacesTheProjectItself() throws IOException {
    Path folder = sampleWith("project.yaml", "units: inch", "units: inch");
    Ended ended = run("make", folder.toString(), "--out", folder.toString());
    assertThat(ended.status()).isEqualTo(3);
    assertThat(ended.err()).contains("--out");
    assertThat(folder.resolve("project.yaml")).exists();
  }

  @Test
  void makesTheWholePacketAndNothingElse() throws IOException {
    Path out = temporary.resolve("out");
    Ended ended = run("make", "sliding-lid-box", "--term", "2027 spring", "--out", out.toString());
    assertThat(ended.err()).isEmpty();
    assertThat(ended.status()).isZero();
    assertThat(ended.out()).contains("student-packet.pdf").contains("answer-key.pdf");
    try (Stream<Path> files = Files.walk(out)) {
      List<String> names =
          files
              .filter(Files::isRegularFile)
              .map(f -> out.relativize(f).toString().replace('\\', '/'))
              .sorted()
              .toList();
      assertThat(names)
          .containsExactly(
              ".packetwright-output",
              "answer-key.pdf",
              "inputs/procedure.md",
              "inputs/project.yaml",
              "inputs/quiz.yaml",
              "inputs/shop.yaml",
              "manifest.json",
              "sizes.json",
              "student-packet.pdf");
    }
    assertThat(run("show", "--json", "sliding-lid-box", "--term", "2027 spring").out())
        .isEqualTo(Files.readString(out.resolve("sizes.json")));
  }
}
