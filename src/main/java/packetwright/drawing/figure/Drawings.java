package packetwright.drawing.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import packetwright.definition.procedure.Step;
import packetwright.drawing.part.PartSheet;
import packetwright.drawing.setup.SetUpFigure;
import packetwright.drawing.sheet.Sheet;
import packetwright.drawing.template.Template;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Rule;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.blank.Blank;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.part.Part;
import packetwright.wood.workpiece.Layout;

/**
 * Every drawing of a lesson. A sheet's name is unique in it.
 *
 * @param lesson what is drawn
 * @param words of the drawings
 */
public record Drawings(Lesson lesson, Words words) {
  /** The project put together; none when nothing is placed. */
  public List<Sheet> finished() {
    return new Pictures(lesson, words).finished();
  }

  /** Its pieces moved apart, with their letters; none when nothing is placed. */
  public List<Sheet> apart() {
    return new Pictures(lesson, words).apart();
  }

  /** A drawing of each part, all at one scale where they can be. */
  public List<Sheet> parts() {
    return PartSheet.drawAll(lesson.parts(), this::material, rule(), words);
  }

  /** The blanks that are laid out at a step, on one sheet. */
  public List<Sheet> layouts(Step step) {
    List<Layout> layouts =
        runs(step).stream().map(OperationRun::layout).filter(Objects::nonNull).distinct().toList();
    return layouts.isEmpty()
        ? List.of()
        : List.of(
            LayoutSheet.drawAll(layouts, lesson.parts(), rule(), words)
                .named("layout-" + step.mark().toLowerCase(Locale.ROOT)));
  }

  /** Every set-up of a step, in the order of its operations. */
  public List<Sheet> setUps(Step step) {
    return unique(runs(step).stream().flatMap(run -> figures(run).stream()).toList());
  }

  /**
   * The set-ups of a step that differ in more than their numbers: of those that are alike, the
   * first.
   *
   * @param most at most so many sheets
   */
  public List<Sheet> kindsOfSetUp(Step step, int most) {
    Set<List<Object>> seen = new LinkedHashSet<>();
    List<Sheet> sheets = new ArrayList<>();
    for (OperationRun run : runs(step)) {
      List<Object> kind =
          List.of(
              run.tool() == null ? "" : run.tool(),
              run.operation().verb().value(),
              run.operation().from(),
              run.operation().sides());
      List<Sheet> figures = figures(run).stream().filter(s -> !SetUpFigure.isStack(s)).toList();
      if (!figures.isEmpty() && seen.add(kind) && sheets.size() + figures.size() <= most) {
        sheets.addAll(figures);
      }
    }
    return unique(sheets);
  }

  /** Curves and hole patterns at full size, tiled over pages. */
  public List<Sheet> templates() {
    return unique(
        lesson.parts().stream().flatMap(p -> Template.of(p, rule(), words).stream()).toList());
  }

  /** All of them: the whole, the parts, the work step by step, the templates. */
  public List<Sheet> all() {
    List<Sheet> all = new ArrayList<>(finished());
    all.addAll(apart());
    all.addAll(parts());
    for (Step step : lesson.procedure().steps()) {
      all.addAll(layouts(step));
      all.addAll(setUps(step));
    }
    all.addAll(templates());
    return unique(all);
  }

  private List<OperationRun> runs(Step step) {
    return lesson.run().ofStep(step.number());
  }

  private List<Sheet> figures(OperationRun run) {
    return SetUpFigure.of(run, lesson.shop(), rule(), words);
  }

  private Rule rule() {
    return lesson.project().rule();
  }

  private Phrase material(Part part) {
    for (Blank blank : lesson.blanks()) {
      if (blank.name().equals(part.blank())) {
        return Phrase.of(blank.material().replace('_', ' '));
      }
    }
    throw new IllegalStateException("part " + part.name() + " comes from no blank");
  }

  /** A step may do the same thing twice: equal sheets count once, others get a letter. */
  private static List<Sheet> unique(List<Sheet> sheets) {
    Map<String, Sheet> byName = new LinkedHashMap<>();
    for (Sheet sheet : sheets) {
      String name = sheet.name();
      for (char letter = 'b'; byName.containsKey(name) && !isSame(byName, name, sheet); letter++) {
        name = sheet.name() + "-" + letter;
      }
      byName.putIfAbsent(name, sheet.named(name));
    }
    return List.copyOf(byName.values());
  }

  private static boolean isSame(Map<String, Sheet> byName, String name, Sheet sheet) {
    return sheet.named(name).equals(byName.get(name));
  }
}
