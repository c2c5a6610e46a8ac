package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.source.Located;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.assembly.Fastener;
import packetwright.wood.assembly.Fastening;
import packetwright.wood.assembly.Placed;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.part.Part;

/** Where fasteners go, in words: how many, and how their places are found on the piece. */
final class FastenerWords {
  private final Lesson lesson;
  private final Naming naming;
  private final Words words;

  FastenerWords(Lesson lesson, Naming naming) {
    this.lesson = lesson;
    this.naming = naming;
    this.words = naming.words();
  }

  /** For the student: a line for each fastening, and one for each that the instructor marks. */
  List<PacketStep.Setting> lines(OperationRun run) {
    List<PacketStep.Setting> lines = new ArrayList<>();
    for (Fastening fastening : run.fastened()) {
      lines.add(
          new PacketStep.Setting(
              pieces(fastening), count(fastening), places(fastening), beside(fastening)));
    }
    for (Joint joint : unplaced(run)) {
      lines.add(
          new PacketStep.Setting(
              Phrase.of(Naming.title(joint.name().value())),
              Naming.nothing(),
              words.say("packet.fasten.unplaced"),
              Naming.nothing()));
    }
    if (!run.fastened().isEmpty()) {
      lines.add(
          new PacketStep.Setting(
              words.say("packet.fasten.sides"),
              Naming.nothing(),
              words.say("packet.fasten.sides.about"),
              Naming.nothing()));
    }
    if (run.fastened().stream().anyMatch(f -> f.fastener().kind() == Fastener.Kind.SCREW)) {
      lines.add(
          new PacketStep.Setting(
              words.say("packet.fasten.pilot"),
              Naming.nothing(),
              words.say("packet.fasten.pilot.about"),
              Naming.nothing()));
    }
    return lines;
  }

  /** For the answer key. */
  List<AnswerKey.SettingLine> keyLines(OperationRun run) {
    List<AnswerKey.SettingLine> lines = new ArrayList<>();
    for (Fastening fastening : run.fastened()) {
      lines.add(
          new AnswerKey.SettingLine(
              pieces(fastening),
              count(fastening),
              places(fastening),
              Naming.nothing(),
              words.say("packet.fasten.long", exactly(fastening.fastener().length())),
              beside(fastening)));
    }
    return lines;
  }

  /** How many fasteners a student uses; none for a project without them. */
  List<Phrase> counts() {
    List<Phrase> counts = new ArrayList<>();
    lesson.run().fasteners().forEach((name, count) -> counts.add(counted(name, count)));
    return counts.isEmpty()
        ? List.of()
        : List.of(words.say("packet.fasten.counts", words.list(counts)));
  }

  /** Joints of the operation with a tilted piece, in which nothing can be placed. */
  private List<Joint> unplaced(OperationRun run) {
    if (run.fastened().isEmpty() && !isFastening(run)) {
      return List.of();
    }
    return lesson.project().assembly().joints().stream()
        .filter(
            j ->
                run.operation().targets().stream()
                    .anyMatch(t -> t.value().equals(j.name().value())))
        .filter(j -> j.pieces().stream().anyMatch(this::isTilted))
        .toList();
  }

  private static boolean isFastening(OperationRun run) {
    return switch (run.operation().verb().value()) {
      case NAIL, SCREW -> true;
      default -> false;
    };
  }

  private boolean isTilted(Located<String> name) {
    @Nullable Placed piece = lesson.assembly().piece(name.value());
    return piece != null && piece.tilt() != null;
  }

  private Phrase pieces(Fastening fastening) {
    return words.say("packet.fasten.pieces", letter(fastening.driven()), letter(fastening.into()));
  }

  private String letter(String piece) {
    for (Part part : lesson.parts()) {
      if (part.name().equals(Part.nameOf(piece))) {
        return part.pieceLetter(piece);
      }
    }
    return Naming.plain(piece);
  }

  private Phrase count(Fastening fastening) {
    return counted(fastening.fastener().supply(), fastening.count());
  }

  private Phrase counted(String supply, int count) {
    return words.counted("packet.fasten.count", count, Naming.plain(supply));
  }

  private Phrase places(Fastening fastening) {
    List<Phrase> places = fastening.line().places().stream().map(this::exactly).toList();
    return words.say(
        "packet.fasten.places",
        words.list(places),
        words.say("sheet.side." + fastening.line().from().word()));
  }

  private Phrase beside(Fastening fastening) {
    return words.say(
        "packet.fasten.beside",
        exactly(fastening.line().inset()),
        words.say("sheet.side." + fastening.line().beside().word()));
  }

  private Phrase exactly(Length length) {
    return naming.exactly(Quantity.of(length));
  }
}
