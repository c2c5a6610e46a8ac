package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.procedure.Step;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.Side;
import packetwright.definition.shop.Machine;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Unit;
import packetwright.text.source.Located;
import packetwright.text.source.Span;
import packetwright.wood.assembly.Fastener;
import packetwright.wood.assembly.Fastening;
import packetwright.wood.assembly.Fastening.Line;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.operation.Run;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.Setting;
import packetwright.wood.setup.Setting.Kind;
import packetwright.wood.workpiece.Workpiece;

/** One operation put together for a test, by what a rule looks at; lengths in 64ths of an inch. */
record TrialOperation(
    Verb verb,
    @Nullable MachineKind tool,
    Set<Control> controls,
    boolean stop,
    int step,
    String piece,
    Map<String, Long> amounts,
    Feed feed,
    boolean parts,
    boolean cuts,
    Operation.By by) {
  private static final String SIDE = "side.";

  private static final Map<String, String> DATUMS =
      Map.of("set.inset", "left", "set.across", "bottom");

  /** A cut in a piece 36 x 4 x 3/4 that is held 36. */
  static TrialOperation of(Verb verb, MachineKind tool, Control... with) {
    Feed feed =
        switch (verb) {
          case RIP, JOINT_EDGE, JOINT_FACE, PLANE_TO_THICKNESS -> Feed.ALONG;
          case CROSSCUT, SQUARE_END -> Feed.ACROSS;
          default -> Feed.CLAMPED;
        };
    boolean through = verb == Verb.RIP || verb == Verb.CROSSCUT || verb == Verb.SQUARE_END;
    return new TrialOperation(
        verb,
        tool,
        Set.of(with),
        false,
        1,
        "wall",
        Map.of(),
        feed,
        through,
        true,
        Operation.By.STUDENT);
  }

  TrialOperation with(Control... other) {
    return new TrialOperation(
        verb, tool, Set.of(other), stop, step, piece, amounts, feed, parts, cuts, by);
  }

  TrialOperation stopped() {
    return new TrialOperation(
        verb, tool, controls, true, step, piece, amounts, feed, parts, cuts, by);
  }

  TrialOperation inStep(int number) {
    return new TrialOperation(
        verb, tool, controls, stop, number, piece, amounts, feed, parts, cuts, by);
  }

  TrialOperation on(String name) {
    return new TrialOperation(
        verb, tool, controls, stop, step, name, amounts, feed, parts, cuts, by);
  }

  TrialOperation fed(Feed how) {
    return new TrialOperation(
        verb, tool, controls, stop, step, piece, amounts, how, parts, cuts, by);
  }

  TrialOperation through() {
    return new TrialOperation(
        verb, tool, controls, stop, step, piece, amounts, feed, true, cuts, by);
  }

  TrialOperation withoutCut() {
    return new TrialOperation(
        verb, tool, controls, stop, step, piece, amounts, feed, parts, false, by);
  }

  TrialOperation byInstructor() {
    return new TrialOperation(
        verb,
        tool,
        controls,
        stop,
        step,
        piece,
        amounts,
        feed,
        parts,
        cuts,
        Operation.By.INSTRUCTOR);
  }

  /** {@code length}, {@code width}, {@code thickness}, {@code made}, {@code fence} and so on. */
  TrialOperation where(String name, long sixtyFourths) {
    Map<String, Long> more = new LinkedHashMap<>(amounts);
    more.put(name, sixtyFourths);
    return new TrialOperation(verb, tool, controls, stop, step, piece, more, feed, parts, cuts, by);
  }

  /** Works a side. */
  TrialOperation working(String side) {
    return where(SIDE + side, 1);
  }

  private List<Side> sides() {
    return Arrays.stream(Side.values()).filter(s -> amounts.containsKey(SIDE + s.word())).toList();
  }

  private Length amount(String name, long otherwise) {
    return Length.ofInches(amounts.getOrDefault(name, otherwise), 64);
  }

  OperationRun run(Shop shop) {
    Span at = new Span("procedure.md", 10 * step, 3, 5);
    Operation operation =
        new Operation(
            new Located<>(verb, at),
            List.of(new Located<>(piece, at)),
            null,
            null,
            1,
            null,
            null,
            List.of(),
            sides(),
            null,
            stop,
            1,
            controls,
            Map.of(),
            null,
            List.of(),
            List.of(),
            by);
    Step of = new Step(step, "step-" + step, "Step " + step, at, List.of(operation), List.of());
    Length length = amount("length", 36 * 64);
    Length width = amount("width", 4 * 64);
    Workpiece before = piece(length, width, amount("thickness", 48));
    Workpiece after = piece(length, width, amount("made", 32));
    Work work =
        new Work(
            feed,
            amount("fence", verb == Verb.RIP ? 8 * 64 : 0),
            amount("depth", 1),
            amount("held", 36 * 64),
            amount("freed", 0),
            parts,
            Set.of());
    return new OperationRun(
        of,
        operation,
        tool,
        tool == null ? null : shop.machine(tool),
        verb == Verb.ROUGH_CUT ? List.of() : List.of(before),
        List.of(after),
        settings(),
        cuts ? work : null,
        null,
        fastened());
  }

  /**
   * Amounts called {@code set.NAME}, as settings; {@code inset} counts from the left end and {@code
   * across} from the bottom edge.
   */
  private List<Setting> settings() {
    List<Setting> settings = new ArrayList<>();
    amounts.forEach(
        (name, value) -> {
          if (name.startsWith("set.")) {
            Quantity length = Quantity.of(Length.ofInches(value, 64));
            String datum = DATUMS.getOrDefault(name, "");
            settings.add(new Setting(name.substring(4), length, datum, null, Kind.BOUND, false));
          }
        });
    return settings;
  }

  /** One brad, where the amounts say so: beside the left end, and so far from the bottom edge. */
  private List<Fastening> fastened() {
    if (!amounts.containsKey("brad.length")) {
      return List.of();
    }
    Fastener brad =
        new Fastener(
            "brads",
            Fastener.Kind.NAIL,
            amount("brad.length", 0),
            Length.ofInches(1, 16),
            Length.ofInches(3),
            Length.ofInches(1, 8));
    Line line =
        new Line(Side.LEFT, amount("brad.end", 64), Side.BOTTOM, List.of(amount("brad.edge", 64)));
    return List.of(new Fastening("corner", brad, piece, "other", line, List.of()));
  }

  private Workpiece piece(Length length, Length width, Length thickness) {
    return new Workpiece(piece, "wall", Solid.block(length, width, thickness), Map.of());
  }

  static Run run(Shop shop, TrialOperation... operations) {
    List<OperationRun> runs = new ArrayList<>();
    for (TrialOperation operation : operations) {
      runs.add(operation.run(shop));
    }
    return new Run(runs, Map.of());
  }

  /** A shop that states no limits, so that ours hold. */
  static Shop shop() {
    return shop(Map.of());
  }

  /** A shop that states some limits, {@code jointer.shortest}, in inches. */
  static Shop shop(Map<String, Rational> limits) {
    Map<MachineKind, Machine> machines = new LinkedHashMap<>();
    for (MachineKind kind : MachineKind.values()) {
      Map<String, Located<Length>> values = new LinkedHashMap<>();
      limits.forEach(
          (name, value) -> {
            if (name.startsWith(kind.word() + ".")) {
              values.put(
                  name.substring(kind.word().length() + 1),
                  new Located<>(new Length(value), Span.startOf("shop.yaml")));
            }
          });
      if (kind.isPowered()) {
        machines.put(kind, new Machine(kind, 1, values));
      }
    }
    return new Shop(
        "Test shop",
        Unit.INCH,
        machines,
        Set.of(MachineKind.CHISEL),
        new Shop.CutterSet(Length.ZERO, List.of(), List.of()),
        Set.of(),
        Map.of(),
        List.of());
  }
}
