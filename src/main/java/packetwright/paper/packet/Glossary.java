package packetwright.paper.packet;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import packetwright.paper.packet.StudentPacket.Term;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;

/** The words of the trade that a packet uses, with what they mean. */
final class Glossary {
  /** In the order printed; the meaning of each stands in the phrase file. */
  static final List<String> WORDS =
      List.of(
          "backer",
          "bench hook",
          "bench plane",
          "blank",
          "block plane",
          "brace",
          "coping saw",
          "crosscut",
          "dado set",
          "dry fit",
          "edge",
          "face",
          "featherboard",
          "fence",
          "flush",
          "grain",
          "groove",
          "joint",
          "kerf",
          "knife line",
          "marking gauge",
          "miter gauge",
          "plane",
          "plow plane",
          "push block",
          "push stick",
          "rabbet",
          "rip",
          "riving knife",
          "shooting board",
          "stop",
          "tongue",
          "vise",
          "waste side");

  private Glossary() {}

  /** The words that occur in the steps as a student reads them. */
  static List<Term> of(List<PacketStep> steps, Words words) {
    StringBuilder text = new StringBuilder();
    steps.stream().filter(s -> !s.prepared() && !s.isBetween()).forEach(s -> read(s, words, text));
    String all = text.toString().toLowerCase(Locale.ROOT);
    return WORDS.stream()
        .filter(word -> occurs(word, all))
        .map(word -> new Term(Naming.title(word), words.say(key(word))))
        .toList();
  }

  /** All that is said in prose, in small letters. */
  static String text(List<Prose> prose, Words words) {
    StringBuilder text = new StringBuilder();
    read(prose, words, text);
    return text.toString().toLowerCase(Locale.ROOT);
  }

  static String key(String word) {
    return "glossary." + word.replace(' ', '_');
  }

  /** Alone or with an ending: rips, ripped, ripping; dry-fit with a hyphen too. */
  private static boolean occurs(String word, String text) {
    String stem = Pattern.quote(word).replace(" ", "\\E[ -]\\Q");
    char last = word.charAt(word.length() - 1);
    return Pattern.compile("\\b" + stem + "(?:" + last + "?(?:s|d|es|ed|ing))?\\b")
        .matcher(text)
        .find();
  }

  private static void read(PacketStep step, Words words, StringBuilder text) {
    text.append(step.title()).append(". ");
    step.tools().forEach(t -> text.append(t.name()).append(". "));
    read(step.prose(), words, text);
    for (PacketStep.SettingsBox box : step.settings()) {
      box.lines().forEach(l -> append(l.name(), words, text));
    }
    for (PacketStep.Panel panel : step.cautions()) {
      for (PacketStep.Statement said : panel.statements()) {
        append(said.hazard(), words, text);
        append(said.avoid(), words, text);
      }
    }
  }

  private static void read(List<Prose> blocks, Words words, StringBuilder text) {
    for (Prose block : blocks) {
      append(block.text(), words, text);
      block.items().forEach(item -> read(item, words, text));
    }
  }

  private static void append(Phrase phrase, Words words, StringBuilder text) {
    text.append(words.plain(phrase)).append(". ");
  }
}
