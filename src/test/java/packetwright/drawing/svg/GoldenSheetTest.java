package packetwright.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import packetwright.drawing.figure.LayoutSheet;
import packetwright.drawing.figure.PictorialSheet;
import packetwright.drawing.figure.PictorialSheet.Frame;
import packetwright.drawing.figure.SampleBox;
import packetwright.drawing.figure.SampleLayouts;
import packetwright.drawing.part.PartSheet;
import packetwright.drawing.part.SampleParts;
import packetwright.drawing.setup.SampleFigures;
import packetwright.drawing.sheet.RuleSheet;
import packetwright.drawing.sheet.RuleSheet.Pointer;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.template.Template;
import packetwright.drawing.view.Isometric.Eye;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/** Drawings that have been looked at; {@code -Dgolden.update=true} rewrites them, then fails. */
class GoldenSheetTest {
  private static final Path FOLDER = Path.of("src/test/resources/golden-svg");
  private static final Rule INCH = new Rule(Rational.of(1, 32), Unit.INCH);
  private static final Rule METRIC = new Rule(Rational.of(1, 2), Unit.MILLIMETRE);
  private static final Words WORDS = Words.of("en");

  private static Sheet named(Sheet sheet, String name) {
    return new Sheet(name, sheet.width(), sheet.height(), sheet.alternative(), sheet.marks());
  }

  private static List<Sheet> sheets() {
    List<Sheet> sheets = new ArrayList<>();
    SampleParts.all().forEach(p -> sheets.add(PartSheet.draw(p, Phrase.of("poplar"), INCH, WORDS)));
    SampleParts.shaped()
        .forEach(p -> sheets.add(PartSheet.draw(p, Phrase.of("pine"), INCH, WORDS)));
    sheets.add(
        named(
            PartSheet.draw(SampleParts.lid(), Phrase.of("birch plywood"), METRIC, WORDS),
            "part-lid-metric"));
    sheets.add(LayoutSheet.draw(SampleLayouts.wall(), INCH, WORDS));
    sheets.add(SampleLayouts.together(INCH, WORDS));
    sheets.addAll(Template.of(SampleParts.leg(), INCH, WORDS));
    sheets.addAll(Template.of(SampleParts.seat(), METRIC, WORDS));
    sheets.addAll(Template.of(SampleParts.taperedRail(), INCH, WORDS));
    sheets.addAll(Template.of(SampleParts.nestFloor(), INCH, WORDS));
    sheets.add(
        RuleSheet.draw(
            "rule-inch",
            new Rule(Rational.of(1, 16), Unit.INCH),
            Length.ofInches(6),
            List.of(
                new Pointer("A", Length.ofInches(11, 16)),
                new Pointer("B", Length.ofInches(37, 16)),
                new Pointer("C", Length.ofInches(39, 16)),
                new Pointer("D", Length.ofInches(41, 8))),
            WORDS));
    sheets.add(
        RuleSheet.draw(
            "rule-metric",
            new Rule(Rational.ONE, Unit.MILLIMETRE),
            SampleLayouts.millimetres(150),
            List.of(new Pointer("A", SampleLayouts.millimetres(43))),
            WORDS));
    sheets.add(
        RuleSheet.bars(
            "bars",
            List.of(
                new Pointer("A", Length.ofInches(37, 16)), new Pointer("B", Length.ofInches(4))),
            WORDS));
    sheets.add(
        PictorialSheet.draw(
            "cover",
            SampleBox.placed(Length.ofInches(-9, 2)),
            Eye.LOW_X_LOW_Y,
            new Frame(400, 320, false),
            "The box with its lid half out"));
    sheets.add(
        PictorialSheet.draw(
            "exploded",
            SampleBox.exploded(),
            Eye.LOW_X_LOW_Y,
            new Frame(500, 420, true),
            "The box taken apart"));
    sheets.add(
        PictorialSheet.draw(
            "shaped-parts",
            SampleBox.stool(),
            Eye.LOW_X_LOW_Y,
            new Frame(500, 420, true),
            "Parts with slants, curves and rounded edges"));
    sheets.addAll(SampleFigures.all());
    return sheets;
  }

  @TestFactory
  Stream<DynamicTest> drawsAsBefore() {
    return sheets().stream()
        .map(sheet -> DynamicTest.dynamicTest(sheet.name(), () -> compare(sheet)));
  }

  private static void compare(Sheet sheet) throws IOException {
    Path file = FOLDER.resolve(sheet.name() + ".svg");
    String drawn = SvgWriter.write(sheet);
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, drawn);
      assertThat(true).as("%s was rewritten: look at it", file).isFalse();
    }
    assertThat(drawn).isEqualTo(Files.readString(file));
  }

  @Test
  void everyGoldenFileIsDrawn() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(
              sheets().stream().map(s -> s.name() + ".svg").toList());
    }
  }
}
