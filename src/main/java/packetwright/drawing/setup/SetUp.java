package packetwright.drawing.setup;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.definition.shop.Shop;
import packetwright.text.measure.Length;
import packetwright.text.measure.Rule;
import packetwright.text.words.Words;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.part.Box;
import packetwright.wood.part.Removal;
import packetwright.wood.part.Solid;
import packetwright.wood.setup.Setting;
import packetwright.wood.workpiece.Workpiece;

/**
 * One operation at its tool, with what a figure asks of it.
 *
 * @param run as simulated
 * @param tool that cuts
 * @param shop where it stands
 * @param rule that the settings are printed by
 * @param words of the figure
 */
record SetUp(OperationRun run, MachineKind tool, Shop shop, Rule rule, Words words) {
  SettingWords said() {
    return new SettingWords(run, rule, words);
  }

  /** The setting of a name, or none. */
  @Nullable Setting setting(String name) {
    return run.settings().stream().filter(s -> s.name().equals(name)).findFirst().orElse(null);
  }

  /** The length that is set under a name; zero when nothing is. */
  Length length(String name) {
    Setting setting = setting(name);
    return setting == null ? Length.ZERO : setting.value().asLength();
  }

  /** A setting and those of its later passes. */
  List<Setting> passes(String name) {
    return run.settings().stream()
        .filter(s -> s.name().equals(name) || s.name().matches(name + "_[0-9]+"))
        .toList();
  }

  boolean uses(Control control) {
    return run.operation().with().contains(control);
  }

  /** A phrase of the figures. */
  String text(String key) {
    return words.plain("setup." + key);
  }

  /** The same as a sentence. */
  String sentence(String key) {
    String said = text(key);
    int first = said.offsetByCodePoints(0, 1);
    return words.plain(
        "setup.sentence",
        said.substring(0, first).toUpperCase(java.util.Locale.ROOT) + said.substring(first));
  }

  String control(Control control) {
    return words.plain("packet.control." + control.name().toLowerCase(java.util.Locale.ROOT));
  }

  /** The first piece worked on; a rough cut has none. */
  @Nullable Workpiece piece() {
    return run.before().isEmpty() ? null : run.before().get(0);
  }

  /** What the first piece became. */
  @Nullable Workpiece made() {
    Workpiece piece = piece();
    return run.after().stream()
        .filter(after -> piece != null && after.name().equals(piece.name()))
        .findFirst()
        .orElse(null);
  }

  /** What the operation takes out of its first piece, in order. */
  List<Removal> taken() {
    Workpiece before = piece();
    Workpiece after = made();
    if (before == null || after == null) {
      return List.of();
    }
    List<Removal> all = after.solid().removals();
    int had = before.solid().removals().size();
    return had > all.size() ? List.of() : all.subList(had, all.size());
  }

  /** Those of the removals that are made with the first, in one piece of the same hold. */
  List<Removal> takenAtOnce(Solid solid, int axis) {
    List<Removal> all = taken();
    List<Removal> same = new ArrayList<>();
    for (Removal removal : all) {
      boolean isSame =
          face(solid, removal) == face(solid, all.get(0))
              && near(solid, removal, axis) == near(solid, all.get(0), axis);
      if (isSame) {
        same.add(removal);
      }
    }
    return same;
  }

  /** The face that a removal opens. */
  static Side face(Solid solid, Removal removal) {
    Box box = removal.around(solid.block());
    return box == null || box.low().z().signum() == 0 ? Side.OUTSIDE : Side.INSIDE;
  }

  /** The side across an axis that a removal lies nearer to. */
  static Side near(Solid solid, Removal removal, int axis) {
    Box box = removal.around(solid.block());
    Side low = axis == 0 ? Side.LEFT : Side.BOTTOM;
    boolean isLow =
        box == null || !box.low().on(axis).isMore(solid.extent(axis).minus(box.high().on(axis)));
    return isLow ? low : low.opposite();
  }
}
