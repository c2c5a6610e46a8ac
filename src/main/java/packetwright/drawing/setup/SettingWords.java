package packetwright.drawing.setup;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import packetwright.definition.procedure.Verb;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Inscription;
import packetwright.text.measure.Figure;
import packetwright.text.measure.Rule;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.setup.Setting;

/**
 * Settings in the words of the box beside the figure: {@code Fence 1/4}, {@code Height, pass 1:
 * 1/8}.
 */
record SettingWords(OperationRun run, Rule rule, Words words) {
  /** A setting of a later pass, or of a later hole. */
  private static final Pattern NUMBERED = Pattern.compile("(.+)_(\\d{1,4})");

  /** What a setting is called. */
  Phrase name(Setting setting) {
    Verb verb = run.operation().verb().value();
    String own = "packet.set." + verb.word() + "." + setting.name();
    boolean isStopped = verb == Verb.CROSSCUT && run.operation().stop();
    return words.hasKey(own) && !isStopped ? words.say(own) : name(setting.name());
  }

  private Phrase name(String name) {
    Matcher numbered = NUMBERED.matcher(name);
    if (numbered.matches()) {
      boolean isHole = numbered.group(1).equals("inset") || numbered.group(1).equals("across");
      return words.say(
          isHole ? "packet.hole" : "packet.pass", name(numbered.group(1)), numbered.group(2));
    }
    String key = "packet.set." + name;
    return words.hasKey(key) ? words.say(key) : Phrase.of(name.replace('_', ' '));
  }

  /** Name and number, as a dimension says them; one number never runs into another. */
  Inscription inscription(Setting setting) {
    String name = words.plain(name(setting));
    boolean endsInNumber = Character.isDigit(name.charAt(name.length() - 1));
    return Inscription.of(Face.REGULAR, name + (endsInNumber ? ": " : " ")).then(number(setting));
  }

  /** The same without telling of which pass or hole. */
  Inscription first(Setting setting) {
    Matcher numbered = NUMBERED.matcher(setting.name());
    String name = numbered.matches() ? numbered.group(1) : setting.name();
    return Inscription.of(Face.REGULAR, words.plain(name(name)) + " ").then(number(setting));
  }

  /** Name and number in a line of text: {@code Passes: 2}. */
  Inscription caption(Setting setting) {
    return Inscription.of(Face.REGULAR, words.plain(name(setting)) + ": ").then(number(setting));
  }

  /** The number alone. */
  Inscription number(Setting setting) {
    Figure figure = rule.printExactly(setting.value());
    Inscription number = Inscription.graded(figure, words);
    return figure.unit() == Unit.DEGREE
        ? number.then(Inscription.of(Face.REGULAR, figure.unit().symbol()))
        : number;
  }

  /** A whole sentence about a setting, as it is read aloud. */
  String aloud(Setting setting) {
    Figure value = rule.printExactly(setting.value());
    Phrase datum =
        setting.datum().isEmpty() ? Phrase.of("") : words.say("packet.datum." + setting.datum());
    String said = words.plain("setup.setting", words.plain(name(setting)), words.aloud(value));
    String where = words.plain(datum);
    return where.isEmpty()
        ? words.plain("setup.sentence", said)
        : words.plain("setup.sentence.from", said, where);
  }
}
