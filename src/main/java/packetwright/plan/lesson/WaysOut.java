package packetwright.plan.lesson;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import packetwright.definition.procedure.Operation;
import packetwright.definition.procedure.Operation.Control;
import packetwright.definition.shop.MachineKind;
import packetwright.text.source.Finding;
import packetwright.wood.caution.Refused;
import packetwright.wood.caution.Verdict;
import packetwright.wood.operation.OperationRun;
import packetwright.wood.operation.OperationRun.Work;
import packetwright.wood.operation.Run;

/**
 * Looks for what an instructor may change so that a refused operation can be done. Each change is
 * run before it is named: every part still comes out as drawn, and nothing else is refused or
 * found.
 *
 * <p>The order is that of the least trouble: a control, a lower stack or a setting left to be
 * reckoned, an earlier place, another machine, a longer piece of wood, a hand tool; a hand tool
 * comes before the wood where the piece is small, and a machine whose guard comes off comes last.
 * How much is run is counted in operations and in parts compared, so that the same input gives the
 * same answer on any computer.
 */
final class WaysOut {
  /** How many are named for one refusal. */
  static final int MOST = 3;

  /** How much is run for one refusal, in operations and parts. */
  private static final int EACH = 1_200;

  /** How much is run for all refusals of a procedure. */
  private static final int IN_ALL = 3_600;

  /** How often a control is added that another rule asks for at the changed operation. */
  private static final int ROUNDS = 4;

  /** Machines whose guard comes off for a cut that does not go through. */
  private static final Set<MachineKind> OPEN =
      EnumSet.of(MachineKind.DADO_SET, MachineKind.TABLE_SAW);

  private final Plan plan;
  private final Set<String> known = new HashSet<>();
  private final Set<String> remarks = new HashSet<>();
  private int leftInAll = IN_ALL;
  private int left;

  WaysOut(Plan plan, List<Refused> refused) {
    this.plan = plan;
    refused.forEach(r -> known.add(key(r)));
    plan.findings().forEach(f -> remarks.add(key(f)));
  }

  /**
   * The ways out of one refusal.
   *
   * @param refused the refusal
   * @param ways best first, at most {@value #MOST}
   * @param isCut whether the search ended before everything was tried
   */
  record Found(Refused refused, List<WayOut> ways, boolean isCut) {
    Found {
      ways = List.copyOf(ways);
    }

    /** What is said of the refusal, with what to do. */
    Finding finding() {
      Finding finding = refused.finding();
      if (ways.isEmpty()) {
        String why =
            isCut
                ? "; the search for another way was cut short"
                : "; no earlier step, other tool of this shop or longer blank that was tried helps";
        return finding.hinting(finding.hint() + why);
      }
      List<String> words = ways.stream().map(WayOut::words).toList();
      return finding.hinting(String.join("; or ", words));
    }
  }

  /** The ways out of every refusal, in the order given. */
  List<Found> of(List<Refused> standing) {
    Map<String, Found> found = new LinkedHashMap<>();
    List<Found> all = new ArrayList<>();
    for (Refused refused : standing) {
      Found known = found.computeIfAbsent(key(refused), k -> search(refused));
      all.add(new Found(refused, known.ways(), known.isCut()));
    }
    return all;
  }

  private Found search(Refused refused) {
    left = Math.min(EACH, leftInAll);
    int begun = left;
    Changes changes = new Changes(plan, refused);
    WayOut control = first(refused, changes.controls(), new ArrayList<>());
    if (control != null) {
      leftInAll -= begun - left;
      return new Found(refused, List.of(control), false); // nothing is less trouble than that
    }
    List<WayOut> ways = new ArrayList<>();
    List<WayOut> last = new ArrayList<>();
    for (Changes.Kind kind : changes.byKind()) {
      if (ways.size() < MOST) {
        WayOut way = kind.isRising() ? least(refused, kind) : first(refused, kind, last);
        ways.addAll(way == null ? List.of() : List.of(way));
      }
    }
    boolean isCut = left <= 0;
    leftInAll -= begun - left;
    ways.addAll(last);
    return new Found(refused, ways.subList(0, Math.min(MOST, ways.size())), isCut);
  }

  /**
   * The first change of a kind that passes, or none.
   *
   * @param last gets those before it that take a guard off
   */
  private @Nullable WayOut first(Refused refused, Changes.Kind kind, List<WayOut> last) {
    for (Change change : kind.changes()) {
      WayOut way = tried(refused, change);
      if (way != null && takesGuardOff(way)) {
        last.add(way);
      } else if (way != null) {
        return way;
      }
    }
    return null;
  }

  /** The least change that passes, found by halving. */
  private @Nullable WayOut least(Refused refused, Changes.Kind kind) {
    List<Change> changes = kind.changes();
    int helps = changes.size() - 1;
    WayOut way = tried(refused, changes.get(helps));
    int from = 0;
    while (way != null && from < helps) {
      int middle = (from + helps) / 2;
      WayOut less = tried(refused, changes.get(middle));
      if (less == null) {
        from = middle + 1;
      } else {
        way = less;
        helps = middle;
      }
    }
    return way;
  }

  /** A change that passes, with the controls that it needs; or none. */
  private @Nullable WayOut tried(Refused refused, Change first) {
    Change change = first;
    for (int round = 0; round < ROUNDS && left > 0; round++) {
      Plan tried = plan.with(change).valueOrNull();
      left -= cost(tried);
      Run run = tried == null ? null : tried.run();
      if (tried == null || run == null || hasNewRemark(tried)) {
        return null;
      }
      List<Refused> fresh = fresh(tried.verdict(run), refused);
      if (fresh.isEmpty()) {
        return new WayOut(change, tried, plan);
      }
      Operation asking = withControls(change, fresh);
      if (asking == null) {
        return null;
      }
      change = change.saying(asking);
    }
    return null;
  }

  /** Operations run and parts compared; at least one, so that a search ends. */
  private int cost(@Nullable Plan tried) {
    if (tried == null) {
      return 1;
    }
    boolean isResumed = tried.blanks().equals(plan.blanks());
    int first = isResumed ? plan.firstChanged(tried.procedure()) : 0;
    return 1 + tried.trace().length() - first + plan.fixed().parts().size();
  }

  private boolean hasNewRemark(Plan tried) {
    return tried.findings().stream().anyMatch(f -> f.isError() || !remarks.contains(key(f)));
  }

  /** What is refused now and was not, and this refusal itself if it stands. */
  private List<Refused> fresh(Verdict verdict, Refused lifted) {
    return verdict.refused().stream()
        .filter(r -> !known.contains(key(r)) || key(r).equals(key(lifted)))
        .toList();
  }

  /**
   * The changed operation with each control that is asked for; none where that does not help. A jig
   * has to be made, so that none is counted on beside another change.
   */
  private static @Nullable Operation withControls(Change change, List<Refused> fresh) {
    Set<Control> asked = new LinkedHashSet<>();
    for (Refused refused : fresh) {
      Control control = Changes.control(refused);
      boolean isThere = refused.run().operation().place().equals(change.instead().place());
      if (control == null
          || control == Control.JIG
          || !isThere
          || change.instead().with().contains(control)) {
        return null;
      }
      asked.add(control);
    }
    Operation changed = change.instead().withControls(asked);
    return change.saying(changed).instead().equals(changed) ? changed : null;
  }

  /** Whether the changed operation hides its cutter in the wood, where no guard covers it. */
  private static boolean takesGuardOff(WayOut way) {
    Operation now = way.change().instead();
    OperationRun run = way.plan().runOf(now);
    Work work = run == null ? null : run.work();
    return run != null
        && work != null
        && now.at() != null
        && !now.at().equals(way.change().old().at())
        && OPEN.contains(now.at().value())
        && !work.isThrough();
  }

  private static String key(Refused refused) {
    return refused.finding().code() + " " + refused.run().operation().place();
  }

  private static String key(Finding finding) {
    return finding.code() + " " + finding.at();
  }
}
