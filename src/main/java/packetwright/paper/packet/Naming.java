package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;
import packetwright.text.measure.Figure;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rule;
import packetwright.text.source.Located;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.setup.Setting;

/** How names from files, and numbers, are said on paper. */
record Naming(Words words, Rule rule) {
  private static final Phrase NOTHING = new Phrase(List.of());

  /** A mixed number or fraction, with or without a unit of length. */
  private static final Pattern FRACTION =
      Pattern.compile("(?<![\\d/.])(?:(\\d{1,6}) )?(\\d{1,4})/(\\d{1,4})(?![\\d/])");

  /** A setting of a later pass. */
  private static final Pattern PASS = Pattern.compile("(.+)_(\\d{1,4})");

  /** Settings that a drill has for each hole. */
  private static final Set<String> OF_A_HOLE = Set.of("inset", "across");

  /** No words at all. */
  static Phrase nothing() {
    return NOTHING;
  }

  /** {@code back_end} as {@code back end}. */
  static String plain(String name) {
    return name.replace('_', ' ');
  }

  /** The same with a capital, as a title. */
  static String title(String name) {
    String plain = plain(name);
    return plain.isEmpty()
        ? plain
        : plain.substring(0, plain.offsetByCodePoints(0, 1)).toUpperCase(Locale.ROOT)
            + plain.substring(plain.offsetByCodePoints(0, 1));
  }

  String machine(MachineKind kind) {
    return words.plain("packet.tool." + kind.word());
  }

  /** Whether a text in small letters names a tool, by its printed name or a shorter one. */
  boolean isNamed(MachineKind kind, String text) {
    String own = "packet.tool.named." + kind.word();
    String name = words.hasKey(own) ? words.plain(own) : machine(kind).toLowerCase(Locale.ROOT);
    return Pattern.compile("\\b" + Pattern.quote(name) + "s?\\b").matcher(text).find();
  }

  /**
   * What an operation sets. A crosscut without a stop is made at its line, and a rough cut says how
   * wide the board must be, which nothing is set to.
   */
  Phrase setting(OperationRun run, Setting setting) {
    Verb verb = run.operation().verb().value();
    String own = "packet.set." + verb.word() + "." + setting.name();
    boolean isStopped = verb == Verb.CROSSCUT && run.operation().stop();
    String key = "packet.set." + setting.name();
    return words.hasKey(own) && !isStopped
        ? words.say(own)
        : words.hasKey(key) ? at(run, key) : setting(setting.name());
  }

  /** A phrase, or the tool's own in its place: a router has a bit where a saw has a tooth. */
  Phrase at(OperationRun run, String key) {
    MachineKind tool = run.tool();
    String own = tool == null ? key : key + "." + tool.word();
    return words.say(words.hasKey(own) ? own : key);
  }

  /**
   * What is set; {@code fence_2} is the fence's second pass, {@code inset_2} the second hole's. A
   * name we have no words for stands.
   */
  Phrase setting(String name) {
    Matcher pass = PASS.matcher(name);
    if (pass.matches()) {
      boolean isHole = OF_A_HOLE.contains(pass.group(1));
      return words.say(
          isHole ? "packet.hole" : "packet.pass", setting(pass.group(1)), pass.group(2));
    }
    String key = "packet.set." + name;
    return words.hasKey(key) ? words.say(key) : Phrase.of(title(name));
  }

  /** {@code side.lid_groove} as {@code lid groove of the side}; a piece as it stands. */
  Phrase target(String target) {
    int dot = target.indexOf('.');
    return dot < 0
        ? Phrase.of(plain(target))
        : words.say(
            "packet.feature", plain(target.substring(dot + 1)), plain(target.substring(0, dot)));
  }

  /** What an operation does to what. */
  Phrase work(Operation operation) {
    List<Phrase> targets =
        operation.targets().stream().map(Located::value).map(this::target).toList();
    return words.say("packet.verb." + operation.verb().value().word(), words.list(targets));
  }

  /** A size, rounded to the project's rule. */
  Phrase size(Quantity value) {
    return Phrase.of(rule.print(value));
  }

  /** A size, rounded to the project's rule. */
  Phrase size(Length value) {
    return Phrase.of(rule.print(value));
  }

  /** A setting or a tolerance, as it is. */
  Phrase exactly(Quantity value) {
    return Phrase.of(rule.printExactly(value));
  }

  /** Plain text that holds fractions, with the fractions set as such. */
  static Phrase typeset(String text) {
    List<Phrase.Piece> pieces = new ArrayList<>();
    Matcher matcher = FRACTION.matcher(text);
    int end = 0;
    while (matcher.find()) {
      if (matcher.start() > end) {
        pieces.add(new Phrase.Text(text.substring(end, matcher.start())));
      }
      pieces.add(new Phrase.Measure(figure(matcher)));
      end = matcher.end();
    }
    if (end < text.length() || pieces.isEmpty()) {
      pieces.add(new Phrase.Text(text.substring(end)));
    }
    return new Phrase(pieces);
  }

  private static Figure figure(Matcher matcher) {
    String whole = matcher.group(1);
    return new Figure(
        false,
        new java.math.BigInteger(whole == null ? "0" : whole),
        new java.math.BigInteger(matcher.group(2)),
        new java.math.BigInteger(matcher.group(3)),
        packetwright.text.measure.Unit.ONE,
        Figure.Grade.EXACT);
  }
}
