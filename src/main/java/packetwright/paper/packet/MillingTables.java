package packetwright.paper.packet;

import java.util.ArrayList;
import java.util.List;
import packetwright.definition.procedure.Verb;
import packetwright.definition.shop.Machine;
import packetwright.paper.packet.PacketStep.MillingRow;
import packetwright.paper.packet.PacketStep.MillingTable;
import packetwright.plan.lesson.Lesson;
import packetwright.text.measure.Length;
import packetwright.text.measure.Quantity;
import packetwright.text.words.Phrase;
import packetwright.text.words.Words;
import packetwright.wood.blank.Blank;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.setup.Batch;
import packetwright.wood.setup.MillingPlan;
import packetwright.wood.workpiece.Workpiece;

/** How the class's boards of several thicknesses go through the planer. */
record MillingTables(Lesson lesson, Naming naming) {
  /** A table for each planing of boards that differ; none where all are as thick as sold. */
  List<MillingTable> of(List<OperationRun> runs) {
    List<MillingTable> tables = new ArrayList<>();
    for (OperationRun run : runs) {
      Machine planer = run.machine();
      boolean isPlaned = run.operation().verb().value() == Verb.PLANE_TO_THICKNESS;
      if (isPlaned && planer != null && planer.states("depth_per_pass")) {
        for (Blank blank : lesson.blanks()) {
          run.before().stream()
              .filter(p -> p.blank().equals(blank.name()) && !isPlanedBefore(p))
              .limit(1)
              .map(p -> Batch.of(p, blank, lesson.shop()))
              .filter(b -> !b.boards().isEmpty())
              .map(b -> table(b, run.after().get(0), planer.value("depth_per_pass", Length.ZERO)))
              .forEach(tables::add);
        }
      }
    }
    return tables;
  }

  private boolean isPlanedBefore(Workpiece piece) {
    int last = piece.history().extents().get(2);
    return last >= 0
        && lesson.run().operations().get(last).operation().verb().value()
            == Verb.PLANE_TO_THICKNESS;
  }

  private MillingTable table(Batch batch, Workpiece planed, Length deepest) {
    Words words = naming.words();
    Length thickness = planed.solid().thickness();
    MillingPlan plan = MillingPlan.of(batch.thicknesses(), thickness, deepest, batch.rough());
    if (plan == null) {
      throw new IllegalStateException("no plan for " + batch);
    }
    List<Phrase> boards = new ArrayList<>();
    for (Length board : batch.thicknesses()) {
      boards.add(words.say("packet.milling.board", boards.size() + 1, exactly(board)));
    }
    return new MillingTable(
        words.say("packet.milling.boards", words.list(boards)),
        plan.stages().stream().map(this::row).toList(),
        words.say("packet.milling.block", exactly(thickness)));
  }

  private MillingRow row(MillingPlan.Stage stage) {
    Words words = naming.words();
    int last = stage.first() + stage.settings().size() - 1;
    return new MillingRow(
        stage.first() == last
            ? words.say("packet.milling.pass", last)
            : words.say("packet.milling.passes", stage.first(), last),
        words.list(stage.settings().stream().map(this::exactly).toList()),
        words.list(stage.boards().stream().map(b -> Phrase.of(Integer.toString(b))).toList()));
  }

  private Phrase exactly(Length length) {
    return naming.exactly(Quantity.of(length));
  }
}
