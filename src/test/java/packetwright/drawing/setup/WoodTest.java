package packetwright.drawing.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.setup.SetUpFigure.Drawn;
import packetwright.drawing.sheet.Outline;
import packetwright.drawing.sheet.Painter;
import packetwright.drawing.sheet.Scale;
import packetwright.drawing.view.Section;
import packetwright.drawing.view.View.Place;
import packetwright.text.measure.Length;
import packetwright.text.words.Words;
import packetwright.wood.part.Solid;

/** What is drawn as cut away is what the simulation takes away. */
class WoodTest {
  private static final Words WORDS = Words.of("en");

  /** Areas of wood filled, by shoelace, in square points. */
  private static final class Filled implements Painter {
    private final List<Double> areas = new ArrayList<>();

    @Override
    public void stroke(Outline path, Pen pen) {}

    @Override
    public void fill(Outline path, double grey) {
      double twice = 0;
      List<Outline.Segment> corners =
          path.segments().stream().filter(s -> s.kind() != 'Z').toList();
      for (int i = 0; i < corners.size(); i++) {
        List<Double> here = corners.get(i).xy();
        List<Double> next = corners.get((i + 1) % corners.size()).xy();
        twice += here.get(0) * next.get(1) - next.get(0) * here.get(1);
      }
      areas.add(Math.abs(twice) / 2);
    }

    @Override
    public void text(double x, double y, double angle, double size, Face face, String text) {}

    double total() {
      return areas.stream().mapToDouble(a -> a).sum();
    }
  }

  @Test
  void drawsTheAreaThatEachCutTakes() {
    List<String> seen = new ArrayList<>();
    SampleRuns.all()
        .forEach(
            (name, lesson) ->
                lesson
                    .run()
                    .operations()
                    .forEach(
                        run -> {
                          for (Drawn drawn :
                              SetUpFigure.drawn(
                                  run, lesson.shop(), lesson.project().rule(), WORDS)) {
                            if (drawn.view() instanceof TableSection section
                                && !section.isThrough()) {
                              check(name, section, drawn.scene().scale());
                              seen.add(name);
                            }
                          }
                        }));
    assertThat(seen).hasSizeGreaterThan(20);
  }

  private static void check(String name, TableSection section, Scale scale) {
    double taken =
        filled(section, section.before(), scale) - filled(section, section.after(), scale);
    double perInch = scale.pointsPerInch();
    double expected =
        (area(section, section.before()) - area(section, section.after())) * perInch * perInch;
    assertThat(expected).as(name).isPositive();
    assertThat(taken).as(name).isCloseTo(expected, within(expected * 1e-3));
  }

  private static double filled(TableSection section, Solid solid, Scale scale) {
    Scene scene = new Scene(scale);
    Wood wood =
        Wood.of(section.before(), section.guided(), section.down(), section.far(), scene, 140);
    wood.fill(scene, solid, 0.5);
    Filled filled = new Filled();
    scene.marks().forEach(mark -> mark.paint(filled));
    return filled.total();
  }

  private static double area(TableSection section, Solid solid) {
    int across = 1 - section.guided().axis();
    Length middle = solid.extent(across).dividedBy(2);
    double area = 0;
    for (Section.Cut cut : Section.of(solid, across, middle).areas()) {
      area += area(cut.outline());
      area -= cut.holes().stream().mapToDouble(WoodTest::area).sum();
    }
    return area;
  }

  private static double area(List<Place> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      Place here = ring.get(i);
      Place next = ring.get((i + 1) % ring.size());
      twice += here.u() * next.v() - next.u() * here.v();
    }
    return Math.abs(twice) / 2;
  }
}
