package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import packetwright.definition.procedure.Verb;
import packetwright.paper.packet.StudentPacket.BlankRow;
import packetwright.plan.lesson.Lesson;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.blank.Blank;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.part.Part;
import packetwright.wood.part.Solid;
import packetwright.wood.workpiece.Workpiece;

/** The pieces that students get and those that they cut roughly themselves. */
final class Handout {
  private final Lesson lesson;
  private final Naming naming;
  private final Words words;
  private final Map<String, Workpiece> ready = new LinkedHashMap<>();
  private final Map<String, Set<Verb>> done = new LinkedHashMap<>();

  Handout(Lesson lesson, Naming naming) {
    this.lesson = lesson;
    this.naming = naming;
    this.words = naming.words();
    for (OperationRun run : lesson.run().operations()) {
      if (run.step().isPreparation()) {
        prepare(run);
      }
    }
  }

  /** A piece that is worked on again is handed out as it is then; one that is used up is not. */
  private void prepare(OperationRun run) {
    Set<Verb> before = new LinkedHashSet<>();
    for (Workpiece piece : run.before()) {
      ready.remove(piece.name());
      before.addAll(done.getOrDefault(piece.name(), Set.of()));
    }
    for (Workpiece piece : run.after()) {
      ready.put(piece.name(), piece);
      Set<Verb> verbs = new LinkedHashSet<>(before);
      verbs.add(run.operation().verb().value());
      done.put(piece.name(), verbs);
    }
  }

  /** What the instructor hands out, as it is when students begin. */
  List<BlankRow> handed() {
    List<BlankRow> rows = new ArrayList<>();
    for (Blank blank : lesson.blanks()) {
      ready.values().stream()
          .filter(piece -> piece.blank().equals(blank.name()))
          .map(piece -> row(blank, piece))
          .forEach(rows::add);
    }
    return rows;
  }

  private BlankRow row(Blank blank, Workpiece piece) {
    List<String> pieces = isPart(piece.name()) ? List.of(piece.name()) : blank.pieces();
    Solid solid = piece.solid();
    return new BlankRow(
        name(piece.name()),
        list(pieces),
        Phrase.of(Naming.plain(blank.material())),
        naming.size(solid.length()),
        naming.size(solid.width()),
        naming.size(solid.thickness()),
        state(piece));
  }

  /** {@code planed and jointed}: what has been done to it since it was cut. */
  private Phrase state(Workpiece piece) {
    List<Phrase> said = new ArrayList<>();
    for (Verb verb : done.getOrDefault(piece.name(), Set.of())) {
      String key = "packet.done." + verb.word();
      said.add(words.hasKey(key) ? words.say(key) : Phrase.of(Naming.plain(verb.word())));
    }
    return words.list(said);
  }

  /** The blanks that students cut roughly themselves. */
  List<BlankRow> rough() {
    return lesson.blanks().stream()
        .filter(blank -> !isPrepared(blank))
        .map(
            blank ->
                new BlankRow(
                    blank.isGluedUp()
                        ? words.say(
                            "packet.blank.boards", name(blank.name()), blank.boards().count())
                        : name(blank.name()),
                    list(blank.pieces()),
                    Phrase.of(Naming.plain(blank.material())),
                    naming.size(blank.length().total()),
                    naming.size(blank.boards().width().total()),
                    naming.size(blank.thickness()),
                    Naming.nothing()))
        .toList();
  }

  private boolean isPrepared(Blank blank) {
    return lesson.run().operations().stream()
        .filter(run -> run.step().isPreparation())
        .flatMap(run -> run.after().stream())
        .anyMatch(piece -> piece.blank().equals(blank.name()));
  }

  /** What comes back from a step that the instructor does while students wait. */
  Phrase back(List<OperationRun> runs) {
    Map<String, Workpiece> pieces = new LinkedHashMap<>();
    for (OperationRun run : runs) {
      run.before().forEach(piece -> pieces.remove(piece.name()));
      run.after().forEach(piece -> pieces.put(piece.name(), piece));
    }
    List<Phrase> said =
        pieces.values().stream()
            .map(
                piece ->
                    words.say(
                        "packet.back.piece",
                        name(piece.name()),
                        naming.size(piece.solid().length()),
                        naming.size(piece.solid().width()),
                        naming.size(piece.solid().thickness())))
            .toList();
    return said.isEmpty()
        ? words.say("packet.instructors")
        : words.say("packet.back", words.list(said));
  }

  /** {@code Wall blank}; a part's piece bears the part's name. */
  private Phrase name(String piece) {
    String plain = Naming.title(piece);
    return isPart(piece) || plain.contains("blank")
        ? Phrase.of(plain)
        : words.say("packet.blank", plain);
  }

  private boolean isPart(String piece) {
    return lesson.parts().stream().map(Part::name).anyMatch(p -> p.equals(Part.nameOf(piece)));
  }

  private Phrase list(List<String> pieces) {
    return words.list(pieces.stream().map(p -> Phrase.of(Naming.plain(p))).toList());
  }
}
