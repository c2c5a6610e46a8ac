package packetwright.paper.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import packetwright.drawing.figure.Drawings;
import packetwright.drawing.setup.SampleRuns;
import packetwright.drawing.sheet.Sheet;
import packetwright.paper.pdf.PaintedPdf.Painted;
import packetwright.plan.lesson.Lesson;
import packetwright.text.words.Words;

/** Lengths on paper, measured in the operators of a whole page: 72 points are one inch. */
class DrawnLengthsTest {
  /** A page holds single precision, up to 900 points. */
  private static final double CLOSE = 0.001;

  private static Lesson lesson(String sample) {
    return Objects.requireNonNull(SampleRuns.inOwnShops().get(sample + " own shop []"));
  }

  private static List<Painted> page(Lesson lesson, String name) throws IOException {
    Sheet sheet =
        new Drawings(lesson, Words.of("en"))
            .all().stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
    String html =
        """
        <html lang="en"><head><title>A page</title>
        <meta name="subject" content="Trial"/><meta name="description" content="Trial"/>
        <style>@page {size: 11in 13in; margin: 1in} body {font: 11pt Roboto; margin: 0}
        svg {display: block}</style></head>
        <body><h1>A page</h1><p><svg data-sheet="%s" alt="A drawing"></svg></p></body></html>
        """
            .formatted(name);
    PdfInfo info = new PdfInfo(LocalDate.of(2027, 1, 11), 7);
    return PaintedPdf.read(new PdfWriter().write(html, Map.of(name, sheet), info));
  }

  private static double inches(Lesson lesson, String size) {
    return Objects.requireNonNull(lesson.sizes().find(size))
        .value()
        .asLength()
        .inches()
        .approximate();
  }

  /** From the upright line left of a text to the one right of it, at the height of its letters. */
  private static double between(List<Painted> page, String text) {
    List<Double> at =
        page.stream().filter(p -> p.what().equals(text)).findFirst().orElseThrow().numbers();
    List<Double> uprights =
        page.stream()
            .filter(p -> p.isStroke("ML"))
            .map(Painted::numbers)
            .filter(n -> Math.abs(n.get(0) - n.get(2)) < CLOSE)
            .filter(n -> Math.min(n.get(1), n.get(3)) < at.get(1) - 3)
            .filter(n -> Math.max(n.get(1), n.get(3)) > at.get(1) - 3)
            .map(n -> n.get(0))
            .toList();
    double left = uprights.stream().filter(x -> x < at.get(0)).max(Double::compare).orElseThrow();
    double right = uprights.stream().filter(x -> x > at.get(0)).min(Double::compare).orElseThrow();
    return right - left;
  }

  @Test
  void theFenceStandsAsFarFromTheBladeAsTheFigureSays() throws IOException {
    Lesson box = lesson("sliding-lid-box");
    List<Painted> page = page(box, "set-up-10-rip-wall");
    assertThat(page).extracting(Painted::what).contains("Roboto-Italic 1/2 size");
    double inches = inches(box, "front_width");
    assertThat(between(page, "Roboto-Regular Fence ")).isCloseTo(inches * 36, within(CLOSE));
  }

  @Test
  void theCheckBarOfATemplateIsSixInchesLong() throws IOException {
    List<Painted> page = page(lesson("nest-box"), "template-floor-front-1");
    assertThat(page)
        .filteredOn(p -> p.what().contains("This bar must measure"))
        .extracting(Painted::what)
        .hasSize(1);
    List<Double> bar =
        page.stream()
            .filter(p -> p.isStroke("ML"))
            .map(Painted::numbers)
            .filter(n -> n.get(1).equals(n.get(3)))
            .map(n -> n.get(2) - n.get(0))
            .filter(length -> Math.abs(length - 432) < 1)
            .toList();
    assertThat(bar).hasSize(1);
    assertThat(bar.get(0)).isCloseTo(6 * 72, within(CLOSE));
  }
}
