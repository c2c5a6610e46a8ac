package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.By;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.Project.Bought;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.paper.packet.PacketStep.Check;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.caution.CautionRules;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.operation.OperationRun.Feed;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.part.Part;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/** What is set, and what is looked at before power goes on, set-up by set-up. */
final class SetUps {
  /** How far a blade stands above the wood; school shop rules say 1/4 in at most. */
  private static final Length LEAST_ABOVE = Length.ofInches(1, 8);

  private static final Length MOST_ABOVE = Length.ofInches(1, 4);
  private static final int THICKNESS = 2;

  private final Lesson lesson;
  private final Naming naming;
  private final Words words;
  private final FastenerWords fasteners;
  private final HelperLines helpers;

  SetUps(Lesson lesson, Naming naming) {
    this.lesson = lesson;
    this.naming = naming;
    this.words = naming.words();
    this.fasteners = new FastenerWords(lesson, naming);
    this.helpers = new HelperLines(lesson, naming);
  }

  // ---- what is set

  /** One box for each set-up; operations that share one share its box. */
  List<PacketStep.SettingsBox> boxes(List<OperationRun> runs) {
    Map<List<PacketStep.Setting>, OperationRun> boxes = new LinkedHashMap<>();
    for (OperationRun run : runs) {
      List<PacketStep.Setting> lines = lines(run);
      if (!lines.isEmpty()) {
        boxes.putIfAbsent(lines, run);
      }
    }
    boolean isOneTool = boxes.values().stream().map(OperationRun::tool).distinct().count() < 2;
    List<PacketStep.SettingsBox> list = new ArrayList<>();
    boxes.forEach(
        (lines, run) ->
            list.add(
                new PacketStep.SettingsBox(
                    boxes.size() == 1 ? Naming.nothing() : work(run, isOneTool), lines)));
    return list;
  }

  /** What is done; where a step has several tools, with which. */
  private Phrase work(OperationRun run, boolean isOneTool) {
    Phrase work = naming.work(run.operation());
    MachineKind tool = run.tool();
    return isOneTool || tool == null
        ? work
        : words.say("packet.work.tool", work, naming.machine(tool).toLowerCase(Locale.ROOT));
  }

  private List<PacketStep.Setting> lines(OperationRun run) {
    List<PacketStep.Setting> lines =
        new ArrayList<>(run.settings().stream().map(s -> setting(run, s)).toList());
    lines.addAll(fasteners.lines(run));
    return lines;
  }

  private PacketStep.Setting setting(OperationRun run, Setting setting) {
    return new PacketStep.Setting(
        naming.setting(run, setting),
        naming.exactly(setting.value()),
        datum(run, setting),
        note(run, setting));
  }

  /** From where it is measured, and to what of its tool; on a mirror image left is right. */
  Phrase datum(OperationRun run, Setting setting) {
    if (setting.datum().isEmpty()) {
      return Naming.nothing();
    }
    Phrase datum = naming.at(run, "packet.datum." + setting.datum());
    List<String> mirrored =
        run.before().stream().map(Workpiece::name).filter(this::isMirrored).toList();
    Side side = Side.of(setting.datum());
    return mirrored.isEmpty() || side == null || side.axis() != 0
        ? datum
        : words.say(
            "packet.datum.mirrored",
            datum,
            words.list(mirrored.stream().map(p -> Phrase.of(letter(p))).toList()),
            words.say("packet.datum." + side.opposite().word()));
  }

  private boolean isMirrored(String piece) {
    Part part = part(piece);
    return part != null && part.isMirrored(piece);
  }

  private String letter(String piece) {
    Part part = part(piece);
    return part == null ? piece : part.pieceLetter(piece);
  }

  private @Nullable Part part(String piece) {
    return lesson.parts().stream()
        .filter(part -> part.name().equals(Part.nameOf(piece)))
        .findFirst()
        .orElse(null);
  }

  /** What a stack is put together from, or that a measurement comes in place of the value. */
  Phrase note(OperationRun run, Setting setting) {
    if (setting.stack().isEmpty()) {
      return setting.fitted() ? words.say("packet.setting.fitted") : Naming.nothing();
    }
    if (run.tool() != MachineKind.DADO_SET) {
      return single(setting);
    }
    Phrase sum = Naming.nothing();
    for (int i = 0; i < setting.stack().size(); i++) {
      Phrase width = size(setting.stack().get(i));
      sum = i == 0 ? width : words.say("packet.sum", sum, width);
    }
    return words.say("packet.stack", sum);
  }

  /** A bit or an iron is one thing: only a width other than the one set is told. */
  private Phrase single(Setting setting) {
    Length width = setting.stack().get(0);
    return setting.value().equals(Quantity.of(width))
        ? Naming.nothing()
        : words.say("packet.stack.single", size(width));
  }

  // ---- what is looked at

  /** The set-ups of a step that the instructor looks at: those of the students, or the own. */
  List<Check> checks(List<OperationRun> runs, boolean isInstructors) {
    Map<List<Object>, List<OperationRun>> setUps = new LinkedHashMap<>();
    for (OperationRun run : runs) {
      MachineKind kind = run.tool();
      boolean isOwn = (run.operation().by() == By.INSTRUCTOR) == isInstructors;
      if (kind != null && isOwn && lesson.shop().setupCheck().contains(kind)) {
        setUps.computeIfAbsent(List.of(kind, lines(run)), k -> new ArrayList<>()).add(run);
      }
    }
    return setUps.values().stream().map(own -> check(own, setUps.size() == 1)).toList();
  }

  private Check check(List<OperationRun> runs, boolean isOnly) {
    OperationRun first = runs.get(0);
    MachineKind kind = kind(first);
    Set<Phrase> items = new LinkedHashSet<>();
    items.add(cutter(first, kind));
    first.settings().forEach(s -> items.add(look(first, s)));
    items.add(height(runs, kind));
    items.addAll(guard(runs, kind));
    if (runs.stream().anyMatch(r -> r.operation().stop())) {
      items.add(words.say("packet.look.stop." + (isParting(first) ? "parting" : "shaping")));
    }
    runs.forEach(r -> items.addAll(helpers.looks(r)));
    items.remove(Naming.nothing());
    return new Check(
        Phrase.of(naming.machine(kind)),
        isOnly ? Naming.nothing() : naming.work(first.operation()),
        List.copyOf(items));
  }

  private static MachineKind kind(OperationRun run) {
    MachineKind kind = run.tool();
    if (kind == null) {
      throw new IllegalStateException("no tool at " + run.operation().place());
    }
    return kind;
  }

  private static boolean isParting(OperationRun run) {
    Work work = run.work();
    return work != null && work.isThrough();
  }

  /** Which blade: for cuts along the grain, across it, or in sheets. */
  private Phrase cutter(OperationRun run, MachineKind kind) {
    if (kind != MachineKind.TABLE_SAW && kind != MachineKind.MITER_SAW) {
      return Naming.nothing();
    }
    Verb verb = run.operation().verb().value();
    Work work = run.work();
    boolean isAlong = verb == Verb.RIP || (work != null && work.feed() == Feed.ALONG);
    return words.say(
        "packet.look.blade." + (isSheet(run) ? "sheet" : isAlong ? "along" : "across"));
  }

  private boolean isSheet(OperationRun run) {
    return pieces(run).stream()
        .anyMatch(
            p ->
                lesson.blanks().stream()
                    .anyMatch(b -> b.name().equals(p.blank()) && b.bought() == Bought.SHEET));
  }

  private static List<Workpiece> pieces(OperationRun run) {
    return run.before().isEmpty() ? run.after() : run.before();
  }

  /** {@code Fence 3 1/2 in, to the near side of the tooth, within 1/64 in}. */
  private Phrase look(OperationRun run, Setting setting) {
    Phrase look =
        words.say(
            "packet.look.setting", naming.setting(run, setting), naming.exactly(setting.value()));
    Length tolerance = setting.tolerance();
    for (Phrase more :
        List.of(
            datum(run, setting),
            note(run, setting),
            tolerance == null
                ? Naming.nothing()
                : words.say("packet.look.within", naming.exactly(Quantity.of(tolerance))))) {
      look = more.pieces().isEmpty() ? look : words.say("packet.look.more", look, more);
    }
    return look;
  }

  /** Of a blade that cuts through, or of a band saw's guide, over the thickest piece. */
  private Phrase height(List<OperationRun> runs, MachineKind kind) {
    OperationRun first = runs.get(0);
    Length thickness =
        runs.stream()
            .flatMap(r -> pieces(r).stream())
            .map(p -> p.solid().extent(THICKNESS))
            .reduce(Length.ZERO, Length::max);
    if (kind == MachineKind.BAND_SAW) {
      Length stack = thickness.times(Math.max(1, first.operation().stacked()));
      Length above = limit(kind, "guide_above");
      return words.say("packet.look.guide", size(stack.plus(above)), size(stack));
    }
    boolean isTilted = first.settings().stream().anyMatch(s -> s.name().equals("tilt"));
    if (kind != MachineKind.TABLE_SAW || isTilted || !isThrough(first)) {
      return Naming.nothing();
    }
    Length most = limit(kind, "blade_above");
    Length least = LEAST_ABOVE.min(most);
    return words.say(
        "packet.look.blade_height",
        size(thickness.plus(least)),
        size(thickness.plus(most)),
        size(thickness));
  }

  private Length limit(MachineKind kind, String name) {
    Length limit = CautionRules.builtIn().limit(lesson.shop(), kind, name);
    return limit == null ? MOST_ABOVE : limit;
  }

  private Phrase size(Length length) {
    return naming.exactly(Quantity.of(length));
  }

  /** A rough cut has no piece before it, and always parts. */
  private static boolean isThrough(OperationRun run) {
    return isParting(run) || run.operation().verb().value() == Verb.ROUGH_CUT;
  }

  /** The guard at this cut: on, or what stands in its place; then what else a machine has. */
  private List<Phrase> guard(List<OperationRun> runs, MachineKind kind) {
    List<Phrase> items = new ArrayList<>();
    OperationRun first = runs.get(0);
    boolean isHidden =
        kind == MachineKind.DADO_SET || (kind == MachineKind.TABLE_SAW && !isThrough(first));
    if (isHidden) {
      List<Phrase> instead =
          runs.stream()
              .flatMap(r -> r.operation().with().stream())
              .filter(HOLDS::contains)
              .distinct()
              .sorted()
              .map(helpers::name)
              .toList();
      items.add(
          instead.isEmpty()
              ? words.say("packet.look.guard.hidden")
              : words.say("packet.look.guard.instead", words.list(instead)));
      items.add(words.say("packet.look.guard.back"));
    }
    String key = isHidden ? "packet.look.hidden." : "packet.look." + kind.word() + ".";
    for (int item = 1; words.hasKey(key + item); item++) {
      items.add(words.say(key + item));
    }
    return items;
  }

  /** Controls that keep hands away from a cutter whose guard is off. */
  private static final Set<Control> HOLDS =
      Set.of(
          Control.FEATHERBOARD,
          Control.PUSH_BLOCK,
          Control.PUSH_STICK,
          Control.JIG,
          Control.MITER_GAUGE,
          Control.CLAMPS);
}
