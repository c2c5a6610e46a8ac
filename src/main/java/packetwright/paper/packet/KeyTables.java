package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import packetwright.definition.project.Choice;
import packetwright.definition.project.Project.Given;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.size.Size;
import packetwright.paper.packet.AnswerKey.Answer;
import packetwright.paper.packet.AnswerKey.BlankSum;
import packetwright.paper.packet.AnswerKey.Item;
import packetwright.paper.packet.AnswerKey.Mistake;
import packetwright.paper.packet.AnswerKey.SettingLine;
import packetwright.paper.packet.AnswerKey.SettingsRow;
import packetwright.paper.packet.AnswerKey.SizeGroup;
import packetwright.paper.packet.AnswerKey.SizeRow;
import packetwright.paper.packet.AnswerKey.Substituted;
import packetwright.paper.quiz.Quiz;
import packetwright.plan.lesson.Lesson;
import packetwright.text.formula.Derivation;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.blank.Blank;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.part.Box;
import packetwright.wood.setup.Setting;

/** Prepares the tables of the answer key. */
final class KeyTables {
  private final Lesson lesson;
  private final Naming naming;
  private final Words words;
  private final SetUps setUps;
  private final FastenerWords fasteners;

  KeyTables(Lesson lesson, Naming naming) {
    this.lesson = lesson;
    this.naming = naming;
    this.words = naming.words();
    this.setUps = new SetUps(lesson, naming);
    this.fasteners = new FastenerWords(lesson, naming);
  }

  /** What the run showed, how large the whole is, and what it was not checked for. */
  List<Phrase> result() {
    List<Phrase> lines = new ArrayList<>(List.of(words.say("packet.result")));
    Box outside = lesson.assembly().outside();
    if (outside != null) {
      lines.add(
          words.say(
              "packet.outside",
              exactly(outside.extent(0)),
              exactly(outside.extent(1)),
              exactly(outside.extent(2))));
    }
    List<Phrase> tilted =
        lesson.assembly().tilted().stream().map(p -> Phrase.of(Naming.plain(p.piece()))).toList();
    if (!tilted.isEmpty()) {
      lines.add(words.counted("packet.tilted", tilted.size(), words.list(tilted)));
    }
    lines.addAll(fasteners.counts());
    return lines;
  }

  List<Substituted> substituted() {
    List<Substituted> rows = new ArrayList<>();
    for (Given given : lesson.project().givens()) {
      Quantity own = given.value().value();
      Size now = lesson.sizes().get(given.name().value());
      if (!own.equals(now.value())) {
        rows.add(
            new Substituted(
                now.name(), Naming.typeset(given.about()), naming.exactly(own), now(now)));
      }
    }
    for (Choice choice : lesson.project().choices()) {
      String own = choice.row().value();
      String now = lesson.choices().substitution().row(choice).value();
      if (!own.equals(now)) {
        rows.add(
            new Substituted(
                choice.name().value(),
                Naming.typeset(choice.about()),
                Phrase.of(own),
                Phrase.of(now)));
      }
    }
    return rows;
  }

  /** The value, and as it was typed where that is in another unit than the project's. */
  private Phrase now(Size size) {
    Phrase value = naming.exactly(size.value());
    String written = lesson.choices().written().getOrDefault(size.name(), "");
    Unit unit = Unit.named(written.replaceFirst("^[^\\p{L}]*", ""));
    boolean isOther = unit != null && unit != lesson.project().rule().unit();
    return isOther ? words.say("packet.substituted.as", value, written) : value;
  }

  List<SizeGroup> sizes() {
    Map<String, List<SizeRow>> groups = new LinkedHashMap<>();
    for (Size size : lesson.sizes().all()) {
      String group =
          switch (size.kind()) {
            case GIVEN -> "packet.sizes.given";
            case DERIVED -> "packet.sizes.derived";
            case PART -> isDimension(size) ? "packet.sizes.part" : "";
            case SHOP, BLANK -> "";
          };
      if (!group.isEmpty()) {
        groups.computeIfAbsent(group, g -> new ArrayList<>()).add(size(size));
      }
    }
    return groups.entrySet().stream()
        .map(g -> new SizeGroup(words.say(g.getKey()), g.getValue()))
        .toList();
  }

  /** A part's own three sizes; its features' are those of the sizes that they are made from. */
  private static boolean isDimension(Size size) {
    return size.name().matches("[^.]+\\.(length|width|thickness)");
  }

  private SizeRow size(Size size) {
    boolean varies = !size.low().equals(size.high());
    // A plain number needs no working.
    boolean given = size.from().isEmpty();
    return new SizeRow(
        title(size),
        size.name(),
        given ? "" : size.derivation().formula(),
        given ? Naming.nothing() : numbers(size.derivation()),
        naming.exactly(size.value()),
        varies ? naming.exactly(size.low()) : Naming.nothing(),
        varies ? naming.exactly(size.high()) : Naming.nothing(),
        size.kind() == Size.Kind.PART && !size.fitted().isEmpty());
  }

  /** The author's sentence, or the name in plain words: a part's as {@code Side, length}. */
  private Phrase title(Size size) {
    if (!size.about().isEmpty()) {
      return Naming.typeset(size.about());
    }
    int dot = size.name().indexOf('.');
    return dot < 0
        ? Phrase.of(Naming.title(size.name()))
        : words.say(
            "packet.sizes.of",
            Naming.title(size.name().substring(0, dot)),
            Naming.plain(size.name().substring(dot + 1)));
  }

  private Phrase numbers(Derivation derivation) {
    List<Phrase.Piece> pieces = new ArrayList<>();
    for (Derivation.Term term : derivation.numbers()) {
      Quantity value = term.value();
      if (value == null) {
        pieces.add(new Phrase.Text(term.text()));
      } else {
        pieces.add(new Phrase.Measure(naming.rule().printExactly(value)));
      }
    }
    return new Phrase(pieces);
  }

  List<BlankSum> blanks() {
    return lesson.blanks().stream()
        .map(
            b ->
                new BlankSum(
                    Phrase.of(Naming.title(b.name())),
                    words.say(
                        "packet.blank.of", Naming.title(b.material()), exactly(b.thickness())),
                    items(b.length()),
                    exactly(b.length().total()),
                    items(b.width()),
                    exactly(b.width().total()),
                    exactly(b.thickness()),
                    b.isGluedUp()
                        ? words.say("packet.blank.each_board", b.boards().count())
                        : Naming.nothing(),
                    items(b.boards().width()),
                    exactly(b.boards().width().total())))
        .toList();
  }

  private List<Item> items(Blank.Reckoning reckoning) {
    return reckoning.items().stream()
        .map(
            i ->
                new Item(
                    words.say("packet." + i.phrase(), i.piece().replace('_', ' ')),
                    exactly(i.amount())))
        .toList();
  }

  private Phrase exactly(Length length) {
    return naming.exactly(Quantity.of(length));
  }

  List<SettingsRow> settings() {
    List<SettingsRow> rows = new ArrayList<>();
    for (OperationRun run : lesson.run().operations()) {
      List<SettingLine> lines =
          new ArrayList<>(run.settings().stream().map(s -> line(run, s)).toList());
      lines.addAll(fasteners.keyLines(run));
      if (!lines.isEmpty()) {
        MachineKind tool = run.tool();
        rows.add(
            new SettingsRow(
                run.step().mark(),
                run.step().title(),
                Phrase.of(tool == null ? "" : naming.machine(tool)),
                naming.work(run.operation()),
                lines));
      }
    }
    return rows;
  }

  private SettingLine line(OperationRun run, Setting setting) {
    Length tolerance = setting.tolerance();
    return new SettingLine(
        naming.setting(run, setting),
        naming.exactly(setting.value()),
        setUps.datum(run, setting),
        tolerance == null ? Naming.nothing() : words.say("packet.within", exactly(tolerance)),
        words.say(setting.kind() == Setting.Kind.BOUND ? "packet.bound" : "packet.free"),
        setUps.note(run, setting));
  }

  static List<Answer> answers(Quiz quiz) {
    List<Answer> answers = new ArrayList<>();
    for (Quiz.Question question : quiz.questions()) {
      answers.add(
          new Answer(
              answers.size() + 1,
              question.prompt(),
              question.answer(),
              question.working(),
              question.mistakes().stream().map(m -> new Mistake(m.answer(), m.shows())).toList()));
    }
    return answers;
  }
}
