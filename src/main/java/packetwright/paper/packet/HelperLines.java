package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.project.PartDefinition.FeatureKind;
import packetwright.definition.shop.MachineKind;
import packetwright.paper.packet.AnswerKey.HelperRow;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Located;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.blank.Blank;
import packetwright.wood.caution.CautionRules;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.part.Part;
import packetwright.wood.setup.Helper;
import packetwright.wood.setup.Helpers;
import packetwright.wood.workpiece.Workpiece;

/** What is made and used to help with a set-up, as it is printed. */
record HelperLines(Lesson lesson, Naming naming) {
  /** A step's helpers, a line for each with sizes and one for all others. */
  List<Phrase> of(List<OperationRun> runs) {
    Set<Phrase> lines = new LinkedHashSet<>();
    Set<Phrase> plain = new LinkedHashSet<>();
    for (OperationRun run : runs) {
      for (Helper helper : helpers(run)) {
        if (helper.sizes().isEmpty()) {
          plain.add(name(helper.control()));
        } else {
          lines.add(line(helper));
        }
      }
    }
    List<Phrase> all = new ArrayList<>();
    if (!plain.isEmpty()) {
      all.add(words().say("packet.helpers.use", words().list(List.copyOf(plain))));
    }
    all.addAll(lines);
    return all;
  }

  private Phrase line(Helper helper) {
    Phrase made =
        words().say("packet.helpers.made", Phrase.of(Naming.title(name(helper))), sizes(helper));
    Phrase line = made;
    for (Helper.Check check : helper.check()) {
      line =
          words()
              .say(
                  "packet.helpers.checked",
                  line,
                  words().say("packet.helpers.check." + check.name(), exactly(check.value())));
    }
    return line;
  }

  /** What of it is looked at before power goes on. */
  List<Phrase> looks(OperationRun run) {
    List<Phrase> looks = new ArrayList<>();
    for (Helper helper : helpers(run)) {
      looks.add(helper.sizes().isEmpty() ? ready(helper) : line(helper));
    }
    return looks;
  }

  private Phrase ready(Helper helper) {
    String own = "packet.look.control." + helper.control().name().toLowerCase(Locale.ROOT);
    return words().hasKey(own)
        ? words().say(own)
        : words().say("packet.look.ready", Naming.title(name(helper)));
  }

  /** What is made before class, one row for each thing of each step, for one station. */
  List<HelperRow> rows() {
    List<HelperRow> rows = new ArrayList<>();
    for (OperationRun run : lesson.run().operations()) {
      for (Helper helper : helpers(run)) {
        HelperRow row =
            new HelperRow(
                run.step().mark(), run.step().title(), Phrase.of(name(helper)), sizes(helper));
        if (!helper.sizes().isEmpty() && !rows.contains(row)) {
          rows.add(row);
        }
      }
    }
    return rows;
  }

  /** How much of each material the test pieces of one station take, saw cuts included. */
  List<Phrase> stock() {
    Map<String, Length> lengths = new LinkedHashMap<>();
    Length kerf = kerf();
    for (OperationRun run : lesson.run().operations()) {
      Blank blank = blank(run);
      for (Helper helper : helpers(run)) {
        if (helper.isTestPiece() && blank != null) {
          Length each = helper.sizes().get(0).value().plus(kerf);
          lengths.merge(blank.name(), each.times(helper.count()), Length::plus);
        }
      }
    }
    List<Phrase> said = new ArrayList<>();
    lengths.forEach(
        (name, length) ->
            said.add(
                words()
                    .say("packet.helpers.stock", exactly(length), Naming.plain(material(name)))));
    return said;
  }

  private Length kerf() {
    return lesson.shop().crosscutKerf();
  }

  private String material(String blank) {
    return lesson.blanks().stream()
        .filter(b -> b.name().equals(blank))
        .map(Blank::material)
        .findFirst()
        .orElse("");
  }

  private List<Helper> helpers(OperationRun run) {
    Blank blank = blank(run);
    if (blank == null) {
      return List.of();
    }
    Helpers.Use use =
        new Helpers.Use(
            run.operation().with().stream().sorted().toList(),
            cut(run),
            run.settings(),
            piece(run),
            blank,
            run.layout());
    return Helpers.of(use, lesson.shop()).stream()
        .map(h -> isBehindTheWood(h, run) ? bare(h) : h)
        .toList();
  }

  /** Thin wood lies on its backer; behind other wood the fence says how high a backer may be. */
  private boolean isBehindTheWood(Helper helper, OperationRun run) {
    Length thinnest =
        CautionRules.builtIn().limit(lesson.shop(), MachineKind.MITER_SAW, "thinnest");
    return helper.control() == Control.BACKER
        && run.tool() == MachineKind.MITER_SAW
        && thinnest != null
        && thinnest.isLess(piece(run).solid().thickness());
  }

  private static Helper bare(Helper helper) {
    return new Helper(helper.control(), helper.count(), List.of(), helper.check());
  }

  private @Nullable Blank blank(OperationRun run) {
    return run.before().isEmpty()
        ? null
        : lesson.blanks().stream()
            .filter(b -> b.name().equals(piece(run).blank()))
            .findFirst()
            .orElse(null);
  }

  private static Workpiece piece(OperationRun run) {
    return run.before().get(0);
  }

  private @Nullable FeatureKind cut(OperationRun run) {
    Part.Feature feature = feature(run);
    return feature == null ? null : feature.kind();
  }

  /** The first feature that is cut, or none. */
  Part.@Nullable Feature feature(OperationRun run) {
    for (Located<String> target : run.operation().targets()) {
      String[] names = target.value().split("\\.", 2);
      for (Part part : lesson.parts()) {
        if (names.length == 2 && part.name().equals(names[0])) {
          return part.feature(names[1]);
        }
      }
    }
    return null;
  }

  private Phrase sizes(Helper helper) {
    return words()
        .list(
            helper.sizes().stream()
                .map(
                    size ->
                        words()
                            .say(
                                (size.isLeast() ? "packet.helpers.least." : "packet.helpers.size.")
                                    + size.name(),
                                exactly(size.value())))
                .toList());
  }

  private String name(Helper helper) {
    String name = words().plain(key(helper.control()));
    return helper.count() == 1
        ? name
        : words().plain("packet.helpers.count", Integer.toString(helper.count()), name);
  }

  /** {@code push stick}. */
  Phrase name(Control control) {
    return words().say(key(control));
  }

  private static String key(Control control) {
    return "packet.control." + control.name().toLowerCase(Locale.ROOT);
  }

  private Phrase exactly(Length length) {
    return naming.exactly(Quantity.of(length));
  }

  private Words words() {
    return naming.words();
  }
}
