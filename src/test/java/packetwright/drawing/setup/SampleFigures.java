package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import packetwright.definition.shop.MachineKind;
import packetwright.drawing.sheet.Sheet;
import packetwright.plan.lesson.Lesson;
import packetwright.text.words.Words;
import packetwright.wood.operation.OperationRun;

/** One figure of each kind, from the samples. */
public final class SampleFigures {
  private static final Words WORDS = Words.of("en");

  private static final Map<String, List<String>> NAMES =
      Map.of(
          "nest-box own shop []",
          List.of(
              "set-up-4-rip-side-board",
              "set-up-9-cut-side-slope",
              "set-up-10-crosscut-roof",
              "set-up-11-drill-floor-drain-1",
              "set-up-11-drill-floor-drain-1-2"),
          "sliding-lid-box own shop []",
          List.of(
              "set-up-1-rough-cut-wall",
              "set-up-2-plane-to-thickness-wall",
              "set-up-3-joint-edge-wall",
              "set-up-5-square-end-wall",
              "set-up-7-cut-side-lid-groove",
              "set-up-7-cut-side-lid-groove-stack",
              "set-up-8-crosscut-side",
              "set-up-9-cut-side-end-rabbets",
              "set-up-12-rip-wall"),
          "step-stool own shop []",
          List.of(
              "set-up-8-cut-leg-dado",
              "set-up-9-saw-curve-leg-arch",
              "set-up-9-saw-curve-leg-arch-2",
              "set-up-10-rout-seat-front-edge",
              "set-up-10-rout-seat-front-edge-2"));

  private SampleFigures() {}

  /** The figures, named as they are. */
  public static List<Sheet> all() {
    List<Sheet> sheets = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Map.Entry<String, Lesson> entry : SampleRuns.inOwnShops().entrySet()) {
      List<String> wanted = NAMES.getOrDefault(entry.getKey(), List.of());
      for (OperationRun run : entry.getValue().run().operations()) {
        for (Sheet sheet : figures(entry.getValue(), run)) {
          if (wanted.contains(sheet.name()) && names.add(sheet.name())) {
            sheets.add(sheet);
          }
        }
        if (run.tool() == MachineKind.ROUTER_TABLE && !wanted.isEmpty()) {
          sheets.add(figures(entry.getValue(), byHand(run)).get(0).named("set-up-hand-router"));
        }
      }
    }
    return sheets;
  }

  private static List<Sheet> figures(Lesson lesson, OperationRun run) {
    return SetUpFigure.of(run, lesson.shop(), lesson.project().rule(), WORDS);
  }

  /** The same with a router in the hand. */
  static OperationRun byHand(OperationRun run) {
    return new OperationRun(
        run.step(),
        run.operation(),
        MachineKind.HANDHELD_ROUTER,
        null,
        run.before(),
        run.after(),
        run.settings(),
        run.work(),
        null);
  }
}
