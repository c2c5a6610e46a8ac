package packetwright.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import packetwright.drawing.sheet.Outline;
import packetwright.text.source.Checked;
import packetwright.text.source.Finding;

class SymbolReaderTest {
  private static Checked<Symbol> read(String body) {
    return SymbolReader.read(
        "diagrams/x.svg",
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"10 20 40 30\">\n" + body + "\n</svg>");
  }

  private static Outline only(String body) {
    List<Symbol.Shape> shapes = read(body).value().shapes();
    assertThat(shapes).hasSize(1);
    return shapes.get(0).path();
  }

  @TestFactory
  Stream<DynamicTest> readsEverySymbolOfOurs() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("diagrams"))) {
      List<Path> found = files.filter(f -> f.toString().endsWith(".svg")).sorted().toList();
      assertThat(found).hasSizeGreaterThan(3);
      return found.stream()
          .map(
              file ->
                  DynamicTest.dynamicTest(
                      file.getFileName().toString(),
                      () -> {
                        Checked<Symbol> symbol =
                            SymbolReader.read(file.toString(), Files.readString(file));
                        assertThat(symbol.findings()).isEmpty();
                        assertThat(symbol.value().title()).isNotBlank();
                        assertThat(symbol.value().shapes()).isNotEmpty();
                      }));
    }
  }

  @Test
  void measuresFromTheCornerOfTheViewBox() {
    Symbol symbol =
        read("<title> A box </title><rect x='10' y='20' width='4' height='3'/>").value();
    assertThat(symbol.name()).isEqualTo("x");
    assertThat(symbol.title()).isEqualTo("A box");
    assertThat(symbol.width()).isEqualTo(40);
    assertThat(symbol.height()).isEqualTo(30);
    assertThat(symbol.shapes().get(0).path()).isEqualTo(Outline.rectangle(0, 0, 4, 3));
  }

  @Test
  void relativeAndAbsoluteCommandsDrawTheSame() {
    assertThat(only("<path d='m10 20 l5 0 v5 h-5 c1 1 2 2 3 3 s4 4 5 5 q3 3 6 0 z'/>"))
        .isEqualTo(
            only(
                "<path d='M10 20 L15 20 V25 H10 C11 26 12 27 13 28 S17 32 18 33 Q21 36 24 33 Z'/>"));
  }

  @Test
  void transformsApplyInnermostFirst() {
    assertThat(
            only(
                "<g transform='translate(10 20)'><line transform='scale(2)' x1='1' y1='2' x2='3'"
                    + " y2='4'/></g>"))
        .isEqualTo(Outline.line(2, 4, 6, 8));
  }

  @Test
  void styleIsInheritedAndColourBecomesGrey() {
    Symbol.Shape shape =
        read("<g fill='none' stroke='#ff0000' stroke-width='2'><circle cx='1' cy='2' r='3'/></g>")
            .value()
            .shapes()
            .get(0);
    assertThat(shape.fill()).isNegative();
    assertThat(shape.stroke()).isEqualTo(0.299);
    assertThat(shape.strokeWidth()).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<text>hello</text>",
        "<image href='file:///etc/passwd'/>",
        "<use href='#a'/>",
        "<style>path {}</style>",
        "<path d='M0 0 A1 1 0 0 0 2 2'/>",
        "<path d='M0 0 L nonsense'/>",
        "<rect x='3mm' y='0' width='1' height='1'/>",
        "<circle r='1' fill='red'/>",
        "<line x1='&bang;'/>",
        "<g>",
      })
  void refusesWhatItDoesNotDrawAndNamesTheLine(String body) {
    Checked<Symbol> symbol = read(body);
    assertThat(symbol.hasValue()).isFalse();
    assertThat(symbol.findings()).extracting(Finding::code).containsExactly("symbol-unreadable");
    assertThat(symbol.findings().get(0).at().line()).isGreaterThanOrEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "not xml",
        "<svg xmlns='http://www.w3.org/2000/svg'/>",
        "<!DOCTYPE svg [<!ENTITY a SYSTEM 'file:///etc/passwd'>]><svg viewBox='0 0 1 1'>&a;</svg>",
      })
  void refusesDocumentsThatAreNoSymbol(String text) {
    assertThat(SymbolReader.read("x.svg", text).hasValue()).isFalse();
  }

  @Test
  void nestingIsBounded() {
    assertThat(read("<g>".repeat(5000) + "</g>".repeat(5000)).findings()).hasSize(1);
  }
}
