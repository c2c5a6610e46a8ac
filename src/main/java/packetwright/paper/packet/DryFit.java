package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Step;
import packetwright.definition.procedure.Verb;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.definition.project.Project.Bought;
import packetwright.definition.shop.MachineKind;
import packetwright.paper.packet.PacketStep.FitRow;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.measure.Unit;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.assembly.Placed;
import packetwright.wood.caution.CautionRules;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.part.Box;
import packetwright.wood.part.Part;
import packetwright.wood.workpiece.Workpiece;

/**
 * What to do with a part that does not go into its groove, dado or rabbet. A long part goes to the
 * machine that takes off as much as is too much, a shorter one to the plane; each only where that
 * machine's limits take the part as it is then. Common practice, no source.
 */
record DryFit(Lesson lesson, Naming naming) {
  /** From here on a part counts as long. */
  private static final Length LONG = Length.ofInches(12);

  private static final int LENGTH = 0;
  private static final int WIDTH = 1;
  private static final int THICKNESS = 2;

  /** With what too much is taken off. */
  enum Way {
    JOINTER,
    TABLE_SAW,
    MITER_SAW,
    BLOCK_PLANE,
    SANDING_BLOCK,
    ASK
  }

  /**
   * A part as it is tried.
   *
   * @param length along the grain
   * @param width across it
   * @param thickness of it
   * @param isSheet whether it is of plywood or the like: glue lines dull a jointer's knives
   */
  record Piece(Length length, Length width, Length thickness, boolean isSheet) {}

  /** A row for each thing that may be wrong, for all parts that the same is done with. */
  List<FitRow> rows(List<OperationRun> runs) {
    Map<Row, Set<Phrase>> rows = new LinkedHashMap<>();
    for (OperationRun run : runs) {
      if (run.operation().verb().value() == Verb.DRY_FIT) {
        run.before().forEach(piece -> add(run, piece, rows));
      }
    }
    List<FitRow> table = new ArrayList<>();
    rows.forEach(
        (row, parts) ->
            table.add(new FitRow(words().list(List.copyOf(parts)), row.wrong(), row.act())));
    if (!table.isEmpty()) {
      table.add(
          new FitRow(
              words().say("packet.fit.any"),
              words().say("packet.fit.small"),
              words().say("packet.fit.do.small")));
    }
    return table;
  }

  /** What is wrong, and what is done about it. */
  private record Row(Phrase wrong, Phrase act) {}

  private void add(OperationRun run, Workpiece worked, Map<Row, Set<Phrase>> rows) {
    List<Joint> joints =
        lesson.project().assembly().joints().stream()
            .filter(j -> worked.name().equals(inserted(j)))
            .toList();
    Set<Integer> enters = new LinkedHashSet<>();
    joints.forEach(j -> enters.addAll(enters(j, worked.name())));
    Piece piece = piece(worked);
    List<Row> own = new ArrayList<>();
    if (enters.contains(WIDTH)) {
      own.addAll(pair("wide", most(), edge(narrowed(piece, false)), edge(narrowed(piece, true))));
    }
    if (enters.contains(LENGTH)) {
      Step later = trimmedLater(run, worked);
      if (later != null) {
        Phrase leave = words().say("packet.fit.do.later", later.mark());
        own.add(new Row(words().say("packet.fit.long"), leave));
      } else {
        own.addAll(pair("long", aCut(), end(shortened(piece, false)), end(shortened(piece, true))));
      }
    }
    if (!enters.contains(THICKNESS) && joints.stream().anyMatch(j -> !j.kind().equals("rabbet"))) {
      own.add(new Row(words().say("packet.fit.thick"), face(thinned(piece), piece)));
    }
    own.forEach(
        row -> rows.computeIfAbsent(row, r -> new LinkedHashSet<>()).add(name(worked.name())));
  }

  /** A row for a little too much and one for more; one row where the same is done. */
  private List<Row> pair(String wrong, Length limit, Phrase little, Phrase more) {
    return little.equals(more)
        ? List.of(new Row(words().say("packet.fit." + wrong), little))
        : List.of(
            new Row(amount(wrong + ".little", limit), little),
            new Row(amount(wrong + ".more", limit), more));
  }

  // ---- which part goes into what

  /** The piece that goes into the other: what is held in a groove, or what lies in the rabbet. */
  private static String inserted(Joint joint) {
    return switch (joint.kind()) {
      case "groove", "slide", "dado" -> joint.pieces().get(0).value();
      case "rabbet" -> joint.pieces().get(1).value();
      default -> "";
    };
  }

  /** Its own axes along which a piece goes into the others: where they do not reach past it. */
  private Set<Integer> enters(Joint joint, String piece) {
    Set<Integer> axes = new LinkedHashSet<>();
    Placed placed = lesson.assembly().piece(piece);
    for (var other : joint.pieces()) {
      Placed host = lesson.assembly().piece(other.value());
      if (placed != null && host != null && !host.equals(placed) && placed.tilt() == null) {
        Box own = placed.block();
        Box around = host.block();
        for (int axis = 0; axis < 3; axis++) {
          boolean isWithin =
              !own.low().on(axis).isLess(around.low().on(axis))
                  && !own.high().on(axis).isMore(around.high().on(axis));
          if (!isWithin) {
            axes.add(placed.ownAxis(axis));
          }
        }
      }
    }
    return axes;
  }

  private Piece piece(Workpiece worked) {
    boolean isSheet =
        lesson.blanks().stream()
            .anyMatch(b -> b.name().equals(worked.blank()) && b.bought() == Bought.SHEET);
    return new Piece(
        worked.solid().length(), worked.solid().width(), worked.solid().thickness(), isSheet);
  }

  /** The step in which a part that was left long is cut to fit, or none. */
  private @Nullable Step trimmedLater(OperationRun now, Workpiece piece) {
    return lesson.run().operations().stream()
        .filter(r -> r.step().number() > now.step().number())
        .filter(r -> r.operation().verb().value() == Verb.CUT_TO_FIT)
        .filter(r -> r.before().stream().anyMatch(p -> p.name().equals(piece.name())))
        .map(OperationRun::step)
        .findFirst()
        .orElse(null);
  }

  // ---- with what too much is taken off

  /** Off an edge: a little, or {@code isMore} than a pass of the jointer. */
  Way narrowed(Piece piece, boolean isMore) {
    boolean isLong = !piece.length().isLess(LONG);
    if (isMore) {
      boolean isTaken =
          isLong
              && isAtLeast(piece.length(), MachineKind.TABLE_SAW, "rip_shortest")
              && isAtLeast(piece.width(), MachineKind.TABLE_SAW, "rip_narrowest")
              && !piece.length().isLess(piece.width());
      return isTaken ? Way.TABLE_SAW : byHand();
    }
    boolean isTaken =
        isLong
            && !piece.isSheet()
            && isAtLeast(piece.length(), MachineKind.JOINTER, "shortest")
            && isAtLeast(piece.width(), MachineKind.JOINTER, "narrowest")
            && isAtLeast(piece.thickness(), MachineKind.JOINTER, "thinnest");
    return isTaken ? Way.JOINTER : byHand();
  }

  /** Off an end. */
  Way shortened(Piece piece, boolean isMore) {
    boolean isTaken =
        isMore
            && isAtLeast(piece.length(), MachineKind.MITER_SAW, "held_shortest")
            && isAtLeast(piece.thickness(), MachineKind.MITER_SAW, "thinnest");
    return isTaken ? Way.MITER_SAW : byHand();
  }

  /** Off a face. */
  Way thinned(Piece piece) {
    boolean isSanded = piece.isSheet() && lesson.shop().has(MachineKind.SANDING_BLOCK);
    return isSanded ? Way.SANDING_BLOCK : byHand();
  }

  private Way byHand() {
    return lesson.shop().has(MachineKind.BLOCK_PLANE)
        ? Way.BLOCK_PLANE
        : lesson.shop().has(MachineKind.SANDING_BLOCK) ? Way.SANDING_BLOCK : Way.ASK;
  }

  /** Whether the shop has the machine, and its limit takes so much. */
  private boolean isAtLeast(Length length, MachineKind kind, String limit) {
    Length least = CautionRules.builtIn().limit(lesson.shop(), kind, limit);
    return lesson.shop().has(kind) && least != null && !length.isLess(least);
  }

  // ---- in words

  private Phrase edge(Way way) {
    return way == Way.JOINTER
        ? words().say("packet.fit.edge.jointer", exactly(pass()))
        : words().say("packet.fit.edge." + word(way));
  }

  private Phrase end(Way way) {
    return words().say("packet.fit.end." + word(way));
  }

  private Phrase face(Way way, Piece piece) {
    return words().say("packet.fit.face." + (piece.isSheet() ? "sheet." : "solid.") + word(way));
  }

  private static String word(Way way) {
    return way.name().toLowerCase(Locale.ROOT);
  }

  private Length pass() {
    Length pass =
        CautionRules.builtIn().limit(lesson.shop(), MachineKind.JOINTER, "depth_per_pass");
    return pass == null ? little() : pass.min(little());
  }

  private Phrase amount(String key, Length amount) {
    return words().say("packet.fit." + key, exactly(amount));
  }

  private boolean isInches() {
    return lesson.project().rule().unit() == Unit.INCH;
  }

  private Length little() {
    return isInches() ? Length.ofInches(1, 32) : new Length(Unit.MILLIMETRE.inBase());
  }

  private Length most() {
    return little().times(2);
  }

  /** A saw takes off no slice thinner than its blade: the blade would bend away from it. */
  private Length aCut() {
    return most().max(lesson.shop().crosscutKerf());
  }

  private Phrase name(String piece) {
    for (Part part : lesson.parts()) {
      if (part.name().equals(Part.nameOf(piece))) {
        return words().say("packet.part.title", part.letter(), Naming.title(part.name()));
      }
    }
    return Phrase.of(Naming.title(piece));
  }

  private Phrase exactly(Length length) {
    return naming.exactly(Quantity.of(length));
  }

  private Words words() {
    return naming.words();
  }
}
