package packetwright.wood.setup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.shop.Shop;
import packetwright.text.measure.Length;
import packetwright.wood.blank.Blank;
import packetwright.wood.setup.Helper.Check;
import packetwright.wood.setup.Helper.Size;
import packetwright.wood.workpiece.Layout;
import packetwright.wood.workpiece.Workpiece;

/** Reckons how large each helper of an operation must be. */
public final class Helpers {
  /** Thick enough that the freed piece cannot touch fence and blade at once; common practice. */
  private static final Length STAND_OFF = Length.ofInches(1);

  private final Use use;
  private final Shop shop;

  private Helpers(Use use, Shop shop) {
    this.use = use;
    this.shop = shop;
  }

  /**
   * The work that the helpers are for.
   *
   * @param with the controls that are used
   * @param cut the kind of feature that is cut, or none
   * @param settings of the operation
   * @param piece worked on
   * @param blank that the piece is of
   * @param layout lines drawn, or none
   */
  public record Use(
      List<Control> with,
      @Nullable FeatureKind cut,
      List<Setting> settings,
      Workpiece piece,
      Blank blank,
      @Nullable Layout layout) {
    /** Keeps its own copies. */
    public Use {
      with = List.copyOf(with);
      settings = List.copyOf(settings);
    }
  }

  /** The helpers of an operation, in the order of its controls. */
  public static List<Helper> of(Use use, Shop shop) {
    Helpers helpers = new Helpers(use, shop);
    return use.with().stream().map(helpers::helper).toList();
  }

  private Helper helper(Control control) {
    return switch (control) {
      case TEST_PIECE -> testPiece();
      case BACKER -> made(control, least("width", use.piece().solid().width()));
      case STAND_OFF_BLOCK -> standOffBlock();
      case SLED_STOP ->
          made(
              control,
              new Size("at", false, setting("stop")),
              least("height", use.piece().solid().thickness()));
      case SACRIFICIAL_FENCE -> sacrificialFence();
      case STORY_STICK -> storyStick();
      case PUSH_STICK,
          PUSH_BLOCK,
          MITER_GAUGE,
          CLAMPS,
          FEATHERBOARD,
          JIG,
          SHOOTING_BOARD,
          BENCH_HOOK ->
          made(control);
    };
  }

  private static Helper made(Control control, Size... sizes) {
    return new Helper(
        control,
        1,
        List.of(sizes).stream().filter(size -> size.value().signum() > 0).toList(),
        List.of());
  }

  private static Size least(String name, Length value) {
    return new Size(name, true, value);
  }

  /** From the same boards, as wide and as thick as they are; two where they are lapped. */
  private Helper testPiece() {
    List<Size> sizes =
        List.of(
            new Size("length", false, shop.allowance("test_piece")),
            new Size("width", false, use.blank().boards().width().total()),
            new Size("thickness", false, use.piece().solid().thickness()));
    boolean isLapped = use.cut() == FeatureKind.RABBET;
    return new Helper(Control.TEST_PIECE, isLapped ? 2 : 1, sizes, List.of(check()));
  }

  private Check check() {
    FeatureKind cut = use.cut();
    if (cut == FeatureKind.RABBET) {
      return lapped(use.piece().solid().thickness(), setting("height").max(setting("depth")));
    }
    if (cut == FeatureKind.GROOVE || cut == FeatureKind.DADO) {
      return new Check("slides", Length.ZERO);
    }
    return cut == FeatureKind.HOLE
        ? new Check("gauge", setting("diameter"))
        : new Check("measure", Length.ZERO);
  }

  /**
   * Two rabbets laid into each other are as thick as two tongues: flush when each is cut half
   * through, else with a step of what is missing or too much.
   */
  static Check lapped(Length thickness, Length depth) {
    Length step = thickness.minus(depth.times(2));
    return step.signum() == 0
        ? new Check("flush", Length.ZERO)
        : new Check(
            step.signum() > 0 ? "step_thick" : "step_thin",
            step.signum() > 0 ? step : step.times(-1));
  }

  /** The end touches the block, not the fence, and is clear of it when the blade comes. */
  private Helper standOffBlock() {
    Length stop = setting("stop");
    return made(
        Control.STAND_OFF_BLOCK,
        new Size("thickness", false, STAND_OFF),
        new Size("fence", false, stop.signum() > 0 ? stop.plus(STAND_OFF) : Length.ZERO));
  }

  /** A cutter wider than the cut stands in the fence by the rest of its width. */
  private Helper sacrificialFence() {
    Length width = setting("stop").signum() > 0 ? setting("stop") : setting("fence");
    Length recess = setting("cutter").minus(width);
    boolean runsIn = recess.signum() > 0;
    return made(
        Control.SACRIFICIAL_FENCE,
        least("recess", recess),
        least("height", runsIn ? setting("height") : Length.ZERO));
  }

  private Helper storyStick() {
    Layout layout = use.layout();
    List<Size> sizes = new ArrayList<>();
    if (layout != null) {
      sizes.add(new Size("length", true, layout.length()));
      for (Layout.Section section : layout.sections()) {
        if (!section.piece().isEmpty()) {
          sizes.add(new Size("mark", false, section.end()));
        }
      }
    }
    return made(Control.STORY_STICK, sizes.toArray(Size[]::new));
  }

  private Length setting(String name) {
    return use.settings().stream()
        .filter(s -> s.name().equals(name))
        .map(s -> s.value().asLength())
        .findFirst()
        .orElse(Length.ZERO);
  }
}
