package packetwright.definition.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.definition.project.ProjectFolder;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.definition.shop.ShopReader;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;
import packetwright.text.source.Span;

class ProcedureReaderTest {
  private static final Shop SHOP = ShopReader.builtIn();

  private static Checked<Procedure> read(String text, String... chosen) {
    return ProcedureReader.read("p.md", text, new Variant(SHOP, Set.of("brads"), Set.of(chosen)));
  }

  private static Checked<Procedure> operations(String yaml) {
    return read("## Do it\n```operations\n" + yaml + "\n```\nDo it.\n");
  }

  private static List<Block.Inline> prose(String text) {
    Checked<Procedure> read = read("## Do it\n" + text + "\n");
    assertThat(read.findings()).isEmpty();
    return ((Block.Paragraph) read.value().steps().get(0).prose().get(0)).spans();
  }

  @Test
  void readsTheSampleWithoutFindings() {
    ProjectFolder box = ProjectFolder.sample("sliding-lid-box");
    Shop shop = ShopReader.read("shop.yaml", box.text("shop.yaml").value()).value();
    Checked<Procedure> read =
        ProcedureReader.read(
            "procedure.md",
            box.text("procedure.md").value(),
            new Variant(shop, Set.of("brads", "plain_lid"), Set.of()));
    assertThat(read.findings()).isEmpty();
    assertThat(read.value().steps()).hasSize(20);
    assertThat(read.value().steps().get(6).id()).isEqualTo("cut-the-grooves");
    assertThat(read.value().introduction()).hasSize(3);
  }

  @Test
  void readsOperationsWithTheirPlaceInTheFile() {
    Operation cut =
        operations(
                """
                - cut: [side.lid_groove, back_end.lid_groove]
                  piece: wall
                  from: [top, inside]
                  at: dado_set
                  with: [push_block, test_piece]
                  set: {height: 1/4}
                """)
            .value()
            .steps()
            .get(0)
            .operations()
            .get(0);
    assertThat(cut.verb().value()).isEqualTo(Verb.CUT);
    assertThat(cut.place()).isEqualTo(new Span("p.md", 3, 3, 3));
    assertThat(cut.targets()).extracting(t -> t.at().column()).containsExactly(9, 26);
    assertThat(cut.from()).containsExactly(Side.TOP, Side.INSIDE);
    assertThat(cut.at()).satisfies(a -> assertThat(a.value()).isEqualTo(MachineKind.DADO_SET));
    assertThat(cut.with())
        .containsExactly(Operation.Control.PUSH_BLOCK, Operation.Control.TEST_PIECE);
    assertThat(cut.set()).containsOnlyKeys("height");
    assertThat(cut.by()).isEqualTo(Operation.By.STUDENT);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "- piece: wall | no-verb | begin it",
        "- crosscutt: side | unknown-verb | crosscut",
        "- groove: side | unknown-verb | `cut`",
        "- {crosscut: side, rip: wall} | two-verbs | operation of its own",
        "- {crosscut: side, on: miter_saw} | unknown-key | `at`",
        "- {crosscut: side, pieces: wall} | unknown-key | piece",
        "- {crosscut: side, at: miter_saww} | wrong-value | miter_saw",
        "- {crosscut: side, from: [botom]} | wrong-value | bottom",
        "- {crosscut: side, stop: yes} | wrong-type | true or false",
        "- {crosscut: side, count: two} | wrong-type | whole number",
        "- {crosscut: side, to: max(a, b)} | split-formula | quotes",
        "- crosscut side | wrong-type | crosscut: side",
        "- crosscut: [side | yaml-syntax | closing brackets",
      })
  void givesAWrongOperationOneFindingWithAHint(String yaml, String code, String hint) {
    assertThat(operations(yaml).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.code()).isEqualTo(code))
        .satisfies(f -> assertThat(f.at().line()).isEqualTo(3))
        .satisfies(f -> assertThat(f.hint()).contains(hint))
        .satisfies(f -> assertThat(f.step()).isIn("1, Do it", "Do it"));
  }

  @Test
  void readsEveryKindOfPlace() {
    assertThat(prose("Set {box_width} in {step: do-it} to {setting: fence} or {=3 in} \\{x}."))
        .containsExactly(
            new Block.Text("Set "),
            new Block.SizePlace("box_width", new Span("p.md", 2, 5, 11)),
            new Block.Text(" in "),
            new Block.StepPlace("do-it", new Span("p.md", 2, 20, 13)),
            new Block.Text(" to "),
            new Block.SettingPlace("", "fence", new Span("p.md", 2, 37, 16)),
            new Block.Text(" or "),
            new Block.Literal("3 in"),
            new Block.Text(" {x}."));
  }

  @Test
  void keepsEmphasisAroundPlaces() {
    assertThat(prose("Hold the **inside {a_b}** face\n*down*"))
        .containsExactly(
            new Block.Text("Hold the "),
            new Block.Emphasis(
                true,
                List.of(
                    new Block.Text("inside "),
                    new Block.SizePlace("a_b", new Span("p.md", 2, 19, 5)))),
            new Block.Text(" face"),
            new Block.Text(" "),
            new Block.Emphasis(false, List.of(new Block.Text("down"))));
  }

  @Test
  void readsLists() {
    Checked<Procedure> read = read("## Do it\n1. Saw.\n2. Plane:\n   - one\n   - two\n");
    Block.ItemList list = (Block.ItemList) read.value().steps().get(0).prose().get(0);
    assertThat(list.numbered()).isTrue();
    assertThat(list.items()).hasSize(2);
    assertThat(list.items().get(1)).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Set {box width}.", "Set {}.", "Set {box_width.", "Set {a + b}."})
  void refusesAPlaceThatNamesNothing(String text) {
    assertThat(read("## Do it\n" + text).findings())
        .singleElement()
        .satisfies(f -> assertThat(f.code()).isEqualTo("unreadable-place"))
        .satisfies(f -> assertThat(f.at().column()).isEqualTo(5));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Cut it 3 1/2 in long. | 3 1/2 in",
        "Cut it 3-1/2 in long. | 3-1/2 in",
        "Cut 1/4\" deep. | 1/4\"",
        "Cut it 140 mm long. | 140 mm",
        "Leave 1/16 for sanding. | 1/16",
        "Leave ½ for sanding. | ½",
        "Stay 6 inches away. | 6 inches",
        "Round it by half an inch. | half an inch",
        "Take a quarter inch off. | a quarter inch",
        "It is three quarters of an inch thick. | three quarters of an inch",
        "Leave an inch and a half. | an inch and a half",
        "Saw two and a half inches off. | two and a half inches",
        "Set the stop to 4.5. | 4.5",
        "Tilt the blade 30 degrees. | 30 degrees",
        "Tilt it 22.5°. | 22.5°",
        "Cut it 140 millimeters long. | 140 millimeters",
      })
  void warnsOfADimensionTypedIntoTheText(String text, String size) {
    Checked<Procedure> read = read("## Do it\n" + text);
    assertThat(read.isGood()).isTrue();
    assertThat(read.findings())
        .singleElement()
        .satisfies(f -> assertThat(f.code()).isEqualTo("literal-size"))
        .satisfies(f -> assertThat(f.at().column()).isEqualTo(text.indexOf(size) + 1))
        .satisfies(f -> assertThat(f.at().length()).isEqualTo(size.length()))
        .satisfies(f -> assertThat(f.hint()).contains("{=" + size + "}"));
  }

  @Test
  void leavesCountsAndCompoundWordsAlone() {
    assertThat(read("## Do it\nMake 2 passes with 150 grit. Don't use A-1 or side 2.").findings())
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<b>bold</b>",
        "<div>\nx\n</div>",
        "![x](y.png)",
        "[x](http://y)",
        "> quoted",
        "    indented",
        "***",
        "# Big",
        "```\ncode\n```",
        "```operation\n- rip: wall\n```"
      })
  void refusesMarkdownThatIsNotPrinted(String text) {
    assertThat(read("## Do it\nFirst.\n\n" + text + "\n").findings())
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.code()).isEqualTo("unread-markdown"));
  }

  @Test
  void takesTheFirstVariantWhoseMachineTheShopHas() {
    Shop noRouter =
        ShopReader.read(
                "s.yaml",
                "packetwright: 1\nshop: S\nunits: inch\nmachines: {table_saw: {count: 1}}\n")
            .value();
    String text =
        """
        ## Groove
        Common.
        ### With router_table
        Router.
        ### With table_saw
        Saw.
        ### With chisel
        Chisel.
        """;
    assertThat(read(text).value().steps().get(0).prose()).hasSize(2);
    Procedure read =
        ProcedureReader.read("p.md", text, new Variant(noRouter, Set.of(), Set.of())).value();
    assertThat(read.steps().get(0).prose())
        .extracting(b -> ((Block.Text) ((Block.Paragraph) b).spans().get(0)).text())
        .containsExactly("Common.", "Saw.");
  }

  @Test
  void dropsAStepWithoutLiveContentAndRenumbers() {
    String text = "## One\na\n## Nail\n### If brads\n```operations\n- nail: c\n```\n## Three\nb\n";
    assertThat(read(text).value().steps())
        .extracting(Step::label)
        .containsExactly("1, One", "2, Three");
    assertThat(read(text, "brads").value().steps())
        .extracting(Step::label)
        .containsExactly("1, One", "2, Nail", "3, Three");
  }

  @Test
  void readsAPassageUnlessAnOptionIsOn() {
    String text = "## One\nAlways.\n### Unless brads\nGlue.\n### If brads\nNail.\n";
    assertThat(paragraphs(read(text).value())).containsExactly("Always.", "Glue.");
    assertThat(paragraphs(read(text, "brads").value())).containsExactly("Always.", "Nail.");
  }

  @Test
  void readsAPassageInsideAnother() {
    String text =
        """
        ## One
        ### If brads
        Nail.
        #### With nailer
        Nailer.
        #### With chisel
        Chisel.
        ### With chisel
        Common.
        #### Unless brads
        Glue.
        """;
    assertThat(paragraphs(read(text).value())).containsExactly("Common.", "Glue.");
    assertThat(paragraphs(read(text, "brads").value()))
        .containsExactly("Nail.", "Nailer.", "Common.");
  }

  private static List<String> paragraphs(Procedure procedure) {
    return procedure.steps().get(0).prose().stream()
        .map(b -> ((Block.Text) ((Block.Paragraph) b).spans().get(0)).text())
        .toList();
  }

  @Test
  void tellsWhichOptionsItAsksFor() {
    assertThat(read("## One\na\n### Unless brads\nb\n").value().options()).containsExactly("brads");
  }

  @Test
  void reportsNamesThatAreNotKnown() {
    assertThat(
            read("## A\n{step: b}\n## A\nx\n### With tabel_saw\nx\n### If brad\nx\n### Else\nx\n")
                .findings())
        .extracting(Finding::code)
        .containsExactlyInAnyOrder(
            "unknown-step",
            "duplicate-step",
            "unknown-machine",
            "unknown-option",
            "unknown-variant");
  }

  @Test
  void warnsOfADimensionInATitle() {
    assertThat(read("## Cut the 3/4 in dado\nx").findings())
        .singleElement()
        .satisfies(f -> assertThat(f.code()).isEqualTo("literal-size"))
        .satisfies(f -> assertThat(f.hint()).contains("leave it out of the title"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Turn it 90 degrees. Then turn it 180 degrees.",
        "Glue sets at 65 °F in 1.5 hours.",
        "It is half as deep as it is long. Stand on two feet. Saw the foot end.",
        "It costs $4.50. Take one of the six pieces, a quarter turn at a time."
      })
  void takesNoOtherNumberForADimension(String text) {
    assertThat(read("## Do it\n" + text).findings()).isEmpty();
  }

  @Test
  void reportsAStepPlaceThatItsVariantHides() {
    assertThat(read("## A\n{step: nail-it}\n## Nail it\n### If brads\nx\n").findings())
        .singleElement()
        .satisfies(f -> assertThat(f.message()).contains("not stand in this variant"));
  }

  @Test
  void reportsTextWithoutSteps() {
    assertThat(read("Only words.").findings())
        .extracting(Finding::code)
        .containsExactly("step-count");
    assertThat(read(" \n").findings()).extracting(Finding::code).containsExactly("empty-file");
    assertThat(read("```operations\n- rip: wall\n```\n## A\nb\n").findings())
        .extracting(Finding::code)
        .containsExactly("operations-outside-step");
    assertThat(read("## \nx\n").findings())
        .extracting(Finding::code)
        .containsExactly("untitled-step");
  }

  @ParameterizedTest
  @ValueSource(strings = {"> ", "- ", "*a ", "[", "{", "`", "\\{", "<a "})
  @Timeout(value = 3, unit = TimeUnit.SECONDS)
  void endsSoonOnHostileText(String piece) {
    assertThat(read("## A\nx\n\n" + piece.repeat(20_000) + "\n")).isNotNull();
  }
}
