package packetwright.definition.procedure;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.Side;
import packetwright.definition.shop.MachineKind;
import packetwright.text.source.Located;
import packetwright.text.source.Span;

/**
 * One machine or hand operation as its author wrote it; formulas are still text.
 *
 * @param verb with its place
 * @param targets what it works on: a piece, a part, a feature ({@code side.lid_groove}), a joint or
 *     a size
 * @param piece the piece worked on where the target does not tell, or none
 * @param of what is parted, or none
 * @param count how many in a row, 1 or more
 * @param to formula of the finished size at this operation, or none
 * @param leave formula of the extra above the drawn size, or none
 * @param from references: the edge or end at the fence or stop, then the face on the table
 * @param sides those made or worked
 * @param at machine or hand tool, or none for the verb's own
 * @param stop whether a stop block is set
 * @param stacked how many pieces are cut at once
 * @param with controls used
 * @param set formulas by setting name that override what is reckoned
 * @param makes name of the new piece, or none
 * @param using supplies
 * @param grits of abrasive paper, in the order used
 * @param by who does it
 */
public record Operation(
    Located<Verb> verb,
    List<Located<String>> targets,
    @Nullable Located<String> piece,
    @Nullable Located<String> of,
    int count,
    @Nullable Located<String> to,
    @Nullable Located<String> leave,
    List<Side> from,
    List<Side> sides,
    @Nullable Located<MachineKind> at,
    boolean stop,
    int stacked,
    Set<Control> with,
    Map<String, Located<String>> set,
    @Nullable Located<String> makes,
    List<Located<String>> using,
    List<Integer> grits,
    By by) {
  /** Keeps its own copies. */
  public Operation {
    targets = List.copyOf(targets);
    from = List.copyOf(from);
    sides = List.copyOf(sides);
    with = Collections.unmodifiableSet(new LinkedHashSet<>(with));
    set = Collections.unmodifiableMap(new LinkedHashMap<>(set));
    using = List.copyOf(using);
    grits = List.copyOf(grits);
  }

  /** Where the operation is written. */
  public Span place() {
    return verb.at();
  }

  /** The same operation with one setting written out. */
  public Operation withSetting(String name, Located<String> formula) {
    Map<String, Located<String>> more = new LinkedHashMap<>(set);
    more.put(name, formula);
    return new Operation(
        verb, targets, piece, of, count, to, leave, from, sides, at, stop, stacked, with, more,
        makes, using, grits, by);
  }

  /** The same operation with one setting reckoned again. */
  public Operation withoutSetting(String name) {
    Map<String, Located<String>> fewer = new LinkedHashMap<>(set);
    fewer.remove(name);
    return new Operation(
        verb, targets, piece, of, count, to, leave, from, sides, at, stop, stacked, with, fewer,
        makes, using, grits, by);
  }

  /** The same operation on so many pieces at once, 1 or more. */
  public Operation withStacked(int pieces) {
    return new Operation(
        verb, targets, piece, of, count, to, leave, from, sides, at, stop, pieces, with, set, makes,
        using, grits, by);
  }

  /** The same operation with more controls used. */
  public Operation withControls(Collection<Control> more) {
    Set<Control> all = new LinkedHashSet<>(with);
    all.addAll(more);
    return new Operation(
        verb, targets, piece, of, count, to, leave, from, sides, at, stop, stacked, all, set, makes,
        using, grits, by);
  }

  /** The same operation at another machine or hand tool, with a stop block or without. */
  public Operation at(MachineKind tool, boolean withStop) {
    Located<MachineKind> there = new Located<>(tool, at == null ? place() : at.at());
    return new Operation(
        verb, targets, piece, of, count, to, leave, from, sides, there, withStop, stacked, with,
        set, makes, using, grits, by);
  }

  /** The same operation on one piece, which is the target unless the target is a feature. */
  public Operation on(String workpiece) {
    Located<String> name = new Located<>(workpiece, place());
    boolean isFeature = targets.stream().anyMatch(target -> target.value().contains("."));
    return new Operation(
        verb,
        isFeature ? targets : List.of(name),
        isFeature ? name : piece,
        of,
        count,
        to,
        leave,
        from,
        sides,
        at,
        stop,
        stacked,
        with,
        set,
        makes,
        using,
        grits,
        by);
  }

  /** Who does an operation. */
  public enum By {
    STUDENT,
    AIDE,
    INSTRUCTOR
  }

  /** Aids that keep hands away or wood in place. */
  public enum Control {
    PUSH_STICK,
    PUSH_BLOCK,
    MITER_GAUGE,
    BACKER,
    CLAMPS,
    FEATHERBOARD,
    JIG,
    TEST_PIECE,
    STAND_OFF_BLOCK,
    SLED_STOP,
    SACRIFICIAL_FENCE,
    STORY_STICK,
    SHOOTING_BOARD,
    BENCH_HOOK
  }
}
