package packetwright.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Fill;
import packetwright.drawing.sheet.Inscription;
import packetwright.drawing.sheet.Label;
import packetwright.drawing.sheet.Line;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.sheet.Stroke;

class SvgWriterTest {
  private static final Sheet SHEET =
      new Sheet(
          "test",
          144,
          36,
          "A & B",
          List.of(
              Stroke.of(Line.HIDDEN, 0, 1.0 / 3, 10, -0.0004),
              new Fill(Outline.rectangle(0, 0, 5, 5), 0.5),
              new Label(1, 2, 8, Inscription.of(Face.BOLD, "a<b"))));

  @Test
  void writesTrueSizeOneElementALineAttributesSorted() {
    assertThat(SvgWriter.write(SHEET).lines())
        .containsExactly(
            "<svg height=\"0.5in\" role=\"img\" style=\"font-kerning:none\" viewBox=\"0 0 144 36\""
                + " width=\"2in\" xmlns=\"http://www.w3.org/2000/svg\">",
            "<title>test</title>",
            "<desc>A &amp; B</desc>",
            "<path d=\"M0 0.333 L10 0\" fill=\"none\" stroke=\"#000000\""
                + " stroke-dasharray=\"4 1.8\" stroke-linejoin=\"round\" stroke-width=\"0.85\"/>",
            "<path d=\"M0 0 L5 0 L5 5 L0 5 Z\" fill=\"#808080\" fill-rule=\"evenodd\"/>",
            "<text font-family=\"'Roboto', sans-serif\" font-size=\"8\" font-weight=\"700\""
                + " lengthAdjust=\"spacingAndGlyphs\" textLength=\"12.863\" x=\"1\" xml:space=\"preserve\" y=\"2\">a&lt;b</text>",
            "</svg>");
  }

  @Test
  void doesNotDependOnTheDefaultLocale() {
    Locale before = Locale.getDefault();
    try {
      String here = SvgWriter.write(SHEET);
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(SvgWriter.write(SHEET)).isEqualTo(here);
    } finally {
      Locale.setDefault(before);
    }
  }
}
