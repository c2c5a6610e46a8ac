package packetwright.wood.caution;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.MachineKind;

/** The names that a rule can use. */
final class Vocabulary {
  /** A machine's value: the shop's, or our limit. */
  static final String MACHINE = "machine.";

  /** What is set on the machine. */
  static final String SETTING = "setting.";

  private static final String AT = "at_";
  private static final String IS = "is_";

  /** Of settings that come several times, {@code inset_2}. */
  private static final String COUNTED = "_[0-9]+$";

  private static final Set<String> ANGLES = Set.of("tilt", "angle");
  private static final Set<String> NUMBERS = Set.of("passes", "count");
  private static final Set<String> LENGTHS =
      Set.of(
          "across",
          "amount",
          "by",
          "cutter",
          "depth",
          "diameter",
          "each_pass",
          "fence",
          "first_height",
          "first_pass",
          "height",
          "inset",
          "length",
          "radius",
          "rise",
          "run",
          "size",
          "start",
          "stop",
          "thickness",
          "trim",
          "width");

  private static final Map<String, Word> WORDS = words();

  private Vocabulary() {}

  /** What a name stands for. */
  enum Kind {
    /** A length of nothing or more. */
    EXTENT,
    /** A length of any sign. */
    LENGTH,
    ANGLE,
    NUMBER,
    TRUTH;

    boolean isLength() {
      return this == EXTENT || this == LENGTH;
    }
  }

  /**
   * A name.
   *
   * @param kind what it stands for
   * @param about what is printed of it for those who write rules
   */
  record Word(Kind kind, String about) {}

  private static Map<String, Word> words() {
    Map<String, Word> words = new LinkedHashMap<>();
    extent(words, "piece.length", "of the shortest piece worked on, before");
    extent(words, "piece.width", "of the narrowest");
    extent(words, "piece.thickness", "of the thinnest");
    extent(words, "made.length", "of the shortest piece, after");
    extent(words, "made.width", "of the narrowest, after");
    extent(words, "made.thickness", "of the thinnest, after");
    extent(words, "work.fence", "narrowest width between fence and cutter; 0 without a fence");
    extent(words, "work.depth", "deepest cut of one pass");
    extent(words, "work.held", "shortest length that is held, from the cutter");
    extent(words, "work.freed", "shortest loose piece, or width of a ripped strip; 0 when none is");
    extent(words, "work.hand", "from the cutter to a hand at the fence or on the piece");
    extent(words, "work.radius", "of the tightest curve sawn; 0 when none is");
    extent(words, "largest.length", "of the longest piece worked on, before");
    extent(words, "largest.width", "of the widest");
    extent(words, "largest.thickness", "of the thickest");
    extent(words, "fastener.length", "of the longest fastener; 0 without a known place");
    extent(words, "fastener.end", "from a fastener to the nearest end of its piece; 0 for none");
    extent(words, "fastener.edge", "from a fastener to the nearest edge; 0 for none");
    length(words, "hole.edge", "from the rim of a hole to the nearest end or edge");
    extent(words, "bit.diameter", "of a router bit, at least; 0 for none");
    extent(words, "bit.profile", "width of the profile that a bit cuts; 0 for none");
    length(words, "bit.left", "thickness of the edge that a profile leaves");
    length(words, "bit.beyond", "wood beyond the bit, on the side away from the fence");
    truth(words, "by_student", "a student does it");
    truth(words, "work.cuts", "a cutter cuts the piece");
    truth(words, "work.through", "the piece is parted");
    truth(words, "work.along", "it is fed along the fence");
    truth(words, "work.across", "it is fed across its grain");
    truth(words, "work.clamped", "it does not move; the tool does");
    truth(words, "work.freehand", "it is steered along a line");
    truth(words, "work.ripped", "it is parted along the fence, upright and parallel");
    truth(words, "work.end_grain", "an end is worked");
    extent(words, "largest.length", "of the longest piece worked on, before");
    extent(words, "largest.width", "of the widest");
    extent(words, "largest.thickness", "of the thickest");
    extent(words, "fastener.length", "0 where no place of a fastener is known");
    extent(words, "fastener.end", "to the nearest end of the piece gone through");
    extent(words, "fastener.edge", "to its nearest edge or face");
    length(words, "hole.edge", "from a hole's rim to the nearest edge");
    extent(words, "bit.diameter", "of a router bit: at least so wide");
    extent(words, "bit.profile", "how wide a roundover or a chamfer is");
    length(words, "bit.left", "thickness of the edge that a profile leaves");
    length(words, "bit.beyond", "wood beyond the bit, away from the fence");
    truth(words, "by_student", "no instructor or aide does it");
    truth(words, "stop", "a stop block is set");
    truth(words, "stacked", "several pieces are cut at once");
    truth(words, "tilted", "the blade leans");
    truth(words, "slanted", "the cut runs at an angle to the piece");
    truth(words, "powered", "the tool has a switch");
    truth(words, "always", "true");
    return Collections.unmodifiableMap(words);
  }

  private static void extent(Map<String, Word> words, String name, String about) {
    words.put(name, new Word(Kind.EXTENT, about));
  }

  private static void length(Map<String, Word> words, String name, String about) {
    words.put(name, new Word(Kind.LENGTH, about));
  }

  private static void truth(Map<String, Word> words, String name, String about) {
    words.put(name, new Word(Kind.TRUTH, about));
  }

  /** The names that stand for themselves, with what they mean, in the order to be read in. */
  static Map<String, Word> plain() {
    return WORDS;
  }

  /** Controls of an operation, each a truth by its name. */
  static List<String> controls() {
    return List.of(Control.values()).stream().map(c -> c.name().toLowerCase(Locale.ROOT)).toList();
  }

  /** What a name stands for, or none when there is no such name. */
  static @Nullable Kind kind(String name) {
    Word word = WORDS.get(name);
    if (word != null) {
      return word.kind();
    }
    if (name.startsWith(MACHINE)) {
      return Kind.EXTENT;
    }
    if (name.startsWith(SETTING)) {
      return setting(name.substring(SETTING.length()).replaceFirst(COUNTED, ""));
    }
    boolean isTruth = isFixed(name) || controls().contains(name);
    return isTruth ? Kind.TRUTH : null;
  }

  private static @Nullable Kind setting(String name) {
    if (ANGLES.contains(name)) {
      return Kind.ANGLE;
    }
    if (NUMBERS.contains(name)) {
      return Kind.NUMBER;
    }
    return LENGTHS.contains(name) ? Kind.EXTENT : null;
  }

  /** Whether a name asks for the tool or the verb. */
  static boolean isFixed(String name) {
    return (name.startsWith(AT) && MachineKind.of(name.substring(AT.length())) != null)
        || (name.startsWith(IS) && Verb.of(name.substring(IS.length())) != null)
        || name.equals("powered")
        || name.equals("always");
  }

  /** Whether a name that asks for the tool or the verb is so of these. */
  static boolean isSo(String name, @Nullable MachineKind tool, Verb verb) {
    String word = tool == null ? "" : tool.word();
    return name.equals("always")
        || name.equals(AT + word)
        || name.equals(IS + verb.word())
        || (name.equals("powered") && tool != null && tool.isPowered());
  }

  /** Every name but those of machines' values, for near misses. */
  static List<String> names() {
    List<String> names = new ArrayList<>(WORDS.keySet());
    names.addAll(controls());
    MachineKind.words().forEach(word -> names.add(AT + word));
    Verb.words().forEach(word -> names.add(IS + word));
    List.of(ANGLES, NUMBERS, LENGTHS)
        .forEach(settings -> settings.stream().sorted().forEach(s -> names.add(SETTING + s)));
    return names;
  }
}
