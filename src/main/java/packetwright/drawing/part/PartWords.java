package packetwright.drawing.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.drawing.lettering.Face;
import packetwright.drawing.sheet.Inscription;
import packetwright.text.measure.Figure;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.measure.Rule;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;
import packetwright.wood.part.Part.Feature;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Removal.Bore;

/** What a part drawing says: its text alternative, and the notes on its leaders. */
final class PartWords {
  /** Sizes of a feature, in the order in which they are said. */
  private static final List<String> ORDER =
      List.of("width", "length", "diameter", "size", "radius", "rise", "depth", "at");

  private final Part part;
  private final Rule rule;
  private final Words words;

  PartWords(Part part, Rule rule, Words words) {
    this.part = part;
    this.rule = rule;
    this.words = words;
  }

  /** A part's name as it is printed. */
  static String name(Part part) {
    return part.name().replace('_', ' ');
  }

  /** The whole drawing, read aloud. */
  String describe(Showing showing) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        words.plain(
            "sheet.part",
            part.letter(),
            name(part),
            (long) part.count(),
            aloud(part.solid().length()),
            aloud(part.solid().width()),
            aloud(part.solid().thickness())));
    if (part.isPair()) {
      sentences.add(words.plain("sheet.pair"));
    }
    for (Feature feature : part.features()) {
      sentences.add(describe(feature));
    }
    showing
        .cuts()
        .forEach(
            (projection, cut) ->
                sentences.add(words.plain("sheet.cut." + projection.depth(), cut.letter())));
    if (!showing.fold().gaps().isEmpty()) {
      sentences.add(words.plain("sheet.broken"));
    }
    return String.join(" ", sentences);
  }

  private String describe(Feature feature) {
    return switch (feature.kind()) {
      case MITER, BEVEL, TAPER -> slant(feature);
      case CORNER, CURVE ->
          words.plain("sheet.feature.through", kind(feature), where(feature), sizes(feature));
      case RABBET, GROOVE, DADO, NOTCH, HOLE ->
          words.plain(
              "sheet.feature",
              kind(feature),
              feature.where(),
              side(feature.face()),
              sizes(feature));
      case CHAMFER, ROUNDOVER ->
          words.plain(
              "sheet.feature", kind(feature), where(feature), side(feature.face()), sizes(feature));
    };
  }

  private String slant(Feature feature) {
    Side full = full(feature);
    return words.plain(
        "sheet.feature.slant",
        kind(feature),
        where(feature),
        side(full),
        aloud(by(feature)),
        side(full.opposite()),
        words.aloud(angle(feature)));
  }

  private String sizes(Feature feature) {
    List<String> sizes = new ArrayList<>();
    for (String size : ORDER) {
      Length length = feature.sizes().get(size);
      if (length != null) {
        boolean isPlace = size.equals("at") && feature.from() != null;
        sizes.add(
            isPlace
                ? words.plain("sheet.size.from", aloud(length), side(full(feature)))
                : words.plain("sheet.size." + size, aloud(length)));
      }
    }
    Length across = feature.sizes().get("across");
    if (across != null) {
      Side low = full(feature).axis() == 0 ? Side.BOTTOM : Side.LEFT;
      sizes.add(words.plain("sheet.size.from", aloud(across), side(low)));
    }
    if (feature.sizes().containsKey("rise")) {
      sizes.add(words.plain("sheet.size.radius", aloud(radius(feature))));
    }
    return String.join(", ", sizes);
  }

  private String kind(Feature feature) {
    return words.plain("sheet.kind." + word(feature));
  }

  private static String word(Feature feature) {
    return feature.kind().name().toLowerCase(Locale.ROOT);
  }

  /** At which side, or around. */
  private String where(Feature feature) {
    Side side = Side.of(feature.where());
    return side == null ? words.plain("sheet.where." + feature.where()) : side(side);
  }

  private String side(Side side) {
    return words.plain("sheet.side." + side.word());
  }

  private String aloud(Length length) {
    return words.aloud(rule.print(length));
  }

  /** The side at which a slant takes nothing, or that a feature is located from. */
  private static Side full(Feature feature) {
    @Nullable Side from = feature.from();
    if (from == null) {
      throw new IllegalStateException(feature.name() + " is located from nothing");
    }
    return from;
  }

  private static Length by(Feature feature) {
    return feature.sizes().getOrDefault("by", Length.ZERO);
  }

  /** How far a slant is off square, to half a degree; only a label. */
  private Figure angle(Feature feature) {
    double by = by(feature).inches().approximate();
    double across = part.solid().extent(full(feature).axis()).inches().approximate();
    long halves = Math.round(StrictMath.toDegrees(StrictMath.atan2(by, across)) * 2);
    return rule.printExactly(
        new Quantity(Rational.of(halves, 2), packetwright.text.measure.Dimension.ANGLE));
  }

  /** The removals of a feature that have a note; of those around a face one. */
  static List<Removal> noted(Feature feature) {
    return switch (feature.kind()) {
      case RABBET, GROOVE, DADO, NOTCH -> List.of();
      case CHAMFER, ROUNDOVER -> {
        int last = feature.removals().size() - 1;
        yield last < 0 ? List.of() : List.of(feature.removals().get(last));
      }
      case HOLE, MITER, BEVEL, TAPER, CORNER, CURVE -> feature.removals();
    };
  }

  /** What the note of a removal says. */
  Inscription note(Feature feature, Removal removal) {
    return switch (feature.kind()) {
      case RABBET, GROOVE, DADO, NOTCH -> text("");
      case HOLE -> hole(removal);
      case MITER, BEVEL, TAPER ->
          reference(
              text(words.plain("sheet.note." + word(feature), angle(feature).number() + "°")));
      case CHAMFER ->
          number(feature.sizes().getOrDefault("size", Length.ZERO))
              .then(text(" × 45°"))
              .then(around(feature));
      case ROUNDOVER, CORNER -> text("R ").then(number(radius(feature))).then(around(feature));
      case CURVE -> reference(text("R ").then(number(radius(feature))));
    };
  }

  /** What follows from dimensions stands in parentheses: ASME Y14.5 and ISO 129-1 (from memory). */
  private static Inscription reference(Inscription note) {
    return text("(").then(note).then(text(")"));
  }

  /** A note that stands for several features. */
  Inscription counted(Inscription note, int count) {
    return count == 1 ? note : text(words.plain("sheet.note.count", (long) count)).then(note);
  }

  private Inscription around(Feature feature) {
    return feature.where().equals("around")
        ? text(words.plain("sheet.note.around", side(feature.face())))
        : text("");
  }

  private Inscription hole(Removal removal) {
    return removal.match(
        new Removal.Cases<Inscription>() {
          @Override
          public Inscription trough(Removal.Trough trough) {
            return text("");
          }

          @Override
          public Inscription bore(Bore bore) {
            return hole(bore);
          }

          @Override
          public Inscription slope(Removal.Slope slope) {
            return text("");
          }

          @Override
          public Inscription outline(Removal.Outline outline) {
            return text("");
          }
        });
  }

  private Inscription hole(Bore bore) {
    Length start = bore.centre().on(bore.axis());
    boolean isThrough =
        start.signum() <= 0 && !start.plus(bore.depth()).isLess(part.solid().extent(bore.axis()));
    Inscription across = text("⌀ ").then(number(bore.diameter()));
    return isThrough
        ? across.then(text(words.plain("sheet.through")))
        : across.then(text(", ")).then(number(bore.depth())).then(text(words.plain("sheet.deep")));
  }

  /** As it says, or of a curve that through its chord and rise. */
  private static Length radius(Feature feature) {
    @Nullable Length stated = feature.sizes().get("radius");
    if (stated != null) {
      return stated;
    }
    Rational half = feature.sizes().getOrDefault("length", Length.ZERO).dividedBy(2).inches();
    Rational rise = feature.sizes().getOrDefault("rise", Length.ZERO).inches();
    return rise.signum() == 0
        ? Length.ZERO
        : new Length(half.times(half).plus(rise.times(rise)).dividedBy(rise.times(Rational.of(2))));
  }

  private Inscription number(Length length) {
    return Inscription.graded(rule.print(length), words);
  }

  private static Inscription text(String text) {
    return Inscription.of(Face.REGULAR, text);
  }
}
