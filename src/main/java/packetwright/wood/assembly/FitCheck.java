package packetwright.wood.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import packetwright.definition.project.AssemblyDefinition.Joint;
import packetwright.definition.project.AssemblyDefinition.Place;
import packetwright.definition.project.Project;
import packetwright.text.formula.Inequality.Range;
import packetwright.text.measure.Length;
import packetwright.text.source.Finding;
import packetwright.text.source.Located;
import packetwright.wood.part.Box;

/** Whether the pieces leave each other their space, and the upright ones touch and slide. */
final class FitCheck {
  /** Joints whose pieces are meant to touch; a panel may be loose in its groove. */
  private static final Set<String> TOUCHING = Set.of("butt", "rabbet", "dado", "rest");

  /** A tilted piece is placed by rounded sizes: it may reach so far into another. */
  private static final Length HAIR = Length.ofInches(1, 64);

  private final Project project;
  private final List<Placed> all;
  private final List<Placed> pieces;

  private FitCheck(Project project, List<Placed> pieces) {
    this.project = project;
    this.all = pieces;
    this.pieces = Assembly.upright(pieces);
  }

  /** One kind after the other: what stands wrong overlaps, or leaves gaps, or does not hold. */
  static List<Finding> check(Project project, List<Placed> pieces) {
    FitCheck check = new FitCheck(project, pieces);
    List<Joint> joints = project.assembly().joints();
    List<Finding> findings = new ArrayList<>(check.overlaps());
    if (findings.isEmpty()) {
      joints.forEach(joint -> findings.addAll(check.gaps(joint)));
      joints.forEach(joint -> findings.addAll(check.slides(joint)));
    }
    if (findings.isEmpty()) {
      joints.forEach(joint -> findings.addAll(check.holds(joint)));
    }
    return findings;
  }

  // ---- overlaps

  /** One finding for each piece that is in the way, those in the way of most others first. */
  private List<Finding> overlaps() {
    List<Finding> findings = new ArrayList<>();
    List<Placed> left = new ArrayList<>(all);
    while (true) {
      Placed worst = null;
      List<Placed> most = List.of();
      for (Placed piece : left) {
        List<Placed> others =
            left.stream()
                .filter(p -> !p.piece().equals(piece.piece()) && shared(piece, p) != null)
                .toList();
        if (others.size() >= Math.max(1, most.size())) {
          worst = piece;
          most = others;
        }
      }
      if (worst == null) {
        return findings;
      }
      findings.add(overlap(worst, most));
      left.remove(worst);
    }
  }

  private Finding overlap(Placed piece, List<Placed> others) {
    Box shared = shared(piece, others.get(0));
    if (shared == null) {
      throw new IllegalStateException(piece.piece() + " overlaps nothing");
    }
    String names =
        others.stream().map(p -> "`" + p.piece() + "`").collect(Collectors.joining(", "));
    return Finding.error(
        "parts-overlap",
        placeOf(piece).piece().at(),
        "`"
            + piece.piece()
            + "` needs the same space as "
            + names
            + ", from x "
            + print(shared.low().x())
            + ", y "
            + print(shared.low().y())
            + ", z "
            + print(shared.low().z()),
        "change its corner, or the joint where they meet");
  }

  /** A box around some of the wood that two pieces share; none when they share none. */
  static @Nullable Box shared(Placed one, Placed other) {
    boolean isTilted = one.tilt() != null || other.tilt() != null;
    if (!isTilted && !one.block().overlaps(other.block())) {
      return null;
    }
    for (Chunk a : one.chunks()) {
      for (Chunk b : other.chunks()) {
        Chunk common = a.common(b);
        Box around = common == null ? null : common.around();
        if (around != null
            && !isHollow(one, around)
            && !isHollow(other, around)
            && !(isTilted && isThin(around))) {
          return around;
        }
      }
    }
    return null;
  }

  /** A hole in a tilted piece counts as wood. */
  private static boolean isHollow(Placed piece, Box box) {
    return piece.tilt() == null && Hollow.holds(piece.solid().removals(), piece.inOwnFrame(box));
  }

  private static boolean isThin(Box box) {
    return IntStream.range(0, 3).anyMatch(axis -> box.extent(axis).isLess(HAIR));
  }

  private Place placeOf(Placed piece) {
    return project.assembly().places().stream()
        .filter(p -> p.piece().value().equals(piece.piece()))
        .findFirst()
        .orElseThrow();
  }

  // ---- gaps

  /** In a butt joint each piece touches one of the others; else each touches the first. */
  private List<Finding> gaps(Joint joint) {
    List<Placed> meeting = meeting(joint);
    if (!TOUCHING.contains(joint.kind()) || meeting.size() < 2) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    for (Placed piece : meeting.subList(1, meeting.size())) {
      boolean isButt = joint.kind().equals("butt");
      List<Placed> others =
          isButt
              ? meeting.stream().filter(p -> !p.piece().equals(piece.piece())).toList()
              : List.of(meeting.get(0));
      if (others.stream().noneMatch(piece::touches)) {
        findings.add(apart(joint, piece, others.get(0)));
      }
    }
    return findings;
  }

  private Finding apart(Joint joint, Placed piece, Placed other) {
    int closest = -1;
    Length least = Length.ZERO;
    for (int axis = 0; axis < 3; axis++) {
      Length gap = piece.gapTo(other, axis);
      if (gap != null && (closest < 0 || gap.isLess(least))) {
        closest = axis;
        least = gap;
      }
    }
    String names = "`" + piece.piece() + "` and `" + other.piece() + "`";
    String joins = ", and a " + joint.kind() + " joint is meant to close up";
    String axis = closest < 0 ? "" : "xyz".substring(closest, closest + 1);
    return Finding.error(
        "joint-apart",
        joint.name().at(),
        closest < 0
            ? names + " pass each other along every axis" + joins
            : names + " stand " + print(least) + " apart along " + axis + joins,
        closest < 0
            ? "change the corner of one, so that they meet"
            : "move the corner of one of them by " + print(least) + " along " + axis);
  }

  /** Where one of its pieces has no place, or is tilted, nothing is known of a joint. */
  private List<Finding> holds(Joint joint) {
    List<Placed> meeting = meeting(joint);
    return meeting.size() < joint.pieces().size()
        ? List.of()
        : new HoldCheck(project, all, joint, meeting).check();
  }

  private List<Placed> meeting(Joint joint) {
    List<Placed> meeting = new ArrayList<>();
    for (Located<String> name : joint.pieces()) {
      pieces.stream().filter(p -> p.piece().equals(name.value())).forEach(meeting::add);
    }
    // Without its first piece a joint of others says nothing of how these meet.
    String first = joint.pieces().get(0).value();
    return !meeting.isEmpty() && meeting.get(0).piece().equals(first) ? meeting : List.of();
  }

  // ---- sliding

  /** A sliding piece, drawn out along its way to beyond everything, must meet no wood. */
  private List<Finding> slides(Joint joint) {
    Direction out = joint.out() == null ? null : Direction.of(joint.out());
    List<Placed> meeting = meeting(joint);
    if (!joint.kind().equals("slide") || out == null || meeting.isEmpty()) {
      return List.of();
    }
    Placed slider = meeting.get(0);
    List<Finding> findings = new ArrayList<>();
    for (Placed other : all) {
      if (!other.piece().equals(slider.piece()) && isInTheWay(other, slider, out)) {
        findings.add(
            Finding.error(
                "slide-blocked",
                joint.name().at(),
                "`"
                    + slider.piece()
                    + "` cannot slide out toward "
                    + joint.out()
                    + ": `"
                    + other.piece()
                    + "` is in the way",
                "lower `" + other.piece() + "`, or let it slide out the other way"));
      }
    }
    return findings;
  }

  /** Whether any of its wood lies beyond the slider's; holes and rounded edges count as wood. */
  static boolean isInTheWay(Placed other, Placed slider, Direction out) {
    List<Chunk> others = other.chunks();
    for (Chunk own : slider.chunks()) {
      for (Chunk wood : others) {
        Range way = own.wayTo(wood, out.axis());
        if (way != null && (out.isPositive() ? way.high().signum() > 0 : way.low().signum() < 0)) {
          return true;
        }
      }
    }
    return false;
  }

  private String print(Length length) {
    return project.rule().printExactly(length).toString();
  }
}
