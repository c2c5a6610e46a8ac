package packetwright.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import packetwright.drawing.figure.Drawings;
import packetwright.drawing.setup.SampleRuns;
import packetwright.drawing.sheet.Sheet;
import packetwright.plan.lesson.Lesson;
import packetwright.text.words.Words;

/**
 * Our files against the grammar of SVG 1.1 (W3C Recommendation, second edition 2011, appendix A:
 * the document type definition, which comes along with Batik), and against Batik's renderer.
 */
class SvgGrammarTest {
  private static final String DOCTYPE =
      """
      <!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN"
        "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">
      """;

  /** The one attribute that is younger than the grammar, of WAI-ARIA 1.0 (W3C 2014). */
  private static final String ROLE = " role=\"img\"";

  private static List<Named<Lesson>> lessons() {
    List<Named<Lesson>> lessons = new ArrayList<>();
    SampleRuns.inOwnShops().forEach((name, lesson) -> lessons.add(Named.of(name, lesson)));
    SampleRuns.all()
        .forEach(
            (name, lesson) -> {
              if (name.contains("hand tools")) {
                lessons.add(Named.of(name, lesson));
              }
            });
    return lessons;
  }

  private static List<Sheet> sheets(Lesson lesson) {
    return new Drawings(lesson, Words.of("en")).all();
  }

  private static void validate(String svg) throws IOException {
    SAXSVGDocumentFactory factory = new SAXSVGDocumentFactory(null);
    factory.setValidating(true);
    factory.createDocument("sheet.svg", new StringReader(DOCTYPE + svg));
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void everySheetIsValid(Lesson lesson) throws IOException {
    List<Sheet> sheets = sheets(lesson);
    assertThat(sheets).hasSizeGreaterThan(5);
    for (Sheet sheet : sheets) {
      String svg = SvgWriter.write(sheet);
      assertThat(svg).containsOnlyOnce(ROLE);
      validate(svg.replace(ROLE, ""));
    }
  }

  @Test
  void theGrammarIsReallyAskedFor() {
    String svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\">%s</svg>";
    assertThatThrownBy(() -> validate(svg.formatted("<path d=\"M0 0\" font-kerning=\"none\"/>")))
        .hasMessageContaining("font-kerning");
    assertThatThrownBy(() -> validate(svg.formatted("<path/>"))).hasMessageContaining("path");
  }

  @Test
  void everySheetIsRendered() throws TranscoderException {
    List<Sheet> rendered = new ArrayList<>();
    for (Map.Entry<String, Lesson> entry : SampleRuns.inOwnShops().entrySet()) {
      for (Sheet sheet : sheets(entry.getValue())) {
        BufferedImage image = render(SvgWriter.write(sheet));
        assertThat(image.getWidth()).isEqualTo((int) Math.round(sheet.width()));
        assertThat(image.getHeight()).isEqualTo((int) Math.round(sheet.height()));
        assertThat(ink(image)).as("inked share of %s", sheet.name()).isBetween(0.002, 0.6);
        rendered.add(sheet);
      }
    }
    assertThat(rendered).hasSizeGreaterThan(80);
  }

  /** At 72 pixels to the inch, on white; warnings count as errors. */
  static BufferedImage render(String svg) throws TranscoderException {
    Capture capture = new Capture();
    capture.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, java.awt.Color.WHITE);
    capture.addTranscodingHint(ImageTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, 25.4f / 72);
    capture.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput());
    BufferedImage image = capture.image;
    if (image == null) {
      throw new TranscoderException("nothing was rendered");
    }
    return image;
  }

  /** Share of pixels that are not white. */
  private static double ink(BufferedImage image) {
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    long inked = IntStream.of(pixels).filter(p -> (p & 0xff) < 250).count();
    return (double) inked / pixels.length;
  }

  /** Keeps the picture instead of writing it. */
  private static final class Capture extends PNGTranscoder {
    private @Nullable BufferedImage image;

    @Override
    public void writeImage(BufferedImage picture, TranscoderOutput output) {
      image = picture;
    }
  }
}
