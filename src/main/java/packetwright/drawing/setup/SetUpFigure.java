package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.drawing.sheet.Scale;
import packetwright.drawing.sheet.Sheet;
import packetwright.text.measure.Rule;
import packetwright.text.words.Words;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.setup.Setting;

/** A small figure of a machine set up for one operation, to stand beside the text of its step. */
public final class SetUpFigure {
  private static final String STACK = "-stack";

  private final SetUp setUp;

  private SetUpFigure(SetUp setUp) {
    this.setUp = setUp;
  }

  /**
   * The figures of an operation, each at most 3.4 in wide and 2.6 in high, at the largest preferred
   * scale at which it fits.
   *
   * @param run as simulated
   * @param shop whose machines they are
   * @param rule that the settings are printed by
   * @param words of the figures
   * @return nothing where there is nothing to be seen: glue, sanding, laying out; nor what finds no
   *     room at any scale, such as a face with dozens of holes
   */
  public static List<Sheet> of(OperationRun run, Shop shop, Rule rule, Words words) {
    return drawn(run, shop, rule, words).stream().map(Drawn::sheet).toList();
  }

  /** Whether a figure shows a dado set taken apart, and not a cut. */
  public static boolean isStack(Sheet sheet) {
    return sheet.name().endsWith(STACK);
  }

  /** A figure with the scene that it was put together as. */
  record Drawn(View view, Scene scene, Sheet sheet) {}

  /** The same with what they were made from, to be checked. */
  static List<Drawn> drawn(OperationRun run, Shop shop, Rule rule, Words words) {
    MachineKind tool = run.tool();
    return tool == null
        ? List.of()
        : new SetUpFigure(new SetUp(run, tool, shop, rule, words)).scenes();
  }

  private List<Drawn> scenes() {
    List<Drawn> drawn = new ArrayList<>();
    List<Scale> scales = Scale.reducing(setUp.rule().unit());
    for (View view : views()) {
      String suffix = drawn.isEmpty() ? "" : "-" + (drawn.size() + 1);
      add(drawn, draw(view, suffix, scales));
    }
    Setting cutter = setUp.setting("cutter");
    if (cutter != null && setUp.tool() == MachineKind.DADO_SET && cutter.stack().size() > 1) {
      List<Scale> larger = Scale.enlarging(setUp.rule().unit());
      add(drawn, draw(new StackView(setUp, cutter), STACK, larger));
    }
    return drawn;
  }

  private static void add(List<Drawn> drawn, @Nullable Drawn figure) {
    if (figure != null) {
      drawn.add(figure);
    }
  }

  private List<View> views() {
    return switch (setUp.tool()) {
      case TABLE_SAW, DADO_SET -> seen(cut(), slant());
      case ROUTER_TABLE -> {
        View section =
            setUp.run().operation().verb().value() == Verb.ROUT ? ProfileSection.of(setUp) : cut();
        yield seen(section, RouterPlan.of(section));
      }
      case HANDHELD_ROUTER -> seen(HandRouterPlan.of(setUp));
      case BAND_SAW ->
          setUp.run().operation().verb().value() == Verb.SAW_CURVE
              ? seen(CurvePlan.of(setUp), BandSawView.of(setUp))
              : seen(BandSawView.of(setUp));
      case MITER_SAW ->
          switch (setUp.run().operation().verb().value()) {
            case CROSSCUT, SQUARE_END, ROUGH_CUT -> seen(CrosscutPlan.of(setUp));
            default -> seen(slant());
          };
      case JOINTER -> seen(JointerView.of(setUp));
      case PLANER -> seen(PlanerView.of(setUp));
      case DRILL_PRESS -> {
        DrillPlan plan = DrillPlan.of(setUp);
        yield seen(plan, DrillSection.of(plan));
      }
      default -> List.of();
    };
  }

  private @Nullable View cut() {
    return switch (setUp.run().operation().verb().value()) {
      case RIP -> TableSection.rip(setUp);
      case CUT -> TableSection.band(setUp);
      default -> null;
    };
  }

  private @Nullable View slant() {
    return setUp.run().operation().verb().value() == Verb.CUT ? SlantView.of(setUp) : null;
  }

  private static List<View> seen(@Nullable View... views) {
    List<View> seen = new ArrayList<>();
    for (View view : views) {
      if (view != null) {
        seen.add(view);
      }
    }
    return seen;
  }

  private @Nullable Drawn draw(View view, String suffix, List<Scale> scales) {
    for (Scale scale : scales) {
      Scene scene = new Scene(scale);
      view.draw(scene);
      Sheet sheet = scene.finish(name() + suffix, alternative(view));
      if (sheet != null) {
        return new Drawn(view, scene, sheet);
      }
    }
    return null;
  }

  /** Unique among the operations of a procedure, but for one that a step does twice. */
  private String name() {
    String target =
        setUp.run().operation().targets().isEmpty()
            ? ""
            : "-" + setUp.run().operation().targets().get(0).value().replaceAll("[._ ]", "-");
    return "set-up-"
        + setUp.run().step().mark().toLowerCase(Locale.ROOT)
        + "-"
        + setUp.run().operation().verb().value().word().replace('_', '-')
        + target;
  }

  private String alternative(View view) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        setUp
            .words()
            .plain("setup.alternative", setUp.words().plain("packet.tool." + setUp.tool().word())));
    setUp.run().settings().forEach(setting -> sentences.add(setUp.said().aloud(setting)));
    sentences.addAll(view.alternative());
    return String.join(" ", sentences);
  }
}
