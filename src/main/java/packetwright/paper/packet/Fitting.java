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
import packetwright.text.measure.Quantity;
import packetwright.text.words.Phrase;
import packetwright.wood.part.Part;

/** Prepares the sheet on which students write what they measured. */
final class Fitting {
  private final Lesson lesson;
  private final Naming naming;

  Fitting(Lesson lesson, Naming naming) {
    this.lesson = lesson;
    this.naming = naming;
  }

  FittingSheet sheet() {
    List<Measured> measured =
        lesson.sizes().all().stream().filter(Size::isMeasured).map(this::measured).toList();
    List<Fitted> fitted = new ArrayList<>();
    for (Part part : lesson.parts()) {
      for (String dimension : List.of("length", "width", "thickness")) {
        Size size = lesson.sizes().find(part.name() + "." + dimension);
        if (size != null && !size.fitted().isEmpty()) {
          fitted.add(row(part, dimension, size));
        }
      }
    }
    return new FittingSheet(measured, fitted);
  }

  /** Where a formula takes several of a size, they are measured in one go: errors add up less. */
  private Measured measured(Size size) {
    Pattern several = Pattern.compile("\\b(\\d{1,2}) *\\* *" + Pattern.quote(size.name()) + "\\b");
    for (Size other : lesson.sizes().all()) {
      Matcher taken = several.matcher(other.derivation().formula());
      if (other.from().contains(size.name()) && taken.find()) {
        int count = Integer.parseInt(taken.group(1));
        Phrase name =
            naming.words().say("packet.fitting.together", Naming.title(size.name()), count);
        return new Measured(
            name, naming.exactly(Quantity.of(size.value().asLength().times(count))));
      }
    }
    return new Measured(Phrase.of(Naming.title(size.name())), naming.exactly(size.value()));
  }

  private Fitted row(Part part, String dimension, Size size) {
    return new Fitted(
        naming.words().say("packet.part.title", part.letter(), Naming.title(part.name())),
        Phrase.of(naming.words().plain("packet." + dimension).toLowerCase(Locale.ROOT)),
        naming.exactly(size.value()),
        naming.exactly(size.low()),
        naming.exactly(size.high()),
        reckoning(size));
  }

  /** The formula that says how, past those that only name another size. */
  private Phrase reckoning(Size size) {
    Size told = size;
    Size next = lesson.sizes().find(told.derivation().formula().strip());
    while (next != null) {
      told = next;
      next = lesson.sizes().find(told.derivation().formula().strip());
    }
    String formula = told.derivation().formula();
    return Naming.typeset(Naming.plain(formula).replace("-", "\u2212").replace("*", "\u00d7"));
  }
}
