package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import packetwright.definition.size.Size;
import packetwright.paper.packet.StudentPacket.Fitted;
import packetwright.paper.packet.StudentPacket.FittingSheet;
import packetwright.paper.packet.StudentPacket.Measured;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Rational;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.part.Part;

/** Prepares the sheet on which students write what they measured. */
final class Fitting {
  /** A name in a formula, with the count that it is taken times, if any. */
  private static final Pattern NAME =
      Pattern.compile("(?:\\b(\\d{1,2}) *\\* *)?\\b([a-z_][a-z0-9_.]*)\\b(?! *\\()");

  private final Lesson lesson;
  private final Naming naming;
  private final Words words;

  Fitting(Lesson lesson, Naming naming) {
    this.lesson = lesson;
    this.naming = naming;
    this.words = naming.words();
  }

  /** A dimension of a part that is cut to what was measured. */
  record Cut(Part part, String dimension, Size size) {}

  FittingSheet sheet() {
    return new FittingSheet(
        measured().stream().map(this::measured).toList(), cuts().stream().map(this::row).toList());
  }

  List<Size> measured() {
    return lesson.sizes().all().stream().filter(Size::isMeasured).toList();
  }

  List<Cut> cuts() {
    List<Cut> cuts = new ArrayList<>();
    for (Part part : lesson.parts()) {
      for (String dimension : List.of("length", "width", "thickness")) {
        Size size = lesson.sizes().find(part.name() + "." + dimension);
        if (size != null && !size.fitted().isEmpty()) {
          cuts.add(new Cut(part, dimension, size));
        }
      }
    }
    return cuts;
  }

  /** Where a formula takes several of a size, they are measured in one go: errors add up less. */
  int together(Size size) {
    Pattern several = Pattern.compile("\\b(\\d{1,2}) *\\* *" + Pattern.quote(size.name()) + "\\b");
    for (Size other : lesson.sizes().all()) {
      Matcher taken = several.matcher(other.derivation().formula());
      if (other.from().contains(size.name()) && taken.find()) {
        return Integer.parseInt(taken.group(1));
      }
    }
    return 1;
  }

  Phrase measuredName(Size size) {
    int count = together(size);
    String name = Naming.title(size.name());
    return count == 1 ? Phrase.of(name) : words.say("packet.fitting.together", name, count);
  }

  private Measured measured(Size size) {
    return new Measured(
        measuredName(size),
        naming.exactly(Quantity.of(size.value().asLength().times(together(size)))));
  }

  private Fitted row(Cut cut) {
    Range range = inward(cut.size().low().asLength(), cut.size().high().asLength());
    return new Fitted(
        words.say("packet.part.title", cut.part().letter(), Naming.title(cut.part().name())),
        dimension(cut),
        naming.exactly(cut.size().value()),
        naming.exactly(Quantity.of(range.low())),
        naming.exactly(Quantity.of(range.high())),
        reckoning(cut.size()));
  }

  Phrase dimension(Cut cut) {
    return Phrase.of(words.plain("packet." + cut.dimension()).toLowerCase(Locale.ROOT));
  }

  /** Limits that a student can read off the project's rule: never wider than the true ones. */
  private Range inward(Length low, Length high) {
    Rational step = naming.rule().graduation().times(naming.rule().unit().inBase());
    Rational up = Rational.of(low.inches().dividedBy(step).ceiling(), java.math.BigInteger.ONE);
    Rational down = Rational.of(high.inches().dividedBy(step).floor(), java.math.BigInteger.ONE);
    return up.compareTo(down) > 0
        ? new Range(low, high)
        : new Range(new Length(up.times(step)), new Length(down.times(step)));
  }

  private record Range(Length low, Length high) {}

  /** The formula that says how, past those that only name another size, with known numbers. */
  private Phrase reckoning(Size size) {
    Size told = size;
    Size next = lesson.sizes().find(told.derivation().formula().strip());
    while (next != null) {
      told = next;
      next = lesson.sizes().find(told.derivation().formula().strip());
    }
    String formula = told.derivation().formula();
    List<Phrase.Piece> pieces = new ArrayList<>();
    Matcher matcher = NAME.matcher(formula);
    int end = 0;
    while (matcher.find()) {
      Size named = lesson.sizes().find(matcher.group(2));
      if (named != null) {
        signs(formula.substring(end, matcher.start()), pieces);
        pieces.addAll(term(named, matcher.group(1) == null ? "" : matcher.group(1)).pieces());
        end = matcher.end();
      }
    }
    signs(formula.substring(end), pieces);
    return new Phrase(pieces);
  }

  private Phrase term(Size size, String count) {
    String name = Naming.plain(size.name());
    if (!size.fitted().isEmpty()) {
      return count.isEmpty()
          ? words.say("packet.fitting.yours", name)
          : words.say("packet.fitting.yours.together", name, count);
    }
    Phrase known = words.say("packet.fitting.known", name, naming.exactly(size.value()));
    return count.isEmpty() ? known : words.say("packet.fitting.times", count, known);
  }

  private static void signs(String signs, List<Phrase.Piece> pieces) {
    if (!signs.isEmpty()) {
      pieces.addAll(Naming.typeset(signs.replace("-", "\u2212").replace("*", "\u00d7")).pieces());
    }
  }
}
