package packetwright.drawing.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.drawing.setup.SetUpFigure.Drawn;
import packetwright.drawing.sheet.SheetReading;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Words;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.part.Point;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Shapes;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.CutterPlan;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/** Set-ups with any sizes stay legible and true to scale. */
class RandomSetUpTest {
  private static final Words WORDS = Words.of("en");
  private static final Rule INCH = new Rule(Rational.of(1, 32), Unit.INCH);
  private static final Rule METRIC = new Rule(Rational.of(1, 2), Unit.MILLIMETRE);

  private static final Lesson BOX = lesson("sliding-lid-box own shop");
  private static final Lesson STOOL = lesson("step-stool own shop");
  private static final Lesson NEST = lesson("nest-box own shop");

  private static Lesson lesson(String name) {
    return SampleRuns.inOwnShops().entrySet().stream()
        .filter(e -> e.getKey().startsWith(name))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElseThrow();
  }

  private static OperationRun like(Lesson lesson, Verb verb, MachineKind tool) {
    return lesson.run().operations().stream()
        .filter(run -> run.operation().verb().value() == verb && run.tool() == tool)
        .findFirst()
        .orElseThrow();
  }

  private static Length sixtyFourths(int count) {
    return Length.ofInches(count, 64);
  }

  private static Setting setting(String name, Length value, String datum) {
    return new Setting(name, Quantity.of(value), datum, null, Setting.Kind.BOUND, false);
  }

  private static Workpiece piece(Solid solid) {
    return new Workpiece("piece", "piece", solid, new EnumMap<>(Side.class));
  }

  /** The same operation on another piece with other settings. */
  private static OperationRun with(
      OperationRun run, @Nullable Solid before, Solid after, List<Setting> settings) {
    List<Workpiece> pieces = before == null ? List.of() : List.of(piece(before));
    return new OperationRun(
        run.step(),
        run.operation(),
        run.tool(),
        run.machine(),
        pieces,
        List.of(piece(after)),
        settings,
        run.work(),
        null);
  }

  private static void check(OperationRun run, Shop shop, Rule rule, int atLeast) {
    List<Drawn> figures = SetUpFigure.drawn(run, shop, rule, WORDS);
    assertThat(figures).hasSizeGreaterThanOrEqualTo(atLeast);
    for (Drawn drawn : figures) {
      SheetReading.of(drawn.sheet()).assertLegible(drawn.sheet());
      assertThat(drawn.sheet().width()).isLessThanOrEqualTo(3.4 * 72);
      assertThat(drawn.sheet().height()).isLessThanOrEqualTo(2.6 * 72 + 0.01);
      for (Scene.Measured measured : drawn.scene().measured()) {
        assertThat(measured.points())
            .isCloseTo(drawn.scene().points(measured.value()), within(1e-6));
      }
    }
  }

  @Property(tries = 120, seed = "501")
  void rips(
      @ForAll boolean isMetric,
      @ForAll @IntRange(min = 64, max = 64 * 24) int fence,
      @ForAll @IntRange(min = 1, max = 64 * 12) int beyond,
      @ForAll @IntRange(min = 12, max = 64 * 2) int thickness) {
    OperationRun run = like(BOX, Verb.RIP, MachineKind.TABLE_SAW);
    Length length = Length.ofInches(30);
    Solid before = Solid.block(length, sixtyFourths(fence + beyond), sixtyFourths(thickness));
    Solid after = Solid.block(length, sixtyFourths(fence), sixtyFourths(thickness));
    check(
        with(run, before, after, List.of(setting("fence", sixtyFourths(fence), "near"))),
        BOX.shop(),
        isMetric ? METRIC : INCH,
        1);
  }

  @Property(tries = 120, seed = "502")
  void grooves(
      @ForAll boolean isMetric,
      @ForAll @IntRange(min = 0, max = 64 * 6) int fence,
      @ForAll @IntRange(min = 8, max = 58) int width,
      @ForAll @IntRange(min = 4, max = 48) int height,
      @ForAll @IntRange(min = 8, max = 64 * 8) int beyond,
      @ForAll boolean isInside) {
    OperationRun run = like(BOX, Verb.CUT, MachineKind.DADO_SET);
    Solid before =
        Solid.block(
            Length.ofInches(30), sixtyFourths(fence + width + beyond), sixtyFourths(height + 12));
    CutterPlan plan =
        CutterPlan.of(sixtyFourths(width), BOX.shop().cutters(), Length.ofInches(1, 32));
    assertThat(plan).isNotNull();
    List<Setting> settings = new ArrayList<>();
    settings.add(
        new Setting(
            "cutter",
            Quantity.of(plan.width()),
            "",
            null,
            Setting.Kind.BOUND,
            false,
            plan.stack()));
    Solid after = before;
    for (int pass = 0; pass < plan.offsets().size(); pass++) {
      Length at = sixtyFourths(fence).plus(plan.offsets().get(pass));
      settings.add(setting(pass == 0 ? "fence" : "fence_" + (pass + 1), at, "near"));
      after =
          after.minus(
              Shapes.band(
                  before,
                  Side.TOP,
                  List.of(at, at.plus(plan.width())),
                  isInside ? Side.INSIDE : Side.OUTSIDE,
                  sixtyFourths(height)));
    }
    settings.add(setting("height", sixtyFourths(height), ""));
    check(with(run, before, after, settings), BOX.shop(), isMetric ? METRIC : INCH, 1);
  }

  @Property(tries = 120, seed = "503")
  void dadoesAtAStop(
      @ForAll boolean isMetric,
      @ForAll @IntRange(min = 0, max = 64 * 20) int stop,
      @ForAll @IntRange(min = 16, max = 48) int cutter,
      @ForAll @IntRange(min = 4, max = 30) int height,
      @ForAll @IntRange(min = 64, max = 64 * 20) int beyond) {
    OperationRun run = like(STOOL, Verb.CUT, MachineKind.DADO_SET);
    Solid before =
        Solid.block(
            sixtyFourths(stop + cutter + beyond), Length.ofInches(8), sixtyFourths(height + 16));
    Solid after =
        before.minus(
            Shapes.band(
                before,
                Side.LEFT,
                List.of(sixtyFourths(stop), sixtyFourths(stop + cutter)),
                Side.INSIDE,
                sixtyFourths(height)));
    check(
        with(
            run,
            before,
            after,
            List.of(
                setting("cutter", sixtyFourths(cutter), ""),
                setting("stop", sixtyFourths(stop), "near"),
                setting("height", sixtyFourths(height), ""))),
        STOOL.shop(),
        isMetric ? METRIC : INCH,
        1);
  }

  @Property(tries = 120, seed = "504")
  void crosscuts(
      @ForAll boolean isMetric,
      @ForAll @IntRange(min = 64, max = 64 * 60) int stop,
      @ForAll @IntRange(min = 1, max = 64 * 60) int beyond,
      @ForAll @IntRange(min = 48, max = 64 * 12) int width) {
    OperationRun run = like(BOX, Verb.CROSSCUT, MachineKind.MITER_SAW);
    Length thickness = Length.ofInches(3, 4);
    Solid before = Solid.block(sixtyFourths(stop + beyond), sixtyFourths(width), thickness);
    Solid after = Solid.block(sixtyFourths(stop), sixtyFourths(width), thickness);
    check(
        with(run, before, after, List.of(setting("stop", sixtyFourths(stop), "near"))),
        BOX.shop(),
        isMetric ? METRIC : INCH,
        1);
  }

  @Property(tries = 120, seed = "505")
  void squaredEnds(
      @ForAll boolean isMetric,
      @ForAll @IntRange(min = 8, max = 64 * 3) int trim,
      @ForAll @IntRange(min = 128, max = 64 * 60) int beyond,
      @ForAll @IntRange(min = 48, max = 64 * 12) int width) {
    OperationRun run = like(BOX, Verb.SQUARE_END, MachineKind.MITER_SAW);
    Length thickness = Length.ofInches(3, 4);
    Solid before = Solid.block(sixtyFourths(trim + beyond), sixtyFourths(width), thickness);
    Solid after = Solid.block(sixtyFourths(beyond), sixtyFourths(width), thickness);
    check(
        with(run, before, after, List.of(setting("trim", sixtyFourths(trim), ""))),
        BOX.shop(),
        isMetric ? METRIC : INCH,
        1);
  }

  /** In millimetres the numbers may find no room yet: then there is no figure. */
  @Property(tries = 120, seed = "506")
  void milling(
      @ForAll boolean isMetric,
      @ForAll @IntRange(min = 24, max = 64 * 3) int thickness,
      @ForAll @IntRange(min = 1, max = 4) int pass,
      @ForAll @IntRange(min = 64, max = 64 * 12) int width) {
    Length length = Length.ofInches(30);
    Solid before = Solid.block(length, sixtyFourths(width), sixtyFourths(thickness + pass * 3));
    Solid after = Solid.block(length, sixtyFourths(width), sixtyFourths(thickness));
    List<Setting> settings =
        List.of(
            setting("thickness", sixtyFourths(thickness), ""),
            setting("each_pass", sixtyFourths(pass), ""),
            new Setting(
                "passes", Quantity.number(Rational.of(3)), "", null, Setting.Kind.FREE, false));
    check(
        with(like(BOX, Verb.PLANE_TO_THICKNESS, MachineKind.PLANER), before, after, settings),
        BOX.shop(),
        isMetric ? METRIC : INCH,
        isMetric ? 0 : 1);
    check(
        with(
            like(BOX, Verb.JOINT_EDGE, MachineKind.JOINTER),
            before,
            after,
            List.of(setting("amount", sixtyFourths(pass), ""))),
        BOX.shop(),
        isMetric ? METRIC : INCH,
        isMetric ? 0 : 1);
  }

  @Property(tries = 120, seed = "507")
  void holes(
      @ForAll boolean isMetric,
      @ForAll @IntRange(min = 8, max = 64 * 2) int diameter,
      @ForAll @IntRange(min = 4, max = 64 * 10) int inset,
      @ForAll @IntRange(min = 4, max = 64 * 6) int across,
      @ForAll @IntRange(min = 16, max = 96) int thickness) {
    OperationRun run = like(NEST, Verb.DRILL, MachineKind.DRILL_PRESS);
    Length x = sixtyFourths(inset + diameter);
    Length y = sixtyFourths(across + diameter);
    Solid before =
        Solid.block(x.times(2).plus(Length.ofInches(1)), y.times(2), sixtyFourths(thickness));
    Removal bore =
        new Removal.Bore(
            2, new Point(x, y, Length.ZERO), sixtyFourths(thickness), sixtyFourths(diameter));
    check(
        with(
            run,
            before,
            before.minus(bore),
            List.of(
                setting("inset", x, "left"),
                setting("across", y, "bottom"),
                setting("diameter", sixtyFourths(diameter), ""))),
        NEST.shop(),
        isMetric ? METRIC : INCH,
        2);
  }

  @Property(tries = 120, seed = "508")
  void slantedEnds(
      @ForAll boolean isMetric,
      @ForAll @IntRange(min = 8, max = 64 * 4) int by,
      @ForAll @IntRange(min = 64, max = 64 * 9) int width,
      @ForAll @IntRange(min = 64 * 6, max = 64 * 20) int length,
      @ForAll boolean isTop) {
    OperationRun run =
        NEST.run().operations().stream()
            .filter(r -> r.settings().stream().anyMatch(s -> s.name().equals("by")))
            .findFirst()
            .orElseThrow();
    Solid before = Solid.block(sixtyFourths(length), sixtyFourths(width), Length.ofInches(3, 4));
    Removal slant =
        Shapes.slant(before, Side.RIGHT, isTop ? Side.TOP : Side.BOTTOM, sixtyFourths(by));
    check(
        with(run, before, before.minus(slant), List.of(setting("by", sixtyFourths(by), "right"))),
        NEST.shop(),
        isMetric ? METRIC : INCH,
        1);
  }
}
