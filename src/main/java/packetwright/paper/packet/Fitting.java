package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import packetwright.definition.size.Size;
import packetwright.paper.packet.StudentPacket.Fitted;
import packetwright.paper.packet.StudentPacket.FittingSheet;
import packetwright.paper.packet.StudentPacket.Measured;
import packetwright.plan.lesson.Lesson;
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
        lesson.sizes().all().stream()
            .filter(Size::isMeasured)
            .map(s -> new Measured(Phrase.of(Naming.title(s.name())), naming.exactly(s.value())))
            .toList();
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
